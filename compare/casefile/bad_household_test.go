package casefile

import "testing"

func TestBadHousehold(t *testing.T) {
	refused(t, []badInput{
		{"lowest above wanted", withHousehold("  shower_c: 38\n  shower_min_c: 39\n"),
			"case.yaml:4: household.shower_min_c is 39 °C, not below household.shower_c, which is 38 °C: lower one or raise the other"},
		{"bath temperatures", withHousehold("  bath_min_c: 42\n"),
			"case.yaml:3: household.bath_min_c is 42 °C, not below household.bath_c, which is 42 °C: lower one or raise the other"},
		{"tap temperatures", withHousehold("  tap_c: 40\n"),
			"case.yaml:3: household.tap_min_c is 40 °C, not below household.tap_c, which is 40 °C: lower one or raise the other"},
		{"too many showers", withHousehold("  showers_per_day: 10\n"),
			"case.yaml:3: household.showers_per_day is 10 with household.people 3, allowed up to 3 for each person: state more people, or less a day"},
		{"bath without a bath", withHousehold("  has_bath: false\n  baths_per_day: 1\n"),
			"case.yaml:4: household.baths_per_day is 1 while household.has_bath is false: leave it out, or say true"},
		{"taps without litres", withHousehold("  tap_l_per_day: 0\n"),
			"case.yaml:3: household.taps_per_day is 24.21 while household.tap_l_per_day is 0: state both, or 0 for both"},
		{"profile and habits", withHousehold("  load_profile: M\n  shower_minutes: 8\n"),
			"case.yaml:4: household.shower_minutes is stated but plays no part, as household.load_profile replaces the habits: leave one of the two out"},
		{"away backwards", withHousehold("  away:\n    - {first_date: 20 Dec, last_date: 5 Jan}\n"),
			"case.yaml:4: household.away[1].last_date is 5 Jan, before household.away[1].first_date, which is 20 Dec: swap them, or split a stay over the new year in two"},
		{"30 february", withHousehold("  away:\n    - {first_date: 30 Feb, last_date: 5 Mar}\n"),
			"case.yaml:4: household.away[1].first_date is 30 Feb, allowed a date such as 14 Jul: February has the days 1 to 28 in the simulated year"},
		{"leap day", withHousehold("  away:\n    - {first_date: 28 Feb, last_date: 29 Feb}\n"),
			"case.yaml:4: household.away[1].last_date is 29 Feb, allowed a date such as 14 Jul: February has the days 1 to 28 in the simulated year"},
		{"iso date", withHousehold("  away:\n    - {first_date: 2026-07-01, last_date: 5 Aug}\n"),
			"case.yaml:4: household.away[1].first_date is 2026-07-01, allowed a date such as 14 Jul: give day and month in words, without a year"},
		{"away without end", withHousehold("  away:\n    - first_date: 1 Jul\n"),
			"case.yaml:4: household.away[1].last_date is missing: give day and month in words, without a year"},
		{"away unknown", withHousehold("  away:\n    - {first_date: 1 Jul, last_day: 2 Jul}\n"),
			"case.yaml:4: household.away[1].last_date is missing: give day and month in words, without a year" + "\n" +
				"case.yaml:4: household.away[1].last_day is not known: did you mean last_date?"},
		{"away as text", withHousehold("  away: [July]\n"),
			"case.yaml:3: household.away[1] is July, allowed a group of keys: first_date, last_date"},
		{"away as group", withHousehold("  away: {first_date: 1 Jul}\n"),
			"case.yaml:3: household.away is a group of keys, allowed a list of items with the keys first_date, last_date: leave it out for the default, []"},
		{"too many guests", withHousehold("  guests:\n    - {first_date: 1 Jul, last_date: 9 Jul, people: 8}\n    - {first_date: 5 Jul, last_date: 12 Jul, people: 6}\n"),
			"case.yaml:3: household.guests add up to 14 people on 5 Jul, allowed up to 12: make them fewer or shorter"},
	})
}

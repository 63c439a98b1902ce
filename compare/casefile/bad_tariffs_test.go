package casefile

import "testing"

func TestBadTariffs(t *testing.T) {
	refused(t, []badInput{
		{"no tariffs", with("tariffs: []\n"),
			"case.yaml:5: tariffs is an empty list, allowed one tariff or more: state one, or leave the key out"},
		{"tariff without rate", with("tariffs:\n  - name: a\n"),
			"case.yaml:6: tariffs[1] has no rate: state rate_per_kwh, bands that cover all hours, or price_file"},
		{"tariff without name", with("tariffs:\n  - rate_per_kwh: 0.3\n"),
			"case.yaml:6: tariffs[1].name is missing: give the name of the tariff, unlike any other"},
		{"tariff names", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n  - name: a\n    rate_per_kwh: 0.2\n"),
			`case.yaml:8: tariffs[2].name is "a", the name of tariffs[1] too: name them apart`},
		{"blank tariff name", with("tariffs:\n  - name: \" \"\n    rate_per_kwh: 0.3\n"),
			`case.yaml:6: tariffs[1].name is the text " ", allowed one line of text, at most 60 characters: give the name of the tariff, unlike any other`},
		{"pence", with("tariffs:\n  - name: a\n    rate_per_kwh: 26.11\n"),
			"case.yaml:7: tariffs[1].rate_per_kwh is 26.11 with currency GBP, allowed up to 3: it looks like pence or cents, give 0.2611"},
		{"uncovered hours", with("tariffs:\n  - name: a\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00}\n"),
			`case.yaml:6: tariffs[1] ("a"): 372300 of 525600 minutes of the year have no rate, first on 1 January 07:00 standard time: add a band or state rate_per_kwh for the remaining hours`},
		{"overlap", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00}\n      - {label: morning, rate_per_kwh: 0.2, hours: 06:00-09:00}\n"),
			`case.yaml:10: tariffs[1].bands[2] ("a"): band 2 ("morning") overlaps band 1 ("night"), first on 1 January 06:00 standard time: move an edge, or give both the same clock`},
		{"label without rate", with("tariffs:\n  - name: a\n    rate_label: day\n    bands:\n      - {label: all, rate_per_kwh: 0.1, hours: 00:00-24:00}\n"),
			"case.yaml:7: tariffs[1].rate_label is stated but plays no part, as the bands cover all hours: leave one of the two out"},
		{"band clock", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00, clock: utc}\n"),
			"case.yaml:9: tariffs[1].bands[1].clock is utc, allowed one of local, standard: leave it out to use the default"},
		{"band months", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00, months: [1, 2]}\n"),
			"case.yaml:9: tariffs[1].bands[1].months[1] is 1, allowed a list of months, such as [Nov, Dec, Jan]: give each month once, by its name" + "\n" +
				"case.yaml:9: tariffs[1].bands[1].months[2] is 2, allowed a list of months, such as [Nov, Dec, Jan]: give each month once, by its name"},
		{"tax", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    tax_percent: 120\n"),
			"case.yaml:8: tariffs[1].tax_percent is 120, allowed 0 to 100 %: leave it out to use the default"},
		{"negative standing charge", with("tariffs:\n  - name: a\n    rate_per_kwh: 0.3\n    standing_per_day: -1\n"),
			"case.yaml:8: tariffs[1].standing_per_day is -1, allowed 0 to 1000 currency/day: leave it out to use the default"},
		{"confidence", with("service:\n  confidence_percent: 100\n"),
			"case.yaml:6: service.confidence_percent is 100, allowed 50 to 99.9 %: leave it out for the default, 90"},
		{"confidence as share", with("service:\n  confidence_percent: 0.9\n"),
			"case.yaml:6: service.confidence_percent is 0.9, allowed 50 to 99.9 %: it looks like a share of 1: 0.9 would be 90 %"},
	})
}

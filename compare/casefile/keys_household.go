package casefile

import (
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/household"
)

const sapJ = "SAP 10.2, appendix J"

// home is the part of a case that the keys of this file live in.
type home = compare.Household

func householdKeys() []field[compare.Case] {
	habits := slices.Concat(showerKeys(), bathKeys(), tapKeys(), bathroomKeys())
	for i := range habits {
		habits[i] = habits[i].idleIf(profileReplacesHabits)
	}
	return within("household", func(c *compare.Case) *home { return &c.Household },
		slices.Concat(peopleKeys(), habits, demandKeys(), copingKeys())...)
}

func profileReplacesHabits(h *home) string {
	if h.LoadProfile == "" {
		return ""
	}
	return "household.load_profile replaces the habits"
}

func peopleKeys() []field[home] {
	return []field[home]{
		number("people", "", 1, 12, func(h *home) *float64 { return &h.People }, "has no default",
			"people who live there; a fraction if one of them is there part of the time").
			required().advise("give the number of people who live there").common(),
	}
}

func showerKeys() []field[home] {
	return []field[home]{
		flag("has_bath", func(h *home) *bool { return &h.HasBath }, practice,
			"whether there is a bath; where there is none, people shower more often").common(),
		auto("showers_per_day", "", 0, 36, func(h *home) *compare.Auto { return &h.ShowersPerDay }, (*home).Showers,
			[]string{"people", "has_bath"}, sapJ+", step 1c", "showers a day of all people together").common(),
		number("shower_minutes", "min", 0.5, 60, func(h *home) *float64 { return &h.ShowerMinutes }, sapJ,
			"mean time under running water").common(),
		number("shower_minutes_spread", "", 0, 0.8, func(h *home) *float64 { return &h.ShowerMinutesSpread },
			"measured British draw-offs, between ordinary and all showers", "standard deviation of the logarithm of the minutes"),
		number("shower_flow_l_per_min", "l/min", 2, 30, func(h *home) *float64 { return &h.ShowerFlowLPerMin }, sapJ+", vented mixer",
			"mean mixed flow of a shower").common(),
		number("shower_flow_spread", "", 0, 0.5, func(h *home) *float64 { return &h.ShowerFlowSpread }, practice,
			"standard deviation of the logarithm of the flow"),
		number("shower_c", "°C", 35, 48, func(h *home) *float64 { return &h.ShowerC }, practice, "mixed temperature that is wanted").common(),
		number("shower_min_c", "°C", 30, 48, func(h *home) *float64 { return &h.ShowerMinC }, practice,
			"mixed temperature below which a shower is too cold").common(),
	}
}

func bathKeys() []field[home] {
	return []field[home]{
		auto("baths_per_day", "", 0, 24, func(h *home) *compare.Auto { return &h.BathsPerDay }, (*home).Baths,
			[]string{"people", "has_bath"}, sapJ, "baths a day of all people together").common(),
		number("bath_l", "l", 20, 400, func(h *home) *float64 { return &h.BathLitres }, sapJ, "mean mixed litres of a bath"),
		number("bath_flow_l_per_min", "l/min", 3, 40, func(h *home) *float64 { return &h.BathFlowLPerMin }, practice, "mean mixed flow into the bath"),
		number("bath_c", "°C", 35, 48, func(h *home) *float64 { return &h.BathC }, sapJ, "mixed temperature that is wanted"),
		number("bath_min_c", "°C", 30, 48, func(h *home) *float64 { return &h.BathMinC }, practice, "mixed temperature below which a bath is too cold"),
	}
}

func tapKeys() []field[home] {
	return []field[home]{
		auto("tap_l_per_day", "l/day", 0, 500, func(h *home) *compare.Auto { return &h.TapLitresPerDay }, (*home).TapLitres,
			[]string{"people"}, sapJ, "hot litres a day, counted at 52 °C, of all other uses").common(),
		auto("taps_per_day", "", 0, 300, func(h *home) *compare.Auto { return &h.TapsPerDay }, (*home).Taps,
			[]string{"people"}, "measured British draw-offs, in proportion to the litres", "draw-offs a day at taps"),
		number("tap_flow_l_per_min", "l/min", 1, 20, func(h *home) *float64 { return &h.TapFlowLPerMin }, practice, "mean mixed flow of a tap"),
		number("tap_c", "°C", 35, 60, func(h *home) *float64 { return &h.TapC }, practice, "mixed temperature that is wanted"),
		number("tap_min_c", "°C", 30, 60, func(h *home) *float64 { return &h.TapMinC }, practice, "mixed temperature below which a tap is too cold"),
	}
}

func bathroomKeys() []field[home] {
	return []field[home]{
		count("bathrooms", 1, 6, func(h *home) *int { return &h.Bathrooms }, practice,
			"bathrooms; each has a shower that one person uses at a time").common(),
		number("back_to_back_share", shareUnit, 0, 1, func(h *home) *float64 { return &h.BackToBackShare }, practice,
			"share of showers that queue behind another person's").common(),
		number("back_to_back_gap_min", "min", 1, 60, func(h *home) *float64 { return &h.BackToBackGapMin }, practice,
			"time between two showers in a queue"),
		choice("rhythm", rhythms(), func(h *home) string { return h.Rhythm.String() }, setRhythm,
			"measured British hours of draw-off", "when in the day people shower and bathe").common(),
		list("away", "days on which the home is empty", func(h *home) []household.DayRange { return h.Away },
			func(h *home, days []household.DayRange) { h.Away = days }, household.DayRange{}, dayRangeKeys(), "nobody is away").atMost(60),
		list("guests", "visits; a guest showers, bathes and uses the taps as a resident does", func(h *home) []household.Stay { return h.Guests },
			func(h *home, stays []household.Stay) { h.Guests = stays }, household.Stay{}, stayKeys(), "no guests").atMost(60),
	}
}

func demandKeys() []field[home] {
	const noProfile = "none"
	return []field[home]{
		choice("load_profile", append([]string{noProfile}, household.ProfileNames()...),
			func(h *home) string {
				if h.LoadProfile == "" {
					return noProfile
				}
				return h.LoadProfile
			},
			func(h *home, name string) {
				h.LoadProfile = name
				if name == noProfile {
					h.LoadProfile = ""
				}
			},
			"habits, as a home is no test bench", "published load profile, Regulation (EU) 812/2013, repeated each day instead of the habits"),
		number("shower_mixer_margin_k", "K", 0, 15, func(h *home) *float64 { return &h.ShowerMixerMargin }, memory,
			"how much hotter than the shower its hot water must be for the mixer to hold"),
	}
}

// copingKeys are what people do about a shower that runs cold.
func copingKeys() []field[home] {
	return []field[home]{
		number("turn_down_share", shareUnit, 0.3, 0.95, func(h *home) *float64 { return &h.TurnDownShare }, "people leave the tap alone",
			"share of its flow to which people turn a shower that runs cold").orZero("nobody does"),
		number("patience_min", "min", 0, 60, func(h *home) *float64 { return &h.PatienceMin }, "people do not wait",
			"how long people wait before a shower for hot water to recover"),
	}
}

func dayRangeKeys() []field[household.DayRange] {
	return []field[household.DayRange]{
		date("first_date", func(d *household.DayRange) *int { return &d.FirstDay }, "the first day").required(),
		date("last_date", func(d *household.DayRange) *int { return &d.LastDay }, "the last day, itself included").required(),
	}
}

func stayKeys() []field[household.Stay] {
	days := within("", func(s *household.Stay) *household.DayRange { return &s.DayRange }, dayRangeKeys()...)
	return append(days, count("people", 1, 12, func(s *household.Stay) *int { return &s.People }, "", "the number of guests").required())
}

func rhythms() []string {
	var names []string
	for _, r := range []household.Rhythm{household.MeasuredRhythm, household.MorningRhythm, household.EveningRhythm, household.EvenRhythm} {
		names = append(names, r.String())
	}
	return names
}

// setRhythm takes one of the words of rhythms.
func setRhythm(h *home, name string) {
	if r, err := household.ParseRhythm(name); err == nil {
		h.Rhythm = r
	}
}

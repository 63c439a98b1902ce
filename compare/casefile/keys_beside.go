package casefile

import "dhwcompare/compare"

func immersionKeys() []field[compare.Immersion] {
	type heater = compare.Immersion
	noHeater := func(i *heater) string {
		if i.PowerKW > 0 {
			return ""
		}
		return "immersion.power_kw is 0"
	}
	noBoost := func(i *heater) string {
		if i.BoostBelowC > 0 {
			return noHeater(i)
		}
		return "immersion.boost_below_c is 0"
	}
	return []field[heater]{
		number("power_kw", "kW", 0, 6, func(i *heater) *float64 { return &i.PowerKW }, practice, "power of the immersion heater; 0: there is none"),
		number("height_share", shareUnit, 0, 1, func(i *heater) *float64 { return &i.Height }, practice,
			"its height as a share of the vessel's; it heats what lies above").idleIf(noHeater),
		number("boost_below_c", "°C", 30, 70, func(i *heater) *float64 { return &i.BoostBelowC }, practice,
			"it helps while the water at its height is colder").orZero("never").idleIf(noHeater),
		number("boost_k", "K", 1, 20, func(i *heater) *float64 { return &i.BoostK }, practice, "and stops that much above").idleIf(noBoost),
	}
}

func hygieneKeys() []field[compare.Hygiene] {
	type hygiene = compare.Hygiene
	never := func(h *hygiene) string {
		if h.EveryDays > 0 {
			return ""
		}
		return "hygiene.every_days is 0"
	}
	return []field[hygiene]{
		number("every_days", "days", 0, 60, func(h *hygiene) *float64 { return &h.EveryDays }, practice+"; a risk assessment decides",
			"days from one hot spell of the whole vessel to the next; 0: never"),
		number("target_c", "°C", 50, 75, func(h *hygiene) *float64 { return &h.TargetC }, practice+"; a risk assessment decides",
			"temperature at the sensor that counts as hot").idleIf(never),
		number("hold_min", "min", 1, 180, func(h *hygiene) *float64 { return &h.HoldMin }, practice+"; a risk assessment decides",
			"how long it is held").idleIf(never),
		clock("start", func(h *hygiene) *int { return &h.StartMin }, practice, "wall clock at which the first one begins").idleIf(never),
	}
}

package casefile

import (
	"time"

	"dhwcompare/compare"
)

func mainsKeys() []field[compare.Case] {
	return within("mains", func(c *compare.Case) *compare.Mains { return &c.Mains },
		number("largest_flow_l_per_min", "l/min", 3, 60, func(m *compare.Mains) *float64 { return &m.LargestFlowLPerMin }, memory,
			"largest flow at the stop tap, all taps together").common(),
		number("dynamic_pressure_bar", "bar", 0.3, 10, func(m *compare.Mains) *float64 { return &m.DynamicBar }, memory,
			"pressure at the stop tap while water runs").common(),
		number("coil_drop_kpa", "kPa", 0, 300, func(m *compare.Mains) *float64 { return &m.CompactCoilKPa }, memory,
			"pressure drop of the compact store's coil at 15 l/min, usually 15 to 80"),
		number("tempering_drop_kpa", "kPa", 0, 300, func(m *compare.Mains) *float64 { return &m.TemperingKPa }, memory,
			"pressure drop of the tempering valve at 15 l/min, with either option"),
	)
}

const britishFiles = "five public hourly weather files of British sites"

func climateKeys() []field[compare.Case] {
	type place = compare.Climate
	return within("climate", func(c *compare.Case) *place { return &c.Climate },
		months("outdoor_c", "°C", -50, 45, func(p *place) *monthly { return &p.OutdoorC }, "has no default",
			"mean outdoor air temperature of each month").required().advise("give monthly means in °C, January first").common(),
		autoMonths("mains_c", "°C", leastMainsC, mostMainsC, func(p *place) **monthly { return &p.MainsC }, meanMains, []string{"outdoor_c"},
			"relation of Burch and Christensen (2007), fitted to the United States; too warm for a British winter",
			"mean temperature of mains water in each month; a local table is always better").
			advise("give monthly means in °C, January first").common(),
		months("sd_daily_mean_k", "K", 0, 15, func(p *place) *monthly { return &p.SDDailyMeanK }, britishFiles,
			"standard deviation of the daily mean temperature about the month's course"),
		months("daily_range_k", "K", 0, 30, func(p *place) *monthly { return &p.DailyRangeK }, britishFiles,
			"mean of the day's highest less its lowest temperature"),
		months("rh_percent", "%", 5, 100, func(p *place) *monthly { return &p.RHPercent }, britishFiles, "mean relative humidity of outdoor air"),
		number("persistence", "", 0, 0.95, func(p *place) *float64 { return &p.Persistence },
			"judgement upon "+britishFiles+", which give 0.59 to 0.72", "correlation of a day's mean temperature with that of the day before"),
		number("mains_swing_k", "K", 0, 10, func(p *place) *float64 { return &p.MainsSwingK }, "UK Home Energy Model, cold water feed",
			"depth of the daily dip of the mains temperature"),
		choice("first_weekday", weekdays(), func(p *place) string { return p.FirstWeekday.String() }, setWeekday,
			"2026 begins on a Thursday", "weekday of 1 January"),
		flag("summer_time", func(p *place) *bool { return &p.SummerTime }, "Directive 2000/84/EC, from memory",
			"whether wall clocks change on the last Sundays of March and October"),
	)
}

func meanMains(p *compare.Climate) monthly {
	mains, _ := p.Mains()
	return mains
}

func weekdays() []string {
	var names []string
	for d := time.Sunday; d <= time.Saturday; d++ {
		names = append(names, d.String())
	}
	return names
}

// setWeekday takes one of the words of weekdays.
func setWeekday(p *compare.Climate, name string) {
	for d := time.Sunday; d <= time.Saturday; d++ {
		if d.String() == name {
			p.FirstWeekday = d
		}
	}
}

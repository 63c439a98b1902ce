package casefile

import (
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
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
	weather := fileKeys("weather_file", "weather_sha256", func(p *place) *datafile.File { return &p.WeatherFile }, dropWeather,
		"hourly weather in the EPW format, in place of outdoor_c; its hours are used in every year")
	fields := within("climate", func(c *compare.Case) *place { return &c.Climate },
		months("outdoor_c", "°C", -50, 45, func(p *place) *monthly { return &p.OutdoorC }, "has no default",
			"mean outdoor air temperature of each month; weather_file can give every hour instead").required().advise("give monthly means in °C, January first").common().
			fileMonths("weather_file", "means of its hours", func(p *place) bool { return p.Outdoor != nil }),
		weather[0], weather[1],
		autoMonths("mains_c", "°C", leastMainsC, mostMainsC, func(p *place) **monthly { return &p.MainsC }, meanMains, []string{"outdoor_c"},
			"relation of Burch and Christensen (2007), fitted to the United States; too warm for a British winter",
			"mean temperature of mains water in each month; a local table is always better").
			advise("give monthly means in °C, January first").common(),
		months("sd_daily_mean_k", "K", 0, 15, func(p *place) *monthly { return &p.SDDailyMeanK }, britishFiles,
			"standard deviation of the daily mean temperature about the month's course").idleIf(hourlyWeather),
		months("daily_range_k", "K", 0, 30, func(p *place) *monthly { return &p.DailyRangeK }, britishFiles,
			"mean of the day's highest less its lowest temperature").idleIf(hourlyWeather),
		months("rh_percent", "%", 5, 100, func(p *place) *monthly { return &p.RHPercent }, britishFiles, "mean relative humidity of outdoor air").
			fileMonths("weather_file", "means of its hours", func(p *place) bool { return p.Outdoor != nil && p.Outdoor.RHPercent != nil }),
		number("persistence", "", 0, 0.95, func(p *place) *float64 { return &p.Persistence },
			"judgement upon "+britishFiles+", which give 0.59 to 0.72", "correlation of a day's mean temperature with that of the day before").idleIf(hourlyWeather),
		number("mains_swing_k", "K", 0, 10, func(p *place) *float64 { return &p.MainsSwingK }, "UK Home Energy Model, cold water feed",
			"depth of the daily dip of the mains temperature"),
		choice("first_weekday", weekdays(), func(p *place) string { return p.FirstWeekday.String() }, setWeekday,
			"2026 begins on a Thursday", "weekday of 1 January"),
		flag("summer_time", func(p *place) *bool { return &p.SummerTime }, "Directive 2000/84/EC, from memory",
			"whether wall clocks change on the last Sundays of March and October"),
	)
	return append(fields, utcOffset())
}

// utcOffset lines the times of series up with the hours of the place.
func utcOffset() field[compare.Case] {
	f := within("climate", func(c *compare.Case) *compare.Climate { return &c.Climate },
		count("utc_offset_min", -720, 840, func(p *compare.Climate) *int { return &p.UTCOffsetMin }, "Britain",
			"minutes by which standard time is ahead of UTC, the time in price and surplus files; 60 in central Europe"))[0]
	return f.idleIf(func(c *compare.Case) string {
		if c.HasSeries() {
			return ""
		}
		return "there is no price or surplus file"
	})
}

// hourlyWeather is why keys of the synthetic weather play no part.
func hourlyWeather(p *compare.Climate) string {
	if p.WeatherFile.Stated() {
		return "weather_file gives every hour"
	}
	return ""
}

// dropWeather forgets what was read from a weather file.
func dropWeather(p *compare.Climate) {
	if p.Outdoor != nil && p.Outdoor.RHPercent != nil {
		p.RHPercent = compare.Default().Climate.RHPercent
	}
	p.Outdoor = nil
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

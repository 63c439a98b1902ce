package main

import "strings"

// badHabits lists households and houses that contradict themselves.
func badHabits() []badInput {
	return []badInput{
		habits("lowest above wanted", "  shower_c: 38\n  shower_min_c: 39\n",
			"case.yaml:4: household.shower_min_c is 39 °C, not below household.shower_c, which is 38 °C: lower one or raise the other"),
		habits("more showers than people take", "  showers_per_day: 10\n",
			"case.yaml:3: household.showers_per_day is 10 with household.people 3, allowed up to 3 for each person: state more people, or less a day"),
		habits("bath without a bath", "  has_bath: false\n  baths_per_day: 1\n",
			"case.yaml:4: household.baths_per_day is 1 while household.has_bath is false: leave it out, or say true"),
		habits("taps without litres", "  tap_l_per_day: 0\n",
			"case.yaml:3: household.taps_per_day is 24.21 while household.tap_l_per_day is 0: state both, or 0 for both"),
		habits("profile and habits", "  load_profile: M\n  shower_minutes: 8\n",
			"case.yaml:4: household.shower_minutes is stated but plays no part, as household.load_profile replaces the habits: leave one of the two out"),
		habits("away backwards", "  away:\n    - {first_date: 20 Dec, last_date: 5 Jan}\n",
			"case.yaml:4: household.away[1].last_date is 5 Jan, before household.away[1].first_date, which is 20 Dec: swap them, or split a stay over the new year in two"),
		habits("30 February", "  away:\n    - {first_date: 30 Feb, last_date: 5 Mar}\n",
			"case.yaml:4: household.away[1].first_date is 30 Feb, allowed a date such as 14 Jul: February has the days 1 to 28 in the simulated year"),
		habits("date with a year", "  away:\n    - {first_date: 2026-07-01, last_date: 5 Aug}\n",
			"case.yaml:4: household.away[1].first_date is 2026-07-01, allowed a date such as 14 Jul: give day and month in words, without a year"),
		habits("away without end", "  away:\n    - first_date: 1 Jul\n",
			"case.yaml:4: household.away[1].last_date is missing: give day and month in words, without a year"),
		habits("a house full of guests", "  guests:\n    - {first_date: 1 Jul, last_date: 9 Jul, people: 8}\n    - {first_date: 5 Jul, last_date: 12 Jul, people: 6}\n",
			"case.yaml:3: household.guests add up to 14 people on 5 Jul, allowed up to 12: make them fewer or shorter"),
		also("design above base", "dwelling:\n  design_c: 10\n  base_c: 8\n",
			"case.yaml:6: dwelling.design_c is 10 °C with dwelling.base_c 8 °C: it must be the lower of the two"),
		also("base above room", "dwelling:\n  base_c: 19\n  room_c: 18\n",
			"case.yaml:6: dwelling.base_c is 19 °C with dwelling.room_c 18 °C: it must be the lower of the two"),
		also("heating curve upside down", "dwelling:\n  flow_design_c: 30\n  flow_base_c: 35\n",
			"case.yaml:7: dwelling.flow_base_c is 35 °C with dwelling.flow_design_c 30 °C: it must be the lower of the two"),
		also("base without heating", "dwelling:\n  heat_loss_w_per_k: 0\n  base_c: 15\n",
			"case.yaml:7: dwelling.base_c is stated but plays no part, as dwelling.heat_loss_w_per_k is 0: leave one of the two out"),
	}
}

// badControls lists settings that no controller takes, or that never heat.
func badControls() []badInput {
	const control = "compact_store:\n  control:\n"
	return []badInput{
		also("setpoint out of reach", control+"    setpoint_c: 65\n    flow_above_k: 8\n",
			"case.yaml:7: compact_store.control.setpoint_c is 65 °C and with compact_store.control.flow_above_k 8 asks for a flow of 73 °C, above heat_pump.highest_flow_c, which is 70 °C: lower the setpoint"),
		also("unit too cold for the setpoint", "heat_pump:\n  highest_flow_c: 55\n",
			"case.yaml:6: compact_store.control.setpoint_c is 58 °C and with compact_store.control.flow_above_k 5 asks for a flow of 63 °C, above heat_pump.highest_flow_c, which is 55 °C: lower the setpoint"),
		also("setpoint above the controller's", "heat_pump:\n  limits:\n    largest_setpoint_c: 50\n",
			"case.yaml:7: compact_store.control.setpoint_c is 58 °C, above heat_pump.limits.largest_setpoint_c, which is 50 °C: lower it"),
		also("raised out of reach", control+"    raised:\n      - {hours: \"01:00-04:00\", setpoint_c: 70}\n",
			"case.yaml:8: compact_store.control.raised[1].setpoint_c is 70 °C and with compact_store.control.flow_above_k 5 asks for a flow of 75 °C, above heat_pump.highest_flow_c, which is 70 °C: lower the setpoint"),
		also("a month out of reach", control+"    month_setpoint_c: [66, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60]\n",
			"case.yaml:7: compact_store.control.month_setpoint_c is 66 °C and with compact_store.control.flow_above_k 5 asks for a flow of 71 °C, above heat_pump.highest_flow_c, which is 70 °C: lower the setpoint"),
		also("hot spell out of reach", "heat_pump:\n  highest_flow_c: 65\ncompact_store:\n  hygiene:\n    every_days: 7\n",
			"case.yaml:6: compact_store.hygiene.target_c is 60 °C, but the heat pump reaches heat_pump.highest_flow_c 65 less 8 K and compact_store.immersion.power_kw is 0: lower it, or add an immersion heater"),
		also("boost above the setpoint", "cylinder:\n  immersion:\n    boost_below_c: 55\n",
			"case.yaml:7: cylinder.immersion.boost_below_c is 55 °C, not below cylinder.control.setpoint_c, which is 48 °C, so the immersion heater would do all the work: lower it"),
		also("boost without heater", "compact_store:\n  immersion:\n    boost_below_c: 45\n",
			"case.yaml:7: compact_store.immersion.boost_below_c is stated but plays no part, as immersion.power_kw is 0: leave one of the two out"),
		also("hysteresis below the controller's", control+"    hysteresis_k: 1\n",
			"case.yaml:7: compact_store.control.hysteresis_k is 1 K, below heat_pump.limits.least_hysteresis_k, which is 2 K: make it larger, or state what the controller takes"),
		also("pause below the controller's", "heat_pump:\n  limits:\n    least_anti_cycle_min: 8\n",
			"case.yaml:7: compact_store.control.anti_cycle_min is 5 min, below heat_pump.limits.least_anti_cycle_min, which is 8 min: make it longer, or state what the controller takes"),
		also("hysteresis that lets showers run cold", "cylinder:\n  control:\n    hysteresis_k: 20\n",
			"case.yaml:7: cylinder.control.hysteresis_k is 20 K: from cylinder.control.setpoint_c 48 °C the sensor falls to 28 °C before heating starts, below the 38 °C that is the least of household.shower_min_c, bath_min_c and tap_min_c: make it smaller, or raise the setpoint"),
		also("setpoint twice", "cylinder:\n  control:\n    setpoint_c: 50\n    month_setpoint_c: [50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50]\n",
			"case.yaml:7: cylinder.control.setpoint_c is stated but plays no part, as control.month_setpoint_c stands in its place: leave one of the two out"),
		also("sensor above the vessel", "cylinder:\n  control:\n    sensor_height_share: 1.2\n",
			"case.yaml:7: cylinder.control.sensor_height_share is 1.2, allowed 0 to 1: leave it out for the default, 0.4"),
		also("sensor below the vessel", control+"    sensor_height_share: -0.1\n",
			"case.yaml:7: compact_store.control.sensor_height_share is -0.1, allowed 0 to 1: leave it out for the default, 0.5"),
		also("window that never opens", control+"    windows: [\"13:00-13:00\"]\n",
			`case.yaml:7: compact_store.control.windows[1] is the text "13:00-13:00", allowed a stretch of the day, such as "13:00-16:30": it begins and ends at the same time: write 00:00-24:00 for the whole day`),
		also("window too short for a run", "cylinder:\n  control:\n    windows: [\"13:00-13:02\"]\n",
			"case.yaml:7: cylinder.control.windows[1] is 13:00-13:02, 2 minutes long, shorter than heat_pump.min_run_min, which is 3: make it longer"),
		also("window of one time", control+"    windows: [13:00]\n",
			`case.yaml:7: compact_store.control.windows[1] is 13:00, allowed a stretch of the day, such as "13:00-16:30": give two times of the day from 00:00 to 24:00, as HH:MM-HH:MM`),
		also("window beyond the day", control+"    windows: [\"25:00-26:00\"]\n",
			`case.yaml:7: compact_store.control.windows[1] is the text "25:00-26:00", allowed a stretch of the day, such as "13:00-16:30": give two times of the day from 00:00 to 24:00, as HH:MM-HH:MM`),
		also("window in words", control+"    windows: [1pm-3pm]\n",
			`case.yaml:7: compact_store.control.windows[1] is 1pm-3pm, allowed a stretch of the day, such as "13:00-16:30": give two times of the day from 00:00 to 24:00, as HH:MM-HH:MM`),
		also("windows as text", control+"    windows: \"13:00-16:00\"\n",
			`case.yaml:7: compact_store.control.windows is the text "13:00-16:00", allowed a list of stretches of the day, such as ["13:00-16:30", "22:00-06:00"]: give each as HH:MM-HH:MM`),
		also("cheapest hours and windows", control+"    windows: [\"13:00-16:00\"]\n    cheapest:\n      hours_per_day: 4\n",
			"case.yaml:7: compact_store.control.windows is stated but plays no part, as control.cheapest.hours_per_day stands in its place: leave one of the two out"),
		also("hot spell at noon", "cylinder:\n  hygiene:\n    start: noon\n",
			"case.yaml:7: cylinder.hygiene.start is noon, allowed a time of the day, such as 13:00: give it as HH:MM"),
		also("spell without hot spells", "compact_store:\n  hygiene:\n    target_c: 65\n",
			"case.yaml:7: compact_store.hygiene.target_c is stated but plays no part, as hygiene.every_days is 0: leave one of the two out"),
	}
}

// badVessels lists vessels and units that cannot be built.
func badVessels() []badInput {
	const row = "    - {outdoor_c: -7, leaving_c: 35, output_kw: 5, cop: 3}\n"
	return []badInput{
		also("dimensions against volume", "cylinder:\n  width_mm: 300\n  depth_mm: 300\n",
			"case.yaml:6: cylinder.volume_l is 210 l, more than cylinder.width_mm, cylinder.depth_mm and cylinder.outside_height_mm enclose, 139.5 l: check the dimensions"),
		also("inside above outside", "cylinder:\n  height_m: 1.6\n  outside_height_mm: 1500\n",
			"case.yaml:6: cylinder.height_m is 1.6 m inside, not below cylinder.outside_height_mm, which is 1500 mm: check both"),
		also("volume without dimensions", "cylinder:\n  volume_l: 400\n",
			"case.yaml:6: cylinder.volume_l is 400 l, for which no usual dimensions are known: state cylinder.width_mm, cylinder.depth_mm and cylinder.outside_height_mm"),
		also("negative volume", "cylinder:\n  volume_l: -210\n",
			"case.yaml:6: cylinder.volume_l is -210, allowed 60 to 450 l: leave it out for the default, 210"),
		also("coil fills the store", "compact_store:\n  volume_l: 60\n  coil_length_m: 60\n",
			"case.yaml:7: compact_store.coil_displaced_l is 45.29 l of compact_store.volume_l 60, allowed up to 0.7 of it: make the coil shorter (compact_store.coil_length_m) or the store larger"),
		also("coil holds more than it takes", "compact_store:\n  coil_water_l: 40\n",
			"case.yaml:6: compact_store.coil_water_l is 40 l, more than the whole coil takes by compact_store.coil_displaced_l, 24.15 l: check both"),
		also("coil upside down", "cylinder:\n  coil_bottom_share: 0.7\n",
			"case.yaml:6: cylinder.coil_top_share is 0.6, not above cylinder.coil_bottom_share, which is 0.7: swap them"),
		also("fouling stated twice", "compact_store:\n  coil_ua_w_per_k: 1500\n  fouling_m2k_per_w: 0.0004\n",
			"case.yaml:7: compact_store.fouling_m2k_per_w is stated but plays no part, as compact_store.coil_ua_w_per_k includes it: leave one of the two out"),
		also("defrosts without a pause", "heat_pump:\n  defrost_interval_min: 5\n",
			"case.yaml:6: heat_pump.defrost_interval_min is 5, allowed 20 to 200 min, or 0 for no frost: leave it out for the default, 50"),
		also("electricity later than heat", "heat_pump:\n  heat_lag_s: 30\n  electricity_lag_s: 60\n",
			"case.yaml:7: heat_pump.electricity_lag_s is 60 s, longer than the lag of heat, 30 s: make it shorter, heat cannot run ahead of electricity"),
		also("one row of performance", "heat_pump:\n  table:\n"+row,
			"case.yaml:6: heat_pump.table has 1 outdoor and 1 leaving temperatures; two of each are needed to interpolate: add rows"),
		also("the same row twice", "heat_pump:\n  table:\n"+row+row+strings.Replace(row, "35", "55", 1)+strings.Replace(row, "-7", "7", 1),
			"case.yaml:6: heat_pump.table has 2 rows for outdoor -7 C with leaving 35 C: keep one"),
		also("performance below one", "heat_pump:\n  table:\n"+strings.Replace(row, "cop: 3", "cop: 0.3", 1),
			"case.yaml:7: heat_pump.table[1].cop is 0.3, allowed 1 to 15: give the COP at that output, defrosting included"),
		also("column of performance", "heat_pump:\n  table:\n"+strings.Replace(row, "leaving_c", "flow_c", 1),
			"case.yaml:7: heat_pump.table[1].leaving_c is missing: give the temperature of leaving water, not of return water"+
				"\ncase.yaml:7: heat_pump.table[1].flow_c is not known: leave it out; known here are outdoor_c, leaving_c, output_kw, cop"),
		also("performance in watts", "heat_pump:\n  table:\n"+strings.Replace(row, "output_kw: 5", "output_kw: 5000", 1),
			"case.yaml:7: heat_pump.table[1].output_kw is 5000, allowed 0.5 to 50 kW: it looks like watts: 5000 would be 5 kW"),
		also("table and size", "heat_pump:\n  size: small\n  table:\n"+row+strings.Replace(row, "35", "55", 1)+strings.Replace(row, "-7", "7", 1)+
			strings.NewReplacer("35", "55", "-7", "7").Replace(row),
			"case.yaml:6: heat_pump.size is stated but plays no part, as heat_pump.table replaces the generic unit: leave one of the two out"),
	}
}

// badRates lists tariffs that give no price, or two, at some hour.
func badRates() []badInput {
	tariff := func(name, keys, want string) badInput {
		return also(name, "tariffs:\n  - name: a\n"+keys, want)
	}
	return []badInput{
		also("no tariffs", "tariffs: []\n",
			"case.yaml:5: tariffs is an empty list, allowed one tariff or more: state one, or leave the key out"),
		also("tariff without name", "tariffs:\n  - rate_per_kwh: 0.3\n",
			"case.yaml:6: tariffs[1].name is missing: give the name of the tariff, unlike any other"),
		also("tariff with a blank name", "tariffs:\n  - name: \" \"\n    rate_per_kwh: 0.3\n",
			`case.yaml:6: tariffs[1].name is the text " ", allowed one line of text, at most 60 characters: give the name of the tariff, unlike any other`),
		also("two tariffs of one name", "tariffs:\n  - {name: a, rate_per_kwh: 0.3}\n  - {name: a, rate_per_kwh: 0.2}\n",
			`case.yaml:7: tariffs[2].name is "a", the name of tariffs[1] too: name them apart`),
		tariff("tariff without rate", "    standing_per_day: 0.5\n",
			"case.yaml:6: tariffs[1] has no rate: state rate_per_kwh, bands that cover all hours, or price_file"),
		tariff("rate in words", "    rate_per_kwh: cheap\n",
			"case.yaml:7: tariffs[1].rate_per_kwh is cheap, allowed a number from -1000 to 1000 currency/kWh: give a number in digits"),
		tariff("hours without a rate", "    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00}\n",
			`case.yaml:6: tariffs[1] ("a"): 372300 of 525600 minutes of the year have no rate, first on 1 January 07:00 standard time: add a band or state rate_per_kwh for the remaining hours`),
		tariff("hours with two rates", "    rate_per_kwh: 0.3\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00}\n      - {label: dawn, rate_per_kwh: 0.2, hours: 06:00-09:00}\n",
			`case.yaml:10: tariffs[1].bands[2] ("a"): band 2 ("dawn") overlaps band 1 ("night"), first on 1 January 06:00 standard time: move an edge, or give both the same clock`),
		tariff("clock of a band", "    rate_per_kwh: 0.3\n    bands:\n      - {label: night, rate_per_kwh: 0.1, hours: 00:00-07:00, clock: utc}\n",
			"case.yaml:9: tariffs[1].bands[1].clock is utc, allowed one of local, standard: leave it out to use the default"),
		tariff("month twice", "    rate_per_kwh: 0.3\n    bands:\n      - {label: b, rate_per_kwh: 0.1, hours: 01:00-02:00, months: [Jan, January]}\n",
			"case.yaml:9: tariffs[1].bands[1].months[2] is January, allowed a list of months, such as [Nov, Dec, Jan]: give each month once, by its name"),
		tariff("negative standing charge", "    rate_per_kwh: 0.3\n    standing_per_day: -1\n",
			"case.yaml:8: tariffs[1].standing_per_day is -1, allowed 0 to 1000 currency/day: leave it out to use the default"),
		tariff("tax above the price", "    rate_per_kwh: 0.3\n    tax_percent: 120\n",
			"case.yaml:8: tariffs[1].tax_percent is 120, allowed 0 to 100 %: leave it out to use the default"),
		tariff("export without surplus", "    rate_per_kwh: 0.3\nsurplus: {export_per_kwh: 0.1}\n",
			"case.yaml:8: surplus.export_per_kwh is stated but plays no part, as there is no surplus: leave one of the two out"),
	}
}

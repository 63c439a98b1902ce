package casefile

import (
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/heatpump"
)

type unit = compare.HeatPump

func heatPumpKeys() []field[compare.Case] {
	return within("heat_pump", func(c *compare.Case) *unit { return &c.HeatPump }, slices.Concat(performanceKeys(), runningKeys(), frostKeys(), wateringKeys(), limitKeys())...)
}

func tableReplacesSize(u *unit) string {
	if len(u.Table) == 0 {
		return ""
	}
	return "heat_pump.table replaces the generic unit"
}

func generic(u *unit) string {
	if len(u.Table) > 0 {
		return ""
	}
	return "it counts only with heat_pump.table"
}

const certified = "medians of 323 certified propane units"

// limited is a number whose range and remedy the performance map itself knows.
func limited(path, unitName, mapField string, at func(*unit) *float64, source, help string) field[unit] {
	n := mapNumber(mapField)
	return number(path, unitName, n.Min, n.Max, at, source, help).advise(n.Remedy)
}

// mapNumber finds a figure of the performance map, with its range, by its name.
func mapNumber(name string) heatpump.Number {
	p := heatpump.Defaults()
	numbers := p.Numbers()
	p.Table = []heatpump.Row{{}}
	for _, n := range append(numbers, p.Numbers()...) {
		if n.Field == name {
			return n
		}
	}
	return heatpump.Number{}
}

func performanceKeys() []field[unit] {
	sizes := []string{string(heatpump.Small), string(heatpump.Medium)}
	nominal := mapNumber("NominalKW")
	return []field[unit]{
		choice("size", sizes, func(u *unit) string { return string(u.Size) }, func(u *unit, s string) { u.Size = heatpump.Size(s) },
			certified, "class of unit: small gives 4 to 6 kW at -10 °C, medium 6 to 9 kW").idleIf(tableReplacesSize).common(),
		auto("nominal_kw", "kW", nominal.Min, nominal.Max, func(u *unit) *compare.Auto { return &u.NominalKW }, (*unit).KW, []string{"size"},
			certified, "output by which a unit of that class is named; scales it up or down").
			advise(nominal.Remedy).idleIf(tableReplacesSize).common(),
		list("table", "the unit's own figures at full output by EN 14511, one row for each outdoor and leaving temperature",
			func(u *unit) []heatpump.Row { return u.Table }, func(u *unit, rows []heatpump.Row) { u.Table = rows },
			heatpump.Row{}, rowKeys(), "the generic unit").atMost(400),
		limited("minimum_output_share", shareUnit, "MinimumShare", func(u *unit) *float64 { return &u.MinimumShare },
			memory, "smallest output as a share of the largest, with a table").idleIf(generic),
		limited("load_penalty", "", "LoadPenalty", func(u *unit) *float64 { return &u.LoadPenalty },
			"fitted to the "+certified+", uncertain by 0.05", "efficiency lost from half to full output, as a share of the ideal COP"),
		limited("field_derate", "", "FieldDerate", func(u *unit) *float64 { return &u.FieldDerate },
			"1 is the test bench; 0.85 makes field results of older units (Ruhnau et al. 2019)", "factor on the COP: field against test bench"),
		limited("highest_flow_c", "°C", "HighestFlowC", func(u *unit) *float64 { return &u.HighestFlowC },
			certified, "hottest water that leaves the unit").common(),
	}
}

func runningKeys() []field[unit] {
	return []field[unit]{
		limited("heat_lag_s", "s", "Start.HeatTauS", func(u *unit) *float64 { return &u.HeatLagS }, practice,
			"time constant with which heat comes up after a start"),
		limited("electricity_lag_s", "s", "Start.ElectricityTauS", func(u *unit) *float64 { return &u.ElectricityLagS }, practice,
			"time constant with which electricity comes up after a start"),
		number("min_run_min", "min", 0, 30, func(u *unit) *float64 { return &u.MinRunMin }, practice, "least time of a run, usually 2 to 10"),
		number("pump_w", "W", 0, 300, func(u *unit) *float64 { return &u.PumpW }, practice, "circulation pump while the unit runs, usually 30 to 60"),
		number("standby_w", "W", 0, 100, func(u *unit) *float64 { return &u.StandbyW }, practice, "standby all year; certified median 13"),
		number("design_starts", "", 0, 1e7, func(u *unit) *float64 { return &u.DesignStarts }, "not stated",
			"starts that the compressor is designed for; 0: not stated"),
		number("standby_share", shareUnit, 0, 1, func(u *unit) *float64 { return &u.StandbyShare }, practice, "share of standby put down to hot water"),
	}
}

func frostKeys() []field[unit] {
	return []field[unit]{
		number("defrost_interval_min", "min", 20, 200, func(u *unit) *float64 { return &u.DefrostIntervalMin },
			"judgement on published surveys", "running from clean to a defrost in humid air at 0 to 2 °C").orZero("no frost"),
		number("defrost_min", "min", 1, 15, func(u *unit) *float64 { return &u.DefrostMin }, practice, "length of a defrost, usually 3 to 8").idleIf(noFrost),
		number("defrost_heat_kwh", "kWh", 0, 1, func(u *unit) *float64 { return &u.DefrostHeatKWh }, "estimate: 5 minutes at about 4 kW",
			"heat taken back from the water by a defrost, 0.15 to 0.5").idleIf(noFrost),
	}
}

func noFrost(u *unit) string {
	if u.DefrostIntervalMin > 0 {
		return ""
	}
	return "heat_pump.defrost_interval_min is 0"
}

func wateringKeys() []field[unit] {
	return []field[unit]{
		number("glycol_percent", "%", 0, 40, func(u *unit) *float64 { return &u.GlycolPercent }, practice, "glycol in the heating water"),
		number("valve_travel_s", "s", 0, 60, func(u *unit) *float64 { return &u.ValveTravelS }, practice, "travel of the diverting valve"),
		number("pump_overrun_s", "s", 0, 600, func(u *unit) *float64 { return &u.PumpOverrunS }, practice,
			"how long the pump runs on after hot water while it still brings heat"),
		number("system_minimum_water_l", "l", 5, 100, func(u *unit) *float64 { return &u.LeastWaterL }, practice+", 20 to 60",
			"heating water that must stand open to the unit for defrosts and least runs").orZero("any").common(),
		number("priority_min", "min", 0, 600, func(u *unit) *float64 { return &u.PriorityMin }, practice,
			"longest run for hot water while the house needs heat; 0: no limit"),
	}
}

func limitKeys() []field[unit] {
	type limits = compare.Limits
	return within("limits", func(u *unit) *limits { return &u.Limits },
		number("least_hysteresis_k", "K", 0.5, 15, func(l *limits) *float64 { return &l.LeastHysteresisK }, practice, "smallest hysteresis that it takes"),
		number("largest_setpoint_c", "°C", 40, 75, func(l *limits) *float64 { return &l.LargestSetpointC }, practice, "hottest setpoint of a vessel that it takes"),
		number("least_anti_cycle_min", "min", 0, 60, func(l *limits) *float64 { return &l.LeastAntiCycleMin }, practice,
			"shortest pause between two runs for hot water that it takes"),
	)
}

func rowKeys() []field[heatpump.Row] {
	type row = heatpump.Row
	return []field[row]{
		number("outdoor_c", "°C", -30, 45, func(w *row) *float64 { return &w.OutdoorC }, "", "the outdoor air temperature").required(),
		number("leaving_c", "°C", 20, 85, func(w *row) *float64 { return &w.LeavingC }, "", "the temperature of leaving water, not of return water").required(),
		number("output_kw", "kW", 0.5, 50, func(w *row) *float64 { return &w.MaxOutputKW }, "", "the largest output").required(),
		number("cop", "", 1, 15, func(w *row) *float64 { return &w.FullCOP }, "", "the COP at that output, defrosting included").required(),
	}
}

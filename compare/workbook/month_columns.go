package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// carbonFactor names the carbon of a month's electricity.
const carbonFactor = "carbon factor"

// daysColumn names the days of a month or of the year.
const daysColumn = "days"

func errNoColumn(name string) error { return fmt.Errorf("no column %q among the months", name) }

// carbonFigure is the carbon of the electricity.
const carbonFigure = "carbon_kg_per_year"

// worker makes a term of other figures, which it finds by name.
type worker func(at func(name string) term) term

// workOf gives the formula of a figure that follows from others of the same
// month or year.
func workOf(name string) (worker, bool) {
	w, ok := map[string]worker{
		"unmet_heat_kwh":    func(at func(string) term) term { return minus(at("wanted_heat_kwh"), at("heat_to_taps_kwh")) },
		"system_efficiency": func(at func(string) term) term { return ratio(at("heat_to_taps_kwh"), at("electricity_kwh")) },
		"heat_pump_cop": func(at func(string) term) term {
			return ratio(minus(at("heat_pump_heat_kwh"), at("defrost_heat_kwh")), at("compressor_kwh"))
		},
		"starts_per_day": func(at func(string) term) term { return quotient(at("starts_per_year"), at(daysColumn)) },
		"minutes_per_run": func(at func(string) term) term {
			return ratio(times(at("run_hours"), minutesAnHour()), plus(at("starts_per_year"), at("changeovers_per_year")))
		},
	}[name]
	return w, ok
}

// monthTables lays the figures out in tables. Figures that no table names come
// together in a last one, so that none is left out.
func monthTables() []monthTable {
	tables := []monthTable{
		{title: "Heat and electricity", columns: figureColumns("wanted_heat_kwh", "heat_to_taps_kwh", "unmet_heat_kwh", "dead_leg_loss_kwh",
			"vessel_loss_kwh", "loop_loss_kwh", "defrost_heat_kwh", "loop_heat_to_house_kwh", "store_gain_kwh", "heat_pump_heat_kwh",
			"immersion_electricity_kwh", "electricity_kwh", "system_efficiency")},
		{title: "Electricity by cause", columns: causeColumns()},
		{title: "Running for hot water", columns: figureColumns("starts_per_year", "starts_per_day", "changeovers_per_year", "run_hours",
			"minutes_per_run", "extrapolated_hours", "defrosts_per_year", "missed_hot_spells_per_year")},
		{title: "Service", columns: figureColumns("showers_per_year", "failing_showers_per_year", "too_cold_minutes_per_year", "baths_per_year",
			"failing_baths_per_year", "tap_draws_per_year", "failing_tap_draws_per_year", "wait_minutes_per_year",
			"days_with_a_failing_shower", "worst_day_failing_showers", "longest_bad_spell_days")},
		{title: "Heating and the whole house", columns: figureColumns("whole_house_electricity_kwh", carbonFigure, "heating_heat_kwh", "credited_heat_kwh", "unwanted_heat_kwh",
			"heating_starts_per_year", "heating_defrosts_per_year", "heating_interrupted_hours", "longest_heating_gap_minutes", "worst_room_dip_k")},
	}
	if rest := restColumns(tables); len(rest) > 0 {
		tables = append(tables, monthTable{title: "Further figures", columns: rest})
	}
	return tables
}

// restColumns are the figures that no table has. Cost is worked out with the
// bills.
func restColumns(tables []monthTable) []monthColumn {
	placed := map[string]bool{"cost_per_year": true}
	for _, t := range tables {
		for _, c := range t.columns {
			placed[c.name] = true
		}
	}
	var names []string
	for _, f := range compare.Figures() {
		if f.Varies && !placed[f.Name] {
			names = append(names, f.Name)
		}
	}
	return figureColumns(names...)
}

// figureColumns shows figures of the comparison, those that it has.
func figureColumns(names ...string) []monthColumn {
	var out []monthColumn
	for _, name := range names {
		for _, f := range compare.Figures() {
			if f.Name == name {
				out = append(out, figureColumn(f))
			}
		}
	}
	return out
}

func figureColumn(f compare.Figure) monthColumn {
	const least, tops = 1, 2 // decimals of a month's figure: one more than a year's
	c := monthColumn{name: f.Name, top: withUnit(labelOf(f), wording.Unit(f.Unit)), decimals: min(max(f.Decimals+1, least), tops), largest: f.Largest,
		get: func(m *compare.MonthTotals) float64 { return *f.Of(&m.Totals) }}
	c.work, _ = workOf(f.Name)
	if f.Name == carbonFigure {
		c.adds, c.work = true, func(at func(string) term) term { return times(at("whole_house_electricity_kwh"), at(carbonFactor)) }
	}
	return c
}

// labelOf names a figure as print does.
func labelOf(f compare.Figure) string { return capital(wording.InPrint(f.Label)) }

func withUnit(label, unit string) string {
	if unit == "" {
		return label
	}
	return label + ", " + unit
}

// causeColumns divide the electricity, and give the compressor's part and COP.
func causeColumns() []monthColumn {
	var parts []monthColumn
	for _, c := range compare.CauseList() {
		parts = append(parts, monthColumn{name: causeKey(c), top: capital(c.Label) + ", kWh", decimals: 1,
			get: func(m *compare.MonthTotals) float64 { return *c.Of(&m.ElectricityByCause) }})
	}
	all := monthColumn{name: allCauses, top: "All causes, kWh", decimals: 1, work: func(at func(string) term) term {
		list := make([]term, 0, len(parts))
		for _, c := range parts {
			list = append(list, at(c.name))
		}
		return plus(list[0], list[1:]...)
	}}
	compressor := monthColumn{name: "compressor_kwh", top: "Compressor alone, kWh", decimals: 1, work: func(at func(string) term) term {
		return minus(at("electricity_kwh"), plus(at("cause.pump"), at("cause.standby"), at("cause.immersion")))
	}}
	return append(append(parts, all, compressor), figureColumns("heat_pump_cop")...)
}

// Names of the columns of causes.
const allCauses = "cause.sum"

func causeKey(c compare.Cause) string { return "cause." + c.Name }

func capital(s string) string { return wording.Capital(s) }

// told makes a sentence of words without their capital and stop.
func told(s string) string { return capital(wording.InPrint(s)) + "." }

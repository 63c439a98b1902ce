package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// daysColumn names the days of a month.
const daysColumn = "days"

func errNoColumn(name string) error { return fmt.Errorf("no column %q among the months", name) }

// figureColumn shows a figure of the months.
func figureColumn(name, top string, digits int) monthColumn {
	for _, f := range compare.Figures() {
		if f.Name == name {
			return monthColumn{name: name, top: top, decimals: digits, get: func(m *compare.MonthTotals) float64 { return *f.Of(&m.Totals) }}
		}
	}
	return monthColumn{name: name, top: top, get: func(*compare.MonthTotals) float64 { return 0 }}
}

// worked is a column that follows from others.
func worked(name, top string, digits int, work func(at func(string) term) term) monthColumn {
	return monthColumn{name: name, top: top, decimals: digits, work: work}
}

func energyColumns() []monthColumn {
	return []monthColumn{
		figureColumn("wanted_heat_kwh", "Heat wanted, kWh", 1),
		figureColumn("heat_to_taps_kwh", "Heat to taps, kWh", 1),
		worked("unmet_heat_kwh", "Unmet heat, kWh", 2, func(at func(string) term) term {
			return minus(at("wanted_heat_kwh"), at("heat_to_taps_kwh"))
		}),
		figureColumn("dead_leg_loss_kwh", "Pipes to taps, kWh", 1),
		figureColumn("vessel_loss_kwh", "Vessel loss, kWh", 1),
		figureColumn("loop_loss_kwh", "Loop loss, kWh", 1),
		figureColumn("store_gain_kwh", "Kept in store, kWh", 2),
		figureColumn("heat_pump_heat_kwh", "Heat from heat pump, kWh", 1),
		figureColumn("electricity_kwh", "Electri- city, kWh", 1),
		worked("system_efficiency", "Heat per elec- tricity", 2, func(at func(string) term) term {
			return ratio(at("heat_to_taps_kwh"), at("electricity_kwh"))
		}),
	}
}

func causeColumns() []monthColumn {
	var out []monthColumn
	for _, c := range compare.CauseList() {
		out = append(out, monthColumn{name: "cause." + c.Name, top: capital(c.Label) + ", kWh", decimals: 1,
			get: func(m *compare.MonthTotals) float64 { return *c.Of(&m.ElectricityByCause) }})
	}
	return append(out,
		worked("cause.sum", "All causes, kWh", 1, func(at func(string) term) term {
			list := make([]term, 0, len(out))
			for _, c := range out {
				list = append(list, at(c.name))
			}
			return plus(list[0], list[1:]...)
		}),
		worked("compressor_kwh", "Com- pressor, kWh", 1, func(at func(string) term) term {
			return minus(minus(at("electricity_kwh"), at("cause.pump")), at("cause.standby"))
		}),
		worked("heat_pump_cop", "COP, starts included", 2, func(at func(string) term) term {
			return ratio(at("heat_pump_heat_kwh"), at("compressor_kwh"))
		}))
}

func serviceColumns() []monthColumn {
	return []monthColumn{
		figureColumn("starts_per_year", "Starts", 1),
		worked("starts_per_day", "Starts a day", 2, func(at func(string) term) term {
			return quotient(at("starts_per_year"), at(daysColumn))
		}),
		figureColumn("run_hours", "Running, h", 1),
		worked("minutes_per_run", "Mean run, min", 1, func(at func(string) term) term {
			return ratio(times(at("run_hours"), minutesAnHour()), at("starts_per_year"))
		}),
		figureColumn("extrapolated_hours", "Outside data, h", 1),
		figureColumn("showers_per_year", "Showers", 1),
		figureColumn("failing_showers_per_year", "Failing showers", 2),
		figureColumn("too_cold_minutes_per_year", "Too cold showers, min", 1),
		figureColumn("baths_per_year", "Baths", 1),
		figureColumn("failing_baths_per_year", "Failing baths", 2),
		figureColumn("tap_draws_per_year", "Tap draws", 0),
		figureColumn("failing_tap_draws_per_year", "Failing tap draws", 1),
		figureColumn("wait_minutes_per_year", "Waiting, min", 0),
	}
}

// capital begins a label with a capital letter.
func capital(s string) string {
	if s == "" || s[0] < 'a' || s[0] > 'z' {
		return s
	}
	return string(s[0]-'a'+'A') + s[1:]
}

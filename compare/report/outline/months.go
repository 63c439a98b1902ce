package outline

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// monthColumn is a figure that the months are shown by.
type monthColumn struct{ name, head string }

func monthColumns() []monthColumn {
	return []monthColumn{
		{"electricity_kwh", "hot water electricity, kWh"}, {"heat_pump_cop", "COP for hot water"}, {"starts_per_day", "starts a day"},
		{"failing_showers_per_year", "showers that fail"}, {"unmet_heat_kwh", "heat not delivered, kWh"},
	}
}

// monthTable sets the options side by side month by month.
func monthTable(doc *compare.Document) *Table {
	t := &Table{ID: "months", Caption: "Month by month: compact store (S) and cylinder (C)", Over: []Over{{"", 1}}, Heads: []string{"month"}}
	for _, c := range monthColumns() {
		t.Over = append(t.Over, Over{c.head, 2})
		t.Heads = append(t.Heads, "S", "C")
	}
	var rows [][]string
	for m, name := range calendar.MonthNames() {
		row := []string{name}
		for _, c := range monthColumns() {
			f := figureNamed(c.name)
			for _, side := range bothSides() {
				row = append(row, amount(*f.Of(&doc.Comparison.Options.Of(side).Months[m].Totals), f.Decimals))
			}
		}
		rows = append(rows, row)
	}
	t.Groups = rowsOf(append(rows, yearRow(doc)))
	return t
}

func yearRow(doc *compare.Document) []string {
	row := []string{"year"}
	for _, c := range monthColumns() {
		f := figureNamed(c.name)
		for _, side := range bothSides() {
			row = append(row, amount(*f.Of(&doc.Comparison.Options.Of(side).Totals), f.Decimals))
		}
	}
	return row
}

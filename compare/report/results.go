package report

import (
	"fmt"

	"dhwcompare/compare"
)

func results(doc *compare.Document, pictures gallery) part {
	blocks := []block{tabled(resultTable(doc))}
	blocks = append(blocks, pictures.hang("electricity-by-month", "starts-by-month", "winter-day", "electricity-by-half-hour")...)
	return part{ID: "results", Title: "Results", Blocks: append(blocks, tabled(monthTable(doc)))}
}

// themes heads the figures of the results, each by the first that is below it.
func themes() map[string]string {
	return map[string]string{
		"electricity_kwh":   "Electricity and heat",
		"system_efficiency": "Heat pump",
		"heating_heat_kwh":  "The house",
		"showers_per_year":  "Service",
		"cost_per_year":     "Cost, carbon and space",
	}
}

// resultTable lists every figure that is not zero for both.
func resultTable(doc *compare.Document) *table {
	cmp, heads := doc.Comparison, themes()
	t := &table{
		ID: "figures", Caption: "The mean year of both options",
		Heads: []string{"figure", "unit", "compact store", "cylinder", "difference", "90 % interval", "finding"}, Words: 2, Tail: 1,
		Note: "Difference: compact store less cylinder, with the interval of its mean. " + noInterval(cmp) + "The finding says with which option the figure is better, as far as the years tell, or higher, if it is neither good nor bad.",
	}
	for _, f := range compare.Figures() {
		if name, first := heads[f.Name]; first {
			t.Groups = append(t.Groups, group{Name: name})
		}
		if row := resultRow(doc, &f); row != nil {
			g := &t.Groups[len(t.Groups)-1]
			g.Rows = append(g.Rows, row)
		}
	}
	return t
}

func noInterval(cmp *compare.Comparison) string {
	if cmp.Years < compare.LeastYearsForInterval {
		return fmt.Sprintf("%s are too few for intervals. ", capital(calculated(cmp.Years)))
	}
	return ""
}

// resultRow is nil for a figure that does not arise.
func resultRow(doc *compare.Document, f *compare.Figure) []string {
	cmp := doc.Comparison
	a, b, d := *f.Of(&cmp.Options.Compact.Totals), *f.Of(&cmp.Options.Cylinder.Totals), *f.Of(&cmp.Difference.Totals)
	if a == 0 && b == 0 {
		return nil
	}
	unit := f.Unit
	if unit == "money" {
		unit = cmp.Currency
	}
	row := []string{f.Label, squareUnit(unit), amount(a, f.Decimals), amount(b, f.Decimals), change(d, f.Decimals)}
	s, varies := cmp.Difference.Spread[f.Name]
	switch {
	case !varies:
		return append(row, "", "")
	case cmp.Years < compare.LeastYearsForInterval:
		return append(row, "", "too few years")
	default:
		return append(row, between(s.CILow, s.CIHigh, change, f.Decimals), differenceFinding(doc, f, s))
	}
}

func squareUnit(unit string) string {
	if unit == "m2" {
		return "m²"
	}
	return unit
}

// differenceFinding puts a difference into words.
func differenceFinding(doc *compare.Document, f *compare.Figure, s compare.DifferenceSpread) string {
	isCost, compact := f.Name == "cost_per_year", compare.SideCompact.String()
	switch {
	case isCost && doc.Comparison.Verdict.Cost == compare.CostNotCompared:
		return notJudged
	case !tells(s), isCost && immaterial(s, doc.Case.Money.MaterialityPerYear):
		return "no real difference"
	case f.Better == compare.Neither:
		return "higher: " + whether(s.Mean > 0, compact, compare.SideCylinder.String())
	default:
		return "better: " + whether((s.Mean > 0) == (f.Better == compare.More), compact, compare.SideCylinder.String())
	}
}

// monthColumn is a figure that the months are shown by.
type monthColumn struct{ name, head string }

func monthColumns() []monthColumn {
	return []monthColumn{
		{"electricity_kwh", "hot water electricity, kWh"}, {"heat_pump_cop", "COP for hot water"}, {"starts_per_day", "starts a day"},
		{"failing_showers_per_year", "showers that fail"}, {"unmet_heat_kwh", "heat not delivered, kWh"},
	}
}

// monthTable sets the options side by side month by month.
func monthTable(doc *compare.Document) *table {
	t := &table{ID: "months", Caption: "Month by month: compact store (S) and cylinder (C)", Over: []over{{"", 1}}, Heads: []string{"month"}}
	for _, c := range monthColumns() {
		t.Over = append(t.Over, over{c.head, 2})
		t.Heads = append(t.Heads, "S", "C")
	}
	var rows [][]string
	for m, name := range monthNames() {
		row := []string{name}
		for _, c := range monthColumns() {
			f := figure(c.name)
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
		f := figure(c.name)
		for _, side := range bothSides() {
			row = append(row, amount(*f.Of(&doc.Comparison.Options.Of(side).Totals), f.Decimals))
		}
	}
	return row
}

// causes says why the options differ.
func causes(doc *compare.Document, pictures gallery) part {
	d := &doc.Comparison.ByCause
	blocks := pictures.hang("electricity-by-cause", "why-they-differ", "difference-by-cause")
	if len(d.Parts) > 0 {
		var rows [][]string
		for _, c := range d.Parts {
			rows = append(rows, []string{c.Label, change(c.KWh, 0)})
		}
		rows = append(rows, []string{"difference in all", change(d.KWh, 0)})
		blocks = append(blocks,
			text(fmt.Sprintf("Effects were taken away from both options one after the other, in the order of the table, and the years lived through again (%s for each). What each is given is the difference that went with it, compact store less cylinder; another order would divide it a little differently. The last line but one is what no effect alone explains.", calculated(d.Years))),
			tabled(&table{ID: "causes-table", Caption: "What makes the difference in electricity of the whole house", Heads: []string{"cause", "kWh a year"}, Groups: rowsOf(rows)}))
	}
	blocks = append(blocks, tabled(causeTable(doc)))
	return part{ID: "causes", Title: "Why the options differ", Blocks: blocks}
}

// causeTable divides each option's own electricity.
func causeTable(doc *compare.Document) *table {
	o := &doc.Comparison.Options
	var rows [][]string
	for _, c := range compare.CauseList() {
		a, b := *c.Of(&o.Compact.ElectricityByCause), *c.Of(&o.Cylinder.ElectricityByCause)
		rows = append(rows, []string{c.Label, amount(a, 0), amount(b, 0)})
	}
	rows = append(rows, []string{"all hot water", amount(o.Compact.ElectricityKWh, 0), amount(o.Cylinder.ElectricityKWh, 0)})
	return &table{
		ID: "causes-options", Caption: "What each option's electricity for hot water is for, kWh a year", Heads: []string{"cause", "compact store", "cylinder"}, Groups: rowsOf(rows),
		Note: "Electricity that made heat is divided as the heat was. The parts of an option exclude each other and add up.",
	}
}

package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

func results(doc *compare.Document, pictures gallery) Part {
	blocks := []Block{text("Both options in the mean of the calculated years: first all figures, then how they run through the year."), tabled(resultTable(doc))}
	blocks = append(blocks, pictures.hang("electricity-by-month", "starts-by-month", "winter-day", "winter-day-house", "electricity-by-half-hour", "summer-day")...)
	return Part{ID: "results", Title: "Results", Blocks: append(blocks, tabled(monthTable(doc)))}
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
func resultTable(doc *compare.Document) *Table {
	cmp, heads := doc.Comparison, themes()
	t := &Table{
		ID: "figures", Caption: "The mean year of both options",
		Heads: []string{"figure", "unit", "compact store", "cylinder", "difference", "90 % interval", "finding"}, Words: 2, Tail: 1,
		Note: "Difference: compact store less cylinder, with the interval of its mean. " + noInterval(cmp) + "The finding says with which option the figure is better, as far as the years tell, or higher, if it is neither good nor bad.",
	}
	theme := ""
	for _, f := range compare.Figures() {
		if name, first := heads[f.Name]; first {
			theme = name
		}
		if row := resultRow(doc, &f); row != nil {
			t.add(theme, row)
		}
	}
	t.explainMark()
	return t
}

func noInterval(cmp *compare.Comparison) string {
	if cmp.Years < compare.LeastYearsForInterval {
		return fmt.Sprintf("%s too few for intervals. ", capital(calculated(cmp.Years)+whether(cmp.Years == 1, " is", " are")))
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
	row := []string{cmp.Marked(wording.InPrint(f.Label), f.Name), wording.Unit(unit), amount(a, f.Decimals), amount(b, f.Decimals), change(d, f.Decimals)}
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

// differenceFinding puts a difference into words.
func differenceFinding(doc *compare.Document, f *compare.Figure, s compare.DifferenceSpread) string {
	isCost, compact := f.Name == "cost_per_year", compare.SideCompact.String()
	switch {
	case isCost && doc.Comparison.Verdict.Cost == compare.CostNotCompared:
		return notJudged
	case !tells(s), isCost && immaterial(s, doc.Case.Money.MaterialityPerYear):
		return noDifference
	case f.Better == compare.Neither:
		return "higher: " + whether(s.Mean > 0, compact, compare.SideCylinder.String())
	default:
		return "better: " + whether((s.Mean > 0) == (f.Better == compare.More), compact, compare.SideCylinder.String())
	}
}

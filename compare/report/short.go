package report

import (
	"fmt"
	"io"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// Terminal writes the comparison in short for somebody at a terminal: the verdict, the
// five figures that decide it, and where the files are. No line is longer than 80
// columns, the folder's name excepted.
func Terminal(w io.Writer, doc *compare.Document, folder string) error {
	cmp := doc.Comparison
	var p page
	p.open(cmp, cmp.Verdict.Short)
	p.table(doc, fiveRows(doc))
	p.text(fmt.Sprintf("difference: compact store less cylinder; %s: no real difference. All in: with purchase, service and replacement, "+
		"as an even yearly payment over %d years.", noRealDifference, doc.Case.Money.HorizonYears))
	p.gap()
	p.text("All figures, the reasons" + toBewareOf(len(cmp.Warnings)) + ": report.html, or --full.")
	p.gap()
	return p.end(w, folder)
}

func toBewareOf(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return " and 1 thing to beware of" + compare.WarningMark
	default:
		return fmt.Sprintf(" and %d things to beware of%s", n, compare.WarningMark)
	}
}

// fiveRows are service, costs, electricity and space: the figures that decide.
func fiveRows(doc *compare.Document) []row {
	service := figureRow(doc.Comparison, "failing_showers_per_year")
	service.label = doc.Comparison.Marked(wording.Sprintf("showers that fail a year (at most %.3g)", doc.Case.Service.FailuresPerYear), "failing_showers_per_year")
	list := []row{service}
	if len(doc.Comparison.Tariffs) > 0 {
		list = append(list, costRow(doc, &doc.Comparison.Tariffs[0]))
	}
	return append(list, allInRow(doc), figureRow(doc.Comparison, "electricity_kwh"), figureRow(doc.Comparison, "floor_area_m2"))
}

// allInRow sets the costs over the whole life side by side.
func allInRow(doc *compare.Document) row {
	cmp := doc.Comparison
	cost := func(l *compare.LifeCost) string { return wording.Fixed(l.EquivalentAnnualCost, 0) }
	label := cmp.Marked("cost all in, a year, "+Plain(cmp.Currency), "equivalent_annual_cost")
	r := row{label, cost(&cmp.Options.Compact.LifeCost), cost(&cmp.Options.Cylinder.LifeCost),
		signed(cmp.Difference.EquivalentAnnualCost, 0)}
	s, known := cmp.Difference.Spread["equivalent_annual_cost"]
	switch {
	case cmp.Verdict.Cost == compare.CostNotCompared:
		r.difference = notJudged
	case known && (!tells(s) || immaterial(s, doc.Case.Money.MaterialityPerYear)):
		r.difference = noRealDifference
	}
	return r
}

package report

import (
	"testing"

	"dhwcompare/compare"
)

// TestCostDifference walks the bounds of what may be said about a cost.
func TestCostDifference(t *testing.T) {
	tests := map[string]struct {
		mean, half float64
		finding    compare.CostFinding
		want       string
	}{
		"clear":             {65, 5, compare.CostCylinderLess, "+65"},
		"clear, other way":  {-65, 5, compare.CostCompactLess, "-65"},
		"includes zero":     {65, 66, compare.CostUndecided, "~"},
		"ends at zero":      {65, 65, compare.CostUndecided, "~"},
		"inside the band":   {15, 4, compare.CostNoDifference, "~"},
		"fills the band":    {15, 5, compare.CostNoDifference, "~"},
		"straddles an edge": {15, 6, compare.CostUndecided, "+15"},
		"runs cold":         {65, 5, compare.CostNotCompared, notJudged},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			doc := document()
			doc.Comparison.Verdict.Cost = test.finding
			bill := tariff("x", 100, 100, test.mean, test.half)
			if got := costRow(doc, &bill).difference; got != test.want {
				t.Errorf("got %q, want %q", got, test.want)
			}
		})
	}
}

// TestDecidingFiguresExist keeps the table in step with the list of figures.
func TestDecidingFiguresExist(t *testing.T) {
	names := map[string]bool{}
	for _, f := range compare.Figures() {
		names[f.Name] = true
	}
	before, after := deciding(true)
	for _, name := range append(before, after...) {
		if !names[name] {
			t.Errorf("no figure is called %q", name)
		}
	}
}

// TestEveryFigureHasRoom keeps labels within their column, whichever figure the
// table shows.
func TestEveryFigureHasRoom(t *testing.T) {
	doc := document()
	doc.Case.Dwelling.HeatLossWPerK = 150
	doc.Comparison.Options.Cylinder.Spread["failing_showers_per_year"] = spread(1000, 900)
	for _, r := range rows(doc) {
		if width(r.label) > labelColumns {
			t.Errorf("%q takes %d columns, %d are there", r.label, width(r.label), labelColumns)
		}
		for _, cell := range []string{r.compact, r.cylinder, r.difference} {
			if width(cell) >= differenceColumns+1 {
				t.Errorf("%s: %q takes %d columns", r.label, cell, width(cell))
			}
		}
	}
}

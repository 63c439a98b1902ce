package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// waitTable says how long people wait at each outlet until the water is warm; nil
// if nothing is drawn.
func waitTable(doc *compare.Document) *Table {
	a, b := doc.Comparison.Options.Compact.Risk.Waits, doc.Comparison.Options.Cylinder.Risk.Waits
	var rows [][]string
	for i := range min(len(a), len(b)) {
		row := []string{a[i].Outlet, amount(a[i].Draws, 0)}
		for _, w := range []*compare.OutletWait{&a[i], &b[i]} {
			row = append(row, amount(w.MedianS, 0), amount(w.P95S, 0), amount(w.LongestS, 0))
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		return nil
	}
	return &Table{
		ID: "waits", Caption: "Wait for warm water at each outlet, in seconds from opening it", Over: []Over{{"", 2}, {"compact store", 3}, {"cylinder", 3}},
		Heads: []string{"outlet", "draw-offs a year", "median", "95 % within", "longest", "median", "95 % within", "longest"}, Groups: rowsOf(rows),
		Note: waitNote(a, b),
	}
}

// waitNote says which part of the wait hangs on the option.
func waitNote(a, b []compare.OutletWait) string {
	most := 0.0
	for i := range min(len(a), len(b)) {
		most = max(most, a[i].WarmUpS, b[i].WarmUpS)
	}
	return fmt.Sprintf("The cooled water of the pipe comes first, with either option; then the vessel's. Waiting for that to be warm adds %s s at most to the mean of an outlet. A draw-off that never gets warm counts with all of its time.", amount(most, 1))
}

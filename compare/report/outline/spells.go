package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// spellTable is about weather that is harder than the calculated years.
func spellTable(doc *compare.Document) *Table {
	if len(doc.Comparison.Spells) == 0 {
		return nil
	}
	t := &Table{
		ID: "spells", Caption: "Hard weather, lived through with January's draw-offs", Heads: []string{"in the whole spell", "compact store", "cylinder"},
		Note: "Calculated years have fewer very cold hours than real ones, so the verdict looks at these as well. Longest wait and largest fall are of all samples, the rest are means of a spell.",
	}
	for i := range doc.Comparison.Spells {
		s := &doc.Comparison.Spells[i]
		a, b := &s.Compact, &s.Cylinder
		t.Groups = append(t.Groups, Group{
			Name: fmt.Sprintf("%s: %s at %s °C, mains %s °C, humidity %s %%, %d samples", capital(s.Name), dayCount(s.Days), amount(s.OutdoorC, 0), amount(s.MainsC, 0), amount(s.RHPercent, 0), s.Samples),
			Rows: [][]string{
				{"showers", amount(a.Showers, 1), amount(b.Showers, 1)},
				{"showers that fail", amount(a.FailingShowers, 1), amount(b.FailingShowers, 1)},
				{"heat not delivered, kWh", amount(a.UnmetKWh, 2), amount(b.UnmetKWh, 2)},
				{"defrosts, heating included", amount(a.Defrosts, 0), amount(b.Defrosts, 0)},
				{"heating kept waiting, h", amount(a.InterruptedHours, 1), amount(b.InterruptedHours, 1)},
				{"longest wait of heating, min", amount(a.LongestGapMin, 0), amount(b.LongestGapMin, 0)},
				{"largest fall of the rooms, K", amount(a.WorstDipK, 2), amount(b.WorstDipK, 2)},
				{"until all is made up, min", caughtUp(a), caughtUp(b)},
				{"samples in which the house fell behind", amount(float64(a.FellBehind), 0), amount(float64(b.FellBehind), 0)},
				{"electricity of the whole house, kWh", amount(a.WholeHouseKWh, 0), amount(b.WholeHouseKWh, 0)},
			},
		})
	}
	return t
}

func caughtUp(r *compare.SpellResult) string {
	if r.CatchUpMin < 0 {
		return "over two days"
	}
	return amount(r.CatchUpMin, 0)
}

// equalTable is what it would take for each option to keep the service rule; nil
// before that has been looked for.
func equalTable(doc *compare.Document) *Table {
	var rows [][]string
	for _, side := range bothSides() {
		o := doc.Comparison.Options.Of(side)
		switch e := &o.EqualService; {
		case e.Meets && e.Trial != nil:
			rows = append(rows, []string{o.Name, amount(e.SetpointC, 0) + " °C", orNone(e.ShowerLimit > 0, amount(e.ShowerLimit, 0)+" l/min"),
				moneyOf(doc.Comparison).whole(e.Trial.Cost), few(e.Trial.Failing.Mean), few(e.Trial.RunsADay)})
		case e.Note != "":
			rows = append(rows, []string{o.Name, "none keeps it", "", "", "", ""})
		}
	}
	if len(rows) == 0 {
		return nil
	}
	return &Table{
		ID: "equal-service", Caption: "Equal service: the cheapest setting that keeps the service rule", Words: 1,
		Heads: []string{"option", "setpoint", "flow limiter", "cost a year", "failing showers a year", "runs a day"}, Groups: rowsOf(rows),
	}
}

// alternativeTable is what changes would bring.
func alternativeTable(doc *compare.Document) *Table {
	var rows [][]string
	for i := range doc.Comparison.Alternatives {
		a := &doc.Comparison.Alternatives[i]
		row := []string{a.Name}
		for _, t := range []*compare.Trial{a.Compact, a.Cylinder} {
			if t == nil {
				row = append(row, "", "")
				continue
			}
			row = append(row, few(t.Failing.Mean), moneyOf(doc.Comparison).whole(t.Cost))
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		return nil
	}
	return &Table{
		ID: "alternatives", Caption: "What a change would bring: failing showers and cost a year", Over: []Over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"the same home with", "failing showers", "cost", "failing showers", "cost"}, Groups: rowsOf(rows),
		Note: fmt.Sprintf("From %s each; compare within the table.", calculated(doc.Comparison.Alternatives[0].Years)),
	}
}

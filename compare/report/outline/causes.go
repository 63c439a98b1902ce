package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// causes says why the options differ.
func causes(doc *compare.Document, pictures gallery) Part {
	d := &doc.Comparison.ByCause
	blocks := pictures.hang("why-they-differ", "electricity-by-cause")
	if len(d.Parts) > 0 {
		var rows [][]string
		for _, c := range d.Parts {
			rows = append(rows, []string{c.Label, change(c.KWh, 0)})
		}
		rows = append(rows, []string{"difference in all", change(d.KWh, 0)})
		blocks = append(blocks,
			text(fmt.Sprintf("Effects were taken away from both options one after the other, in the order of the table, and the years lived through again (%s for each). What each is given is the difference that went with it, compact store less cylinder; another order would divide it a little differently. The last line but one is what no effect alone explains.", calculated(d.Years))),
			tabled(&Table{ID: "causes-table", Caption: "What makes the difference in electricity of the whole house", Heads: []string{"cause", "kWh a year"}, Groups: rowsOf(rows)}))
	}
	blocks = append(blocks, tabled(causeTable(doc)))
	if t := loopTable(doc); t != nil {
		blocks = append(blocks, tabled(t))
	}
	return Part{ID: "causes", Title: "Why the options differ", Blocks: blocks}
}

// causeTable divides each option's own electricity.
func causeTable(doc *compare.Document) *Table {
	o := &doc.Comparison.Options
	var rows [][]string
	for _, c := range compare.CauseList() {
		a, b := *c.Of(&o.Compact.ElectricityByCause), *c.Of(&o.Cylinder.ElectricityByCause)
		rows = append(rows, []string{c.Label, amount(a, 0), amount(b, 0)})
	}
	rows = append(rows, []string{"all hot water", amount(o.Compact.ElectricityKWh, 0), amount(o.Cylinder.ElectricityKWh, 0)})
	return &Table{
		ID: "causes-options", Caption: "What each option's electricity for hot water is for, kWh a year", Heads: []string{"cause", "compact store", "cylinder"}, Groups: rowsOf(rows),
		Note: "Electricity that made heat is divided as the heat was. The parts of an option exclude each other and add up.",
	}
}

// loopTable follows the heat of the loop through the shown days; nil where no day is
// shown.
func loopTable(doc *compare.Document) *Table {
	shown := &doc.Comparison.Shown
	if len(shown.WinterDay.Compact.Points) == 0 || len(shown.SummerDay.Compact.Points) == 0 {
		return nil
	}
	days := []compare.LoopDay{shown.WinterDay.Compact.Loop, shown.WinterDay.Cylinder.Loop, shown.SummerDay.Compact.Loop, shown.SummerDay.Cylinder.Loop}
	var rows [][]string
	for _, line := range []struct {
		name string
		of   func(*compare.LoopDay) float64
	}{
		{"in: from the heat pump", func(l *compare.LoopDay) float64 { return l.FromHeatPump }},
		{"in: already there, from heating", func(l *compare.LoopDay) float64 { return l.FromHouse }},
		{"out: into the vessel", func(l *compare.LoopDay) float64 { return l.ToVessel }},
		{"out: handed on to heating", func(l *compare.LoopDay) float64 { return l.ToHouse }},
		{"out: lost from pipes", func(l *compare.LoopDay) float64 { return l.Lost }},
		{"out: taken by defrosts", func(l *compare.LoopDay) float64 { return l.ToDefrosts }},
		{"kept", func(l *compare.LoopDay) float64 { return l.Kept }},
	} {
		row := []string{line.name}
		for i := range days {
			row = append(row, amount(line.of(&days[i]), 1))
		}
		rows = append(rows, row)
	}
	return &Table{
		ID: "loop-days", Caption: "Where the heat in the loop between heat pump and vessel went, kWh a day", Over: []Over{{"", 1}, {"the cold day shown", 2}, {"the summer day shown", 2}},
		Heads: []string{"heat", "compact store", "cylinder", "compact store", "cylinder"}, Groups: rowsOf(rows),
	}
}

package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// drawoffs shows the timed tests.
func drawoffs(doc *compare.Document, pictures gallery) Part {
	d := doc.Draws
	if d == nil {
		return Part{}
	}
	blocks := []Block{
		text(fmt.Sprintf("Each test begins with a vessel charged to its setpoint, in the weather and mains water of its month. Minutes count from warm water at the outlet until the shower has been too cold for longer than the service rule allows; %s means that the test ended first. Heat-pump states: full output; capped to half; off; and a defrost that begins with the shower.", minutesUpTo(d.LongestMin, d.LongestMin))),
	}
	blocks = append(blocks, ruleBlocks(doc)...)
	blocks = append(blocks, pictures.hang("shower-minutes", "shower-map", "shower-strips")...)
	return Part{ID: "draw-offs", Title: "Timed draw-off tests", Blocks: append(blocks, tabled(otherTests(doc)), tabled(minutesTable(d)))}
}

// ruleBlocks hold the options against the design rule, if it was tested.
func ruleBlocks(doc *compare.Document) []Block {
	var rows [][]string
	for _, side := range bothSides() {
		r := &doc.Draws.Of(side).Rule
		if r.NeedMin <= 0 {
			return nil
		}
		rows = append(rows, []string{side.String(), monthName(r.Month), minutesUpTo(r.HaveMin, doc.Draws.LongestMin), yesNo(r.Holds),
			orNoneWithin(r.SetpointC, " °C"), orNoneWithin(r.FlowLPerMin, " l/min")})
	}
	return []Block{tabled(&Table{
		ID: "design-rule", Caption: fmt.Sprintf("Design rule: at least %s minutes of shower without the heat pump", amount(doc.Draws.Compact.Rule.NeedMin, 0)),
		Heads: []string{"option", "month", "minutes", "holds", "setpoint that meets it", "flow that meets it"}, Words: 2, Groups: rowsOf(rows),
		Note: "It bridges a defrost and the restart. Common practice, no source. Each of the last two with all else as it is.",
	})}
}

func orNoneWithin(v float64, unit string) string {
	if v <= 0 {
		return "none within limits"
	}
	return amount(v, 1) + unit
}

// minutesTable is the table of shower minutes, month by state by flow.
func minutesTable(d *compare.Drawoff) *Table {
	n := len(d.FlowsLPerMin)
	t := &Table{
		ID: "shower-table", Caption: "Minutes of shower by month, state of the heat pump and flow in litres a minute",
		Over: []Over{{"", 1}, {"compact store", n}, {"cylinder", n}}, Heads: []string{"heat pump"},
	}
	var flows []string
	for _, flow := range d.FlowsLPerMin {
		flows = append(flows, few(flow))
	}
	t.Heads = append(append(t.Heads, flows...), flows...)
	for m, name := range calendar.MonthNames() {
		g := Group{Name: name}
		for s, state := range d.States {
			row := []string{state}
			for _, side := range bothSides() {
				for i := range d.FlowsLPerMin {
					row = append(row, minutesUpTo(d.Of(side).ShowerMin[m][s][i], d.LongestMin))
				}
			}
			g.Rows = append(g.Rows, row)
		}
		t.Groups = append(t.Groups, g)
	}
	return t
}

// otherTests are the rest, month by month.
func otherTests(doc *compare.Document) *Table {
	d := doc.Draws
	bath := whether(doc.Case.Household.HasBath, " Bath: minutes to fill; — means that it ends too cold.", "")
	t := &Table{
		ID: "other-tests", Caption: "Other tests by month: compact store (S) and cylinder (C)", Over: []Over{{"", 1}},
		Heads: []string{"month"},
		Note: fmt.Sprintf("Second shower: after the first and a pause of %s min, until it is too cold. Pause: the shortest that lets the second shower stay warm; — means none up to an hour. Largest flow: that never runs cold with the heat pump on.%s Reheating: after a mean shower; 0 means that the heat pump need not start.",
			amount(d.PauseMin, 0), bath),
	}
	columns := otherColumns(doc)
	for _, c := range columns {
		t.Over = append(t.Over, Over{c.name, 2})
		t.Heads = append(t.Heads, "S", "C")
	}
	var rows [][]string
	for m, name := range calendar.MonthNames() {
		row := []string{name}
		for _, c := range columns {
			row = append(row, c.of(&d.Compact, m), c.of(&d.Cylinder, m))
		}
		rows = append(rows, row)
	}
	t.Groups = rowsOf(rows)
	return t
}

// testColumn is one test by month.
type testColumn struct {
	name string
	of   func(r *compare.DrawoffResults, month int) string
}

// otherColumns leaves out the bath of a home that has none.
func otherColumns(doc *compare.Document) []testColumn {
	d := doc.Draws
	dash := func(ok bool, words string) string { return whether(ok, words, "—") }
	list := []testColumn{
		{"second shower, min", func(r *compare.DrawoffResults, m int) string {
			return minutesUpTo(r.BackToBack[m].Minutes, d.LongestMin)
		}},
		{"shortest pause, min", func(r *compare.DrawoffResults, m int) string {
			return dash(r.BackToBack[m].ShortestPauseMin >= 0, amount(r.BackToBack[m].ShortestPauseMin, 0))
		}},
		{"largest flow, l/min", func(r *compare.DrawoffResults, m int) string { return amount(r.SteadyFlow[m], 1) }},
	}
	if doc.Case.Household.HasBath {
		list = append(list, testColumn{"bath, min", func(r *compare.DrawoffResults, m int) string {
			return dash(r.Bath[m].Serves, amount(r.Bath[m].Minutes, 1))
		}})
	}
	return append(list, []testColumn{
		{"reheating, min", func(r *compare.DrawoffResults, m int) string { return amount(r.RechargeMin[m], 0) }},
		{"from cold, min", func(r *compare.DrawoffResults, m int) string { return amount(r.FromColdMin[m], 0) }},
	}...)
}

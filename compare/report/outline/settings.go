package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"
)

// settings is what each setting buys, and what the installer sets and measures.
func settings(doc *compare.Document) Part {
	s := doc.Settings
	if s == nil {
		return Part{}
	}
	p := Part{ID: "settings", Title: "Settings and commissioning", Blocks: []Block{
		text(fmt.Sprintf("From an uncommissioned example to the settings of the case, for the compact store: each change alone, then all together. From %s for each; compare within the table%s. The example is common practice, no source. Showers are at the mean flow of the household, and the heat pump starts by itself, as its control asks; the timed tests above hold it in one state from the first second.", calculated(s.Years), ladderBasis(doc))),
		tabled(ladder(doc)), tabled(commissioning(s)),
	}}
	if doc.Draws != nil {
		p.Blocks = append(p.Blocks, tabled(measuring(doc)))
	}
	return p
}

// ladderBasis says where the same steps stand over all years.
func ladderBasis(doc *compare.Document) string {
	if doc.Settings.Years < doc.Comparison.Years {
		return " (the command settings lives all years through each step)"
	}
	return ""
}

func ladder(doc *compare.Document) *Table {
	money := moneyOf(doc.Comparison)
	var rows [][]string
	for i := range doc.Settings.Steps {
		s := &doc.Settings.Steps[i]
		rows = append(rows, []string{s.Name, wording.InPrint(s.Change), minutesUpTo(s.WinterMin, longestOf(doc)), minutesUpTo(s.SummerMin, longestOf(doc)),
			few(s.Trial.Failing.Mean), few(s.Trial.RunsADay), amount(s.Trial.HotWater, 0), money.whole(s.Trial.Cost)})
	}
	return &Table{
		ID: "ladder", Caption: "What each setting buys", Words: 2, Groups: rowsOf(rows),
		Heads: []string{"step", "change", "winter shower, min", "summer shower, min", "failing showers a year", "runs a day", "hot water kWh", "cost a year"},
	}
}

// commissioning leaves room for what was set.
func commissioning(s *compare.Settings) *Table {
	t := &Table{ID: "commissioning", Caption: "Commissioning list", Heads: []string{"setting", "value", "why", "set to", "by, date"}, Words: 5}
	for i := range s.List {
		c := &s.List[i]
		t.add(c.Option, []string{c.Setting, wording.InPrint(c.Value), wording.InPrint(c.Reason), blank, blank})
	}
	return t
}

// blank is room to write by hand.
const blank = "…………"

// measuring is the test under the shower, with what this report expects.
func measuring(doc *compare.Document) *Table {
	d := doc.Draws
	flow := d.NearestFlow(doc.Case.Household.ShowerFlowLPerMin)
	var rows [][]string
	for m, name := range calendar.MonthNames() {
		row := []string{name}
		for _, side := range bothSides() {
			row = append(row, minutesUpTo(d.Of(side).ShowerMin[m][0][flow], d.LongestMin))
		}
		rows = append(rows, append(row, blank, blank, blank))
	}
	return &Table{
		ID: "measuring", Caption: fmt.Sprintf("Shower test: minutes expected at %s l/min, and measured", few(d.FlowsLPerMin[flow])),
		Heads: []string{"month", "expected, compact store", "expected, cylinder", "measured minutes", "measured l/min", "mains °C, date"}, Groups: rowsOf(rows),
		Note: "Let the vessel charge fully, measure the flow with a bucket and a watch, then let the shower run with the heat pump at full output until it is too cold. Use the row of the month in which you test. Mind scalding: have the mixing valve set first.",
	}
}

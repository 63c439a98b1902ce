package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// risk says how often hot water falls short, when, for whom, and what would help.
func risk(doc *compare.Document, pictures gallery) Part {
	p := Part{ID: "risk", Title: "Risk of running cold", Blocks: pictures.hang("failing-showers-by-month")}
	p.Blocks = append(p.Blocks, riskWords(doc)...)
	p.Blocks = append(p.Blocks, chanceBlocks(doc)...)
	p.Blocks = append(p.Blocks, showerTimeBlocks(doc, pictures)...)
	for _, t := range []*Table{badDayTable(doc), queueTable(doc), hourTable(doc), waitTable(doc), spellTable(doc), equalTable(doc), alternativeTable(doc)} {
		if t != nil {
			p.Blocks = append(p.Blocks, tabled(t))
		}
	}
	return p
}

func chanceBlocks(doc *compare.Document) []Block {
	a, b := doc.Comparison.Options.Compact.Risk.Chances, doc.Comparison.Options.Cylinder.Risk.Chances
	var rows [][]string
	for i := range min(len(a), len(b)) {
		rows = append(rows, []string{"more than " + few(a[i].MoreThan), percentOf(a[i].Share), shares(&a[i]), percentOf(b[i].Share), shares(&b[i])})
	}
	if len(rows) == 0 {
		return nil
	}
	return []Block{tabled(&Table{
		ID: "chances", Caption: "Chance of failing showers in a year", Over: []Over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"failing showers", "share of years", "90 % interval", "share of years", "90 % interval"}, Groups: rowsOf(rows),
		Note: fmt.Sprintf("From %s, with Wilson's interval: that no year did so does not make it impossible.", calculated(doc.Comparison.Years)),
	})}
}

func shares(c *compare.Chance) string {
	return fmt.Sprintf("%s to %s %%", amount(c.Low*100, 0), amount(c.High*100, 0))
}

func badDayTable(doc *compare.Document) *Table {
	a, b := &doc.Comparison.Options.Compact.Risk, &doc.Comparison.Options.Cylinder.Risk
	row := func(name, figure string, x, y compare.Spread) []string {
		gap := doc.Comparison.Difference.Spread[figure]
		return []string{name, few(x.Mean), between(x.P05, x.P95, amount, 1), few(y.Mean), between(y.P05, y.P95, amount, 1), change(gap.Mean, 1), between(gap.CILow, gap.CIHigh, change, 1)}
	}
	return &Table{
		ID: "bad-days", Caption: "Bad days in a year", Over: []Over{{"", 1}, {"compact store", 2}, {"cylinder", 2}, {"difference", 2}},
		Heads: []string{"", "mean", "5 % to 95 % of years", "mean", "5 % to 95 % of years", "mean", "90 % interval"},
		Groups: rowsOf([][]string{
			row("days with a failing shower", "days_with_a_failing_shower", a.BadDays, b.BadDays),
			row("most failing showers in one day", "worst_day_failing_showers", a.WorstDay, b.WorstDay),
			row("most such days in a row", "longest_bad_spell_days", a.LongestSpell, b.LongestSpell),
		}),
	}
}

func queueTable(doc *compare.Document) *Table {
	a, b := doc.Comparison.Options.Compact.Risk.ByQueue, doc.Comparison.Options.Cylinder.Risk.ByQueue
	var rows [][]string
	for i := range min(len(a), len(b)) {
		if a[i].Showers > 0 || b[i].Showers > 0 {
			rows = append(rows, []string{place(a[i].Position, len(a)), amount(a[i].Showers, 0), amount(a[i].Failing, 1), amount(b[i].Failing, 1)})
		}
	}
	if len(rows) == 0 {
		return nil
	}
	return &Table{ID: "queue", Caption: "Who in the queue runs cold, in the mean year", Heads: []string{"place", "showers", "fail, compact store", "fail, cylinder"}, Groups: rowsOf(rows)}
}

// place names a place in the queue; the last holds all beyond.
func place(position, places int) string {
	names := []string{"first, or alone", "second", "third", "fourth"}
	switch {
	case position >= len(names):
		return fmt.Sprintf("number %d", position+1)
	case position == places-1:
		return names[position] + " or later"
	default:
		return names[position]
	}
}

// hourTable lists the hours in which showers fail.
func hourTable(doc *compare.Document) *Table {
	a, b := &doc.Comparison.Options.Compact.Risk.ByHour, &doc.Comparison.Options.Cylinder.Risk.ByHour
	var rows [][]string
	for h := range a {
		if a[h] > 0 || b[h] > 0 {
			rows = append(rows, []string{fmt.Sprintf("%02d:00 to %02d:00", h, h+1), amount(a[h], 1), amount(b[h], 1)})
		}
	}
	if len(rows) == 0 {
		return nil
	}
	return &Table{ID: "hours", Caption: "Failing showers of the mean year by hour of the clock; hours without any are left out", Heads: []string{"hour", "compact store", "cylinder"}, Groups: rowsOf(rows)}
}

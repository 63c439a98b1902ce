package report

import (
	"fmt"

	"dhwcompare/compare"
)

// risk says how often hot water falls short, when, for whom, and what would help.
func risk(doc *compare.Document, pictures gallery) part {
	p := part{ID: "risk", Title: "Risk of running cold", Blocks: pictures.hang("failing-showers-by-month")}
	p.Blocks = append(p.Blocks, chanceBlocks(doc)...)
	for _, t := range []*table{badDayTable(doc), queueTable(doc), hourTable(doc), spellTable(doc), equalTable(doc), alternativeTable(doc)} {
		if t != nil {
			p.Blocks = append(p.Blocks, tabled(t))
		}
	}
	return p
}

func chanceBlocks(doc *compare.Document) []block {
	a, b := doc.Comparison.Options.Compact.Risk.Chances, doc.Comparison.Options.Cylinder.Risk.Chances
	var rows [][]string
	for i := range min(len(a), len(b)) {
		rows = append(rows, []string{"more than " + few(a[i].MoreThan), percentOf(a[i].Share), shares(&a[i]), percentOf(b[i].Share), shares(&b[i])})
	}
	if len(rows) == 0 {
		return nil
	}
	return []block{tabled(&table{
		ID: "chances", Caption: "Chance of failing showers in a year", Over: []over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"failing showers", "share of years", "90 % interval", "share of years", "90 % interval"}, Groups: rowsOf(rows),
		Note: fmt.Sprintf("From %s, with Wilson's interval: that no year did so does not make it impossible.", calculated(doc.Comparison.Years)),
	})}
}

func shares(c *compare.Chance) string {
	return fmt.Sprintf("%s to %s %%", amount(c.Low*100, 0), amount(c.High*100, 0))
}

func badDayTable(doc *compare.Document) *table {
	a, b := &doc.Comparison.Options.Compact.Risk, &doc.Comparison.Options.Cylinder.Risk
	row := func(name string, x, y compare.Spread) []string {
		return []string{name, few(x.Mean), between(x.P05, x.P95, amount, 1), few(y.Mean), between(y.P05, y.P95, amount, 1)}
	}
	return &table{
		ID: "bad-days", Caption: "Bad days in a year", Over: []over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"", "mean", "5 % to 95 % of years", "mean", "5 % to 95 % of years"},
		Groups: rowsOf([][]string{
			row("days with a failing shower", a.BadDays, b.BadDays),
			row("most failing showers in one day", a.WorstDay, b.WorstDay),
			row("most such days in a row", a.LongestSpell, b.LongestSpell),
		}),
	}
}

func queueTable(doc *compare.Document) *table {
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
	return &table{ID: "queue", Caption: "Who in the queue runs cold, in the mean year", Heads: []string{"place", "showers", "fail, compact store", "fail, cylinder"}, Groups: rowsOf(rows)}
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
func hourTable(doc *compare.Document) *table {
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
	return &table{ID: "hours", Caption: "Failing showers of the mean year by hour of the clock; hours without any are left out", Heads: []string{"hour", "compact store", "cylinder"}, Groups: rowsOf(rows)}
}

// spellTable is about weather that is harder than the calculated years.
func spellTable(doc *compare.Document) *table {
	if len(doc.Comparison.Spells) == 0 {
		return nil
	}
	t := &table{
		ID: "spells", Caption: "Hard weather, lived through with January's draw-offs", Heads: []string{"in the whole spell", "compact store", "cylinder"},
		Note: "Calculated years have fewer very cold hours than real ones, so the verdict looks at these as well. Longest wait and largest fall are of all samples, the rest are means of a spell.",
	}
	for i := range doc.Comparison.Spells {
		s := &doc.Comparison.Spells[i]
		a, b := &s.Compact, &s.Cylinder
		t.Groups = append(t.Groups, group{
			Name: fmt.Sprintf("%s: %d days at %s °C, mains %s °C, humidity %s %%, %d samples", capital(s.Name), s.Days, amount(s.OutdoorC, 0), amount(s.MainsC, 0), amount(s.RHPercent, 0), s.Samples),
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
func equalTable(doc *compare.Document) *table {
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
	return &table{
		ID: "equal-service", Caption: "Equal service: the cheapest setting that keeps the service rule", Words: 1,
		Heads: []string{"option", "setpoint", "flow limiter", "cost a year", "failing showers a year", "runs a day"}, Groups: rowsOf(rows),
	}
}

// alternativeTable is what changes would bring.
func alternativeTable(doc *compare.Document) *table {
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
	return &table{
		ID: "alternatives", Caption: "What a change would bring: failing showers and cost a year", Over: []over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"the same home with", "failing showers", "cost", "failing showers", "cost"}, Groups: rowsOf(rows),
		Note: fmt.Sprintf("From %s each; compare within the table.", calculated(doc.Comparison.Alternatives[0].Years)),
	}
}

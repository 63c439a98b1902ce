package outline

import (
	"fmt"
	"math"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// glance makes the three pictures of the first page.
func glance(doc *compare.Document) []Picture {
	list := []Picture{costGlance(doc)}
	if doc.Draws != nil {
		list = append(list, showerGlance(doc))
	}
	if a, b := standing(doc, compare.SideCompact), standing(doc, compare.SideCylinder); len(a) > 0 && len(b) > 0 {
		list = append(list, spaceGlance(doc))
	}
	return list
}

// costGlance sets two bills side by side.
func costGlance(doc *compare.Document) Picture {
	cmp, money := doc.Comparison, moneyOf(doc.Comparison)
	a, b := cmp.Options.Compact.CostPerYear, cmp.Options.Cylinder.CostPerYear
	p := Picture{Title: "What it costs to run", Alt: fmt.Sprintf("Two bars. Electricity a year: compact store %s, cylinder %s.", money.whole(a), money.whole(b))}
	s := newSketch("cost", p)
	s.bars([]bar{{compare.SideCompact, "compact store", a, money.whole(a)}, {compare.SideCylinder, "cylinder", b, money.whole(b)}}, math.Max(a, b))
	p.SVG, p.Caption = s.markup(), costCaption(doc)
	return p
}

func costCaption(doc *compare.Document) string {
	cmp, money := doc.Comparison, moneyOf(doc.Comparison)
	what := "Electricity for hot water, a year"
	if heats(doc) {
		what = "Electricity for heating and hot water, a year"
	}
	if len(cmp.Tariffs) > 1 {
		what += ", on the electricity tariff “" + cmp.Tariffs[0].Name + "”"
	}
	if cmp.Years < compare.LeastYearsForInterval {
		return what + "."
	}
	year := func(o *compare.Option) string {
		s := o.Spread["cost_per_year"]
		return money.whole(s.P05) + " to " + money.whole(s.P95)
	}
	words := fmt.Sprintf("%s. From year to year: %s (compact store), %s (cylinder).", what, year(&cmp.Options.Compact), year(&cmp.Options.Cylinder))
	if cmp.Verdict.Cost == compare.CostNoDifference {
		words += " No real difference."
	}
	return words
}

// showerGlance is about one shower from a tank that is fully hot.
func showerGlance(doc *compare.Document) Picture {
	d := doc.Draws
	flow := d.NearestFlow(doc.Case.Household.ShowerFlowLPerMin)
	var bars []bar
	var words []string
	for _, month := range []int{january, july} {
		for _, side := range bothSides() {
			minutes := d.Of(side).ShowerMin[month][0][flow]
			name := calendar.MonthNames()[month] + ", " + side.String()
			bars = append(bars, bar{side, name, math.Min(minutes, d.LongestMin), minutesUpTo(minutes, d.LongestMin) + " min"})
			words = append(words, name+" "+minutesWords(minutes, d.LongestMin))
		}
	}
	p := Picture{
		Title: "How long one shower stays warm", Alt: "Four bars. " + strings.Join(words, "; ") + ".",
		Caption: fmt.Sprintf("Minutes from a tank that is fully hot, at %s litres a minute, with the heat pump running. The test stops at %s minutes.",
			few(d.FlowsLPerMin[flow]), amount(d.LongestMin, 0)),
	}
	s := newSketch("showers", p)
	s.bars(bars, d.LongestMin)
	p.SVG = s.markup()
	return p
}

func minutesWords(minutes, longest float64) string {
	if minutes >= longest {
		return amount(longest, 0) + " minutes or more"
	}
	return amount(minutes, 0) + " minutes"
}

// standing lists what stands on the floor of an option.
func standing(doc *compare.Document, side compare.Side) []compare.SpaceItem {
	var list []compare.SpaceItem
	for _, item := range doc.Comparison.Options.Of(side).SpaceItems {
		if !item.Hangs {
			list = append(list, item)
		}
	}
	return list
}

// spaceGlance draws what stands on the floor beside a door, all to one scale.
func spaceGlance(doc *compare.Document) Picture {
	a, b := standing(doc, compare.SideCompact), standing(doc, compare.SideCylinder)
	p := Picture{
		Title: "What space it takes",
		Alt: fmt.Sprintf("Drawn to scale from the front: %s; %s; a door %s cm wide, %s cm high.",
			sizes(a), sizes(b), amount(doorWideMM/10, 0), amount(doorHighMM/10, 0)),
		Caption: fmt.Sprintf("To scale, from the front, beside a door: %s; %s. Pipes and valves, and free space to reach them, come on top.", sizes(a), sizes(b)),
	}
	s := newSketch("room", p)
	s.room(a, b)
	p.SVG = s.markup()
	return p
}

func sizes(items []compare.SpaceItem) string {
	var list []string
	for _, i := range items {
		list = append(list, fmt.Sprintf("%s %s cm wide, %s cm high", i.Name, amount(i.WidthMM/10, 0), amount(i.HeightMM/10, 0)))
	}
	return strings.Join(list, "; ")
}

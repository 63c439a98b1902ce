package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// customerPage is the first page: for somebody who is to live with the outcome and
// knows nothing of heat pumps. Words of the trade have no place in it.
func customerPage(doc *compare.Document) []Part {
	return []Part{
		{ID: "question", Title: "The question", Blocks: question(doc)},
		{ID: "answer", Title: "The answer", Blocks: []Block{text(firstSentence(doc) + " " + secondSentence(doc))}},
		{ID: "pictures", Title: "Cost, showers and space at a glance", Blocks: []Block{{Pictures: glance(doc)}, text(sureness(doc))}},
		{ID: "notice", Title: "What you would notice", Blocks: []Block{{Points: notice(doc)}}},
		{ID: "accept", Title: "What you must accept", Blocks: []Block{{Points: accept(doc)}}},
	}
}

func question(doc *compare.Document) []Block {
	a, b := &doc.Comparison.Options.Compact, &doc.Comparison.Options.Cylinder
	return []Block{
		text("A heat pump will make this home's hot water. Should the hot water come from a compact store or from a cylinder?"),
		{Points: []Paragraph{
			{"Compact store:", fmt.Sprintf("a small tank of %s litres, kept at %s °C. It holds %s. Fresh water heats up on its way to the tap, in a long pipe inside the tank. The heat pump tops the heat up %s.",
				amount(a.VolumeL, 0), amount(a.SetpointC, 0), whether(heats(doc), "the same water as the radiators", "water that is never drunk"), timesADay(runsADay(a)))},
			{"Cylinder:", fmt.Sprintf("a larger tank of %s litres, kept at %s °C. It holds the fresh water itself, ready heated. The heat pump warms it up %s.",
				amount(b.VolumeL, 0), amount(b.SetpointC, 0), timesADay(runsADay(b)))},
		}},
	}
}

// runsADay is how often a day the heat pump turns to hot water.
func runsADay(o *compare.Option) float64 {
	const days = 365
	return (o.StartsPerYear + o.Changeovers) / days
}

func timesADay(n float64) string {
	switch {
	case n < 0.75:
		return "less than once a day"
	case n < 1.25:
		return "about once a day"
	case n < 1.75:
		return "once or twice a day"
	case n < 2.5:
		return "about twice a day"
	default:
		return "about " + amount(n, 0) + " times a day"
	}
}

// sureness says how far the figures of the page can be trusted.
func sureness(doc *compare.Document) string {
	if doc.Comparison.Years < compare.LeastYearsForInterval {
		return fmt.Sprintf("These figures come from %s only. That is too few to say how far they may be out.", calculated(doc.Comparison.Years))
	}
	return fmt.Sprintf("These figures are averages of %s with changing %s; nine years in ten lie inside the ranges. Electricity prices, and how well a heat pump works in real life, can move them further, for both tanks in much the same way.",
		calculated(doc.Comparison.Years), doc.Case.WhatVaries())
}

// overYears says what a figure of a few years rests on.
func overYears(n int) string {
	if n == 1 {
		return "in one calculated year"
	}
	return "on average of " + calculated(n)
}

func calculated(n int) string {
	if n == 1 {
		return "1 calculated year"
	}
	return fmt.Sprintf("%d calculated years", n)
}

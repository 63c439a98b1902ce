package report

import (
	"fmt"

	"dhwcompare/compare"
)

// customerPage is the first page: for somebody who is to live with the outcome and
// knows nothing of heat pumps. Words of the trade have no place in it.
func customerPage(doc *compare.Document) []part {
	return []part{
		{ID: "question", Title: "The question", Blocks: question(doc)},
		{ID: "answer", Title: "The answer", Blocks: []block{text(firstSentence(doc) + " " + secondSentence(doc))}},
		{ID: "pictures", Title: "Cost, showers and space at a glance", Blocks: []block{{Pictures: glance(doc)}, text(sureness(doc))}},
		{ID: "notice", Title: "What you would notice", Blocks: []block{{Points: notice(doc)}}},
		{ID: "accept", Title: "What you must accept", Blocks: []block{{Points: accept(doc)}}},
	}
}

func question(doc *compare.Document) []block {
	a, b := &doc.Comparison.Options.Compact, &doc.Comparison.Options.Cylinder
	return []block{
		text("A heat pump will make this home's hot water. Should the hot water come from a compact store or from a cylinder?"),
		{Points: []paragraph{
			{"Compact store", fmt.Sprintf("A small, hot tank of %s litres, kept at %s °C. It holds the same water as the radiators. Fresh water is heated on its way to the tap, as it runs through a long pipe inside the tank. The heat pump tops the heat up %s.",
				amount(a.VolumeL, 0), amount(a.SetpointC, 0), timesADay(runsADay(a)))},
			{"Cylinder", fmt.Sprintf("A larger tank of %s litres, kept at %s °C. It holds the fresh water itself, ready heated. The heat pump warms it up %s.",
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

// firstSentence says what to take, and why.
func firstSentence(doc *compare.Document) string {
	a, b := &doc.Comparison.Options.Compact, &doc.Comparison.Options.Cylinder
	switch doc.Comparison.Verdict.Recommend {
	case compare.RecommendNeither:
		return fmt.Sprintf("Neither, as they are planned now: the compact store %s, and the cylinder %s.", shortfall(a), shortfall(b))
	case compare.RecommendCompact:
		return "Take the compact store: " + because(b, a)
	case compare.RecommendCylinder:
		return "Take the cylinder: " + because(a, b)
	default:
		return "Either will do, so let the space decide: both give this home enough hot water, and " + floorClause(doc) + "."
	}
}

// because says what speaks against the other option.
func because(other, taken *compare.Option) string {
	if served(other) {
		return fmt.Sprintf("both give this home enough hot water, and the %s costs less to run.", taken.Name)
	}
	return fmt.Sprintf("the %s %s.", other.Name, shortfall(other))
}

func served(o *compare.Option) bool { return o.MeetsServiceRule && (o.Fit == nil || o.Fit.Fits) }

// shortfall says why an option cannot be taken as planned, or that it could be.
func shortfall(o *compare.Option) string {
	switch {
	case o.Fit != nil && !o.Fit.Fits:
		return "does not fit into the room that there is for it"
	case o.MeetsServiceRule:
		return "gives enough hot water"
	default:
		return fmt.Sprintf("would turn too cold during %s a year", counted(o.FailingShowers, "shower", "showers"))
	}
}

// floorClause compares the floor that the options take.
func floorClause(doc *compare.Document) string {
	saved := -doc.Comparison.Difference.FloorAreaM2
	switch {
	case amount(saved, 2) == amount(0, 2):
		return "both take the same floor"
	case saved > 0:
		return "the compact store takes " + amount(saved, 2) + " m² less floor"
	default:
		return "the compact store takes " + amount(-saved, 2) + " m² more floor"
	}
}

// secondSentence says what can be said about cost.
func secondSentence(doc *compare.Document) string {
	cmp, money := doc.Comparison, moneyOf(doc.Comparison)
	s := cmp.Difference.Spread["cost_per_year"]
	switch cmp.Verdict.Cost {
	case compare.CostNotCompared:
		return "Their running costs cannot be compared fairly, because one that runs cold only looks cheap."
	case compare.CostNoDifference:
		return fmt.Sprintf("There is no real difference in what they cost to run: it is less than %s a year.", money.whole(doc.Case.Money.MaterialityPerYear))
	case compare.CostCompactLess:
		return fmt.Sprintf("The compact store costs about %s a year less to run: very likely between %s and %s.", money.whole(-s.Mean), money.whole(-s.CIHigh), money.whole(-s.CILow))
	case compare.CostCylinderLess:
		return fmt.Sprintf("The cylinder costs about %s a year less to run: very likely between %s and %s.", money.whole(s.Mean), money.whole(s.CILow), money.whole(s.CIHigh))
	default:
		return undecided(cmp, money)
	}
}

func undecided(cmp *compare.Comparison, money writer) string {
	if cmp.Years < compare.LeastYearsForInterval {
		return "Which of them costs less to run is not settled: too few years were calculated for that."
	}
	s := cmp.Difference.Spread["cost_per_year"]
	return fmt.Sprintf("Which of them costs less to run is not settled: the compact store could cost anything from %s to %s a year compared with the cylinder.",
		moreOrLess(money, s.CILow), moreOrLess(money, s.CIHigh))
}

func moreOrLess(money writer, v float64) string {
	if v < 0 {
		return money.whole(-v) + " less"
	}
	return money.whole(v) + " more"
}

// sureness says how far the figures of the page can be trusted.
func sureness(doc *compare.Document) string {
	if doc.Comparison.Years < compare.LeastYearsForInterval {
		return fmt.Sprintf("These figures come from %s only. That is too few to say how far they may be out.", calculated(doc.Comparison.Years))
	}
	return fmt.Sprintf("These figures are averages of %s, each with other weather and other habits. Nine years in ten lie inside the ranges given. Electricity prices, and how well a heat pump works in real life, can move them further, but they move both tanks alike.",
		calculated(doc.Comparison.Years))
}

func calculated(n int) string {
	if n == 1 {
		return "1 calculated year"
	}
	return fmt.Sprintf("%d calculated years", n)
}

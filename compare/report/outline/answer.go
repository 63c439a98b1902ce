package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// firstSentence says what to take, and why.
func firstSentence(doc *compare.Document) string {
	a, b := &doc.Comparison.Options.Compact, &doc.Comparison.Options.Cylinder
	switch doc.Comparison.Verdict.Recommend {
	case compare.RecommendNeither:
		return fmt.Sprintf("Neither, as they are planned now: the compact store %s, and the cylinder %s.", shortfall(doc, a), shortfall(doc, b))
	case compare.RecommendCompact:
		return "Take the compact store: " + because(doc, b, a)
	case compare.RecommendCylinder:
		return "Take the cylinder: " + because(doc, a, b)
	default:
		return "Either will do, so let the space decide: both give this home enough hot water, and " + floorClause(doc) + "."
	}
}

// because says what speaks against the other option.
func because(doc *compare.Document, other, taken *compare.Option) string {
	if served(other) {
		return fmt.Sprintf("both give this home enough hot water, and the %s costs less to run.", taken.Name)
	}
	return fmt.Sprintf("the %s %s.", other.Name, shortfall(doc, other))
}

func served(o *compare.Option) bool { return o.MeetsServiceRule && (o.Fit == nil || o.Fit.Fits) }

// shortfall says why an option cannot be taken as planned, or that it could be.
func shortfall(doc *compare.Document, o *compare.Option) string {
	const noPlace = "does not fit into the room that there is for it"
	switch {
	case o.Fit != nil && !o.Fit.Fits && !o.MeetsServiceRule:
		return fmt.Sprintf("%s and would run too cold in %s a year", noPlace, counted(o.FailingShowers, "shower", "showers"))
	case o.Fit != nil && !o.Fit.Fits:
		return noPlace
	case o.MeetsServiceRule:
		return "gives enough hot water"
	case o.FailingShowers <= doc.Case.Service.FailuresPerYear:
		return fmt.Sprintf("is not certain to keep within %s cold showers a year%s", few(doc.Case.Service.FailuresPerYear), unless(o))
	default:
		return fmt.Sprintf("would run too cold in %s a year (the limit set for this home is %s)%s", counted(o.FailingShowers, "shower", "showers"), few(doc.Case.Service.FailuresPerYear), unless(o))
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

// secondSentence says what can be said about cost, and what it would cost to have an
// option that runs cold serve.
func secondSentence(doc *compare.Document) string {
	return runningCost(doc) + thenCosts(doc) + "."
}

// runningCost is of the options as they are planned.
func runningCost(doc *compare.Document) string {
	cmp, money := doc.Comparison, moneyOf(doc.Comparison)
	s := cmp.Difference.Spread["cost_per_year"]
	switch cmp.Verdict.Cost {
	case compare.CostNotCompared:
		return "Their running costs cannot be compared fairly, because one that runs cold only looks cheap"
	case compare.CostNoDifference:
		return fmt.Sprintf("There is no real difference in what they cost to run: it is less than %s a year", money.whole(doc.Case.Money.MaterialityPerYear))
	case compare.CostCompactLess:
		return saves(compare.SideCompact, money, -s.Mean, -s.P95, -s.P05)
	case compare.CostCylinderLess:
		return saves(compare.SideCylinder, money, s.Mean, s.P05, s.P95)
	default:
		return undecided(cmp, money)
	}
}

// saves says what an option costs less, and how that varies from year to year.
func saves(side compare.Side, money writer, mean, low, high float64) string {
	words := fmt.Sprintf("The %v costs about %s a year less to run", side, money.whole(mean))
	if money.whole(low) == money.whole(high) {
		return words + ", in nearly every year"
	}
	return fmt.Sprintf("%s, and between %s and %s less in nine years out of ten", words, money.whole(low), money.whole(high))
}

func undecided(cmp *compare.Comparison, money writer) string {
	if cmp.Years < compare.LeastYearsForInterval {
		return "Which of them costs less to run is not settled: too few years were calculated for that"
	}
	s := cmp.Difference.Spread["cost_per_year"]
	what := "Which of them costs less to run is not settled"
	if tells(s) {
		what = "Whether the difference in running cost is large enough to matter is not settled"
	}
	return fmt.Sprintf("%s: a year with the compact store could cost anything from %s to %s than with the cylinder",
		what, moreOrLess(money, s.CILow), moreOrLess(money, s.CIHigh))
}

func moreOrLess(money writer, v float64) string {
	if v < 0 {
		return money.whole(-v) + " less"
	}
	return money.whole(v) + " more"
}

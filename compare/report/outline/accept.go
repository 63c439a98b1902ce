package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// accept lists what comes with the choice.
func accept(doc *compare.Document) []Paragraph {
	list := []Paragraph{{"With either.", "Water hot enough to scald can come from the tank. A qualified installer must fit a valve that mixes it with cold water, and test it. Local building rules come first."}}
	list = append(list, Paragraph{"With the compact store.", acceptCompact(doc)}, Paragraph{"With the cylinder.", acceptCylinder(doc)})
	if doc.Comparison.Verdict.Cost != compare.CostNotCompared {
		list = append(list, Paragraph{fmt.Sprintf("Over %d years.", doc.Case.Money.HorizonYears), acceptLifeCost(doc)})
	}
	return append(list, Paragraph{"These figures.", acceptFigures()})
}

// acceptCompact is about settings above all: a compact store that is set up
// carelessly runs cold.
func acceptCompact(doc *compare.Document) string {
	words := "Its settings must be made with care, and a shower timed to check them."
	if s := doc.Settings; s != nil && len(s.Steps) > 1 {
		first, last := &s.Steps[0], &s.Steps[len(s.Steps)-1]
		words += fmt.Sprintf(" Set carelessly, as in one example, %s a year turn too cold instead of %s (%s).",
			counted(first.Trial.Failing.Mean, "shower", "showers"), few(last.Trial.Failing.Mean), overYears(s.Years))
	}
	return words + spaceTaken(&doc.Comparison.Options.Compact)
}

func acceptCylinder(doc *compare.Document) string {
	words := "Warm fresh water is stored in it, in which bacteria can grow"
	if h := doc.Case.Cylinder.Hygiene; h.EveryDays > 0 {
		words += fmt.Sprintf(": every %s days it is heated to %s °C to kill them", amount(h.EveryDays, 0), amount(h.TargetC, 0))
	}
	words += "."
	if check := doc.Case.Money.Cylinder.SafetyCheckPerYear; check > 0 {
		words += fmt.Sprintf(" Its safety valves are to be checked every year, for about %s.", moneyOf(doc.Comparison).whole(check))
	}
	return words + spaceTaken(&doc.Comparison.Options.Cylinder)
}

func spaceTaken(o *compare.Option) string {
	words := fmt.Sprintf(" It takes %s m² of floor, with room to get at it, and weighs %s kg when full", amount(o.FloorAreaM2, 2), amount(o.WeightFullKg, 0))
	if o.NeedsFloorCheck {
		return words + ": have somebody qualified check that the floor can bear it."
	}
	return words + "."
}

// acceptLifeCost says what each option comes to, all in.
func acceptLifeCost(doc *compare.Document) string {
	cmp, m := doc.Comparison, moneyOf(doc.Comparison)
	words := fmt.Sprintf("With buying, fitting, checks and replacement the compact store comes to %s a year and the cylinder to %s", m.whole(cmp.Options.Compact.EquivalentAnnualCost), m.whole(cmp.Options.Cylinder.EquivalentAnnualCost))
	if s, known := cmp.Difference.Spread["equivalent_annual_cost"]; known && cmp.Years >= compare.LeastYearsForInterval && immaterial(s, doc.Case.Money.MaterialityPerYear) {
		words += ": no real difference"
	}
	for _, w := range cmp.Warnings {
		if w.About == "net_present_cost" {
			return words + "." + allInRemedied(doc) + " Prices to buy and fit are rough guesses until you have quotes."
		}
	}
	return words + "." + allInRemedied(doc)
}

// acceptFigures says that a calculation is no promise.
func acceptFigures() string {
	return "They are calculated: no promise, and no plan to build from. The pages that follow say what they rest on."
}

// longestOf is where a test shower ends, however warm it still is.
func longestOf(doc *compare.Document) float64 {
	const unknown = 1e9
	if doc.Draws == nil {
		return unknown
	}
	return doc.Draws.LongestMin
}

package report

import (
	"fmt"

	"dhwcompare/compare"
)

// accept lists what comes with the choice.
func accept(doc *compare.Document) []paragraph {
	list := []paragraph{{"With either.", "Water hot enough to scald is in the tank or can reach the tap. A qualified installer must fit a valve that mixes it down, and test it. Rules for your area come first."}}
	list = append(list, paragraph{"With the compact store.", acceptCompact(doc)}, paragraph{"With the cylinder.", acceptCylinder(doc)})
	return append(list, paragraph{"With this page.", acceptFigures(doc)})
}

// acceptCompact is about settings above all: a compact store that is set up
// carelessly runs cold.
func acceptCompact(doc *compare.Document) string {
	words := "Its settings must be made with care, and checked with a watch under the shower."
	if s := doc.Settings; s != nil && len(s.Steps) > 1 {
		first, last := &s.Steps[0], &s.Steps[len(s.Steps)-1]
		words += fmt.Sprintf(" In one careless example the winter shower lasts %s minutes instead of %s, and %s a year turn too cold instead of %s.",
			minutesUpTo(first.WinterMin, longestOf(doc)), minutesUpTo(last.WinterMin, longestOf(doc)),
			counted(first.Trial.Failing.Mean, "shower", "showers"), amount(last.Trial.Failing.Mean, 0))
	}
	return words + spaceTaken(&doc.Comparison.Options.Compact)
}

func acceptCylinder(doc *compare.Document) string {
	words := "The drinking water stands in it."
	if h := doc.Case.Cylinder.Hygiene; h.EveryDays > 0 {
		words += fmt.Sprintf(" Every %s days it is heated to %s °C, against bacteria.", amount(h.EveryDays, 0), amount(h.TargetC, 0))
	}
	if check := doc.Case.Money.Cylinder.SafetyCheckPerYear; check > 0 {
		words += fmt.Sprintf(" Its safety valves are to be checked every year, for about %s.", moneyOf(doc.Comparison).whole(check))
	}
	return words + spaceTaken(&doc.Comparison.Options.Cylinder)
}

func spaceTaken(o *compare.Option) string {
	words := fmt.Sprintf(" It takes %s m² of floor, with room to get at it, and weighs %s kg when full", amount(o.FloorAreaM2, 2), amount(o.WeightFullKg, 0))
	if o.NeedsFloorCheck {
		return words + ": have the floor checked."
	}
	return words + "."
}

// acceptFigures says that a calculation is no promise.
func acceptFigures(doc *compare.Document) string {
	words := "It is a calculation, not a promise and not a design."
	for _, w := range doc.Comparison.Warnings {
		if w.About == "net_present_cost" {
			words += " Prices to buy and fit the tanks are stand-ins until you have quotes."
		}
	}
	return words + " The pages that follow say what it rests on."
}

// longestOf is where a test shower ends, however warm it still is.
func longestOf(doc *compare.Document) float64 {
	const unknown = 1e9
	if doc.Draws == nil {
		return unknown
	}
	return doc.Draws.LongestMin
}

package charts

import (
	"fmt"

	"dhwcompare/compare"
)

// failuresChart shows in which months showers fail, and how years differ.
func failuresChart(cmp *compare.Comparison) Chart {
	bars := monthBars{unit: "showers a month", values: monthly(cmp, func(m *compare.MonthTotals) float64 { return m.FailingShowers })}
	subtitle := "Showers that run too cold in each month."
	if cmp.Years > 1 {
		bars.low, bars.high = failureRange(cmp)
		subtitle += " Thin line: where nine in ten of the simulated years lie."
	}
	a, b := cmp.Options.Compact.FailingShowers, cmp.Options.Cylinder.FailingShowers
	return Chart{
		Name:  "failing-showers-by-month",
		Title: failuresTitle(a, b),
		Alt: fmt.Sprintf("Bars for each month. In a year %s showers run too cold with the compact store, %s with the cylinder. %s",
			none(a), none(b), highestMonths(&bars.values, "showers")),
		subtitle: subtitle,
		caption:  meanYears(cmp),
		room:     monthsHeight,
		body:     bars.draw,
	}
}

func failureRange(cmp *compare.Comparison) (low, high *monthValues) {
	low, high = new(monthValues), new(monthValues)
	for _, side := range bothSides() {
		for m, s := range cmp.Options.Of(side).FailuresByMonth {
			low[side][m], high[side][m] = s.P05, s.P95
		}
	}
	return low, high
}

func failuresTitle(a, b float64) string {
	if a == 0 && b == 0 {
		return "No shower runs too cold with either option"
	}
	if none(a) == none(b) {
		return fmt.Sprintf("%s showers a year run too cold with either option", capital(none(a)))
	}
	return fmt.Sprintf("Showers that run too cold: %s a year with the compact store, %s with the cylinder", none(a), none(b))
}

// none writes a count, and a word where there is nothing to count. What is more
// than nothing never rounds to nothing.
func none(n float64) string {
	switch text := sensible(n); {
	case n == 0:
		return "none"
	case text == "0":
		return "fewer than 0.1"
	default:
		return text
	}
}

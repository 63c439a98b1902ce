package charts

import (
	"fmt"

	"dhwcompare/compare"
)

// startsChart shows how often the heat pump starts.
func startsChart(cmp *compare.Comparison) Chart {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	bars := monthBars{
		unit:   "starts a day",
		values: monthly(cmp, func(m *compare.MonthTotals) float64 { return m.StartsPerDay }),
	}
	runs := fmt.Sprintf("A run lasts %s minutes with the compact store and %s with the cylinder.",
		number(a.MinutesPerRun, 0), number(b.MinutesPerRun, 0))
	return Chart{
		Name:     "starts-by-month",
		Title:    startsTitle(a.StartsPerDay, b.StartsPerDay),
		Alt:      "Bars for each month. " + runs + " " + highestMonths(&bars.values, "starts a day"),
		subtitle: "Starts of the heat pump for hot water on a mean day of each month. " + runs,
		caption:  meanYears(cmp),
		height:   defaultHeight,
		body:     bars.draw,
	}
}

func startsTitle(a, b float64) string {
	one, other := number(a, 1), number(b, 1)
	if one == other {
		return fmt.Sprintf("The heat pump starts %s times a day with either option", one)
	}
	return fmt.Sprintf("The heat pump starts %s times a day with the compact store, %s times with the cylinder", one, other)
}

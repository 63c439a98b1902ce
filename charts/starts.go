package charts

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// startsChart shows how often the heat pump starts, and how often it only changes
// over from heating, which is no start but a run of its own.
func startsChart(cmp *compare.Comparison) Chart {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	bars := monthBars{
		unit:   "times a day",
		values: monthly(cmp, func(m *compare.MonthTotals) float64 { return m.StartsPerDay }),
	}
	subtitle := "Starts of the heat pump for hot water on a mean day of each month."
	if a.Changeovers+b.Changeovers > 0 {
		over := monthly(cmp, func(m *compare.MonthTotals) float64 { return perDay(m.Changeovers, m.Month) })
		bars.hollow = &over
		subtitle = "Filled: starts for hot water on a mean day of each month. Outlined: it already ran for heating and changed over."
	}
	runs := fmt.Sprintf("A run lasts %s minutes with the compact store and %s with the cylinder.",
		number(a.MinutesPerRun, 0), number(b.MinutesPerRun, 0))
	return Chart{
		Name:     "starts-by-month",
		Title:    startsTitle(a.StartsPerDay, b.StartsPerDay),
		Alt:      "Bars for each month. " + runs + " " + highestMonths(&bars.values, "starts a day") + changeoversInWords(a.Changeovers, b.Changeovers),
		subtitle: subtitle + " " + runs,
		caption:  meanYears(cmp),
		room:     monthsHeight,
		body:     bars.draw,
	}
}

// perDay divides a month's count, 1 is January, by its days.
func perDay(count float64, month int) float64 {
	if month < 1 || month > calendar.MonthsInAYear {
		return 0
	}
	return count / float64(calendar.DaysIn(month-1))
}

func changeoversInWords(a, b float64) string {
	if a+b == 0 {
		return ""
	}
	return fmt.Sprintf(" On top of that it changes over from heating %s times a year with the compact store and %s times with the cylinder.",
		number(a, 0), number(b, 0))
}

func startsTitle(a, b float64) string {
	one, other := number(a, 1), number(b, 1)
	if one == other {
		return fmt.Sprintf("The heat pump starts %s times a day for hot water with either option", one)
	}
	return fmt.Sprintf("The heat pump starts %s times a day for hot water with the compact store, %s times with the cylinder", one, other)
}

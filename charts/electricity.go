package charts

import (
	"fmt"
	"math"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// electricityChart shows what each option uses month by month.
func electricityChart(cmp *compare.Comparison) Chart {
	a, b := cmp.Options.Compact.ElectricityKWh, cmp.Options.Cylinder.ElectricityKWh
	bars := monthBars{
		unit:   "kWh a month",
		values: monthly(cmp, func(m *compare.MonthTotals) float64 { return m.ElectricityKWh }),
	}
	both := fmt.Sprintf("compact store %s, cylinder %s kWh", number(a, 0), number(b, 0))
	return Chart{
		Name:     "electricity-by-month",
		Title:    electricityTitle(cmp, a, b),
		Alt:      fmt.Sprintf("Bars for each month. Electricity for hot water in a year: %s. %s", both, highestMonths(&bars.values, "kWh")),
		subtitle: "Electricity for hot water in each month. In a year: " + both + ".",
		caption:  meanYears(cmp),
		room:     monthsHeight,
		body:     bars.draw,
	}
}

func electricityTitle(cmp *compare.Comparison, a, b float64) string {
	switch find(differenceOf(cmp, "electricity_kwh", a-b), max(a, b)) {
	case same:
		return "No real difference in electricity for hot water"
	case more:
		return fmt.Sprintf("The compact store uses %s kWh more electricity a year", number(math.Abs(a-b), 0))
	case less:
		return fmt.Sprintf("The compact store uses %s kWh less electricity a year", number(math.Abs(a-b), 0))
	default:
		return "The simulated years do not settle which option uses more electricity"
	}
}

// highestMonths puts the picture of the months in words.
func highestMonths(v *monthValues, unit string) string {
	text := ""
	for _, side := range bothSides() {
		low, high := 0, 0
		for m := range v[side] {
			if v[side][m] > v[side][high] {
				high = m
			}
			if v[side][m] < v[side][low] {
				low = m
			}
		}
		if text != "" {
			text += " "
		}
		text += fmt.Sprintf("%s: from %s %s in %s to %s in %s.", capital(side.String()),
			sensible(v[side][low]), unit, calendar.MonthNames()[low], sensible(v[side][high]), calendar.MonthNames()[high])
	}
	return text
}

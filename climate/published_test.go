package climate

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
)

// published reads a table of published values: numbers under the named columns,
// row by row.
func published(t testing.TB, file string, columns ...string) [][]float64 {
	t.Helper()
	var rows [][]float64
	for _, row := range checkvalues.Published(t, file) {
		rows = append(rows, row.Numbers(t, columns...))
	}
	return rows
}

// british is the average British climate with the default spread.
func british(t testing.TB) Params {
	p := Defaults()
	for m, row := range published(t, "british_monthly_temperatures.csv", "outdoor_c", "mains_c") {
		p.OutdoorC[m], p.MainsC[m] = row[0], row[1]
	}
	return p
}

// monthHours gives the hours of one month of a year of hours.
func monthHours(hours []float64, month int) []float64 {
	return hours[calendar.MonthStartDay(month)*hoursADay : calendar.MonthStartDay(month+1)*hoursADay]
}

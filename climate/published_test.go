package climate

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"dhwcompare/compare/calendar"
)

// published reads a table of published values: numbers under the named columns,
// row by row.
func published(t testing.TB, file string, columns ...string) [][]float64 {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "testdata", "published", file))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	records, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows [][]float64
	for _, record := range records[1:] {
		var row []float64
		for i, name := range records[0] {
			for _, want := range columns {
				if name == want {
					row = append(row, number(t, record[i]))
				}
			}
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 || len(rows[0]) != len(columns) {
		t.Fatalf("%s: no rows, or not all of the columns %v", file, columns)
	}
	return rows
}

func number(t testing.TB, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
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

package vessel

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"
)

// row is a line of a table of check values, a cell under the name of its column.
type row map[string]string

// table reads a table under testdata.
func table(t testing.TB, name string) []row {
	t.Helper()
	f, err := os.Open("../../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	records, err := r.ReadAll()
	if err != nil || len(records) < 2 {
		t.Fatalf("%s: %d lines, %v", name, len(records), err)
	}
	var rows []row
	for _, record := range records[1:] {
		cells := row{}
		for i, key := range records[0] {
			cells[key] = record[i]
		}
		rows = append(rows, cells)
	}
	return rows
}

// number is the cell under key.
func (r row) number(t testing.TB, key string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(r[key], 64)
	if err != nil {
		t.Fatalf("column %s: %v", key, err)
	}
	return v
}

// within fails unless got is within a tolerance of want.
func within(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// worst keeps the largest error of a check, for the record.
type worst float64

func (w *worst) see(got, want float64) { *w = worst(math.Max(float64(*w), math.Abs(got-want))) }

// filled gives n layers of one temperature.
func filled(n int, tempC float64) []float64 {
	temps := make([]float64, n)
	for i := range temps {
		temps[i] = tempC
	}
	return temps
}

func sum(temps []float64) float64 {
	s := 0.0
	for _, t := range temps {
		s += t
	}
	return s
}

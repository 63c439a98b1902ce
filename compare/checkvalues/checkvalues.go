// Package checkvalues reads the tables of check values under testdata, for tests
// alone: lines that begin with # say where the values come from, then come a heading
// and the values.
package checkvalues

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// Row is one line of a table, a cell under the name of its column.
type Row map[string]string

// Rows reads a table by its path under testdata. A table that is missing, malformed or
// empty ends the test.
func Rows(t testing.TB, path ...string) []Row {
	t.Helper()
	file, err := os.Open(filepath.Join(append([]string{testdata(t)}, path...)...))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) < 2 {
		t.Fatalf("%s: %d lines, error %v", filepath.Join(path...), len(lines), err)
	}
	rows := make([]Row, len(lines)-1)
	for i, line := range lines[1:] {
		rows[i] = Row{}
		for k, name := range lines[0] {
			rows[i][name] = line[k]
		}
	}
	return rows
}

// Published reads a table of published values.
func Published(t testing.TB, name string) []Row {
	t.Helper()
	return Rows(t, "published", name)
}

// testdata finds the folder from the package under test, whose folder a test runs in.
func testdata(t testing.TB) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(dir, "testdata")
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			t.Fatal("no go.mod above the test")
		}
		dir = parent
	}
}

// Number is the cell in a column, which must hold a number.
func (r Row) Number(t testing.TB, column string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(r[column], 64)
	if err != nil {
		t.Fatalf("column %q: %v", column, err)
	}
	return v
}

// Numbers are the cells in several columns.
func (r Row) Numbers(t testing.TB, columns ...string) []float64 {
	t.Helper()
	list := make([]float64, len(columns))
	for i, column := range columns {
		list[i] = r.Number(t, column)
	}
	return list
}

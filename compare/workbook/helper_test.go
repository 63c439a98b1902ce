package workbook

import (
	"bytes"
	"context"
	"math"
	"strconv"
	"strings"
	"sync"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"

	"github.com/xuri/excelize/v2"
)

// british is a home with British averages of outdoor air and mains water
// (Standard Assessment Procedure, tables U1 and J1).
func british() compare.Case {
	c := compare.Default()
	c.Title = "An invented home"
	c.Years = 2
	c.Household.People = 3
	c.Room = compare.Room{WidthMM: 1200, DepthMM: 1000, HeightMM: 2300, DoorWidthMM: 700, DoorHeightMM: 1950, FrontFreeMM: 200}
	c.HeatPump.DesignStarts = 100_000
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	c.Climate.MainsC = &[12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	return c
}

func someInputs() []compare.Input {
	return []compare.Input{
		{Key: "title", Text: "An invented home", Origin: compare.Stated, Help: "one line that names the case"},
		{Key: "household.people", Text: "3", Number: 3, Numeric: true, Origin: compare.Stated, Help: "people who live in the home"},
		{Key: "household.showers_per_day", Text: "2.1", Number: 2.1, Numeric: true, Origin: compare.Derived, Source: "from people: a published relation of showers to people", Help: "showers a day of all residents together"},
		{Key: "compact.setpoint_c", Text: "58", Number: 58, Numeric: true, Unit: "°C", Origin: compare.Assumed, Source: "common practice, no source", Help: "temperature at which the compact store is kept"},
		{Key: "money.materiality_per_year", Text: "20", Number: 20, Numeric: true, Unit: "GBP", Origin: compare.Assumed, Source: "common practice, no source", Help: "a smaller difference in running cost is no real difference"},
	}
}

// base is the document that most tests read, simulated once; what lies beside the
// years is filled in by hand.
var base = sync.OnceValues(func() (*compare.Document, error) { return simulate(british()) })

// varied has a tariff of every kind, own surplus, a place into which only one option
// goes, and one year; what lies beside the year is simulated.
var varied = sync.OnceValues(func() (*compare.Document, error) {
	c := british()
	c.Years = 1
	c.Room = compare.Room{WidthMM: 800, DepthMM: 900, HeightMM: 1900, DoorWidthMM: 600}
	series, surplus := make([]float64, calendar.HalfHours), make([]float64, calendar.HalfHours)
	for i := range series {
		series[i] = 0.2 + 0.1*math.Sin(float64(i))
		surplus[i] = max(0, math.Sin(2*math.Pi*float64(i)/calendar.HalfHoursADay))
	}
	c.Surplus = compare.Surplus{HalfHourKWh: surplus, ExportPerKWh: 0.12}
	c.Tariffs = []tariffs.Tariff{
		{Name: "half-hourly", StandingPerDay: 0.5, PricesIncludeTax: true, SeriesPerKWh: series},
		{Name: "without tax", StandingPerDay: 0.5, TaxPercent: 5, Remaining: &tariffs.Remaining{Label: "all hours", PerKWh: 0.25}},
		{Name: "shared label", PricesIncludeTax: true, Bands: []tariffs.Band{
			{Label: "cheap", StartMin: 0, EndMin: 300, PerKWh: 0.1},
			{Label: "cheap", StartMin: 780, EndMin: 900, PerKWh: 0.15},
		}, Remaining: &tariffs.Remaining{Label: "dear", PerKWh: 0.4}},
	}
	doc := &compare.Document{Case: &c, Inputs: someInputs()}
	err := doc.Simulate(context.Background(), 2, nil)
	doc.Draws, doc.Settings = nil, nil
	return doc, err
})

// simulate compares a case and fills in by hand what lies beside the years.
func simulate(c compare.Case) (*compare.Document, error) {
	cmp, err := compare.Compare(context.Background(), &c, 2, nil)
	doc := &compare.Document{Case: &c, Comparison: cmp, Inputs: someInputs()}
	if err == nil {
		fillBeside(doc)
	}
	return doc, err
}

func documentOf(t testing.TB, c compare.Case) *compare.Document {
	t.Helper()
	doc, err := simulate(c)
	must(t, err)
	return doc
}

func baseDocument(t testing.TB) *compare.Document {
	t.Helper()
	doc, err := base()
	must(t, err)
	return doc
}

// baseBytes and variedBytes are the workbooks of the documents above, written once.
var (
	baseBytes   = sync.OnceValues(func() ([]byte, error) { return writeOf(base()) })
	variedBytes = sync.OnceValues(func() ([]byte, error) { return writeOf(varied()) })
)

func writeOf(doc *compare.Document, err error) ([]byte, error) {
	if err != nil {
		return nil, err
	}
	return Write(doc)
}

func baseBook(t testing.TB) []byte {
	t.Helper()
	data, err := baseBytes()
	must(t, err)
	return data
}

func variedBook(t testing.TB) []byte {
	t.Helper()
	data, err := variedBytes()
	must(t, err)
	return data
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// written gives the bytes of a document's workbook.
func written(t testing.TB, doc *compare.Document) []byte {
	t.Helper()
	data, err := Write(doc)
	must(t, err)
	return data
}

func open(t testing.TB, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	must(t, err)
	t.Cleanup(func() { _ = f.Close() })
	return f
}

// raw reads a cell's stored value.
func raw(t testing.TB, f *excelize.File, sheet, cell string) string {
	t.Helper()
	v, err := f.GetCellValue(sheet, cell, excelize.Options{RawCellValue: true})
	must(t, err)
	return v
}

// named finds the cell behind a name.
func named(t testing.TB, f *excelize.File, name string) (sheet, cell string) {
	t.Helper()
	for _, n := range f.GetDefinedName() {
		if n.Name == name {
			sheet, cell, _ = strings.Cut(strings.ReplaceAll(n.RefersTo, "$", ""), "!")
			return strings.Trim(sheet, "'"), cell
		}
	}
	t.Fatalf("no cell is named %q", name)
	return "", ""
}

// beside finds a row of a sheet by its first cell and gives another cell of it.
func beside(t testing.TB, f *excelize.File, sheet, first string, col int) string {
	t.Helper()
	rows, err := f.GetRows(sheet)
	must(t, err)
	for r, row := range rows {
		if len(row) > 0 && row[0] == first {
			return place{col, r + 1}.String()
		}
	}
	t.Fatalf("no row of %s begins with %q", sheet, first)
	return ""
}

// formulaCell is a cell with its formula.
type formulaCell struct{ sheet, cell, text string }

// formulaCells lists every formula of a workbook.
func formulaCells(t testing.TB, f *excelize.File) []formulaCell {
	t.Helper()
	var out []formulaCell
	for _, sheet := range f.GetSheetList() {
		rows, err := f.GetRows(sheet, excelize.Options{RawCellValue: true})
		must(t, err)
		for r, row := range rows {
			for c := range row {
				cell := place{c + 1, r + 1}.String()
				text, err := f.GetCellFormula(sheet, cell)
				must(t, err)
				if text != "" {
					out = append(out, formulaCell{sheet, cell, text})
				}
			}
		}
	}
	if len(out) < 1000 {
		t.Fatalf("only %d formulas", len(out))
	}
	return out
}

// sameValue holds two stored values against each other: numbers within 1e-9 of
// each other, or within 1e-10 as such (cells keep 15 digits, so the difference of
// two figures of some thousands is not known better), anything else exactly.
func sameValue(a, b string) bool {
	const relative, absolute = 1e-9, 1e-10
	x, errX := strconv.ParseFloat(a, 64)
	y, errY := strconv.ParseFloat(b, 64)
	if errX != nil || errY != nil {
		return a == b
	}
	return math.Abs(x-y) <= math.Max(relative*math.Max(math.Abs(x), math.Abs(y)), absolute)
}

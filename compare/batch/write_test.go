package batch

import (
	"encoding/csv"
	"iter"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
)

// TestTextStaysText writes texts that a spreadsheet could take for something else.
func TestTextStaysText(t *testing.T) {
	inputs := []string{"=1+1", "+cmd", "-2+3", "@x", "007", "1e3", "12.5", "-3", "a,\"b\"\nc"}
	r := Result{Number: 1, ID: "0012", Inputs: inputs, outcome: outcome{Error: "=boom"}}
	head := Summary{Schema: Schema, Homes: 1, Keys: []string{"a", "b", "c", "d", "e", "f", "g", "h", "i"}, Columns: columnNames()}
	f, _ := written(t, head, one(r))
	records, err := csv.NewReader(strings.NewReader(f[CSVName].String())).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"0012", "'=1+1", "'+cmd", "'-2+3", "'@x", "007", "1e3", "12.5", "-3", "a,\"b\"\nc"}
	for i, text := range want {
		if got := records[1][i]; got != text {
			t.Errorf("CSV column %d holds %q, want %q", i+1, got, text)
		}
	}
	if last := records[1][len(records[1])-1]; last != "'=boom" {
		t.Errorf("the error reads %q", last)
	}
	book, err := excelize.OpenReader(f[XLSXName])
	if err != nil {
		t.Fatal(err)
	}
	for cell, kind := range map[string]excelize.CellType{
		"A2": excelize.CellTypeInlineString, "B2": excelize.CellTypeInlineString, "F2": excelize.CellTypeInlineString,
		"G2": excelize.CellTypeInlineString, "H2": excelize.CellTypeUnset, "I2": excelize.CellTypeUnset,
	} {
		if got, err := book.GetCellType(sheetName, cell); err != nil || got != kind {
			t.Errorf("%s is of kind %v, want %v (%v)", cell, got, kind, err)
		}
		if formula, err := book.GetCellFormula(sheetName, cell); err != nil || formula != "" {
			t.Errorf("%s is a formula: %q (%v)", cell, formula, err)
		}
	}
	for cell, want := range map[string]string{"A2": "0012", "B2": "=1+1", "H2": "12.5", "I2": "-3", "A1": "id"} {
		if got, err := book.GetCellValue(sheetName, cell, excelize.Options{RawCellValue: true}); err != nil || got != want {
			t.Errorf("%s holds %q, want %q (%v)", cell, got, want, err)
		}
	}
}

func one(r Result) iter.Seq2[Result, error] {
	return func(yield func(Result, error) bool) { yield(r, nil) }
}

func TestRounded(t *testing.T) {
	for x, want := range map[float64]float64{1234.5678: 1234.57, -0.000123456789: -0.000123457, 0: 0, 98765432.1: 98765400} {
		if got := rounded(x); got != want {
			t.Errorf("%g is %g, want %g", x, got, want)
		}
	}
}

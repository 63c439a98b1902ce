package workbook

import (
	"bytes"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/xuri/excelize/v2"
)

// TestNumbersAsTheLibraryWritesThem: rows that go past the library hold the same digits.
func TestNumbersAsTheLibraryWritesThem(t *testing.T) {
	f := excelize.NewFile()
	chance := rand.New(rand.NewPCG(1, 2))
	values := []float64{0, 1, -1, 48, 0.5, 1.0 / 3, 46.0 / 48, 47.0 / 48, -2.0 / 3, 1e-7 / 3, 1e15, 123456.789012345678}
	for range 2000 {
		values = append(values, (chance.Float64()-0.5)*math.Pow(10, float64(chance.IntN(20)-8)))
	}
	for _, v := range values {
		must(t, f.SetCellFloat("Sheet1", "A1", v, -1, 64))
		want, err := f.GetCellValue("Sheet1", "A1", excelize.Options{RawCellValue: true})
		must(t, err)
		if got := string(appendNumber(nil, v)); got != want {
			t.Errorf("%v: %s, the library writes %s", v, got, want)
		}
	}
}

// TestBulkStandsBehindTheRows and shows what is no number as a gap.
func TestBulkStandsBehindTheRows(t *testing.T) {
	b := &book{styles: map[style]int{{label, formatWhole}: 7}}
	k := bulk{rows: 2, row: func(i int) []cell {
		return []cell{{place{1, 5 + i}, style{label, formatWhole}, float64(i) / 4}, {place{3, 5 + i}, style{label, formatWhole}, math.NaN()}}
	}}
	got, err := k.into([]byte(`<sheetData><row r="1"></row></sheetData><pageMargins>`), b)
	must(t, err)
	const want = `<sheetData><row r="1"></row>` +
		`<row r="5"><c r="A5" s="7"><v>0</v></c><c r="C5" s="7"></c></row>` +
		`<row r="6"><c r="A6" s="7"><v>0.25</v></c><c r="C6" s="7"></c></row></sheetData><pageMargins>`
	if string(got) != want {
		t.Errorf("got %s", got)
	}
	if _, err := k.into([]byte("<sheetData/>"), b); err == nil {
		t.Error("a sheet without rows was taken")
	}
	if plain, err := (bulk{}).into([]byte("x"), b); err != nil || !bytes.Equal(plain, []byte("x")) {
		t.Errorf("nothing to add: %s, %v", plain, err)
	}
}

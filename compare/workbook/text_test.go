package workbook

import (
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/tariffs"

	"github.com/xuri/excelize/v2"
)

// hostile are texts that a spreadsheet could take for a formula, or that break a
// file.
func hostile() map[string]string {
	return map[string]string{
		"=1+1": "=1+1", "+1": "+1", "-1": "-1", "@SUM(A1)": "@SUM(A1)",
		"\t=1": " =1", "\r=1": " =1", "\n=1": " =1", "a\x01b\x00c": "abc",
		"\uff1d1": "\uff1d1", "\uff0b1": "\uff0b1", "\uff0d1": "\uff0d1", "\uff20A1": "\uff20A1",
		"  =1": "  =1", `a""b`: `a""b`, "a & b < c > d": "a & b < c > d", "_x003D_1": "_x003D_1",
		"a\u202eb": "ab", "\ufeffb": "\ufeffb", "bad \xff": "bad ", "\U0001F6BF": "\U0001F6BF",
		strings.Repeat("x", 40000): strings.Repeat("x", longestText) + " (cut)",
	}
}

func TestCleanKeepsTextButNoControls(t *testing.T) {
	for in, want := range hostile() {
		if got := clean(in); got != want {
			t.Errorf("%.20q: got %.20q, want %.20q", in, got, want)
		}
	}
}

func TestForeignTextStaysText(t *testing.T) {
	for in, want := range hostile() {
		doc := *baseDocument(t)
		cmp, c := *doc.Comparison, *doc.Case
		cmp.Title, c.Title = in, in
		cmp.Tariffs = append([]compare.TariffCost(nil), cmp.Tariffs...)
		cmp.Tariffs[1].Name = in
		c.Tariffs = append([]tariffs.Tariff(nil), c.Tariffs...)
		c.Tariffs[1].Name = in
		doc.Comparison, doc.Case = &cmp, &c
		doc.Inputs = []compare.Input{{Key: in, Text: in, Unit: in, Source: in, Help: in, Origin: compare.Stated}}
		b := newBook(&doc) // the sheets that hold such text, without the long ones
		b.writeAssumptions()
		b.writeMonths()
		b.writeBills()
		b.writeAbout()
		must(t, b.err)
		data, err := b.bytes()
		must(t, err)
		f := open(t, data)
		title := beside(t, f, aboutName, "Title", 2)
		holdText(t, f, aboutName, title, want)
		rows, err := f.GetRows(assumptionsName)
		must(t, err)
		for col := keyCol; col <= sourceCol; col++ {
			if col != simulatedCol && col != changedCol && col != originCol {
				holdText(t, f, assumptionsName, place{col, len(rows)}.String(), want)
			}
		}
	}
}

// holdText expects a cell to hold a text, under a style that keeps it text.
func holdText(t *testing.T, f *excelize.File, sheet, cell, want string) {
	t.Helper()
	kind, err := f.GetCellType(sheet, cell)
	must(t, err)
	if got := raw(t, f, sheet, cell); got != want || kind != excelize.CellTypeSharedString {
		t.Errorf("%s!%s: %.20q of type %v, want %.20q", sheet, cell, got, kind, want)
	}
	if formula, err := f.GetCellFormula(sheet, cell); err != nil || formula != "" {
		t.Errorf("%s!%s: formula %q, %v", sheet, cell, formula, err)
	}
	id, err := f.GetCellStyle(sheet, cell)
	must(t, err)
	if xf := f.Styles.CellXfs.Xf[id]; xf.QuotePrefix == nil || !*xf.QuotePrefix {
		t.Errorf("%s!%s: the style does not keep text text", sheet, cell)
	}
}

func TestNamesAreTheProgramsOwn(t *testing.T) {
	for _, n := range open(t, variedBook(t)).GetDefinedName() {
		if strings.Contains(strings.ToLower(n.Name), "half-hourly") || strings.ContainsAny(n.Name, " -'\"") {
			t.Errorf("name %q", n.Name)
		}
	}
}

func TestLinesOf(t *testing.T) {
	for text, want := range map[string]float64{"": 1, "one two": 1, "one two three": 2, "abcdefghijkl": 1, "a b c d e f": 1, "a b c d e f g": 2} {
		if got := linesOf(text, 11); got != want {
			t.Errorf("%q: %g lines, want %g", text, got, want)
		}
	}
}

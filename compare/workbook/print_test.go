package workbook

import (
	"strings"
	"testing"

	"dhwcompare/compare/wording"
)

// TestTextsAreAsInPrint holds that no sheet writes a unit as a terminal has to.
func TestTextsAreAsInPrint(t *testing.T) {
	found := map[string]bool{"£": false, "°C": false, "m²": false}
	for _, data := range [][]byte{baseBook(t), variedBook(t)} {
		f := open(t, data)
		for _, sheet := range f.GetSheetList() {
			rows, err := f.GetRows(sheet)
			must(t, err)
			for _, cells := range rows {
				for _, text := range cells {
					_, unit := cutLast(text, ", ")
					if got := wording.InPrint(text); got != text || wording.Unit(unit) != unit {
						t.Errorf("%s: %q is not as in print", sheet, text)
					}
					for sign := range found {
						found[sign] = found[sign] || strings.Contains(text, sign)
					}
				}
			}
		}
	}
	for sign, is := range found {
		if !is {
			t.Errorf("no text has a %s: nothing is held", sign)
		}
	}
}

// cutLast cuts a text around the last separator; without one all of it is behind.
func cutLast(text, separator string) (before, after string) {
	if i := strings.LastIndex(text, separator); i >= 0 {
		return text[:i], text[i+len(separator):]
	}
	return "", text
}

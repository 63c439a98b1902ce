package workbook

import "dhwcompare/compare/wording"

// Columns and characters of a line of the sheet.
const (
	reasonsCols  = 2
	reasonsChars = 128
)

// writeReasons gives the verdict and why, for the inputs as simulated.
func (b *book) writeReasons() {
	s, v := b.sheet(reasonsName), &b.comparison().Verdict
	s.widths(5, 104)
	s.head("Reasons", "Of the inputs as simulated; what follows from changed inputs stands on the sheets Summary and Recommendation.")
	at := place{1, 4}
	s.paragraph(at, reasonsCols, reasonsChars, verdict, wording.InPrint(v.Text))
	at = s.numbered(at.down(2), "Reasons", v.Reasons)
	var warnings []string
	for _, w := range b.comparison().Warnings {
		warnings = append(warnings, capital(w.Text)+".")
	}
	at = s.numbered(at.down(1), "What to know beside the figures", warnings)
	s.lay(page{portrait: true, last: place{reasonsCols, at.row}})
}

// numbered writes a list and gives the place below.
func (s *sheet) numbered(at place, name string, list []string) place {
	if len(list) == 0 {
		return at
	}
	s.text(at, heading, name)
	for i, text := range list {
		at = at.down(1)
		s.number(at, style{outcome, formatWhole}, float64(i+1))
		s.paragraph(at.right(1), reasonsCols, reasonsChars-6, given, wording.InPrint(text))
	}
	return at.down(1)
}

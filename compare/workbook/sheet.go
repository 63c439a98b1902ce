package workbook

import (
	"math"
	"strings"

	"github.com/xuri/excelize/v2"
)

// place is a cell by column and row, both counted from 1.
type place struct{ col, row int }

func (p place) String() string {
	name, err := excelize.CoordinatesToCellName(p.col, p.row)
	if err != nil {
		return "" // only for places outside a sheet, which the library refuses
	}
	return name
}

func (p place) right(n int) place { return place{p.col + n, p.row} }
func (p place) down(n int) place  { return place{p.col, p.row + n} }

// sheet is one sheet while it is filled.
type sheet struct {
	book    *book
	name    string
	numbers map[place]float64 // of every numeric cell
	caches  map[string]any    // values of the formula cells, by cell name
	rest    bulk              // rows below all others
}

func newSheet(b *book, name string) *sheet {
	return &sheet{book: b, name: name, numbers: map[place]float64{}, caches: map[string]any{}}
}

// prefix is the sheet's name as formulas write it.
func (s *sheet) prefix() string {
	if strings.ContainsAny(s.name, " -") {
		return "'" + s.name + "'!"
	}
	return s.name + "!"
}

func (s *sheet) ref(p place, value any) term {
	return term{text: s.prefix() + p.String(), value: value}
}

// text writes the program's own text.
func (s *sheet) text(p place, l look, text string) {
	s.styled(p, style{look: l})
	s.book.keep(s.book.file.SetCellStr(s.name, p.String(), text))
}

// textAs writes the words of a row, which somebody else may have written.
func (s *sheet) textAs(p place, foreign bool, words string) {
	if foreign {
		s.foreign(p, words)
		return
	}
	s.text(p, label, words)
}

// foreign writes a text that somebody else wrote.
func (s *sheet) foreign(p place, text string) { s.foreignAs(p, style{look: given}, text) }

func (s *sheet) foreignAs(p place, st style, text string) {
	s.styled(p, st)
	s.book.keep(s.book.file.SetCellStr(s.name, p.String(), literal(clean(text))))
}

// number writes a number that is no formula. One that is not finite is left out
// and shows as a gap.
func (s *sheet) number(p place, st style, v float64) term {
	s.styled(p, st)
	if isFinite(v) {
		s.book.keep(s.book.file.SetCellFloat(s.name, p.String(), v, -1, 64))
	}
	s.numbers[p] = finite(v)
	return s.ref(p, finite(v))
}

func isFinite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

// finite is a number as formulas see it: a gap counts as nothing.
func finite(v float64) float64 {
	if isFinite(v) {
		return v
	}
	return 0
}

// live writes a formula and keeps its value.
func (s *sheet) live(p place, st style, t term) term {
	s.styled(p, st)
	formula := strings.ReplaceAll(t.text, s.prefix(), "")
	s.book.keep(s.book.file.SetCellFormula(s.name, p.String(), formula))
	s.caches[p.String()] = t.value
	if v, ok := t.value.(float64); ok {
		s.numbers[p] = v
	}
	return s.ref(p, t.value)
}

func (s *sheet) styled(p place, st style) {
	s.book.keep(s.book.file.SetCellStyle(s.name, p.String(), p.String(), s.book.style(st)))
}

// span is the range between two corners.
func (s *sheet) span(from, to place) span {
	out := span{text: s.prefix() + from.String() + ":" + to.String()}
	for r := from.row; r <= to.row; r++ {
		for c := from.col; c <= to.col; c++ {
			if v, ok := s.numbers[place{c, r}]; ok {
				out.values = append(out.values, v)
			}
		}
	}
	return out
}

// absolute is a place as names and charts write it.
func (s *sheet) absolute(from, to place) string {
	a, errA := excelize.CoordinatesToCellName(from.col, from.row, true)
	z, errZ := excelize.CoordinatesToCellName(to.col, to.row, true)
	s.book.keep(errA)
	s.book.keep(errZ)
	if a == z {
		return s.prefix() + a
	}
	return s.prefix() + a + ":" + z
}

// named gives a cell a name.
func (s *sheet) named(name string, p place, cell term) term {
	return s.book.name(name, cell, s.absolute(p, p))
}

// head writes the title of a sheet and a sentence about it.
func (s *sheet) head(name, about string) {
	s.text(place{1, 1}, title, name)
	const titleHeight, aboutHeight = 24, 16
	s.height(1, titleHeight)
	s.text(place{1, 2}, sentence, about)
	s.height(2, aboutHeight)
}

// tops writes the headings of columns.
func (s *sheet) tops(p place, height float64, heads ...string) {
	for i, h := range heads {
		s.text(p.right(i), columnTop, h)
	}
	s.height(p.row, height)
}

func (s *sheet) height(row int, points float64) {
	s.book.keep(s.book.file.SetRowHeight(s.name, row, points))
}

// widths sets the widths of the columns from A, in characters.
func (s *sheet) widths(list ...float64) {
	for i, w := range list {
		s.columnWidth(i+1, i+1, w)
	}
}

func (s *sheet) columnWidth(from, to int, w float64) {
	a, errA := excelize.ColumnNumberToName(from)
	z, errZ := excelize.ColumnNumberToName(to)
	s.book.keep(errA)
	s.book.keep(errZ)
	s.book.keep(s.book.file.SetColWidth(s.name, a, z, w))
}

// paragraph writes text across columns that hold so many characters of body text
// and makes the row high enough for it.
func (s *sheet) paragraph(p place, lastCol int, characters int, l look, text string) {
	for c := p.col; c <= lastCol; c++ {
		s.styled(place{c, p.row}, style{look: l})
	}
	s.book.keep(s.book.file.MergeCell(s.name, p.String(), place{lastCol, p.row}.String()))
	high := lineHeight
	if l == verdict { // larger letters, in bold
		characters, high = characters*8/10, high*12/10
	}
	if l == given {
		text = clean(text)
	}
	s.foreignAs(p, style{look: l}, text)
	s.height(p.row, linesOf(text, characters)*high)
}

const lineHeight = 14.0 // points, of the body font

// linesOf is the number of lines that a text takes, word by word.
func linesOf(text string, characters int) float64 {
	lines, used := 1, 0
	for _, word := range strings.Fields(text) {
		n := len([]rune(word))
		if used > 0 && used+n > characters {
			lines, used = lines+1, 0
		}
		used += n + 1
	}
	return float64(lines)
}

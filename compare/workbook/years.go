package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// yearRefs are the figures of single years that other sheets refer to.
type yearRefs struct {
	series []yearSeries
	byKey  map[string]int
}

// yearSeries is one figure of every year, for each option and for the difference.
// It stands in one row of the sheet, year beside year.
type yearSeries struct {
	key, words, unit string
	format           string
	foreign          bool                              // the words hold a text that somebody else wrote
	get              func(*compare.YearRecord) float64 // simulated, unless
	work             worker                            // worked out from others of the year
	first            [3]place                          // options in order, then the difference
	spans            [3]span
}

// firstYearCol is the column of the first year: before it stand words and unit.
const firstYearCol = 3

// yearsAPage is the number of years side by side on a printed page.
const yearsAPage = 20

func (b *book) writeYears() {
	s := b.sheet(yearsName)
	b.years = &yearRefs{series: b.yearSeries(), byKey: map[string]int{}}
	for i := range b.years.series {
		b.years.byKey[b.years.series[i].key] = i
	}
	s.head("Each simulated year", "Both options live through the same years. Italic figures are simulated; upright ones are formulas.")
	count := len(b.comparison().EachYear[0])
	s.tops(place{1, 3}, 20, "Figure", "Unit")
	for y := range count {
		p := place{firstYearCol + y, 3}
		s.number(p, style{columnTop, `"Year "0`}, float64(y+1))
	}
	at := place{1, 4}
	for side := range 3 {
		at = s.yearBlock(side, count, at)
	}
	s.widths(52, 9)
	last := firstYearCol + count - 1
	s.columnWidth(firstYearCol, last, 10)
	s.lay(page{freeze: place{firstYearCol, 4}, titleRows: 3, titleCols: 2, pagesWide: (count + yearsAPage - 1) / yearsAPage, last: place{last, at.row - 2}})
}

// yearBlock writes every year of an option, or of the difference.
func (s *sheet) yearBlock(side, count int, at place) place {
	s.text(at, heading, capital(blockName(side)))
	at = at.down(1)
	for i := range s.book.years.series {
		f := &s.book.years.series[i]
		f.first[side] = place{firstYearCol, at.row}
		s.textAs(at, f.foreign, f.words)
		s.text(at.right(1), unit, f.unit)
		for y := range count {
			s.yearCell(f, side, y)
		}
		f.spans[side] = s.span(f.first[side], f.first[side].right(count-1))
		at = at.down(1)
	}
	return at.down(1)
}

func (s *sheet) yearCell(f *yearSeries, side, y int) {
	p := f.first[side].right(y)
	switch {
	case side == differenceBlock:
		s.live(p, style{derived, signed(f.format)}, minus(s.yearRef(f, 0, y), s.yearRef(f, 1, y)))
	case f.work != nil:
		s.live(p, style{derived, f.format}, f.work(func(key string) term { return s.book.yearValue(key, side, y) }))
	default:
		s.number(p, style{simulated, f.format}, f.get(&s.book.comparison().EachYear[side][y]))
	}
}

func (s *sheet) yearRef(f *yearSeries, side, y int) term {
	p := f.first[side].right(y)
	return s.ref(p, s.numbers[p])
}

// yearValue refers to a figure of one year.
func (b *book) yearValue(key string, side, y int) term {
	if key == daysColumn {
		return b.inputs.days
	}
	return b.sheet(yearsName).yearRef(b.everyYear(key), side, y)
}

// everyYear finds a figure of the single years.
func (b *book) everyYear(key string) *yearSeries {
	i, ok := b.years.byKey[key]
	if !ok {
		b.keep(fmt.Errorf("no figure %q among the years", key))
		return &yearSeries{first: [3]place{{1, 1}, {1, 1}, {1, 1}}}
	}
	return &b.years.series[i]
}

package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// monthRefs are the tables of months that other sheets refer to.
type monthRefs struct {
	tables []monthTable
	later  []func() // cells of the year that wait for the spread over the years
}

// monthTable is one kind of table, written for each option and for their
// difference.
type monthTable struct {
	title   string
	columns []monthColumn
	blocks  [3]monthBlock // options in order, then the difference
}

// monthColumn is one column of a table of months.
type monthColumn struct {
	name, top string
	decimals  int
	get       func(*compare.MonthTotals) float64 // simulated, unless
	work      worker                             // worked out from others of the row
	adds      bool                               // a figure that is worked out, but adds up over the year
	largest   bool                               // of a year is the largest of its months: the mean year has the mean of those
}

// monthBlock is a table as it stands on the sheet.
type monthBlock struct {
	first place // first cell of January, the month's name
}

const differenceBlock = 2

// firstMonthCol is the column of the first figure: before it stand the month and
// its days.
const firstMonthCol = 3

func (b *book) writeMonths() {
	s := b.sheet(monthsName)
	b.months = &monthRefs{tables: monthTables()}
	s.head("Months of the mean year", "Italic figures are simulated (mean of the years); upright ones are formulas. Difference is compact store minus cylinder.")
	at := place{1, 4}
	width := 0
	for i := range b.months.tables {
		t := &b.months.tables[i]
		width = max(width, len(t.columns)+firstMonthCol-1)
		for side := range t.blocks {
			at = s.monthBlock(t, side, at)
		}
	}
	s.widths(9, 6)
	s.columnWidth(firstMonthCol, width, 11.5)
	s.lay(page{freeze: place{2, 4}, titleRows: 2, portrait: true, last: place{width, at.row - 2}})
	s.breakAfterTables(b.months)
}

// breakAfterTables starts a printed page with each kind of table.
func (s *sheet) breakAfterTables(m *monthRefs) {
	for _, t := range m.tables[1:] {
		top := t.blocks[0].first.down(-2)
		s.book.keep(s.book.file.InsertPageBreak(s.name, place{1, top.row}.String()))
	}
}

// blockName is the option's name, or that of the difference.
func blockName(side int) string {
	if side == differenceBlock {
		return "difference"
	}
	return compare.Side(side).String()
}

// monthBlock writes one table and gives the place of the next.
func (s *sheet) monthBlock(t *monthTable, side int, at place) place {
	s.text(at, heading, t.title+": "+blockName(side))
	heads := []string{"Month", "Days"}
	for _, c := range t.columns {
		heads = append(heads, c.top)
	}
	s.tops(at.down(1), 80, heads...)
	t.blocks[side].first = at.down(2)
	for m := range calendar.MonthsInAYear + 1 {
		s.monthRow(t, side, m)
	}
	return at.down(calendar.MonthsInAYear + 4)
}

// monthRow writes a month, or the year after the last.
func (s *sheet) monthRow(t *monthTable, side, m int) {
	p := t.blocks[side].first.down(m)
	year := m == calendar.MonthsInAYear
	look := derived
	if year {
		look = total
		s.text(p, total, "Year")
		s.live(p.right(1), style{total, formatWhole}, sum(s.span(p.right(1).down(-m), p.right(1).down(-1))))
	} else {
		s.text(p, label, calendar.ShortMonth(m))
		s.number(p.right(1), style{label, formatWhole}, float64(calendar.DaysIn(m)))
	}
	for i := range t.columns {
		c, q := &t.columns[i], p.right(firstMonthCol-1+i)
		st := style{look, decimals(c.decimals)}
		switch {
		case year && c.largest:
			s.book.months.later = append(s.book.months.later, func() { s.live(q, st, s.book.risk.rows[c.name][side].mean) })
		case side == differenceBlock:
			s.live(q, style{look, signed(st.format)}, minus(s.monthCell(t, 0, i, m), s.monthCell(t, 1, i, m)))
		case c.work != nil && !(year && c.adds):
			s.live(q, st, c.work(func(name string) term { return s.monthOf(side, name, m) }))
		case year:
			s.live(q, st, sum(s.span(q.down(-m), q.down(-1))))
		default:
			s.number(q, style{simulated, st.format}, c.get(&s.book.comparison().Options.Of(compare.Side(side)).Months[m]))
		}
	}
}

// monthCell refers to a cell of a table.
func (s *sheet) monthCell(t *monthTable, side, column, m int) term {
	p := t.blocks[side].first.down(m).right(firstMonthCol - 1 + column)
	return s.ref(p, s.numbers[p])
}

// monthOf refers to a column of any table by name, or to the days of the month.
func (s *sheet) monthOf(side int, name string, m int) term {
	tables := s.book.months.tables
	for i := range tables {
		t := &tables[i]
		if t.blocks[side].first.row == 0 {
			continue
		}
		if name == carbonFactor {
			return s.book.inputs.carbon[m]
		}
		if name == daysColumn {
			p := t.blocks[side].first.down(m).right(1)
			return s.ref(p, s.numbers[p])
		}
		for c := range t.columns {
			if t.columns[c].name == name {
				return s.monthCell(t, side, c, m)
			}
		}
	}
	s.book.keep(errNoColumn(name))
	return term{}
}

// yearOf refers to the year's figure of an option or of the difference; whether
// the months have it is told too.
func (b *book) yearOf(side int, name string) (term, bool) {
	for i := range b.months.tables {
		for _, c := range b.months.tables[i].columns {
			if c.name == name {
				return b.sheet(monthsName).monthOf(side, name, calendar.MonthsInAYear), true
			}
		}
	}
	return term{}, false
}

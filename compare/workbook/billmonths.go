package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// billColumn is one column of a tariff's table of months.
type billColumn struct {
	key    string
	words  string
	format string
	get    func(b *compare.BandBill) float64
	band   int
}

// billColumns are the simulated columns of one option: energy of each band, and
// the cost at stated prices of lines with several prices.
func (t *tariffRefs) billColumns(tariff int, money string) []billColumn {
	var out []billColumn
	for n, line := range t.lines {
		out = append(out, billColumn{bandKey(tariff, n), line.label + ", kWh", formatOne, func(b *compare.BandBill) float64 { return b.KWh }, n})
		if line.mixed {
			out = append(out, billColumn{givenKey(tariff, n), line.label + ", " + money + " as stated", formatTwo,
				func(b *compare.BandBill) float64 { return b.Cost / t.taxValue() }, n})
		}
	}
	return out
}

// billMonthCols is the last column of a tariff's table of months.
func (s *sheet) billMonthCols(i int) int {
	const months, gap = 1, 1
	return months + gap + 2*(len(s.book.inputs.tariffs[i].billColumns(i, ""))+1)
}

// billMonths writes the months of one tariff's bills and gives the place of the
// next.
func (s *sheet) billMonths(i int, at place) place {
	in, money := &s.book.inputs.tariffs[i], s.book.currency()
	columns := in.billColumns(i, money)
	s.foreignAs(at, style{look: givenHeading}, s.tariffTitle(i)+", by month")
	top := at.down(1)
	s.tops(top, 42, "Month")
	for side := range sideOrder() {
		p := place{2 + side*(len(columns)+1), top.row}
		for c, column := range columns {
			s.foreignAs(p.right(c), style{look: columnTop}, fmt.Sprintf("%s: %s", capital(blockName(side)), column.words))
		}
		s.text(p.right(len(columns)), columnTop, capital(blockName(side))+", "+money)
		s.columnWidth(p.col, p.col+len(columns), 13)
	}
	s.text(place{s.billMonthCols(i), top.row}, columnTop, "Difference, "+money)
	for m := range calendar.MonthsInAYear + 1 {
		s.billMonth(i, m, columns, top.down(1+m))
	}
	return top.down(calendar.MonthsInAYear + 3)
}

// billMonth writes a month of both options, or the year after the last.
func (s *sheet) billMonth(i, m int, columns []billColumn, p place) {
	ref := &s.book.bills.tariffs[i]
	year := m == calendar.MonthsInAYear
	look := derived
	if year {
		look = total
		s.text(p, total, "Year")
	} else {
		s.text(p, label, calendar.ShortMonth(m))
	}
	var cost [2]term
	for side := range sideOrder() {
		q := place{2 + side*(len(columns)+1), p.row}
		cells := map[string]term{}
		for c, column := range columns {
			cells[column.key] = s.billMonthCell(i, side, m, &columns[c], q.right(c))
		}
		q = q.right(len(columns))
		if m == 0 {
			ref.monthCost[side] = q
		}
		work := s.book.inputs.tariffs[i].costOf(i, func(key string) term { return cells[key] })
		if year {
			work = sum(s.span(ref.monthCost[side], q.down(-1)))
		}
		cost[side] = s.live(q, style{look, formatTwo}, work)
		ref.monthSum[side] = cost[side]
	}
	s.live(place{s.billMonthCols(i), p.row}, style{look, signed(formatTwo)}, minus(cost[0], cost[1]))
}

func (s *sheet) billMonthCell(tariff, side, m int, c *billColumn, p place) term {
	if m == calendar.MonthsInAYear {
		return s.live(p, style{total, c.format}, sum(s.span(p.down(-m), p.down(-1))))
	}
	bands := s.book.comparison().Tariffs[tariff].Of(compare.Side(side)).Months[m]
	return s.number(p, style{simulated, c.format}, c.get(&bands[c.band]))
}

package workbook

import (
	"dhwcompare/compare"

	"github.com/xuri/excelize/v2"
)

// Columns of the sheet: cause, then energy and share of each option, then the
// difference and its share.
const (
	causeKWhCol  = 2
	causeGapCol  = 6
	causesTopRow = 4
)

// writeCauses says what the electricity was for, over the year.
func (b *book) writeCauses() {
	s := b.sheet(causesName)
	s.head("Causes: what the electricity for hot water was for", "Electricity that made heat is divided as the heat was. The causes exclude each other and add up to the whole.")
	s.widths(34, 15, 12, 15, 12, 15, 15)
	s.tops(place{1, causesTopRow}, 34, "Cause", "Compact store, kWh", "Share", "Cylinder, kWh", "Share", "Difference, kWh", "Share of the difference")
	list := compare.CauseList()
	last := place{1, causesTopRow + len(list)}
	sumRow := last.down(1)
	for i, c := range list {
		s.cause(c, place{1, causesTopRow + 1 + i})
	}
	s.causeSums(sumRow, len(list))
	for i := range list {
		s.causeShares(place{1, causesTopRow + 1 + i}, sumRow)
	}
	s.causeChart(last)
	const chartSpace = 26 // rows
	s.lay(page{onePage: true, last: place{causeGapCol + 1, sumRow.row + chartSpace}})
}

func (s *sheet) cause(c compare.Cause, p place) {
	s.text(p, label, capital(c.Label))
	var kWh [2]term
	for side := range sideOrder() {
		year, _ := s.book.yearOf(side, causeKey(c))
		kWh[side] = s.live(p.right(1+2*side), style{derived, formatOne}, year)
	}
	s.live(place{causeGapCol, p.row}, style{derived, signed(formatOne)}, minus(kWh[0], kWh[1]))
}

func (s *sheet) causeSums(p place, count int) {
	s.text(p, total, "All causes")
	for _, col := range []int{causeKWhCol, causeKWhCol + 2, causeGapCol} {
		st := style{total, formatOne}
		if col == causeGapCol {
			st.format = signed(formatOne)
		}
		s.live(place{col, p.row}, st, sum(s.span(place{col, p.row - count}, place{col, p.row - 1})))
	}
}

// causeShares divide by the sum below.
func (s *sheet) causeShares(p, sums place) {
	for _, col := range []int{causeKWhCol, causeKWhCol + 2, causeGapCol} {
		part, whole := place{col, p.row}, place{col, sums.row}
		s.live(part.right(1), style{derived, formatPercent}, ratio(s.ref(part, s.numbers[part]), s.ref(whole, s.numbers[whole])))
	}
}

func (s *sheet) causeChart(last place) {
	first := place{1, causesTopRow + 1}
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		col := 1 + 2*side
		series = append(series, s.optionSeries(side, s.absolute(first, last), s.absolute(first.right(col), last.right(col))))
	}
	s.drawChart(last.down(3), chart{title: "Electricity for hot water by cause, kWh a year", kind: excelize.Col,
		description: "Electricity of the year by cause, both options side by side", width: 880, height: 380}, series)
}

package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// billRefs are the bills that other sheets refer to, by tariff.
type billRefs struct{ tariffs []billRef }

// billRef is one tariff's bill.
type billRef struct {
	kWh, cost  [2]term
	difference term
	monthCost  [2]place // January
	monthSum   [2]term
}

// Columns of a bill: energy, price and cost of each option stand together.
const (
	billKWhCol = 2
	billSides  = 3 // columns of one option
	costGapCol = billKWhCol + 2*billSides
	meanCol0   = costGapCol + 2 // simulated mean price of lines with several prices
)

func (b *book) writeBills() {
	s := b.sheet(billsName)
	b.bills = &billRefs{}
	s.head("Tariff and bills", "Mean year. Energy by band is simulated; prices come from the sheet Assumptions; every cost is a formula.")
	s.text(place{1, 3}, sentence, "Costs are of "+b.comparison().CostBoundary+".")
	s.widths(38, 13, 13, 13, 13, 13, 13, 14)
	at, width := place{1, 5}, costGapCol
	for i := range b.comparison().Tariffs {
		at = s.bill(i, at)
	}
	for i := range b.comparison().Tariffs {
		at = s.billMonths(i, at)
		width = max(width, s.billMonthCols(i))
	}
	s.lay(page{freeze: place{2, 5}, titleRows: 3, last: place{width, at.row - 2}})
}

// currency is the case's currency, fit for titles and headings.
func (b *book) currency() string { return clean(b.comparison().Currency) }

// bill writes one tariff's bill and gives the place of the next.
func (s *sheet) bill(i int, at place) place {
	t, in := &s.book.comparison().Tariffs[i], &s.book.inputs.tariffs[i]
	s.foreignAs(at, style{look: givenHeading}, s.tariffTitle(i))
	money := s.book.currency()
	heads := []string{"Band"}
	for side := range sideOrder() {
		name := capital(blockName(side))
		heads = append(heads, name+", kWh", name+", "+money+" per kWh", name+", "+money)
	}
	s.tops(at.down(1), 42, append(heads, "Difference, "+money)...)
	var ref billRef
	for n := range in.lines {
		s.billLine(t, in, n, at.down(2+n))
	}
	end := at.down(2 + len(in.lines))
	s.billTotal(&ref, at.row+2, end)
	s.standing(&ref, in, end)
	s.book.bills.tariffs = append(s.book.bills.tariffs, ref)
	return end.down(4)
}

func (s *sheet) tariffTitle(i int) string {
	t := &s.book.comparison().Tariffs[i]
	if t.Primary {
		return fmt.Sprintf("Tariff %d: %s (decides the cost on the Summary)", i+1, t.Name)
	}
	return fmt.Sprintf("Tariff %d: %s", i+1, t.Name)
}

// billLine writes energy x price = cost of one band for both options.
func (s *sheet) billLine(t *compare.TariffCost, in *tariffRefs, n int, p place) {
	line := &in.lines[n]
	s.foreign(p, line.label)
	var cost [2]term
	for side := range sideOrder() {
		band, q := &t.Of(compare.Side(side)).Bands[n], p.right(billKWhCol-1+side*billSides)
		kWh := s.number(q, style{simulated, formatOne}, band.KWh)
		stated := line.rate
		if line.mixed {
			stated = s.meanPrice(in, line, band, side, p.row)
		}
		price := s.live(q.right(1), style{derived, formatRate}, in.price(line, stated))
		cost[side] = s.live(q.right(2), style{derived, formatTwo}, times(kWh, price))
	}
	s.live(place{costGapCol, p.row}, style{derived, signed(formatTwo)}, minus(cost[0], cost[1]))
}

// meanPrice is the price of a line with several prices: the mean of those that
// the option met, from the simulation and beside the table, times the level.
func (s *sheet) meanPrice(in *tariffRefs, line *lineRefs, band *compare.BandBill, side, row int) term {
	mean := 0.0
	if band.KWh != 0 {
		mean = band.Cost / band.KWh / in.taxValue()
	}
	p := place{meanCol0 + 2*side, row}
	s.text(p, unit, "mean price, "+blockName(side)+":")
	s.columnWidth(p.col, p.col, 27)
	return times(s.number(p.right(1), style{simulated, formatRate}, mean), line.level)
}

// taxValue is the factor by which stated prices are multiplied.
func (t *tariffRefs) taxValue() float64 {
	if t.taxFactor.text == "" {
		return 1
	}
	return t.taxFactor.num()
}

// billTotal adds up the lines.
func (s *sheet) billTotal(ref *billRef, first int, p place) {
	s.text(p, total, "All bands")
	for side := range sideOrder() {
		q := p.right(billKWhCol - 1 + side*billSides)
		add := func(n int) term { return sum(s.span(place{q.col + n, first}, place{q.col + n, p.row - 1})) }
		ref.kWh[side] = s.live(q, style{total, formatOne}, add(0))
		ref.cost[side] = s.live(q.right(2), style{total, formatTwo}, add(2))
		s.live(q.right(1), style{total, formatRate}, ratio(ref.cost[side], ref.kWh[side]))
	}
	ref.difference = s.live(place{costGapCol, p.row}, style{total, signed(formatTwo)}, minus(ref.cost[0], ref.cost[1]))
}

// standing adds the standing charge, which is the same for both options and so
// no part of the comparison.
func (s *sheet) standing(ref *billRef, in *tariffRefs, p place) {
	s.text(p.down(1), label, "Standing charge, same for both")
	s.text(p.down(2), total, "With standing charge")
	for side := range sideOrder() {
		q := place{billKWhCol + 2 + side*billSides, p.row}
		charge := s.live(q.down(1), style{derived, formatTwo}, in.taxed(times(in.standing, s.book.inputs.days)))
		s.live(q.down(2), style{total, formatTwo}, plus(ref.cost[side], charge))
	}
}

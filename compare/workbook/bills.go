package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// billRefs are the bills that other sheets refer to, by tariff.
type billRefs struct{ tariffs []billRef }

// billRef is one tariff's bill.
type billRef struct {
	name       string
	cost       [2]term
	difference term
	kWh        [2]term
	lines      []billLineRef
}

// billLineRef is one line of a bill for each option.
type billLineRef struct{ kWh, cost [2]term }

// Columns of a bill. Energy, price and cost of each option stand together.
const (
	bandCol = iota + 1
	billKWhCol
	billPriceCol
	billCostCol
	billSides = 3 // columns of one option
)

func (b *book) writeBills() {
	s := b.sheet(billsName)
	b.bills = &billRefs{}
	c := b.comparison()
	s.text(place{1, 1}, title, "Tariff and bills")
	s.text(place{1, 2}, label, "Mean year. Energy by band is simulated; prices come from the sheet Assumptions; every cost is a formula. Costs are of hot water only.")
	at := place{1, 4}
	for i := range c.Tariffs {
		at = s.bill(i, at)
	}
	s.widths(34, 13, 13, 13, 13, 13, 13, 15)
	s.lay(page{freeze: place{2, 4}, titleRows: 2, last: place{costGapCol, at.row - 1}})
}

// costGapCol is the column of the difference in cost.
const costGapCol = billKWhCol + 2*billSides

// bill writes one tariff's bill and gives the place of the next.
func (s *sheet) bill(i int, at place) place {
	t, in := &s.book.comparison().Tariffs[i], &s.book.inputs.tariffs[i]
	kind := ""
	if t.Primary {
		kind = " (primary: decides the cost of hot water)"
	}
	s.foreignAs(at, style{look: givenHeading}, fmt.Sprintf("Tariff %d: %s%s", i+1, t.Name, kind))
	money := s.book.comparison().Currency
	heads := []string{"Band"}
	for side := range sideOrder() {
		name := capital(blockName(side))
		heads = append(heads, name+", kWh", name+", "+money+" per kWh", name+", "+money)
	}
	s.tops(at.down(1), 42, append(heads, "Difference, "+money)...)
	ref := billRef{name: t.Name}
	for n := range in.lines {
		ref.lines = append(ref.lines, s.billLine(t, in, n, at.down(2+n)))
	}
	end := s.billTotal(&ref, at.down(2), at.down(2+len(in.lines)))
	s.standing(&ref, in, end)
	s.book.bills.tariffs = append(s.book.bills.tariffs, ref)
	return end.down(4)
}

// billLine writes energy x price = cost of one band for both options.
func (s *sheet) billLine(t *compare.TariffCost, in *tariffRefs, n int, p place) billLineRef {
	line := &in.lines[n]
	s.foreign(p, line.label)
	var ref billLineRef
	for side := range sideOrder() {
		band, q := &t.Of(compare.Side(side)).Bands[n], p.right(billKWhCol-1+side*billSides)
		ref.kWh[side] = s.number(q, style{simulated, formatOne}, band.KWh)
		price := s.live(q.right(1), style{derived, formatRate}, in.taxed(s.linePrice(in, line, band, q)))
		ref.cost[side] = s.live(q.right(2), style{derived, formatTwo}, times(ref.kWh[side], price))
	}
	s.live(place{costGapCol, p.row}, style{derived, signed(formatTwo)}, minus(ref.cost[0], ref.cost[1]))
	return ref
}

// linePrice is the stated price of a line. That of a line with several prices is
// the mean that the option paid, from the simulation, times the level; the mean
// stands to the right of the table.
func (s *sheet) linePrice(in *tariffRefs, line *lineRefs, band *compare.BandBill, q place) term {
	if !line.mixed {
		return line.rate
	}
	mean := 0.0
	if band.KWh != 0 {
		mean = band.Cost / band.KWh / in.taxValue()
	}
	side := (q.col - billKWhCol) / billSides
	p := place{costGapCol + 2 + side, q.row}
	s.text(p.down(-line.offset(in)-1), columnTop, "Mean price simulated, "+blockName(side))
	s.columnWidth(p.col, p.col, 15)
	return times(s.number(p, style{simulated, formatRate}, mean), line.level)
}

// offset is the line's place in the bill.
func (l *lineRefs) offset(in *tariffRefs) int {
	for i := range in.lines {
		if &in.lines[i] == l {
			return i
		}
	}
	return 0
}

// taxValue is the factor by which stated prices are multiplied.
func (t *tariffRefs) taxValue() float64 {
	if t.taxFactor.text == "" {
		return 1
	}
	return t.taxFactor.num()
}

// billTotal adds up the lines.
func (s *sheet) billTotal(ref *billRef, first, p place) place {
	s.text(p, total, "Hot water, all bands")
	for side := range sideOrder() {
		q := p.right(billKWhCol - 1 + side*billSides)
		add := func(n int) term { return sum(s.span(place{q.col + n, first.row}, place{q.col + n, p.row - 1})) }
		ref.kWh[side] = s.live(q, style{total, formatOne}, add(0))
		cost := add(2)
		ref.cost[side] = s.live(q.right(2), style{total, formatTwo}, cost)
		s.live(q.right(1), style{total, formatRate}, ratio(ref.cost[side], ref.kWh[side]))
	}
	ref.difference = s.live(place{costGapCol, p.row}, style{total, signed(formatTwo)}, minus(ref.cost[0], ref.cost[1]))
	return p
}

// standing adds the standing charge, which is the same for both options and so
// no part of the comparison.
func (s *sheet) standing(ref *billRef, in *tariffRefs, p place) {
	s.text(p.down(1), label, "Standing charge (same for both)")
	s.text(p.down(2), total, "Bill with standing charge")
	for side := range sideOrder() {
		q := place{billCostCol + side*billSides, p.row}
		charge := s.live(q.down(1), style{derived, formatTwo}, in.taxed(times(in.standing, s.book.inputs.days)))
		s.live(q.down(2), style{total, formatTwo}, plus(ref.cost[side], charge))
	}
}

package workbook

import (
	"fmt"
	"math"

	"github.com/xuri/excelize/v2"
)

// lifeTable is where the columns of the table of years begin.
type lifeTable struct {
	discount, growth      place
	paid, residual, total [2]place
}

// Columns of the table: year, discount factor, growth of prices; then five of
// each option.
const (
	lifeDiscountCol = 2
	lifeGrowthCol   = 3
	lifeSideCol     = 4
	lifeSideCols    = 5
	lifeCols        = lifeSideCol + 2*lifeSideCols - 1
)

// lifeYears writes what each option costs at the end of each year, today being
// year 0. Years beyond the horizon count nothing.
func (s *sheet) lifeYears(at place) *lifeTable {
	s.text(at, heading, "What is paid at the end of each year, "+s.book.currency()+" of today; years beyond the horizon count nothing")
	heads := []string{"Year (0 is today)", "Discount factor", "Growth of electricity prices"}
	for side := range sideOrder() {
		name := capital(blockName(side))
		heads = append(heads, name+": bought, replaced", name+": service", name+": electricity", name+": worth left", name+": total")
	}
	s.tops(at.down(1), 44, heads...)
	first := at.down(2)
	t := &lifeTable{discount: place{lifeDiscountCol, first.row}, growth: place{lifeGrowthCol, first.row}}
	for side := range sideOrder() {
		p := place{lifeSideCol + side*lifeSideCols, first.row}
		t.paid[side], t.residual[side], t.total[side] = p, p.right(3), p.right(4)
	}
	for y := range longestHorizon + 1 {
		s.lifeYear(first.down(y), y)
		s.height(first.down(y).row, lifeYearHeight)
	}
	s.hideBeyondHorizon(first)
	return t
}

// lifeYearHeight lets every year that a horizon may have go on one printed page, in
// points.
const lifeYearHeight = 12.0

// hideBeyondHorizon shows no year beyond the horizon: its row is there for a longer
// one only.
func (s *sheet) hideBeyondHorizon(first place) {
	id, err := s.book.file.NewConditionalStyle(&excelize.Style{Font: &excelize.Font{Color: paperColour}})
	s.book.keep(err)
	s.book.keep(s.book.file.SetConditionalFormat(s.name, first.String()+":"+first.down(longestHorizon).String(), []excelize.ConditionalFormatOptions{
		{Type: "formula", Criteria: fmt.Sprintf("$A%d>%s", first.row, s.book.inputs.life.horizon.text), Format: &id},
	}))
}

func (s *sheet) lifeYear(p place, y int) {
	l, hundred := &s.book.inputs.life, hundred()
	year := s.number(p, style{answer, formatWhole}, float64(y))
	counts := compared(year, "<=", l.horizon, year.num() <= l.horizon.num())
	rate := plus(one(), quotient(l.discount, hundred))
	s.live(place{lifeDiscountCol, p.row}, style{derived, blankZero(formatRate)}, choose(counts, power(rate, negative(year)), zero()))
	later := call("AND", y > 0 && counts.value == true, year.text+">0", counts.text)
	growth := s.live(place{lifeGrowthCol, p.row}, style{derived, blankZero(formatRate)}, choose(later, power(plus(one(), quotient(l.growth, hundred)), year), zero()))
	for side := range sideOrder() {
		s.lifeSide(place{lifeSideCol + side*lifeSideCols, p.row}, side, year, growth, later)
	}
}

// lifeSide writes one option's year.
func (s *sheet) lifeSide(p place, side int, year, growth, later term) {
	l := &s.book.inputs.life
	o, st := &l.outlay[side], style{derived, blankZero(formatTwo)}
	capital := plus(o.purchase, o.installation, o.volumiser)
	bought := s.live(p, st, choose(paid(year, l.horizon, o.life), capital, zero()))
	service := s.live(p.right(1), st, choose(later, plus(o.check, o.upkeep, o.descaling), zero()))
	energy := s.live(p.right(2), st, times(s.book.bills.tariffs[0].cost[side], growth))
	atEnd := compared(year, "=", l.horizon, year.num() == l.horizon.num())
	left := s.live(p.right(3), st, choose(atEnd, residual(capital, l.horizon, o.life), zero()))
	s.live(p.right(4), st, minus(plus(bought, service, energy), left))
}

// paid reports whether purchase and installation are paid in a year: today, and
// when a life ends before the horizon.
func paid(year, horizon, life term) term {
	is := year.num() < horizon.num() && math.Mod(year.num(), life.num()) == 0
	return call("AND", is, year.text+"<"+horizon.text, "MOD("+year.text+","+life.text+")=0")
}

// residual is what the last purchase is still worth at the horizon, in
// proportion to the life that it has left.
func residual(capital, horizon, life term) term {
	replacements := math.Floor((horizon.num() - 1) / life.num())
	age := minus(horizon, times(call("INT", replacements, "("+horizon.text+"-1)/"+life.text), life))
	return quotient(times(capital, minus(life, age)), life)
}

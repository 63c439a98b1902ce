package workbook

import (
	"math"

	"github.com/xuri/excelize/v2"
)

// costRefs are costs over the whole life that other sheets refer to.
type costRefs struct {
	present, annual [2]term
	annualGap       term
	low, high       term // 90 % interval of the difference in annual cost
	perYear, energy term // what a yearly cost, and a first year's electricity, are worth today
	fixed           [2]term
	breakEven       []term  // factor on unit rates, by tariff
	flows           [2]term // discounted, added up year by year
}

// Rows of the sheet: the table of years stands below everything else.
const (
	lifeFactorRow = 4
	lifePartsRow  = 8
)

func (b *book) writeLifeCost() {
	s := b.sheet(lifeName)
	b.costs = &costRefs{}
	s.head("Whole-life cost", "In today's money over the horizon of the sheet Assumptions; costs of electricity have the boundary of the sheet Tariff and bills.")
	s.widths(50, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14, 14)
	years := place{1, b.lifeYearsRow()}
	table := s.lifeYears(years)
	s.lifeFactors(table)
	at := s.lifeParts(table, place{1, lifePartsRow})
	s.lifeTariffs(at)
	s.lay(page{freeze: place{2, 3}, titleRows: 2, last: place{lifeCols, years.row + 2 + longestHorizon}})
	s.book.keep(b.file.InsertPageBreak(s.name, place{1, years.row}.String()))
}

// lifeYearsRow is the row of the heading of the table of years.
func (b *book) lifeYearsRow() int {
	const parts, gaps = 15, 5
	return lifePartsRow + parts + gaps + len(b.comparison().Tariffs)
}

// lifeFactors writes what yearly payments are worth today.
func (s *sheet) lifeFactors(t *lifeTable) {
	c := s.book.costs
	s.text(place{1, lifeFactorRow}, label, "Worth today of 1 paid every year")
	c.perYear = s.live(place{2, lifeFactorRow}, style{derived, formatRate}, sum(s.later(t.discount)))
	s.text(place{1, lifeFactorRow + 1}, label, "Worth today of 1 of electricity a year, with its growth")
	c.energy = s.live(place{2, lifeFactorRow + 1}, style{derived, formatRate}, sumProduct(s.column(t.discount), s.column(t.growth)))
}

// later is a column of the table of years without today.
func (s *sheet) later(first place) span { return s.span(first.down(1), first.down(longestHorizon)) }

// column is a column of the table of years.
func (s *sheet) column(first place) span { return s.span(first, first.down(longestHorizon)) }

// lifeParts divides the net present cost of each option.
func (s *sheet) lifeParts(t *lifeTable, at place) place {
	b, c := s.book, s.book.costs
	s.tops(at, 30, "Worth today, "+b.currency(), "Compact store", "Cylinder", "Difference")
	parts := []struct {
		words string
		of    func(side int) term
	}{
		{"Purchase", func(side int) term { return b.inputs.life.outlay[side].purchase }},
		{"Installation", func(side int) term { return b.inputs.life.outlay[side].installation }},
		{"Volumiser, fitted", func(side int) term { return b.inputs.life.outlay[side].volumiser }},
		{"Replacement", func(side int) term { return sumProduct(s.later(t.discount), s.later(t.paid[side])) }},
		{"Safety check", func(side int) term { return times(b.inputs.life.outlay[side].check, c.perYear) }},
		{"Upkeep", func(side int) term { return times(b.inputs.life.outlay[side].upkeep, c.perYear) }},
		{"Descaling", func(side int) term { return times(b.inputs.life.outlay[side].descaling, c.perYear) }},
		{"Worth left at the end (taken off)", func(side int) term { return negative(sumProduct(s.column(t.discount), s.column(t.residual[side]))) }},
	}
	p := at
	for _, part := range parts {
		p = p.down(1)
		s.pairRow(p, label, part.words, formatTwo, part.of)
	}
	first := at.down(1)
	s.pairRow(p.down(1), label, "Electricity", formatTwo, func(side int) term { return times(b.bills.tariffs[0].cost[side], c.energy) })
	add := func(last place) func(side int) term {
		return func(side int) term { return sum(s.span(first.right(1+side), last.right(1+side))) }
	}
	present := s.pairRow(p.down(2), total, "Net present cost", formatTwo, add(p.down(1)))
	fixed := s.pairRow(p.down(3), label, "Of which all but electricity", formatTwo, add(p))
	c.present, c.fixed = [2]term{present[0], present[1]}, [2]term{fixed[0], fixed[1]}
	annual := s.pairRow(p.down(4), total, "Equivalent annual cost", formatTwo, func(side int) term { return quotient(present[side], c.perYear) })
	c.annual, c.annualGap = [2]term{annual[0], annual[1]}, annual[2]
	s.annualInterval(p.down(5))
	s.lifeChart(at, p.down(1))
	for side := range sideOrder() {
		c.flows[side] = sumProduct(s.column(t.discount), s.column(t.total[side]))
	}
	return p.down(8)
}

// lifeChart draws where the money goes, beside the table.
func (s *sheet) lifeChart(top, last place) {
	first := top.down(1)
	var series []excelize.ChartSeries
	for side := range sideOrder() {
		series = append(series, s.optionSeries(side, s.absolute(first, last), s.absolute(first.right(1+side), last.right(1+side))))
	}
	s.drawChart(place{6, top.row}, chart{title: "Worth today of what each option costs, " + s.book.currency(), kind: excelize.Col, width: 820, height: 400,
		description: "Worth today of each part of the cost, both options side by side"}, series)
}

// pairRow writes a figure of both options and the difference.
func (s *sheet) pairRow(p place, l look, words, format string, of func(side int) term) [3]term {
	value := derived
	if l == total {
		value = total
	}
	s.text(p, l, words)
	var out [3]term
	for side := range sideOrder() {
		out[side] = s.live(p.right(1+side), style{value, format}, of(side))
	}
	out[2] = s.live(p.right(3), style{value, signed(format)}, minus(out[0], out[1]))
	return out
}

// annualInterval carries the interval of the running cost over to the annual
// cost: everything else is the same in every year of weather.
func (s *sheet) annualInterval(p place) {
	c, spread := s.book.costs, s.book.risk.rows["cost_per_year"][differenceBlock]
	weight := quotient(c.energy, c.perYear)
	end := func(p place, words string, end term) term {
		s.text(p, label, words)
		return s.live(p.right(3), style{derived, signed(formatTwo)}, plus(c.annualGap, times(weight, minus(end, spread.mean))))
	}
	c.low = end(p, "90 % interval of the mean difference a year, low", spread.low)
	c.high = end(p.down(1), "90 % interval of the mean difference a year, high", spread.high)
}

// lifeTariffs gives the annual cost on each tariff, and the factor on all unit
// rates at which both options cost the same over their lives.
func (s *sheet) lifeTariffs(at place) {
	b, c := s.book, s.book.costs
	s.tops(at, 44, "Equivalent annual cost, "+b.currency(), "Compact store", "Cylinder", "Difference", "Break-even factor on unit rates")
	for i := range b.bills.tariffs {
		p, bill := at.down(1+i), &b.bills.tariffs[i]
		s.foreign(p, b.comparison().Tariffs[i].Name)
		var annual [2]term
		for side := range sideOrder() {
			annual[side] = s.live(p.right(1+side), style{derived, formatTwo}, quotient(plus(c.fixed[side], times(bill.cost[side], c.energy)), c.perYear))
		}
		s.live(p.right(3), style{derived, signed(formatTwo)}, minus(annual[0], annual[1]))
		c.breakEven = append(c.breakEven, s.live(p.right(4), style{rightFigure, formatTwo}, s.breakEven(bill)))
	}
}

// noneWord stands for a figure that does not exist.
const noneWord = "none"

// breakEven is the factor on unit rates at which what electricity adds to the
// difference makes up for all else; none if they never meet.
func (s *sheet) breakEven(bill *billRef) term {
	c := s.book.costs
	gap := times(bill.difference, c.energy)
	rest := minus(c.fixed[1], c.fixed[0])
	// A quotient below zero has numbers of unlike signs.
	meets := call("AND", gap.num() != 0 && rest.num()*gap.num() >= 0, gap.text+"<>0", rest.tight()+"*"+gap.text+">=0")
	x := term{text: rest.tight() + "/(" + gap.text + ")"}
	if meets.value == true {
		x.value = rest.num() / gap.num()
	}
	return choose(meets, x, words(noneWord))
}

func negative(t term) term { return term{text: "-" + t.tight(), value: -t.num(), loose: true} }

func sumProduct(a, b span) term {
	v := 0.0
	for i := range a.values {
		v += a.values[i] * b.values[i]
	}
	return call("SUMPRODUCT", v, a.text, b.text)
}

// power is base^exponent.
func power(base, exponent term) term {
	return term{text: "(" + base.text + ")^" + exponent.tight(), value: math.Pow(base.num(), exponent.num())}
}

package workbook

import "github.com/xuri/excelize/v2"

// whyTop is the row of the headings of the table.
const whyTop = 4

// writeWhy divides the difference in electricity by what makes it.
func (b *book) writeWhy() {
	s, d := b.sheet(whyName), &b.comparison().ByCause
	s.head("Why they differ: the difference in electricity by what makes it", "Compact store minus cylinder, hot water and heating together. Effects were taken away one after the other, in this order, from both options; each is given the difference that went with it.")
	s.widths(46, 16, 16, 60)
	s.tops(place{1, whyTop}, 32, "Effect", "Difference, kWh a year", "Share of the difference")
	first := place{1, whyTop + 1}
	var cells []term
	for i, part := range d.Parts {
		s.text(first.down(i), label, capital(part.Label))
		cells = append(cells, s.number(first.down(i).right(1), style{simulated, signed(formatOne)}, part.KWh))
	}
	end := first.down(len(d.Parts))
	s.text(end, total, "All effects")
	whole := s.live(end.right(1), style{total, signed(formatOne)}, sum(s.span(first.right(1), end.right(1).down(-1))))
	for i, c := range cells {
		s.live(first.down(i).right(2), style{derived, formatPercent}, ratio(c, whole))
	}
	s.live(end.right(2), style{total, formatPercent}, sum(s.span(first.right(2), end.right(2).down(-1))))
	s.whyCheck(whole, end.down(1))
	s.text(end.down(5), sentence, "The last line holds what is left when all else is gone, and what the effects do to each other.")
	s.text(end.down(6), sentence, "Parts were found on the first of the simulated years; a share can exceed 100 % where effects pull in both directions.")
	chart := end.down(8)
	s.whyChart(chart, first, end.down(-1))
	const chartSpace = 25 // rows
	s.lay(page{onePage: true, last: place{4, chart.row + chartSpace}})
}

// whyCheck holds the sum against the difference of the months.
func (s *sheet) whyCheck(whole term, p place) {
	b := s.book
	electricity := [2]term{}
	for side := range sideOrder() {
		electricity[side], _ = b.yearOf(side, "whole_house_electricity_kwh")
	}
	s.text(p, label, "Difference of the year, from the sheet Months")
	year := s.live(p.right(1), style{derived, signed(formatOne)}, minus(electricity[0], electricity[1]))
	s.text(p.down(1), label, "Parts less difference")
	s.live(p.down(1).right(1), style{derived, formatTiny}, minus(whole, year))
	s.text(p.down(2), label, "Parts add up to the difference?")
	rest, allowed := minus(whole, year), times(b.inputs.tolerance, plus(one(), electricity[0]))
	ok := compared(call("ABS", abs(rest.num()), rest.text), "<=", allowed, abs(rest.num()) <= allowed.num())
	s.live(p.down(2).right(1), style{look: outcome}, choose(ok, words(passWord), words(failWord)))
	b.expect("Parts of the difference in electricity = difference of the year", whole, year)
}

func abs(v float64) float64 { return max(v, -v) }

func (s *sheet) whyChart(at, first, last place) {
	const grey = "6B6B6B"
	s.drawChart(at, chart{title: "What makes the difference in electricity, kWh a year (above zero: the compact store takes more)", kind: excelize.Bar, width: 980, height: 470, plain: true,
		description: "Parts of the difference in electricity, one bar for each effect"}, []excelize.ChartSeries{{
		Name: s.absolute(place{2, whyTop}, place{2, whyTop}), Categories: s.absolute(first, last), Values: s.absolute(first.right(1), last.right(1)), Fill: solid(grey),
	}})
}

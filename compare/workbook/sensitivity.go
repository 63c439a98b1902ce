package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// Columns of the table of inputs.
const (
	leverValueCol  = 3 // as is, low, high
	leverCostCol   = 6 // difference in cost at low and high
	leverChangeCol = 8 // of that difference, at low and high
	leverSpanCol   = 10
	leverTakeCol   = 11 // recommendation at low and high
	leverFailCol   = 13 // failing showers at low and high, of each option
	leverTurnsCol  = 17
	leverTop       = 9
)

// writeSensitivity shows which inputs move the decision.
func (b *book) writeSensitivity() {
	s, d := b.sheet(sensitivityName), b.doc.Sensitivity
	s.head("Sensitivity: which uncertain inputs move the decision", "One input at a time between a low and a high value; what two of them do together is not shown. Widest first.")
	s.frozenNote(place{1, 3})
	s.widths(33, 8)
	s.columnWidth(leverValueCol, leverTurnsCol-1, 9.5)
	s.columnWidth(leverTurnsCol, leverTurnsCol, 38)
	base := s.leverBase(d, place{1, 5})
	s.leverTops()
	p := place{1, leverTop}
	for i := range d.Inputs {
		p = p.down(1)
		s.lever(&d.Inputs[i], base, p)
	}
	last := p
	if len(d.Inputs) > 0 {
		s.leverChart(p)
		last = p.down(24)
	}
	s.lay(page{onePage: true, freeze: place{2, leverTop + 1}, titleRows: leverTop, last: place{leverTurnsCol, last.row}})
}

// leverBase writes the decision as the case is, and gives its difference in cost.
func (s *sheet) leverBase(d *compare.Sensitivity, p place) term {
	s.text(p, label, "Years lived through")
	s.number(p.right(2), style{simulated, formatWhole}, float64(d.Years))
	s.text(p.down(1), label, "Difference in cost a year, "+s.book.currency())
	base := s.number(p.down(1).right(2), style{simulated, signed(formatTwo)}, d.Base.CostDifference)
	s.text(p.down(2), label, "Take, as the case is")
	s.text(p.down(2).right(2), rightText, string(d.Base.Recommend))
	return base
}

func (s *sheet) leverTops() {
	money := s.book.currency()
	s.tops(place{1, leverTop}, 66, "Input", "Unit", "As it is", "Low", "High", "Difference in cost, low, "+money, "Difference in cost, high, "+money,
		"Change at low, "+money, "Change at high, "+money, "Span, "+money, "Take at low", "Take at high",
		"Failing at low, compact store", "Failing at high, compact store", "Failing at low, cylinder", "Failing at high, cylinder", "Decision")
}

func (s *sheet) lever(in *compare.SensitivityInput, base term, p place) {
	s.text(p, label, capital(in.Label))
	s.text(p.right(1), unit, wording.Unit(in.Unit))
	for i, v := range []float64{in.BaseValue, in.LowValue, in.HighValue} {
		s.number(place{leverValueCol + i, p.row}, style{simulated, formatTwo}, v)
	}
	var cost [2]term
	for i, end := range []*compare.SensitivityPoint{&in.Low, &in.High} {
		cost[i] = s.number(place{leverCostCol + i, p.row}, style{simulated, signed(formatTwo)}, end.CostDifference)
		s.live(place{leverChangeCol + i, p.row}, style{derived, signed(formatTwo)}, minus(cost[i], base))
		s.text(place{leverTakeCol + i, p.row}, rightText, string(end.Recommend))
		s.number(place{leverFailCol + i, p.row}, style{simulated, formatOne}, end.FailingCompact)
		s.number(place{leverFailCol + 2 + i, p.row}, style{simulated, formatOne}, end.FailingCylinder)
	}
	low, high := min(cost[0].num(), cost[1].num(), base.num()), max(cost[0].num(), cost[1].num(), base.num())
	ends := []string{cost[0].text, cost[1].text, base.text}
	s.live(place{leverSpanCol, p.row}, style{derived, formatTwo}, minus(call("MAX", high, ends...), call("MIN", low, ends...)))
	s.text(place{leverTurnsCol, p.row}, unit, capital(wording.InPrint(in.Turns)))
}

// leverChart draws the change of the difference in cost at both ends.
func (s *sheet) leverChart(last place) {
	const lowColour, highColour = "7A9CC6", "3B3B3B"
	first := place{1, leverTop + 1}
	var series []excelize.ChartSeries
	for i, colour := range []string{lowColour, highColour} {
		p := place{leverChangeCol + i, first.row}
		series = append(series, excelize.ChartSeries{Name: s.absolute(place{leverValueCol + 1 + i, leverTop}, place{leverValueCol + 1 + i, leverTop}),
			Categories: s.absolute(first, last), Values: s.absolute(p, place{p.col, last.row}), Fill: solid(colour)})
	}
	s.drawChart(last.down(2), chart{title: "Change of the difference in cost, " + s.book.currency() + " a year (above zero: the compact store costs more)", kind: excelize.Bar, width: 980, height: 440,
		stacked: true, description: "Change of the difference in cost with each input at its low and at its high value"}, series)
}

package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// otherTest is a column of the tests besides the minutes of shower.
type otherTest struct {
	top, format string
	of          func(r *compare.DrawoffResults, month int) float64
	negative    bool // means that there is none
	compare     bool // is set against the other option
	capped      bool // the test may end first
}

// otherTests are the columns, without those that say yes or no.
func otherTests() []otherTest {
	return []otherTest{
		{"Second shower, min", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.BackToBack[m].Minutes }, false, true, true},
		{"Shortest pause that serves, min", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.BackToBack[m].ShortestPauseMin }, true, true, false},
		{"Largest steady flow, l/min", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.SteadyFlow[m] }, false, true, false},
		{"Bath: flow, l/min", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.Bath[m].FlowLPerMin }, false, false, false},
		{"Bath: filled in, min", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.Bath[m].Minutes }, false, true, false},
		{"Bath: mean, °C", formatOne, func(r *compare.DrawoffResults, m int) float64 { return r.Bath[m].MeanC }, false, true, false},
		{"Recharge after a shower, min", formatWhole, func(r *compare.DrawoffResults, m int) float64 { return r.RechargeMin[m] }, true, true, false},
		{"Heating up from mains, min", formatWhole, func(r *compare.DrawoffResults, m int) float64 { return r.FromColdMin[m] }, true, true, false},
	}
}

// Columns of the tables: month, the tests, then what serves.
const (
	otherCount = 8
	servesCol  = 2 + otherCount
	otherCols  = servesCol + 1

	secondTest = 0 // places among the tests
	steadyTest = 2
)

// others writes the other tests of one option.
func (w *drawoffWriter) others(side int) {
	r := w.tests.Of(compare.Side(side))
	w.text(w.at, heading, wording.Sprintf("Other tests: %s (second shower after a pause of %.3g min; steady flow that never runs cold with the heat pump on)", blockName(side), w.tests.PauseMin))
	heads := []string{"Month"}
	for _, t := range otherTests() {
		heads = append(heads, t.top)
	}
	w.tops(w.at.down(1), 68, append(heads, "Second shower served?", "Bath served?")...)
	first := w.at.down(2)
	w.steady[side] = first.right(1 + steadyTest)
	for m := range calendar.MonthsInAYear {
		p := first.down(m)
		w.text(p, label, calendar.ShortMonth(m))
		for i, t := range otherTests() {
			v := t.of(r, m)
			found := w.numberOrNone(p.right(1+i), w.formatOf(&t), v, !t.negative || v >= 0)
			w.found[side][m] = append(w.found[side][m], found)
		}
		second := w.found[side][m][secondTest]
		serves := w.live(place{servesCol, p.row}, style{look: rightFigure}, yesOrNo(compared(second, ">=", w.length, second.num() >= w.length.num())))
		w.book.expect(fmt.Sprintf("%s, %s: second shower served", capital(blockName(side)), calendar.ShortMonth(m)), serves, programWord(r.BackToBack[m].Serves))
		w.yesNo(place{servesCol + 1, p.row}, r.Bath[m].Serves)
	}
	w.otherSums(r, first)
	w.at = first.down(calendar.MonthsInAYear + 2)
}

// formatOf shows where a test ended first.
func (w *drawoffWriter) formatOf(t *otherTest) string {
	if t.capped {
		return w.capped()
	}
	return t.format
}

// otherSums adds the least of the year, and the months that are served.
func (w *drawoffWriter) otherSums(r *compare.DrawoffResults, first place) {
	end := first.down(calendar.MonthsInAYear)
	w.text(end, total, "Least; months served")
	for _, i := range []int{secondTest, steadyTest} {
		top := first.right(1 + i)
		w.live(end.right(1+i), style{total, w.formatOf(&otherTests()[i])}, least(w.span(top, end.right(1+i).down(-1))))
	}
	served := [2]float64{}
	for m := range calendar.MonthsInAYear {
		for i, yes := range []bool{r.BackToBack[m].Minutes >= w.length.num(), r.Bath[m].Serves} {
			if yes {
				served[i]++
			}
		}
	}
	for i, n := range served {
		top := place{servesCol + i, first.row}
		w.live(place{top.col, end.row}, style{total, formatWhole}, call("COUNTIF", n, w.span(top, top.down(calendar.MonthsInAYear-1)).text, words(yesWord).text))
	}
}

// gaps sets the other tests of both options against each other.
func (w *drawoffWriter) gaps() {
	w.breakBefore(w.at)
	w.text(w.at, heading, "Other tests: difference")
	heads := []string{"Month"}
	for _, t := range otherTests() {
		heads = append(heads, t.top)
	}
	w.tops(w.at.down(1), 68, heads...)
	first := w.at.down(2)
	for m := range calendar.MonthsInAYear {
		p := first.down(m)
		w.text(p, label, calendar.ShortMonth(m))
		for i, t := range otherTests() {
			if t.compare {
				w.live(p.right(1+i), style{rightFigure, signed(t.format)}, gap(w.found[0][m][i], w.found[1][m][i]))
			}
		}
	}
	w.at = first.down(calendar.MonthsInAYear + 1)
}

// charts draws the steady flow, and the minutes that the vessel alone serves, and
// gives the last row that they cover.
func (w *drawoffWriter) charts() int {
	nearest := w.tests.NearestFlow(w.book.doc.Case.Household.ShowerFlowLPerMin)
	draw := func(at place, c chart, first [2]place) {
		var series []excelize.ChartSeries
		for side := range sideOrder() {
			series = append(series, w.optionSeries(side, w.monthNames(first[side].row), w.absolute(first[side], first[side].down(calendar.MonthsInAYear-1))))
		}
		c.kind, c.width, c.height = excelize.Col, 620, 300
		w.drawChart(at, c, series)
	}
	if w.off[0].row > 0 {
		draw(w.at.down(1), chart{title: wording.Sprintf("Shower from the vessel alone at %.3g l/min, min", w.tests.FlowsLPerMin[nearest]),
			description: "Minutes of shower with the heat pump off, month by month"}, [2]place{w.off[0].right(nearest), w.off[1].right(nearest)})
	}
	draw(w.at.down(1).right(9), chart{title: "Largest shower flow that never runs cold, l/min", description: "Largest steady flow with the heat pump on, month by month"}, w.steady)
	const chartSpace = 17
	return w.at.row + chartSpace
}

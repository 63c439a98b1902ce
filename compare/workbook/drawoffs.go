package workbook

import (
	"fmt"
	"math"
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// drawoffWriter fills the sheet of timed tests from the top.
type drawoffWriter struct {
	*sheet
	at     place
	tests  *compare.Drawoff
	length term                              // of the household's mean shower
	off    [2]place                          // first minutes of shower of each option with the heat pump off
	steady [2]place                          // first steady flow of each option
	found  [2][calendar.MonthsInAYear][]term // of the other tests
}

// drawoffLengthRow is the row of the length of the household's shower.
const drawoffLengthRow = 4

// writeDrawoffs shows the timed tests of both options.
func (b *book) writeDrawoffs() {
	d := b.doc.Draws
	w := &drawoffWriter{sheet: b.sheet(drawoffsName), at: place{1, drawoffLengthRow + 2}, tests: d}
	w.head("Draw-offs: timed tests of both options", "Simulated (italic), from a vessel charged to its setpoint, in each month's weather and mains water. Minimum, mean, difference and counts are formulas.")
	w.text(place{1, 3}, sentence, wording.Sprintf("A test ends after %.0f minutes: \"%.0f+\" never ran cold, so its differences are of the test, not of the vessel. Shaded: shorter than the household's mean shower.", d.LongestMin, d.LongestMin))
	w.text(place{1, drawoffLengthRow}, label, "Household's mean shower, min")
	w.length = w.number(place{2, drawoffLengthRow}, style{simulated, formatOne}, b.doc.Case.Household.ShowerMinutes)
	w.widths(29)
	width := 1 + 3*len(d.FlowsLPerMin)
	w.columnWidth(2, width, 8.5)
	const statesAPage = 2
	for i, state := range d.States {
		if i > 0 && i%statesAPage == 0 {
			w.breakBefore(w.at)
		}
		w.showers(i, state)
	}
	w.breakBefore(w.at)
	for side := range sideOrder() {
		w.others(side)
	}
	w.gaps()
	w.rule()
	last := w.charts()
	w.lay(page{freeze: place{2, 3}, titleRows: 2, last: place{max(width, otherCols), last}})
}

// capped shows minutes, and a sign where the test ended first.
func (w *drawoffWriter) capped() string {
	return fmt.Sprintf(`[>=%g]0"+";0.0`, w.tests.LongestMin)
}

// showers writes the minutes of shower with the heat pump in one state: months
// below each other, and flows of both options and their difference side by side.
func (w *drawoffWriter) showers(state int, name string) {
	w.text(w.at, heading, "Minutes of shower until it is too cold: heat pump "+heatPumpState(name))
	top := w.at.down(1)
	w.tops(top, 18, "Flow of the shower")
	flows := len(w.tests.FlowsLPerMin)
	first := top.down(2)
	for block := range 3 {
		p := top.right(1 + block*flows)
		w.blockTop(p, capital(blockName(block)), flows)
		for f, flow := range w.tests.FlowsLPerMin {
			w.number(p.right(f).down(1), style{columnTop, `General" l/min"`}, flow)
		}
	}
	w.text(top.down(1), columnTop, "Month")
	for m := range calendar.MonthsInAYear {
		w.showerMonth(state, m, first.down(m))
	}
	w.showerSums(first)
	if name == stateOff {
		w.off = [2]place{first.right(1), first.right(1 + flows)}
	}
	w.at = first.down(calendar.MonthsInAYear + 4)
}

// blockTop heads a block of columns without merging cells.
func (w *drawoffWriter) blockTop(p place, name string, columns int) {
	for i := range columns {
		w.text(p.right(i), columnTop, "")
	}
	w.text(p, topLeft, name)
}

// stateOff is the state of the heat pump in which the vessel serves alone.
const stateOff = "off"

// heatPumpState puts a state in words.
func heatPumpState(name string) string {
	switch name {
	case "full output":
		return "at full output"
	case "capped":
		return "capped to half of its output"
	case stateOff:
		return "off: the vessel alone"
	}
	return name
}

func (w *drawoffWriter) showerMonth(state, m int, p place) {
	w.text(p, label, calendar.ShortMonth(m))
	flows := len(w.tests.FlowsLPerMin)
	for f := range flows {
		var of [2]term
		for side := range sideOrder() {
			of[side] = w.number(p.right(1+side*flows+f), style{simulated, w.capped()}, w.tests.Of(compare.Side(side)).ShowerMin[m][state][f])
		}
		w.live(p.right(1+2*flows+f), style{derived, signed(formatOne)}, minus(of[0], of[1]))
	}
}

// showerSums adds least, mean and the count of months that are too short.
func (w *drawoffWriter) showerSums(first place) {
	flows := len(w.tests.FlowsLPerMin)
	end := first.down(calendar.MonthsInAYear)
	for i, words := range []string{"Least", "Mean", "Months shorter than the shower"} {
		w.text(end.down(i), total, words)
	}
	for c := range 3 * flows {
		top := first.right(1 + c)
		months := w.span(top, top.down(calendar.MonthsInAYear-1))
		p, gaps := end.right(1+c), c >= 2*flows
		format := w.capped()
		if gaps {
			format = signed(formatOne)
		}
		w.live(p, style{total, format}, least(months))
		w.live(p.down(1), style{derived, format}, mean(months))
		if !gaps {
			w.live(p.down(2), style{derived, formatWhole}, w.tooShort(months))
			w.shade(top)
		}
	}
}

// tooShort counts the months in which a shower ends before the household's would.
func (w *drawoffWriter) tooShort(months span) term {
	n := 0.0
	for _, v := range months.values {
		if v < w.length.num() {
			n++
		}
	}
	return call("COUNTIF", n, months.text, `"<"&`+w.length.text)
}

// shade marks the months in which a shower is cut short.
func (w *drawoffWriter) shade(top place) {
	id, err := w.book.file.NewConditionalStyle(&excelize.Style{Font: &excelize.Font{Bold: true, Color: inkColour}, Fill: solid(shortFill)})
	w.book.keep(err)
	w.book.keep(w.book.file.SetConditionalFormat(w.name, top.String()+":"+top.down(calendar.MonthsInAYear-1).String(), []excelize.ConditionalFormatOptions{
		{Type: "cell", Criteria: "<", Value: fmt.Sprintf("$B$%d", drawoffLengthRow), Format: &id},
	}))
}

func least(s span) term {
	v := math.Inf(1)
	for _, x := range s.values {
		v = min(v, x)
	}
	return call("MIN", v, s.text)
}

func mean(s span) term {
	return call("AVERAGE", sum(s).num()/float64(len(s.values)), s.text)
}

// rule sets the rule of practice side by side.
func (w *drawoffWriter) rule() {
	a, b := &w.tests.Compact.Rule, &w.tests.Cylinder.Rule
	w.text(w.at, heading, fmt.Sprintf("Rule of practice: the vessel alone bridges a defrost and the restart (in %s, the month of the coldest mains)", time.Month(a.Month)))
	w.tops(w.at.down(1), 30, "", "Unit", "Compact store", "Cylinder", "Difference")
	p := w.at.down(2)
	need := w.both(p, bothLine{words: "Minutes of shower needed", unit: "min", format: formatOne, of: [2]float64{a.NeedMin, b.NeedMin}})
	have := w.both(p.down(1), bothLine{words: "Minutes of shower there are", unit: "min", format: w.capped(), gapFormat: formatOne, of: [2]float64{a.HaveMin, b.HaveMin}})
	w.text(p.down(2), label, "Rule met?")
	for side, r := range []*compare.DesignRule{a, b} {
		met := w.live(p.down(2).right(2+side), style{look: outcome}, yesOrNo(compared(have[side], ">=", need[side], have[side].num() >= need[side].num())))
		w.book.expect(capital(blockName(side))+": rule of practice met", met, programWord(r.Holds))
	}
	for i, l := range []struct {
		words, unit string
		of          [2]float64
	}{
		{"Setpoint that meets it", "°C", [2]float64{a.SetpointC, b.SetpointC}},
		{"Flow that meets it", "l/min", [2]float64{a.FlowLPerMin, b.FlowLPerMin}},
	} {
		q := p.down(3 + i)
		w.text(q, label, l.words)
		w.text(q.right(1), unit, l.unit)
		var of [2]term
		for side, v := range l.of {
			of[side] = w.numberOrNone(q.right(2+side), formatOne, v, v > 0)
		}
		w.live(q.right(4), style{rightFigure, signed(formatOne)}, gap(of[0], of[1]))
	}
	w.at = w.at.down(8)
}

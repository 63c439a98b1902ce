package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// writeOutlets shows how long people wait at each outlet, and whose showers fail
// and when.
func (b *book) writeOutlets() {
	s := b.sheet(outletsName)
	s.head("Outlets and queue: waits for warm water, and who runs cold when", "Mean year of the simulated years. Italic figures are simulated; the rest are formulas. Hours are of the wall clock.")
	s.widths(44, 10, 15, 15, 15)
	at := place{1, 4}
	waits := [2]term{zero(), zero()}
	for i := range b.risksOf(0).Waits {
		var wait [3]term
		at, wait = s.outlet(i, at)
		for side := range waits {
			waits[side] = plus(waits[side], wait[side])
		}
	}
	for side := range sideOrder() {
		if year, has := b.yearOf(side, "wait_minutes_per_year"); has {
			b.expect(capital(blockName(side))+": minutes of waiting for dead legs", waits[side], year)
		}
	}
	s.text(at, sentence, "A wait runs from opening the outlet until the water is warm enough. A draw-off that never gets warm counts with all of its time.")
	at = s.queue(at.down(2))
	at = s.hours(at)
	s.lay(page{portrait: true, onePage: true, last: place{5, at.row - 2}})
}

func (b *book) risksOf(side int) *compare.Risk {
	return &b.comparison().Options.Of(compare.Side(side)).Risk
}

// outlet writes the waits at one outlet. It gives the place of the next, and the
// minutes a year that go by until the dead leg is out.
func (s *sheet) outlet(i int, at place) (next place, deadLegMin [3]term) {
	s.text(at, heading, "Wait at the "+s.book.risksOf(0).Waits[i].Outlet)
	p := at.down(1)
	s.bothTops(p, "Figure")
	line := func(words, unit, format string, of func(w *compare.OutletWait) float64) [3]term {
		p = p.down(1)
		return s.both(p, bothLine{words: words, unit: unit, format: format, of: [2]float64{of(&s.book.risksOf(0).Waits[i]), of(&s.book.risksOf(1).Waits[i])}})
	}
	draws := line("Draw-offs a year", "", formatOne, func(w *compare.OutletWait) float64 { return w.Draws })
	line("Share that is warm at once", "", formatPercent, func(w *compare.OutletWait) float64 { return w.AtOnce })
	mean := line("Mean wait", "s", formatOne, func(w *compare.OutletWait) float64 { return w.MeanS })
	after := line("Of which after the dead leg", "s", formatOne, func(w *compare.OutletWait) float64 { return w.WarmUpS })
	line("Median", "s", formatOne, func(w *compare.OutletWait) float64 { return w.MedianS })
	line("95 % wait no longer than", "s", formatOne, func(w *compare.OutletWait) float64 { return w.P95S })
	line("Longest", "s", formatOne, func(w *compare.OutletWait) float64 { return w.LongestS })
	deadLegMin = s.bothLive(p.down(1), "Until the dead leg is out, a year", "min", formatWhole, func(side int) term {
		return quotient(times(draws[side], minus(mean[side], after[side])), s.book.inputs.secondsAMinute)
	})
	return p.down(3), deadLegMin
}

// queue divides the failing showers by place in the queue.
func (s *sheet) queue(at place) place {
	s.text(at, heading, "Failing showers by place in the queue")
	p := at.down(1)
	s.bothTops(p, "Place")
	first := p.down(1)
	for i, q := range s.book.risksOf(0).ByQueue {
		p = p.down(1)
		s.both(p, bothLine{words: queuePlace(q.Position, len(s.book.risksOf(0).ByQueue)), format: formatTwo,
			of: [2]float64{q.Failing, s.book.risksOf(1).ByQueue[i].Failing}})
	}
	return s.failingSum(first, p, "by place in the queue")
}

// hours divides them by hour of the wall clock.
func (s *sheet) hours(at place) place {
	s.text(at, heading, "Failing showers by hour of the wall clock")
	p := at.down(1)
	s.bothTops(p, "Hour")
	first := p.down(1)
	other := &s.book.risksOf(1).ByHour
	for h, n := range s.book.risksOf(0).ByHour {
		p = p.down(1)
		s.both(p, bothLine{words: fmt.Sprintf("%02d:00 to %02d:00", h, h+1), format: formatTwo, of: [2]float64{n, other[h]}})
	}
	return s.failingSum(first, p, "by hour")
}

// failingSum adds a table up and holds the sum against the year's failing showers.
func (s *sheet) failingSum(first, last place, by string) place {
	p := last.down(1)
	sums := s.bothLive(p, "All", "", formatTwo, func(side int) term { return sum(s.span(first.right(2+side), last.right(2+side))) })
	for side := range sideOrder() {
		if year, has := s.book.yearOf(side, "failing_showers_per_year"); has {
			s.book.expect(capital(blockName(side))+": failing showers "+by, sums[side], year)
		}
	}
	return p.down(2)
}

// queuePlace names a place in the queue; the last holds all beyond.
func queuePlace(position, places int) string {
	switch {
	case position == 0:
		return "First, or alone"
	case position == places-1:
		return fmt.Sprintf("Number %d or later", position+1)
	default:
		return fmt.Sprintf("Number %d", position+1)
	}
}

package workbook

import (
	"cmp"
	"fmt"
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// drawRefs are the counts of failing draw-offs of the shown year.
type drawRefs struct {
	counts map[string][2]term // by kind
}

// drawKinds are the kinds as the draw-offs name them.
func drawKinds() []string { return []string{"shower", "bath", "tap"} }

func (b *book) writeDraws() {
	s := b.sheet(failingName)
	b.draws = &drawRefs{counts: map[string][2]term{}}
	shown := &b.comparison().Shown
	s.head("Draws that fail", fmt.Sprintf("Every draw-off of simulated year %d that falls short by the rules of the case. Times are of standard time.", shown.Year))
	s.widths(17, 9, 8, 8, 8, 10, 10, 10, 10, 10, 10, 10, 12)
	s.tops(place{1, drawTop}, 42, "Option", "Day of the year", "Month", "Day", "Time", "Kind", "Place in queue", "Flowing, min", "Wanted, °C", "Mean, °C", "Lowest, °C", "Too cold, s", "Mean falls short by, K")
	p := place{1, drawTop}
	for side, list := range [][]compare.FailedDraw{shown.FailedCompact, shown.FailedCylinder} {
		for _, d := range inOrder(list) {
			p = p.down(1)
			s.failedDraw(side, &d, p)
		}
	}
	s.drawCounts(p.row)
	if p.row > drawTop {
		s.book.keep(b.file.AutoFilter(s.name, place{1, drawTop}.String()+":"+p.right(drawCols-1).String(), nil))
	}
	s.lay(page{portrait: true, freeze: place{1, drawTop + 1}, titleRows: drawTop, last: place{drawCols, max(p.row, drawTop+1)}})
}

// inOrder sorts draw-offs by the time at which they begin.
func inOrder(list []compare.FailedDraw) []compare.FailedDraw {
	sorted := slices.Clone(list)
	slices.SortStableFunc(sorted, func(a, b compare.FailedDraw) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.Hour, b.Hour))
	})
	return sorted
}

// drawTop is the row of the headings of the table.
const drawTop = 9

// hoursADay turns hours into the days in which a spreadsheet counts time.
const hoursADay = 24

// drawCols is the number of columns of the table.
const drawCols = 13

func (s *sheet) failedDraw(side int, d *compare.FailedDraw, p place) {
	month := calendar.MonthOfDay(d.Day - 1)
	s.text(p, label, blockName(side))
	for i, v := range []struct {
		value  float64
		format string
	}{
		{float64(d.Day), formatWhole}, {float64(month + 1), formatWhole}, {float64(d.Day - calendar.MonthStartDay(month)), formatWhole},
		{d.Hour / hoursADay, formatTime},
	} {
		s.number(p.right(1+i), style{simulated, v.format}, v.value)
	}
	s.text(p.right(5), unit, d.Kind)
	s.number(p.right(6), style{simulated, formatWhole}, float64(d.QueuePos))
	s.number(p.right(7), style{simulated, formatOne}, d.Minutes)
	wanted := s.number(p.right(8), style{simulated, formatOne}, d.WantC)
	mean := s.number(p.right(9), style{simulated, formatOne}, d.MeanC)
	s.number(p.right(10), style{simulated, formatOne}, d.LowestC)
	s.number(p.right(11), style{simulated, formatWhole}, d.ColdS)
	s.live(p.right(12), style{derived, formatOne}, minus(wanted, mean))
}

// drawCounts counts the table by option and kind.
func (s *sheet) drawCounts(last int) {
	at := place{1, 4}
	s.tops(at, 30, "Fail in the year", "Compact store", "Cylinder")
	end := max(last, drawTop+1)
	options := s.span(place{1, drawTop + 1}, place{1, end})
	kinds := s.span(place{6, drawTop + 1}, place{6, end})
	for i, kind := range drawKinds() {
		p := at.down(1 + i)
		s.text(p, label, kind)
		var refs [2]term
		for side := range sideOrder() {
			refs[side] = s.live(p.right(1+side), style{derived, formatWhole}, call("COUNTIFS", s.countDraws(side, kind),
				options.text, words(blockName(side)).text, kinds.text, s.prefix()+p.String()))
		}
		s.book.draws.counts[kind] = refs
	}
}

func (s *sheet) countDraws(side int, kind string) float64 {
	list := s.book.comparison().Shown.FailedCompact
	if side == int(compare.SideCylinder) {
		list = s.book.comparison().Shown.FailedCylinder
	}
	n := 0.0
	for i := range list {
		if list[i].Kind == kind {
			n++
		}
	}
	return n
}

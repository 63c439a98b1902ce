package workbook

import (
	"fmt"

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
	s := b.sheet(drawsName)
	b.draws = &drawRefs{counts: map[string][2]term{}}
	shown := &b.comparison().Shown
	s.text(place{1, 1}, title, "Draws that fail")
	s.text(place{1, 2}, label, fmt.Sprintf("Every draw-off of simulated year %d that falls short, by the case's service rules. Times are of standard time.", shown.Year))
	table := place{1, 10}
	s.tops(table, 42, "Option", "Day of the year", "Month", "Day", "Time", "Kind", "Place in queue", "Flowing, min", "Wanted, °C", "Mean, °C", "Lowest, °C", "Too cold, s", "Mean falls short by, K")
	p := table
	for side, list := range [][]compare.FailedDraw{shown.FailedCompact, shown.FailedCylinder} {
		for i := range list {
			p = p.down(1)
			s.failedDraw(side, &list[i], p)
		}
	}
	s.drawCounts(table, p)
	s.widths(15, 10, 8, 8, 8, 10, 10, 10, 10, 10, 10, 10, 12)
	if p.row > table.row {
		s.book.keep(b.file.AutoFilter(s.name, table.String()+":"+p.right(drawCols-1).String(), nil))
	}
	s.lay(page{freeze: place{1, table.row + 1}, titleRows: 0, last: place{drawCols, max(p.row, table.row+1)}})
}

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
		{d.Hour / 24, formatTime},
	} {
		s.number(p.right(1+i), style{simulated, v.format}, v.value)
	}
	s.text(p.right(5), label, d.Kind)
	s.number(p.right(6), style{simulated, formatWhole}, float64(d.QueuePos))
	s.number(p.right(7), style{simulated, formatOne}, d.Minutes)
	wanted := s.number(p.right(8), style{simulated, formatOne}, d.WantC)
	mean := s.number(p.right(9), style{simulated, formatOne}, d.MeanC)
	s.number(p.right(10), style{simulated, formatOne}, d.LowestC)
	s.number(p.right(11), style{simulated, formatWhole}, d.ColdS)
	s.live(p.right(12), style{derived, formatOne}, minus(wanted, mean))
}

// drawCounts counts the table by option and kind.
func (s *sheet) drawCounts(table, last place) {
	at := place{1, 4}
	s.tops(at, 20, "Failing in the year", "Compact", "Cylinder")
	end := max(last.row, table.row+1)
	options := s.span(place{1, table.row + 1}, place{1, end})
	kinds := s.span(place{6, table.row + 1}, place{6, end})
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

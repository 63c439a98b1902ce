package charts

import (
	"math"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

const stripHeight = 116.0 // points of a row of panels

func stripsHeight(months int) vg.Length {
	if months == 0 {
		return emptyHeight
	}
	return vg.Points(stripHeight * float64(months))
}

func (s *showerStrips) draw(c draw.Canvas) {
	if len(s.months) == 0 {
		empty(c, "no temperatures of these tests")
		return
	}
	for i, month := range s.months {
		row := rowFromTop(c, i, stripHeight)
		leftAndRight(row, func(c draw.Canvas, side compare.Side) { s.panel(c, side, month) })
	}
}

func (s *showerStrips) panel(c draw.Canvas, side compare.Side, month int) {
	head := bold(words(textSize, textOf(side)))
	put(c, head, vg.Point{X: c.Min.X, Y: c.Max.Y}, side.String())
	at := vg.Point{X: c.Min.X + head.Width(side.String()) + 2*textGap, Y: c.Max.Y}
	put(c, words(textSize, rgb(mutedHex)), at, calendar.MonthNames()[month-1]+", °C")
	p := newPlot()
	p.X.Min, p.X.Max = 0, s.draws.LongestMin
	p.Y.Min, p.Y.Max = s.low, s.high
	p.Y.Tick.Marker = roundMarks(s.low, s.high)
	inner := draw.Crop(c, 0, -stateRoom, 6, -step(textSize)-4)
	p.X.Tick.Marker = minutesAlong(s.draws.LongestMin, inner.Size().X)
	p.Add(drawing(gridAcross), drawing(s.limit), drawing(func(c draw.Canvas, p *plot.Plot) { s.lines(c, p, side, month) }))
	p.Draw(inner)
}

// minutesAlong says at the last mark what is counted.
func minutesAlong(longest float64, room vg.Length) marks {
	m := marksThatFit(0, longest, room, number)
	m[len(m)-1].Label += " min"
	return m
}

// limit rules the line below which a shower is too cold.
func (s *showerStrips) limit(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	c.StrokeLine2(line(rgb(failHex), hairWidth), c.Min.X, y(s.coldC), c.Max.X, y(s.coldC))
}

func (s *showerStrips) lines(c draw.Canvas, p *plot.Plot, side compare.Side, month int) {
	x, y := p.Transforms(&c)
	var ends []endLabel
	var crosses []vg.Point
	for _, strip := range s.of(side, month) {
		state := max(0, slices.Index(s.draws.States, strip.State))
		pts := s.points(strip, x, y)
		if len(pts) == 0 {
			continue
		}
		c.StrokeLines(stateStyle(state, side), thinned(pts))
		// To whole points, so that lines that end together are named in their order.
		ends = append(ends, endLabel{stateName(strip.State), vg.Length(math.Round(float64(pts[len(pts)-1].Y)))})
		if minute, cold := s.coldAt(strip); cold {
			crosses = append(crosses, vg.Point{X: x(min(minute, s.draws.LongestMin)), Y: y(s.coldC)})
		}
	}
	for _, at := range crosses {
		cross(c, at.X, at.Y)
	}
	nameEnds(c, together(ends), side)
}

// together gives lines that all end alike one name.
func together(ends []endLabel) []endLabel {
	for _, e := range ends {
		if e.y != ends[0].y {
			return ends
		}
	}
	if len(ends) > 1 {
		return []endLabel{{"all alike", ends[0].y}}
	}
	return ends
}

// points leaves out what is no number or lies beyond the axis.
func (s *showerStrips) points(strip *compare.Strip, x, y func(float64) vg.Length) []vg.Point {
	var pts []vg.Point
	for _, q := range strip.Points {
		if finite(q.Minute, q.C) && q.Minute >= 0 && q.Minute <= s.draws.LongestMin {
			pts = append(pts, vg.Point{X: x(q.Minute), Y: y(q.C)})
		}
	}
	return pts
}

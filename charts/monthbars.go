package charts

import (
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// monthValues are one value a month of both options.
type monthValues [2][calendar.MonthsInAYear]float64

// monthBars stands the months of both options side by side.
type monthBars struct {
	unit   string // of the upright axis
	values monthValues
	// low and high are the ends of a line over each bar, if there is one.
	low, high *monthValues
}

const (
	barShare  = 0.36 // of a month's width
	barOffset = 0.19 // of a bar's middle from the month's
	headroom  = 1.22 // of the highest bar: the names of the options go there
	nearEdge  = 0.6  // of a month, beside the first and the last
)

// draw draws the bars, named directly, on an axis from zero.
func (m *monthBars) draw(c draw.Canvas) {
	p := newPlot()
	ceiling := m.highest()
	if ceiling == 0 {
		ceiling = 1
	}
	p.X.Min, p.X.Max = -nearEdge, calendar.MonthsInAYear-1+nearEdge
	p.Y.Min, p.Y.Max = 0, headroom*ceiling
	p.X.Tick.Marker, p.Y.Tick.Marker = monthMarks(), roundMarks(0, ceiling)
	p.Add(drawing(gridAcross), drawing(m.bars), drawing(m.whiskers), drawing(baseline), drawing(m.names))
	put(c, words(textSize, rgb(mutedHex)), vg.Point{X: c.Min.X, Y: c.Max.Y}, m.unit)
	p.Draw(draw.Crop(c, 0, 0, 0, -step(textSize)))
}

func (m *monthBars) highest() float64 {
	h := 0.0
	for side := range m.values {
		for month, v := range m.values[side] {
			h = max(h, v)
			if m.high != nil {
				h = max(h, m.high[side][month])
			}
		}
	}
	return h
}

// gridAcross rules a line at each mark of the upright axis.
func gridAcross(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	for _, t := range p.Y.Tick.Marker.Ticks(p.Y.Min, p.Y.Max) {
		c.StrokeLine2(line(rgb(gridHex), gridWidth), c.Min.X, y(t.Value), c.Max.X, y(t.Value))
	}
}

// baseline rules the zero line over the feet of the bars.
func baseline(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	c.StrokeLine2(line(rgb(inkHex), hairWidth), c.Min.X, y(0), c.Max.X, y(0))
}

// middle is where a bar stands along the axis.
func middle(side compare.Side, month int) float64 {
	if side == compare.SideCompact {
		return float64(month) - barOffset
	}
	return float64(month) + barOffset
}

func (m *monthBars) bars(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for _, side := range bothSides() {
		for month, v := range m.values[side] {
			mid := middle(side, month)
			if v > 0 {
				box(c, fillOf(side), x(mid-barShare/2), y(0), x(mid+barShare/2), y(v))
			}
		}
	}
}

// whiskers draws the line over each bar.
func (m *monthBars) whiskers(c draw.Canvas, p *plot.Plot) {
	if m.low == nil || m.high == nil {
		return
	}
	x, y := p.Transforms(&c)
	for _, side := range bothSides() {
		for month, v := range m.values[side] {
			if low, high := m.low[side][month], m.high[side][month]; high > low {
				w := whisker{x: x(middle(side, month)), bar: y(v), onBar: onFill(side)}
				w.draw(c, y(low), y(high))
			}
		}
	}
}

// whisker is a line from low to high over a bar; it takes another colour where it
// lies on the bar.
type whisker struct {
	x, bar vg.Length
	onBar  color.Color
}

func (w whisker) draw(c draw.Canvas, low, high vg.Length) {
	c.StrokeLine2(line(w.colour(low), whiskerWidth), w.x, low, w.x, max(low, min(w.bar, high)))
	c.StrokeLine2(line(w.colour(high), whiskerWidth), w.x, min(high, max(w.bar, low)), w.x, high)
	for _, y := range []vg.Length{low, high} {
		c.StrokeLine2(line(w.colour(y), whiskerWidth), w.x-capWidth/2, y, w.x+capWidth/2, y)
	}
}

func (w whisker) colour(y vg.Length) color.Color {
	if y < w.bar {
		return w.onBar
	}
	return rgb(inkHex)
}

// names writes each option's name over its bar of the tallest month, with a line
// down to it. The names run towards the middle of the picture; the bar on that
// side has the lower name, so that no line crosses a name.
func (m *monthBars) names(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	month := m.tallest()
	leftHalf := month < calendar.MonthsInAYear/2
	for _, side := range bothSides() {
		row := 0
		if leftHalf == (side == compare.SideCylinder) {
			row = 1
		}
		at := vg.Point{X: x(middle(side, month)), Y: c.Max.Y - vg.Length(row)*step(textSize)}
		foot := m.values[side][month]
		if m.high != nil {
			foot = max(foot, m.high[side][month])
		}
		c.StrokeLine2(line(textOf(side), hairWidth), at.X, at.Y-1, at.X, y(foot)+1)
		style, gap := aligned(bold(words(textSize, textOf(side))), draw.XLeft, draw.YTop), vg.Points(3)
		if !leftHalf {
			style.XAlign, gap = draw.XRight, -gap
		}
		put(c, style, vg.Point{X: at.X + gap, Y: at.Y}, m.name(side))
	}
}

// name says so where an option has no bars at all.
func (m *monthBars) name(side compare.Side) string {
	for _, v := range m.values[side] {
		if v > 0 {
			return side.String()
		}
	}
	return side.String() + ": none"
}

// clearlyTaller is how much taller a later month must be to be named in place of
// an earlier one, which is read first.
const clearlyTaller = 1.15

// tallest is the month with the most, both options together.
func (m *monthBars) tallest() int {
	best := 0
	for month := range m.values[0] {
		if m.values[0][month]+m.values[1][month] > clearlyTaller*(m.values[0][best]+m.values[1][best]) {
			best = month
		}
	}
	return best
}

// monthly collects one figure of every month of both options.
func monthly(cmp *compare.Comparison, of func(*compare.MonthTotals) float64) monthValues {
	var out monthValues
	for _, side := range bothSides() {
		months := &cmp.Options.Of(side).Months
		for m := range months {
			out[side][m] = of(&months[m])
		}
	}
	return out
}

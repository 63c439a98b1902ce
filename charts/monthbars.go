package charts

import (
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
	// hollow are values that stand on the others, if there are any.
	hollow *monthValues
}

const (
	monthsHeight = 172.0 // points of the body

	barShare    = 0.36 // of a month's width
	barOffset   = 0.19 // of a bar's middle from the month's
	headroom    = 1.22 // of the highest bar: the names of the options go there
	hollowWidth = 1.0  // points
	nearEdge    = 0.6  // of a month, beside the first and the last
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
	p.X.Tick.Marker, p.Y.Tick.Marker = monthMarks(), roundMarks(0, m.highest())
	p.Add(drawing(gridAcross), drawing(m.bars), drawing(m.whiskers), drawing(baseline), drawing(m.names))
	put(c, words(textSize, rgb(mutedHex)), vg.Point{X: c.Min.X, Y: c.Max.Y}, m.unit)
	p.Draw(draw.Crop(c, 0, 0, 0, -step(textSize)))
}

func (m *monthBars) highest() float64 {
	h := 0.0
	for _, side := range bothSides() {
		for month := range m.values[side] {
			h = max(h, m.head(side, month))
		}
	}
	return h
}

// total is a bar with what stands on it.
func (m *monthBars) total(side compare.Side, month int) float64 {
	if m.hollow == nil {
		return m.values[side][month]
	}
	return m.values[side][month] + m.hollow[side][month]
}

// head is where a bar ends, its line included.
func (m *monthBars) head(side compare.Side, month int) float64 {
	if m.high == nil {
		return m.total(side, month)
	}
	return max(m.total(side, month), m.high[side][month])
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
			left, right := x(middle(side, month)-barShare/2), x(middle(side, month)+barShare/2)
			if v > 0 {
				box(c, fillOf(side), left, y(0), right, y(v))
			}
			if t := m.total(side, month); t > v {
				inset := vg.Points(hollowWidth / 2)
				outline(c, line(fillOf(side), hollowWidth), left+inset, y(v), right-inset, y(t)-inset)
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
		if m.any(side) {
			c.StrokeLine2(line(textOf(side), hairWidth), at.X, at.Y-1, at.X, y(m.head(side, month))+1)
		}
		style, gap := aligned(bold(words(textSize, textOf(side))), draw.XLeft, draw.YTop), vg.Points(3)
		if !leftHalf {
			style.XAlign, gap = draw.XRight, -gap
		}
		put(c, style, vg.Point{X: at.X + gap, Y: at.Y}, m.name(side))
	}
}

// name says so where an option has no bars at all.
func (m *monthBars) name(side compare.Side) string {
	if m.any(side) {
		return side.String()
	}
	return side.String() + ": none"
}

func (m *monthBars) any(side compare.Side) bool {
	for month := range m.values[side] {
		if m.head(side, month) > 0 {
			return true
		}
	}
	return false
}

// clearlyTaller is how much taller a later month must be to be named in place of
// an earlier one, which is read first.
const clearlyTaller = 1.15

// tallest is the month with the most, both options together.
func (m *monthBars) tallest() int {
	best := 0
	for month := range m.values[0] {
		if m.both(month) > clearlyTaller*m.both(best) {
			best = month
		}
	}
	return best
}

func (m *monthBars) both(month int) float64 {
	return m.total(compare.SideCompact, month) + m.total(compare.SideCylinder, month)
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

package charts

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// dayPanel is one option's day: temperatures above, and under the same hours two
// strips, one with the draws of water and one with the runs of the heat pump.
type dayPanel struct {
	dayScale
	side  compare.Side
	trace *compare.DayTrace
}

const (
	hoursADay   = 24
	rightRoom   = 62.0 // points, for the names of lines and strips
	drawsHeight = 24.0
	runsHeight  = 9.0
	stripGap    = 5.0
	leastDraw   = 1.5  // points either way, so that a small draw is seen
	largestGapH = 0.75 // between points, beyond which the line breaks; a resting store has one each quarter hour
)

func (d *dayPanel) draw(c draw.Canvas) {
	head := bold(words(textSize, textOf(d.side)))
	put(c, head, vg.Point{X: c.Min.X, Y: c.Max.Y}, d.side.String())
	unit := words(textSize, rgb(mutedHex))
	put(c, unit, vg.Point{X: c.Min.X + head.Width(d.side.String()) + 2*textGap, Y: c.Max.Y}, "°C")

	p := newPlot()
	p.X.Min, p.X.Max, p.X.Tick.Marker = 0, hoursADay, hourMarks()
	p.Y.Tick.Marker = roundMarks(d.low, d.high)
	inner := draw.Crop(c, 0, -rightRoom, 0, -step(textSize)-2)
	// The strips stand below the temperatures in the same plot.
	strips := (drawsHeight + runsHeight + 3*stripGap) / (inner.Size().Y - step(textSize))
	p.Y.Min, p.Y.Max = d.high-(d.high-d.low)/(1-float64(strips)), d.high
	p.Add(drawing(d.grid), drawing(d.curves), drawing(d.draws), drawing(d.running))
	p.Draw(inner)
}

func hourMarks() marks {
	var out marks
	for h := 0; h <= hoursADay; h += 3 {
		out = append(out, plot.Tick{Value: float64(h), Label: fmt.Sprintf("%02d:00", h)})
	}
	return out
}

func (d *dayPanel) grid(c draw.Canvas, p *plot.Plot) {
	gridAcross(c, p)
	x, y := p.Transforms(&c)
	for _, t := range hourMarks() {
		c.StrokeLine2(line(rgb(gridHex), gridWidth), x(t.Value), c.Min.Y, x(t.Value), y(d.high))
	}
}

// height is one of the three at which the temperature is followed.
type height struct {
	name  string
	style draw.LineStyle
	of    func(*compare.DayPoint) float64
}

func (d *dayPanel) heights() []height {
	fill := fillOf(d.side)
	return []height{
		{"top", line(fill, curveWidth), func(p *compare.DayPoint) float64 { return p.TopC }},
		{"middle", line(fill, curveWidth*0.75, 4, 1.5), func(p *compare.DayPoint) float64 { return p.MiddleC }},
		{"bottom", line(fill, curveWidth*0.75, 1.2, 1.5), func(p *compare.DayPoint) float64 { return p.BottomC }},
	}
}

func (d *dayPanel) curves(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	if _, _, any := heat(d.trace.Points); !any {
		top := draw.Canvas{Canvas: c.Canvas, Rectangle: c.Rectangle}
		top.Min.Y = y(d.low)
		empty(top, "no temperatures for this day")
		return
	}
	var ends []endLabel
	for _, h := range d.heights() {
		pieces := pieces(d.trace.Points, h.of)
		for _, piece := range pieces {
			pts := make([]vg.Point, len(piece))
			for i, q := range piece {
				pts[i] = vg.Point{X: x(q.hour), Y: y(q.c)}
			}
			c.StrokeLines(h.style, thinned(pts))
		}
		if n := len(pieces); n > 0 {
			last := pieces[n-1]
			ends = append(ends, endLabel{h.name, y(last[len(last)-1].c)})
		}
	}
	nameEnds(c, ends, d.side)
}

// draws stands a bar for each draw of water, as high as it took litres. One that
// ran too cold has a cross above it.
func (d *dayPanel) draws(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	foot := c.Min.Y + runsHeight + 2*stripGap
	for i := range d.trace.Draws {
		w := &d.trace.Draws[i]
		if !finite(w.Hour, w.Minutes, w.Litres) || d.litres <= 0 {
			continue
		}
		from, wide := x(w.Hour), max(leastDraw, x(w.Minutes/60)-x(0))
		high := max(leastDraw, vg.Points(drawsHeight*w.Litres/d.litres))
		fill := fillOf(d.side)
		if w.Failed {
			fill = rgb(failHex)
			cross(c, from+wide/2, min(foot+high, foot+drawsHeight-stripGap)+stripGap)
		}
		box(c, fill, from, foot, min(from+wide, c.Max.X), foot+high)
	}
	c.StrokeLine2(line(rgb(inkHex), gridWidth), c.Min.X, foot, c.Max.X, foot)
	strip(c, foot+drawsHeight/2, "water drawn", fmt.Sprintf("(highest %s l)", number(d.litres, 0)))
}

func (d *dayPanel) running(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	foot := c.Min.Y + stripGap/2
	box(c, rgb(shadeHex), c.Min.X, foot, c.Max.X, foot+runsHeight)
	for _, s := range runs(d.trace.Points) {
		box(c, fillOf(d.side), x(s.from), foot, min(x(s.to), c.Max.X), foot+runsHeight)
	}
	strip(c, foot+runsHeight/2, "heat pump on")
}

// strip names a strip at its right.
func strip(c draw.Canvas, y vg.Length, lines ...string) {
	style := aligned(words(textSize, rgb(inkHex)), draw.XLeft, draw.YCenter)
	y += step(textSize) * vg.Length(len(lines)-1) / 2
	for _, l := range lines {
		put(c, style, vg.Point{X: c.Max.X + textGap, Y: y}, l)
		y -= step(textSize)
	}
}

package charts

import (
	"image/color"
	"slices"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const (
	tradeOffHeight = 230.0 // points
	winnerRoom     = 128.0 // for the names of the winners
	pointRadius    = 3.0
	ringRadius     = 5.5
	aroundShare    = 0.08 // of the axes, kept free around the points
)

func (t *tradeOff) room() vg.Length {
	if t.any() {
		return tradeOffHeight
	}
	return emptyHeight
}

func (t *tradeOff) draw(c draw.Canvas) {
	if !t.any() {
		empty(c, "no size that was tried keeps the service rule")
		return
	}
	p := newPlot()
	muted := words(textSize, rgb(mutedHex))
	put(c, muted, vg.Point{X: c.Min.X, Y: c.Max.Y}, t.unit+" a year (the axis does not begin at zero)")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: c.Max.X - winnerRoom, Y: c.Min.Y}, "failing showers a year")
	inner := draw.Crop(c, 0, -winnerRoom, step(textSize), -step(textSize)-4)
	t.axes(p, inner.Size().X)
	p.Add(drawing(gridAcross), drawing(gridUp), drawing(t.edges), drawing(t.names), drawing(t.points))
	p.Draw(inner)
}

// axes reach around the points; the one of failures begins at zero.
func (t *tradeOff) axes(p *plot.Plot, wide vg.Length) {
	var costs, failures []float64
	for _, side := range bothSides() {
		for i := range t.sizing.Of(side).Sizes {
			trial := &t.sizing.Of(side).Sizes[i].Trial
			costs, failures = append(costs, trial.Cost), append(failures, trial.Failing.Mean)
		}
	}
	low, high, most := slices.Min(costs), slices.Max(costs), max(slices.Max(failures), 0)
	if most == 0 {
		most = 1
	}
	if low == high {
		low, high = low-1, high+1
	}
	if low == high {
		// One is nothing to them.
		low, high = min(0, 2*low), max(0, 2*high)
	}
	p.X.Min, p.X.Max = -aroundShare*most, (1+aroundShare)*most
	around := aroundShare * (high - low)
	p.Y.Min, p.Y.Max = low-around, high+around
	p.X.Tick.Marker, p.Y.Tick.Marker = marksThatFit(0, most, wide, number), roundMarks(low, high)
}

// placeOf is where a size stands in the picture.
func placeOf(x, y func(float64) vg.Length, s *compare.Size) vg.Point {
	return vg.Point{X: x(s.Trial.Failing.Mean), Y: y(s.Trial.Cost)}
}

func (t *tradeOff) edges(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for _, side := range bothSides() {
		var pts []vg.Point
		for _, s := range edge(t.sizing.Of(side).Sizes) {
			pts = append(pts, placeOf(x, y, s))
		}
		if len(pts) > 1 {
			c.StrokeLines(line(fillOf(side), hairWidth), pts)
		}
	}
}

func (t *tradeOff) points(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for _, side := range bothSides() {
		sizes := t.sizing.Of(side).Sizes
		for i := range sizes {
			s, radius := &sizes[i], vg.Points(pointRadius)
			if s.NeedsLimiter {
				radius /= 2
			}
			point(c, side, placeOf(x, y, s), radius, s.NonDominated)
		}
	}
}

// point is round for the compact store and square for the cylinder, so that they
// differ without colour.
func point(c draw.Canvas, side compare.Side, at vg.Point, radius vg.Length, filled bool) {
	fill := color.Color(rgb(paperHex))
	if filled {
		fill = fillOf(side)
	}
	if side == compare.SideCylinder {
		box(c, fill, at.X-radius, at.Y-radius, at.X+radius, at.Y+radius)
		outline(c, line(fillOf(side), hairWidth), at.X-radius, at.Y-radius, at.X+radius, at.Y+radius)
		return
	}
	c.DrawGlyphNoClip(draw.GlyphStyle{Color: fillOf(side), Radius: radius, Shape: draw.CircleGlyph{}}, at)
	if !filled {
		c.DrawGlyphNoClip(draw.GlyphStyle{Color: fill, Radius: radius - hairWidth, Shape: draw.CircleGlyph{}}, at)
	}
}

// award is a winner with the place of its name.
type award struct {
	winner
	side  compare.Side
	point vg.Point
	y     vg.Length
}

// names rings the winners and names them at the right, with a line to each.
func (t *tradeOff) names(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	var list []award
	for _, side := range bothSides() {
		for _, w := range winners(t.sizing.Of(side)) {
			point := placeOf(x, y, w.size)
			list = append(list, award{w, side, point, point.Y})
		}
	}
	slices.SortStableFunc(list, func(a, b award) int { return int(b.point.Y - a.point.Y) })
	placed(list, c.Min.Y, c.Max.Y)
	for _, n := range list {
		left := c.Max.X + 2*textGap
		s := line(rgb(mutedHex), gridWidth)
		c.StrokeLines(s, []vg.Point{{X: n.point.X + ringRadius, Y: n.point.Y}, {X: left - textGap, Y: n.y}})
		c.DrawGlyphNoClip(draw.GlyphStyle{Color: rgb(inkHex), Radius: ringRadius, Shape: draw.RingGlyph{}}, n.point)
		style := words(textSize, textOf(n.side))
		put(c, aligned(bold(style), draw.XLeft, draw.YBottom), vg.Point{X: left, Y: n.y}, n.side.String())
		put(c, aligned(style, draw.XLeft, draw.YTop), vg.Point{X: left, Y: n.y}, n.why+",")
		put(c, aligned(style, draw.XLeft, draw.YTop), vg.Point{X: left, Y: n.y - step(textSize)}, fit(sizeText(n.size), style, winnerRoom-2*textGap))
	}
}

// placed pushes the names apart, each of three lines, from the top down, and back
// up from the foot.
func placed(list []award, low, high vg.Length) {
	const lines = 3.6
	apart := step(textSize) * lines
	ceiling := high - step(textSize)
	for i := range list {
		list[i].y = min(list[i].y, ceiling)
		ceiling = list[i].y - apart
	}
	floor := low + 2*step(textSize)
	for i := len(list) - 1; i >= 0; i-- {
		list[i].y = max(list[i].y, floor)
		floor = list[i].y + apart
	}
}

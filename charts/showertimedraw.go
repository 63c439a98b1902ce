package charts

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const (
	durationHeight = 190.0 // points
	optionRoom     = 70.0  // for the names of the options
	durationWidth  = 2.0
	markRadius     = 3.0
)

func (d *loadDuration) draw(c draw.Canvas) {
	p := newPlot()
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, d.minutes, d.low, d.high
	inner := draw.Crop(c, 0, -optionRoom, step(textSize), -step(textSize))
	p.X.Tick.Marker = marksThatFit(0, d.minutes, inner.Size().X, number)
	p.Y.Tick.Marker = roundMarks(d.low, d.high)
	p.Add(drawing(gridAcross), drawing(d.rules), drawing(d.curves))
	muted := words(textSize, rgb(mutedHex))
	put(c, muted, vg.Point{X: c.Min.X, Y: c.Max.Y}, "°C")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: inner.Max.X, Y: c.Min.Y}, "minutes of shower a year")
	p.Draw(inner)
}

// rules are the wanted temperature and the one below which water is too cold, with
// their names: the first over its line where the curves are still far below, the
// second under its line where they are above.
func (d *loadDuration) rules(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	want, least := y(d.wantC()), y(d.leastC())
	c.StrokeLine2(line(rgb(mutedHex), hairWidth, 3, 2), c.Min.X, want, c.Max.X, want)
	c.StrokeLine2(line(rgb(failHex), hairWidth), c.Min.X, least, c.Max.X, least)
	put(c, aligned(words(textSize, rgb(mutedHex)), draw.XLeft, draw.YBottom), vg.Point{X: c.Min.X + textGap, Y: want + 1}, "wanted: "+sensible(d.wantC())+" °C")
	put(c, aligned(words(textSize, rgb(failHex)), draw.XRight, draw.YTop), vg.Point{X: c.Max.X, Y: least - 2}, "too cold: below "+sensible(d.leastC())+" °C")
}

// curves mark where each option's line crosses into what is warm enough.
func (d *loadDuration) curves(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	var ends [2]vg.Length
	for _, side := range bothSides() {
		pts := d.points(side, x, y)
		c.StrokeLines(line(fillOf(side), durationWidth), thinned(pts))
		ends[side] = pts[len(pts)-1].Y
		if cold := d.times[side].TooCold(); cold > 0 && cold <= d.minutes {
			glyph := draw.GlyphStyle{Color: fillOf(side), Radius: markRadius, Shape: draw.CircleGlyph{}}
			c.DrawGlyphNoClip(glyph, vg.Point{X: x(cold), Y: y(d.leastC())})
		}
	}
	nameBoth(c, ends)
}

// nameBoth names both lines at their ends, the lower one a line of text below the
// other if they end together.
func nameBoth(c draw.Canvas, ends [2]vg.Length) {
	upper, lower := compare.SideCompact, compare.SideCylinder
	if ends[lower] > ends[upper] {
		upper, lower = lower, upper
	}
	ends[lower] = min(ends[lower], ends[upper]-step(textSize))
	for _, side := range bothSides() {
		style := aligned(bold(words(textSize, textOf(side))), draw.XLeft, draw.YCenter)
		put(c, style, vg.Point{X: c.Max.X + textGap, Y: ends[side]}, side.String())
	}
}

// points follow one option from its coldest water to the end of the axis.
func (d *loadDuration) points(side compare.Side, x, y func(float64) vg.Length) []vg.Point {
	var pts []vg.Point
	for _, q := range d.times[side].Colder {
		if q.C > d.wantC() || q.Minutes > d.minutes {
			break
		}
		pts = append(pts, vg.Point{X: x(q.Minutes), Y: y(q.C)})
	}
	return append(pts, vg.Point{X: x(d.minutes), Y: y(d.atEnd(side))})
}

// atEnd is how warm the water is where the axis ends.
func (d *loadDuration) atEnd(side compare.Side) float64 {
	list := d.times[side].Colder
	for i := 1; i < len(list); i++ {
		if a, b := &list[i-1], &list[i]; b.Minutes >= d.minutes {
			return min(a.C+(b.C-a.C)*(d.minutes-a.Minutes)/(b.Minutes-a.Minutes), d.wantC())
		}
	}
	return d.wantC()
}

package charts

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const (
	durationHeight = 200.0 // points
	durationWidth  = 2.0
	optionRoom     = 70.0 // for names at the ends of the lines
	markRadius     = 3.0
	namedBelow     = 3 // lines of text under the rule
)

func (d *loadDuration) draw(c draw.Canvas) {
	p := newPlot()
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, d.minutes, d.low, d.high
	inner := draw.Crop(c, 0, -d.besideRoom(), step(textSize), -2*step(textSize))
	p.X.Tick.Marker = marksThatFit(0, d.minutes, inner.Size().X, number)
	p.Y.Tick.Marker = roundMarks(d.low, d.high)
	p.Add(drawing(gridAcross), drawing(d.rules), drawing(d.curves), drawing(d.names))
	muted := words(textSize, rgb(mutedHex))
	put(c, muted, vg.Point{X: c.Min.X, Y: c.Max.Y}, "°C")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: inner.Max.X, Y: c.Min.Y}, "minutes of shower a year")
	p.Draw(inner)
}

// neverCold reports whether no water is below the rule with either option.
func (d *loadDuration) neverCold() bool {
	return d.times[0].TooCold() == 0 && d.times[1].TooCold() == 0
}

// besideRoom is what names at the ends of the lines need, or the last mark.
func (d *loadDuration) besideRoom() vg.Length {
	if d.neverCold() {
		return optionRoom
	}
	return words(textSize, nil).Width(number(d.minutes, 0)) / 2
}

// rules are the wanted temperature and the one below which water is too cold, named at
// the right end, where the curves run between them.
func (d *loadDuration) rules(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	want, least := y(d.wantC()), y(d.leastC())
	c.StrokeLine2(line(rgb(mutedHex), hairWidth, 3, 2), c.Min.X, want, c.Max.X, want)
	c.StrokeLine2(line(rgb(failHex), hairWidth), c.Min.X, least, c.Max.X, least)
	put(c, aligned(words(textSize, rgb(mutedHex)), draw.XRight, draw.YBottom), vg.Point{X: c.Max.X, Y: want + 1}, "wanted: "+sensible(d.wantC())+" °C")
	put(c, aligned(words(textSize, rgb(failHex)), draw.XRight, draw.YTop), vg.Point{X: c.Max.X, Y: least - 2}, "too cold: below "+sensible(d.leastC())+" °C")
}

func (d *loadDuration) curves(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for _, side := range bothSides() {
		c.StrokeLines(line(fillOf(side), durationWidth), thinned(d.points(side, x, y)))
	}
}

// names mark where each line crosses into what is warm enough: the colder option's,
// under which there is nothing, from below, and the other's from above. Lines that never
// are below the rule are named at their ends.
func (d *loadDuration) names(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	warmer, colder := compare.SideCylinder, compare.SideCompact
	if d.times[warmer].TooCold() > d.times[colder].TooCold() {
		warmer, colder = colder, warmer
	}
	if d.neverCold() {
		nameBoth(c, [2]vg.Length{y(d.atEnd(compare.SideCompact)), y(d.atEnd(compare.SideCylinder))})
		return
	}
	rule := y(d.leastC())
	d.name(c, colder, x, rule, rule-namedBelow*step(textSize))
	d.name(c, warmer, x, rule, c.Max.Y+step(textSize)/2)
}

// name leads from an option's place on the rule to its name at another height.
func (d *loadDuration) name(c draw.Canvas, side compare.Side, x func(float64) vg.Length, rule, height vg.Length) {
	style := aligned(bold(words(textSize, textOf(side))), draw.XLeft, draw.YCenter)
	cold := d.times[side].TooCold()
	text := fmt.Sprintf("%v: %s", side, minutesLong(cold))
	at := x(min(cold, d.minutes))
	c.StrokeLine2(line(textOf(side), hairWidth), at, rule, at, height)
	if cold > 0 {
		glyph := draw.GlyphStyle{Color: fillOf(side), Radius: markRadius, Shape: draw.CircleGlyph{}}
		c.DrawGlyphNoClip(glyph, vg.Point{X: at, Y: rule})
	}
	at = min(at+textGap, c.Max.X-style.Width(text))
	box(c, rgb(paperHex), at, height-step(textSize)/2, at+style.Width(text), height+step(textSize)/2)
	put(c, style, vg.Point{X: at, Y: height}, text)
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

package charts

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

const (
	gapShare  = 0.34 // of the width, for the difference
	gapMargin = 10.0 // between the two
	// widestText over a dot, of the width; a wider one would hide the zero line.
	widestText = 0.75
	dotRadius  = 2.0
)

func (k *costs) draw(c draw.Canvas) {
	if len(k.list) == 0 {
		empty(c, "no tariff in the case")
		return
	}
	gap := c.Size().X * gapShare
	head := step(textSize)
	left := draw.Crop(c, 0, -gap-gapMargin, 0, -head)
	right := draw.Crop(c, c.Size().X-gap, 0, 0, -head)
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YTop)
	put(c, style, vg.Point{X: right.Center().X, Y: c.Max.Y}, "compact store against cylinder")
	k.bars.draw(left)
	k.differences(right)
}

// differences draws the right half, row for row beside the bars.
func (k *costs) differences(c draw.Canvas) {
	p := rowPlot(make([]string, len(k.list)), 0)
	low, high := k.reach()
	p.X.Min, p.X.Max = low, high
	p.X.Tick.Marker = marksThatFit(low, high, c.Size().X, signed)
	p.Add(drawing(gridUp), drawing(originUp), drawing(k.dots))
	muted := words(textSize, rgb(mutedHex))
	put(c, aligned(muted, draw.XLeft, draw.YBottom), c.Min, "← costs less")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: c.Max.X, Y: c.Min.Y}, "costs more →")
	p.Draw(draw.Crop(c, 0, 0, step(textSize), 0))
}

// aroundGap is kept free on either side of the differences, of their reach.
const aroundGap = 0.3

// reach gives the ends of the axis of differences, zero among them.
func (k *costs) reach() (low, high float64) {
	for i := range k.list {
		l, h := k.ends(i)
		low, high = min(low, l), max(high, h)
	}
	around := aroundGap * (high - low)
	if around == 0 {
		around = 1
	}
	return low - around, high + around
}

func (k *costs) ends(row int) (low, high float64) {
	t := &k.list[row]
	if !k.interval {
		return t.Difference, t.Difference
	}
	return t.DifferenceOver.CILow, t.DifferenceOver.CIHigh
}

func (k *costs) dots(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for i := range k.list {
		at := y(-float64(i))
		low, high := k.ends(i)
		s := line(rgb(inkHex), whiskerWidth)
		c.StrokeLine2(s, x(low), at, x(high), at)
		if high > low {
			c.StrokeLine2(s, x(low), at-capWidth/2, x(low), at+capWidth/2)
			c.StrokeLine2(s, x(high), at-capWidth/2, x(high), at+capWidth/2)
		}
		glyph := draw.GlyphStyle{Color: rgb(inkHex), Radius: dotRadius, Shape: draw.CircleGlyph{}}
		c.DrawGlyphNoClip(glyph, vg.Point{X: x(k.list[i].Difference), Y: at})
		k.write(c, i, vg.Point{X: x(k.list[i].Difference), Y: at + dotRadius + 1})
	}
}

// write puts the difference and its interval over its dot, and keeps them inside.
func (k *costs) write(c draw.Canvas, row int, at vg.Point) {
	text := signed(k.list[row].Difference, 0)
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YBottom)
	if low, high := k.ends(row); high > low {
		ends := fmt.Sprintf(" (%s to %s)", signed(low, 0), signed(high, 0))
		if style.Width(text+ends) < widestText*c.Size().X {
			text += ends
		}
	}
	half := style.Width(text) / 2
	at.X = min(max(at.X, c.Min.X+half), c.Max.X-half)
	box(c, rgb(paperHex), at.X-half, at.Y, at.X+half, at.Y+step(textSize))
	put(c, style, at, text)
}

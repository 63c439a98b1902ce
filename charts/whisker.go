package charts

import (
	"image/color"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

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

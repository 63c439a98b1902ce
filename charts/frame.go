package charts

import (
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

const titleLines = 3 // at most

// draw puts the whole picture on a canvas.
func (c *Chart) draw(dc draw.Canvas) {
	box(dc, rgb(paperHex), dc.Min.X, dc.Min.Y, dc.Max.X, dc.Max.Y)
	inner := draw.Crop(dc, margin, -margin, margin, -margin)
	inner.Max.Y -= paragraph(inner, bold(words(titleSize, rgb(inkHex))), c.Title, titleLines)
	inner.Max.Y -= vg.Points(1)
	inner.Max.Y -= paragraph(inner, words(textSize, rgb(mutedHex)), c.subtitle, titleLines)
	foot := words(smallSize, rgb(mutedHex))
	foot.YAlign = draw.YBottom
	put(inner, foot, inner.Min, fit(c.caption, foot, inner.Size().X))
	inner.Min.Y += step(smallSize) + 3
	inner.Max.Y -= 5
	c.body(inner)
}

// paragraph writes text from the top of a canvas downwards and gives the height
// that it took.
func paragraph(c draw.Canvas, s draw.TextStyle, text string, most int) vg.Length {
	y := c.Max.Y
	for _, l := range balanced(text, s, c.Size().X, most) {
		put(c, s, vg.Point{X: c.Min.X, Y: y}, l)
		y -= s.Font.Size * lineHeight
	}
	return c.Max.Y - y
}

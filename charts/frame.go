package charts

import (
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// frame is what stands around the body of a picture: the lines of its title, subtitle
// and foot, and the height of the whole that follows.
type frame struct {
	title, under, foot []string
	height             vg.Length
}

const (
	mostLines  = 3   // of a title, and of a foot
	aboveBody  = 6.0 // points
	aboveFoot  = 4.0
	underTitle = 1.0
)

// layOut breaks the texts into lines.
func (c *Chart) layOut() {
	wide := width - 2*margin
	c.title = balanced(c.Title, bold(words(titleSize, nil)), wide, mostLines)
	c.under = balanced(c.subtitle, words(textSize, nil), wide, mostLines)
	c.foot = wrap(c.caption, words(textSize, nil), wide, mostLines)
	c.height = 2*margin + c.headHeight() + c.room + c.footHeight()
}

func (c Chart) footHeight() vg.Length { return aboveFoot + vg.Length(len(c.foot))*step(textSize) }

func (c Chart) headHeight() vg.Length {
	return vg.Length(len(c.title))*step(titleSize) + underTitle + vg.Length(len(c.under))*step(textSize) + aboveBody
}

// draw puts the whole picture on a canvas.
func (c Chart) draw(dc draw.Canvas) {
	box(dc, rgb(paperHex), dc.Min.X, dc.Min.Y, dc.Max.X, dc.Max.Y)
	c.drawOnPaper(dc)
}

// drawOnPaper is draw on a canvas that is paper already.
func (c Chart) drawOnPaper(dc draw.Canvas) {
	inner := draw.Crop(dc, margin, -margin, margin, -margin)
	y := paragraph(inner, inner.Max.Y, bold(words(titleSize, rgb(inkHex))), c.title)
	paragraph(inner, y-underTitle, words(textSize, rgb(mutedHex)), c.under)
	foot := words(textSize, rgb(mutedHex))
	paragraph(inner, inner.Min.Y+c.footHeight()-aboveFoot, foot, c.foot)
	c.body(draw.Crop(inner, 0, 0, c.footHeight(), -c.headHeight()))
}

// paragraph writes lines downwards from a height and gives the height under them.
func paragraph(c draw.Canvas, y vg.Length, s draw.TextStyle, lines []string) vg.Length {
	for _, l := range lines {
		put(c, s, vg.Point{X: c.Min.X, Y: y}, l)
		y -= s.Font.Size * lineHeight
	}
	return y
}

// empty says in the middle of a picture why there is nothing in it.
func empty(c draw.Canvas, why string) {
	style, at := aligned(words(textSize, rgb(mutedHex)), draw.XCenter, draw.YCenter), c.Center()
	half := style.Width(why)/2 + textGap
	box(c, rgb(paperHex), at.X-half, at.Y-step(textSize)/2, at.X+half, at.Y+step(textSize)/2)
	put(c, style, at, why)
}

const emptyHeight = 60.0 // of the body of a picture with nothing in it

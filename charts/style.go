package charts

import (
	"image/color"

	xfont "golang.org/x/image/font"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// Sizes in points, unless said otherwise. At the printed width of an A5 page,
// 128 mm inside its margins, the smallest text is 6.8 points high.
const (
	width  = 16 * vg.Centimeter
	margin = 8.0

	titleSize = 12.0
	textSize  = 8.5

	lineHeight = 1.25 // of the size of the text

	gridWidth    = 0.5
	hairWidth    = 0.7
	whiskerWidth = 1.2
	curveWidth   = 1.4
	capWidth     = 5.0

	marksBelow = 3.0 // words along the lying axis, from the axis
)

// words is the style of a text.
func words(size float64, c color.Color) draw.TextStyle {
	return draw.TextStyle{
		Color:   c,
		Font:    font.Font{Typeface: "Liberation", Variant: "Sans", Size: vg.Points(size)},
		XAlign:  draw.XLeft,
		YAlign:  draw.YTop,
		Handler: plot.DefaultTextHandler,
	}
}

func bold(s draw.TextStyle) draw.TextStyle {
	s.Font.Weight = xfont.WeightBold
	return s
}

func aligned(s draw.TextStyle, x draw.XAlignment, y draw.YAlignment) draw.TextStyle {
	s.XAlign, s.YAlign = x, y
	return s
}

// libraryDrop is how much lower than asked the drawing library sets a text, of
// its size: it adds the line's descent and takes the rest of the line twice.
const libraryDrop = 0.11

// put writes a line of text where it is asked for.
func put(c draw.Canvas, s draw.TextStyle, at vg.Point, text string) {
	at.Y += s.Font.Size * libraryDrop
	c.FillText(s, at, text)
}

// step is the distance from one line of text to the next.
func step(size float64) vg.Length { return vg.Points(size * lineHeight) }

func line(c color.Color, w float64, dashes ...vg.Length) draw.LineStyle {
	return draw.LineStyle{Color: c, Width: vg.Points(w), Dashes: dashes}
}

// newPlot is a plot in the style of the package: no frame, words in ink, nothing
// between data and axes. The marks along its axes are the caller's.
func newPlot() *plot.Plot {
	p := plot.New()
	p.BackgroundColor = nil
	for _, axis := range []*plot.Axis{&p.X, &p.Y} {
		axis.Padding = 0
		axis.LineStyle.Width = 0
		axis.Tick.Length = 0
		axis.Tick.Label.Font = words(textSize, nil).Font
		axis.Tick.Label.Color = rgb(inkHex)
		axis.Tick.LineStyle.Width = 0
	}
	p.X.Padding = marksBelow
	return p
}

// drawing lets a function draw in a plot's canvas.
type drawing func(c draw.Canvas, p *plot.Plot)

// Plot implements plot.Plotter.
func (d drawing) Plot(c draw.Canvas, p *plot.Plot) { d(c, p) }

// box fills a rectangle, whichever corner comes first.
func box(c draw.Canvas, fill color.Color, x0, y0, x1, y1 vg.Length) {
	c.FillPolygon(fill, corners(x0, y0, x1, y1))
}

func corners(x0, y0, x1, y1 vg.Length) []vg.Point {
	return []vg.Point{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}
}

// outline strokes a rectangle.
func outline(c draw.Canvas, s draw.LineStyle, x0, y0, x1, y1 vg.Length) {
	c.StrokeLines(s, append(corners(x0, y0, x1, y1), vg.Point{X: x0, Y: y0}))
}

// cross marks what failed.
func cross(c draw.Canvas, x, y vg.Length) {
	const arm = 2.4
	s := line(rgb(failHex), 1.3)
	c.StrokeLine2(s, x-arm, y-arm, x+arm, y+arm)
	c.StrokeLine2(s, x-arm, y+arm, x+arm, y-arm)
}

package outline

import (
	"fmt"
	"html"
	"html/template"
	"strings"

	"dhwcompare/compare"
)

// Sizes of the pictures of the first page, in units of which a printed page has
// some 3.6 to the millimetre: small, since three stand beside each other.
const (
	sketchWide = 240.0
	sketchHigh = 140.0
	barHigh    = 12.0
	lineHigh   = 14.0
	doorWideMM = 762.0  // a common British internal door leaf, from memory
	doorHighMM = 1981.0 // the same
)

// sketch draws one of them.
type sketch struct {
	name, title, alt string
	high             float64
	body             strings.Builder
}

func newSketch(name string, p Picture) *sketch {
	return &sketch{name: "glance-" + name, title: p.Title, alt: p.Alt, high: sketchHigh}
}

// bar is one bar of a picture.
type bar struct {
	side  compare.Side
	name  string
	size  float64
	value string // what is written at its end
}

// bars draws lying bars, each under its name. The longest possible is as long as
// leaves room for the value.
func (s *sketch) bars(list []bar, longest float64) {
	const valueRoom = 62.0
	y := 2.0
	for _, b := range list {
		long := 0.0
		if longest > 0 {
			long = b.size / longest * (sketchWide - valueRoom)
		}
		s.words(0, y+11, "", b.name)
		s.rect(sideClass(b.side), 0, y+lineHigh, long, barHigh)
		s.words(long+4, y+lineHigh+10.5, "strong", b.value)
		y += lineHigh + barHigh + 5
	}
	s.high = y
}

// room draws things on the floor, the door between the options.
func (s *sketch) room(compact, cylinder []compare.SpaceItem) {
	const gapMM, lineMM = 150.0, 100.0
	wide, high := doorWideMM+2*gapMM, doorHighMM
	for _, i := range append(append([]compare.SpaceItem(nil), compact...), cylinder...) {
		wide, high = wide+i.WidthMM, max(high, i.HeightMM)
	}
	const drawingHigh = sketchHigh - 2*lineHigh
	scale := min(sketchWide/(wide+lineMM), drawingHigh/high)
	x := (sketchWide - wide*scale) / 2
	x = s.things(compare.SideCompact, compact, x, scale, drawingHigh) + gapMM*scale
	s.rect("door", x, drawingHigh-doorHighMM*scale, doorWideMM*scale, doorHighMM*scale)
	s.centred(x+doorWideMM*scale/2, drawingHigh-doorHighMM*scale/2, "", "door")
	x += (doorWideMM + gapMM) * scale
	s.things(compare.SideCylinder, cylinder, x, scale, drawingHigh)
	s.rect("floor", 0, drawingHigh, sketchWide, 1.2)
	s.high = drawingHigh + lineHigh + 5
}

// things draws what stands beside each other, with the name of the option below,
// and gives the place after it.
func (s *sketch) things(side compare.Side, items []compare.SpaceItem, x, scale, floor float64) float64 {
	from := x
	for _, i := range items {
		s.rect(sideClass(side), x, floor-i.HeightMM*scale, i.WidthMM*scale, i.HeightMM*scale)
		x += i.WidthMM * scale
	}
	middle := min(max((from+x)/2, 40), sketchWide-40)
	s.centred(middle, floor+lineHigh, "strong", side.String())
	return x
}

func sideClass(side compare.Side) string {
	if side == compare.SideCompact {
		return "compact"
	}
	return "cylinder"
}

func (s *sketch) rect(class string, x, y, wide, high float64) {
	fmt.Fprintf(&s.body, `<rect class="%s" x="%.1f" y="%.1f" width="%.1f" height="%.1f"/>`, class, x, y, wide, high)
}

func (s *sketch) words(x, y float64, class, words string) {
	fmt.Fprintf(&s.body, `<text class="%s" x="%.1f" y="%.1f">%s</text>`, class, x, y, html.EscapeString(words))
}

func (s *sketch) centred(x, y float64, class, words string) {
	fmt.Fprintf(&s.body, `<text class="middle %s" x="%.1f" y="%.1f">%s</text>`, class, x, y, html.EscapeString(words))
}

// markup gives the picture as an element of a page. Its texts are escaped, and all
// else in it is this program's own.
func (s *sketch) markup() template.HTML {
	return template.HTML(fmt.Sprintf(`<svg class="sketch" viewBox="0 0 %.0f %.0f" role="img" aria-labelledby="%s-title %s-desc"><title id="%s-title">%s</title><desc id="%s-desc">%s</desc>%s</svg>`,
		sketchWide, s.high, s.name, s.name, s.name, html.EscapeString(s.title), s.name, html.EscapeString(s.alt), s.body.String()))
}

package charts

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// spaceChart draws what each option takes of a home to one scale, from the front
// and from above, beside a door.
func spaceChart(cmp *compare.Comparison) Chart {
	s := spaceSheet{}
	for _, side := range bothSides() {
		s.groups[side] = arrange(cmp.Options.Of(side).SpaceItems)
	}
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	room := fmt.Sprintf("With room for access: %s against %s m² of floor, %s against %s litres of cupboard.",
		number(a.FloorAreaM2, 2), number(b.FloorAreaM2, 2), number(a.SpaceL, 0), number(b.SpaceL, 0))
	return Chart{
		Name:     "space",
		Title:    spaceTitle(a.FloorAreaM2, b.FloorAreaM2),
		Alt:      "Both options drawn to scale beside a door. " + room + " " + s.inWords(),
		subtitle: "To scale, in mm: width × depth × height. Where things hang is an example only. " + room,
		room:     s.room(),
		body:     s.draw,
	}
}

func spaceTitle(a, b float64) string {
	less := number(math.Abs(a-b), 2)
	switch {
	case less == number(0, 2):
		return "Both options take the same floor"
	case a < b:
		return fmt.Sprintf("The compact store takes %s m² less floor", less)
	default:
		return fmt.Sprintf("The compact store takes %s m² more floor", less)
	}
}

// The door for scale, mm: a common British internal door leaf (from memory).
const (
	doorWidthMM  = 762.0
	doorHeightMM = 1981.0
	wallMM       = 80.0 // the wall seen from above stands so far below the top
)

const (
	sheetMost = 220.0 // points, the tallest drawing
	columnPad = 32.0  // left of each drawing, for its height
	dimRoom   = 22.0  // below, for its width
	headings  = 16.0  // above, for what is seen
	mostInKey = 8     // lines
	columns   = 5     // two from the front, the door, two from above
)

// spaceSheet is the whole drawing.
type spaceSheet struct {
	groups [2]group
}

// keyLines is the height of the list of things, in lines.
func (s *spaceSheet) keyLines() int {
	return min(mostInKey, max(len(s.groups[0].things), len(s.groups[1].things)))
}

// scale gives points a mm at which everything fits.
func (s *spaceSheet) scale() float64 {
	wide := doorWidthMM
	for i := range s.groups {
		wide += 2 * s.groups[i].width
	}
	return min((width.Points()-2*margin-columns*columnPad)/wide, sheetMost/s.high())
}

// keyHeight is the height of the list of things under its heading.
func (s *spaceSheet) keyHeight() vg.Length { return vg.Length(s.keyLines()+1)*step(textSize) + 2 }

func (s *spaceSheet) room() vg.Length {
	if s.keyLines() == 0 {
		return emptyHeight
	}
	return headings + vg.Points(s.scale()*s.high()) + dimRoom + s.keyHeight()
}

// high is the height of the drawing, mm.
func (s *spaceSheet) high() float64 {
	high := doorHeightMM
	for i := range s.groups {
		high = max(high, s.groups[i].height, s.groups[i].depth+wallMM)
	}
	return high
}

func (s *spaceSheet) draw(c draw.Canvas) {
	if s.keyLines() == 0 {
		empty(c, "no dimensions in this comparison")
		return
	}
	s.key(draw.Crop(c, 0, 0, 0, s.keyHeight()-c.Size().Y))
	sheet, scale := draw.Crop(c, 0, 0, s.keyHeight(), 0), s.scale()
	muted := words(textSize, rgb(mutedHex))
	put(c, muted, c.Rectangle.Min.Add(vg.Point{X: columnPad, Y: c.Size().Y}), "from the front")
	floor, x := sheet.Min.Y+dimRoom, sheet.Min.X
	for _, side := range bothSides() {
		x = pen{sheet, scale, x + columnPad, floor, side}.front(&s.groups[side])
	}
	x = pen{sheet, scale, x + columnPad, floor, 0}.door()
	c.StrokeLine2(line(rgb(inkHex), hairWidth), sheet.Min.X+columnPad/2, floor, x+textGap, floor)
	put(c, muted, vg.Point{X: x + columnPad, Y: c.Max.Y}, "from above, the wall at the top")
	wall := s.high() - wallMM
	for _, side := range bothSides() {
		x = pen{sheet, scale, x + columnPad, floor, side}.above(&s.groups[side], wall)
	}
}

// key lists the things by number, one option beside the other.
func (s *spaceSheet) key(c draw.Canvas) {
	half := c.Size().X / 2
	for _, side := range bothSides() {
		x, y := c.Min.X+vg.Length(side)*half, c.Max.Y
		put(c, bold(words(textSize, textOf(side))), vg.Point{X: x, Y: y}, side.String())
		style := words(textSize, rgb(inkHex))
		for i, text := range s.groups[side].list() {
			if i == mostInKey {
				break
			}
			y -= step(textSize)
			put(c, style, vg.Point{X: x, Y: y}, fit(text, style, half-textGap))
		}
	}
}

func (s *spaceSheet) inWords() string {
	var list []string
	for _, side := range bothSides() {
		list = append(list, capital(side.String())+": "+strings.Join(s.groups[side].list(), "; ")+".")
	}
	return strings.Join(list, " ")
}

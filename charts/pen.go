package charts

import (
	"image/color"
	"strconv"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// pen draws in mm from an origin on the floor line.
type pen struct {
	c     draw.Canvas
	scale float64 // points a mm
	x, y  vg.Length
	side  compare.Side
}

func (p pen) mm(v float64) vg.Length { return vg.Points(v * p.scale) }

// front draws a group as seen from the front and gives its right edge.
func (p pen) front(g *group) vg.Length {
	for i, t := range g.things {
		x0, y0, x1, y1 := p.item(t.x, t.y, t.WidthMM, t.HeightMM, false)
		if !p.number(i+1, onFill(p.side), x0, y0, x1, y1) {
			p.number(i+1, rgb(inkHex), x0, y1, x1+p.mm(betweenMM), y1+p.mm(overMM))
		}
	}
	if len(g.things) > 0 {
		first := g.things[0]
		p.upright(first.HeightMM, 0)
		p.lying(first.WidthMM, p.y)
	}
	return p.x + p.mm(g.width)
}

// above draws a group as seen from above, with its back to a wall so many mm over
// the floor line, and gives its right edge. What hangs lies over what stands.
func (p pen) above(g *group, wallMM float64) vg.Length {
	wall, right := p.y+p.mm(wallMM), p.x+p.mm(g.width)
	for i, t := range g.things {
		x0, y0, x1, y1 := p.item(t.x, wallMM-t.DepthMM, t.WidthMM, t.DepthMM, t.Hangs)
		if t.Hangs {
			p.number(i+1, rgb(inkHex), x0, y0, x1, y1)
		} else {
			// In the front half: the other may be hidden by what hangs.
			p.number(i+1, onFill(p.side), x0, y0, x1, (y0+y1)/2)
		}
	}
	p.c.StrokeLine2(line(rgb(inkHex), wallWidth), p.x-textGap, wall+wallWidth/2, right+textGap, wall+wallWidth/2)
	if len(g.things) > 0 {
		p.upright(g.things[0].DepthMM, wallMM-g.things[0].DepthMM)
	}
	return right
}

const wallWidth = 2.0

// item draws one thing and gives its corners. One that hangs over another is an
// empty outline, dashed.
func (p pen) item(x, y, w, h float64, dashed bool) (x0, y0, x1, y1 vg.Length) {
	x0, y0, x1, y1 = p.x+p.mm(x), p.y+p.mm(y), p.x+p.mm(x+w), p.y+p.mm(y+h)
	edge, fill := line(rgb(inkHex), hairWidth), fillOf(p.side)
	if dashed {
		edge.Dashes, fill = []vg.Length{2, 1.5}, rgb(paperHex)
	}
	box(p.c, fill, x0, y0, x1, y1)
	outline(p.c, edge, x0, y0, x1, y1)
	return x0, y0, x1, y1
}

// number writes a thing's number into a rectangle, if there is room.
func (p pen) number(n int, ink color.Color, x0, y0, x1, y1 vg.Length) bool {
	style := aligned(bold(words(textSize, ink)), draw.XCenter, draw.YCenter)
	name := strconv.Itoa(n)
	if style.Width(name) > x1-x0 || style.Font.Size > y1-y0 {
		return false
	}
	put(p.c, style, vg.Point{X: (x0 + x1) / 2, Y: (y0 + y1) / 2}, name)
	return true
}

const dimOffset = 5.0 // points from what is measured

// upright writes a height left of the origin.
func (p pen) upright(v, from float64) {
	x, y0, y1 := p.x-dimOffset, p.y+p.mm(from), p.y+p.mm(from+v)
	s := line(rgb(mutedHex), gridWidth)
	p.c.StrokeLine2(s, x, y0, x, y1)
	p.c.StrokeLine2(s, x-2, y0, x+2, y0)
	p.c.StrokeLine2(s, x-2, y1, x+2, y1)
	style := aligned(words(textSize, rgb(inkHex)), draw.XRight, draw.YCenter)
	put(p.c, style, vg.Point{X: x - 2, Y: (y0 + y1) / 2}, number(v, 0))
}

// lying writes a width below the origin.
func (p pen) lying(v float64, foot vg.Length) {
	x0, x1, y := p.x, p.x+p.mm(v), foot-dimOffset
	s := line(rgb(mutedHex), gridWidth)
	p.c.StrokeLine2(s, x0, y, x1, y)
	p.c.StrokeLine2(s, x0, y-2, x0, y+2)
	p.c.StrokeLine2(s, x1, y-2, x1, y+2)
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YTop)
	put(p.c, style, vg.Point{X: (x0 + x1) / 2, Y: y}, number(v, 0))
}

// door draws a door for scale and gives its right edge.
func (p pen) door() vg.Length {
	x1, y1 := p.x+p.mm(doorWidthMM), p.y+p.mm(doorHeightMM)
	box(p.c, rgb(shadeHex), p.x, p.y, x1, y1)
	outline(p.c, line(rgb(mutedHex), hairWidth), p.x, p.y, x1, y1)
	const handleMM = 1000.0
	p.c.StrokeLine2(line(rgb(mutedHex), curveWidth), x1-6, p.y+p.mm(handleMM), x1-2, p.y+p.mm(handleMM))
	style := aligned(words(textSize, rgb(mutedHex)), draw.XCenter, draw.YCenter)
	if style.Width("door") < x1-p.x {
		put(p.c, style, vg.Point{X: (p.x + x1) / 2, Y: p.y + p.mm(doorHeightMM*2/3)}, "door")
	}
	p.upright(doorHeightMM, 0)
	p.lying(doorWidthMM, p.y)
	return x1
}

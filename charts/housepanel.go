package charts

import (
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// housePanel is one option's day in the house: the room above, the heat pump's
// output under it, and a strip for defrosts at the foot.
type housePanel struct {
	houseScale
	side  compare.Side
	trace *compare.DayTrace
}

const (
	houseRightRoom = 72.0 // points, for names
	roomHeight     = 30.0
	roomGap        = 13.0
	swatch         = 7.0
	mostRoomMarks  = 3
)

func (h *housePanel) draw(c draw.Canvas) {
	put(c, bold(words(textSize, textOf(h.side))), vg.Point{X: c.Min.X, Y: c.Max.Y}, h.side.String())
	p := newPlot()
	p.X.Min, p.X.Max, p.X.Tick.Marker = 0, hoursADay, hourMarks()
	inner := draw.Crop(c, 0, -houseRightRoom, 0, -step(textSize)-2)
	// Room and strip stand above and below the power in the same plot, so that all
	// share the hours.
	power := inner.Size().Y - step(textSize) - marksBelow - roomHeight - roomGap - h.stripRoom()
	perPoint := h.kW / float64(power)
	p.Y.Min, p.Y.Max = -perPoint*float64(h.stripRoom()), h.kW+perPoint*(roomGap+roomHeight)
	p.Y.Tick.Marker = append(roundMarks(0, h.kW), h.roomMarks(perPoint)...)
	p.Add(drawing(gridAcross), drawing(h.power), drawing(h.defrosts), drawing(func(c draw.Canvas, p *plot.Plot) { h.room(c, p, perPoint) }))
	p.Draw(inner)
}

func (h *housePanel) stripRoom() vg.Length { return runsHeight + stripGap }

// roomAt puts a room temperature on the axis of power.
func (h *housePanel) roomAt(roomC, perPoint float64) float64 {
	share := (roomC - h.roomLow) / (h.roomHigh - h.roomLow)
	return h.kW + perPoint*(roomGap+share*roomHeight)
}

// roomMarks are those of the room temperature, in their place on the axis.
func (h *housePanel) roomMarks(perPoint float64) marks {
	m := marksOf(h.roomLow, h.roomHigh, mostRoomMarks-1, number)
	for i := range m {
		m[i].Value = h.roomAt(m[i].Value, perPoint)
	}
	return m
}

func (h *housePanel) room(c draw.Canvas, p *plot.Plot, perPoint float64) {
	x, y := p.Transforms(&c)
	middle := y(h.roomAt((h.roomLow+h.roomHigh)/2, perPoint))
	for _, piece := range pieces(h.trace.Points, roomC) {
		pts := make([]vg.Point, len(piece))
		for i, q := range piece {
			pts[i] = vg.Point{X: x(q.hour), Y: y(h.roomAt(q.c, perPoint))}
		}
		c.StrokeLines(line(rgb(inkHex), curveWidth), thinned(pts))
	}
	strip(c, middle, "room, °C")
}

// power fills what the heat pump gives to each duty.
func (h *housePanel) power(c draw.Canvas, p *plot.Plot) {
	if len(h.trace.Points) == 0 {
		empty(c, "no figures for this day")
	}
	x, y := p.Transforms(&c)
	h.areas(c, p, rgb(gridHex), heatsRooms, houseKW)
	h.areas(c, p, fillOf(h.side), heatsWater, waterKW)
	c.StrokeLine2(line(rgb(inkHex), gridWidth), x(0), y(0), x(hoursADay), y(0))
	h.key(c, y(h.kW)-step(textSize)/2, fillOf(h.side), "hot water, kW")
	h.key(c, y(h.kW)-2*step(textSize), rgb(gridHex), "heating, kW")
}

// areas fills one duty, run by run.
func (h *housePanel) areas(c draw.Canvas, p *plot.Plot, fill color.Color, on func(*compare.DayPoint) bool, of func(*compare.DayPoint) float64) {
	x, y := p.Transforms(&c)
	for _, s := range spans(h.trace.Points, on) {
		var pts []vg.Point
		for i := range h.trace.Points {
			q := &h.trace.Points[i]
			if q.Hour <= s.from || q.Hour > s.to || !finite(of(q)) {
				continue
			}
			at := vg.Point{X: x(q.Hour), Y: y(of(q))}
			if len(pts) == 0 {
				pts = append(pts, vg.Point{X: x(s.from), Y: at.Y})
			}
			pts = append(pts, at)
		}
		if len(pts) == 0 {
			continue
		}
		pts = thinned(pts)
		edge := append([]vg.Point{{X: pts[0].X, Y: y(0)}}, pts...)
		edge = append(edge, vg.Point{X: pts[len(pts)-1].X, Y: y(0)})
		c.FillPolygon(fill, edge)
		c.StrokeLines(line(rgb(mutedHex), gridWidth), pts)
	}
}

// key names an area beside a patch of its colour.
func (h *housePanel) key(c draw.Canvas, y vg.Length, fill color.Color, name string) {
	x := c.Max.X + textGap
	box(c, fill, x, y-swatch/2, x+swatch, y+swatch/2)
	outline(c, line(rgb(mutedHex), gridWidth), x, y-swatch/2, x+swatch, y+swatch/2)
	put(c, aligned(words(textSize, rgb(inkHex)), draw.XLeft, draw.YCenter), vg.Point{X: x + swatch + textGap, Y: y}, name)
}

// defrosts marks when ice is melted.
func (h *housePanel) defrosts(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	box(c, rgb(shadeHex), c.Min.X, c.Min.Y, c.Max.X, c.Min.Y+runsHeight)
	for _, s := range spans(h.trace.Points, defrosting) {
		from := x(s.from)
		box(c, rgb(inkHex), from, c.Min.Y, min(max(x(s.to), from+leastDraw), c.Max.X), c.Min.Y+runsHeight)
	}
	strip(c, c.Min.Y+runsHeight/2, "melting ice")
}

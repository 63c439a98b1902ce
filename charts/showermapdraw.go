package charts

import (
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

const (
	cellHeight = 13.0 // points
	mapHead    = 14.0 // name of a panel
	mapFoot    = 22.0 // months, and the gap to the next panel
	frameWidth = 1.4
)

func (m *showerMap) panelHeight() vg.Length {
	return mapHead + cellHeight*vg.Length(len(m.draws.FlowsLPerMin)) + mapFoot
}

func (m *showerMap) room() vg.Length { return m.panelHeight() * vg.Length(len(m.states)) }

func (m *showerMap) draw(c draw.Canvas) {
	for i, state := range m.states {
		row := rowFromTop(c, i, m.panelHeight())
		leftAndRight(row, func(c draw.Canvas, side compare.Side) { m.panel(c, side, state) })
	}
}

func (m *showerMap) panel(c draw.Canvas, side compare.Side, state int) {
	head := bold(words(textSize, textOf(side)))
	put(c, head, vg.Point{X: c.Min.X, Y: c.Max.Y}, side.String())
	at := vg.Point{X: c.Min.X + head.Width(side.String()) + 2*textGap, Y: c.Max.Y}
	muted := words(textSize, rgb(mutedHex))
	put(c, muted, at, fit(withPump(m.draws.States[state]), muted, c.Max.X-at.X))
	p := newPlot()
	p.X.Min, p.X.Max = -0.5, calendar.MonthsInAYear-0.5
	p.Y.Min, p.Y.Max = -0.5, float64(len(m.draws.FlowsLPerMin))-0.5
	p.X.Tick.Marker, p.Y.Tick.Marker = thirdMonths(), m.flowMarks()
	p.Add(drawing(func(c draw.Canvas, p *plot.Plot) { m.cells(c, p, side, state) }))
	p.Draw(draw.Crop(c, 0, 0, mapFoot-step(textSize)-marksBelow, -mapHead))
}

func (m *showerMap) flowMarks() marks {
	out := make(marks, len(m.draws.FlowsLPerMin))
	for i, flow := range m.draws.FlowsLPerMin {
		out[i] = plot.Tick{Value: float64(i), Label: sensible(flow)}
	}
	return out
}

func (m *showerMap) cells(c draw.Canvas, p *plot.Plot, side compare.Side, state int) {
	x, y := p.Transforms(&c)
	for month := range calendar.MonthsInAYear {
		for flow := range m.draws.FlowsLPerMin {
			m.cell(c, cellAt(x, y, month, flow), m.draws.Of(side).ShowerMin[month][state][flow])
		}
	}
	outline(c, line(rgb(mutedHex), gridWidth), c.Min.X, c.Min.Y, c.Max.X, c.Max.Y)
	edges := m.frame(x, y, side, state)
	// On a line of paper it shows on dark cells too.
	for _, s := range []draw.LineStyle{line(rgb(paperHex), 2*frameWidth), line(rgb(failHex), frameWidth)} {
		c.StrokeLines(s, edges...)
	}
}

// cellAt is where the minutes of a month at a flow are written.
func cellAt(x, y func(float64) vg.Length, month, flow int) vg.Rectangle {
	const half = 0.5
	across, up := float64(month), float64(flow)
	return vg.Rectangle{Min: vg.Point{X: x(across - half), Y: y(up - half)}, Max: vg.Point{X: x(across + half), Y: y(up + half)}}
}

// cell writes the minutes on their shade.
func (m *showerMap) cell(c draw.Canvas, r vg.Rectangle, minutes float64) {
	shade := mapShade(min(minutes, m.draws.LongestMin) / m.draws.LongestMin)
	box(c, shades{}.colours()[shade], r.Min.X, r.Min.Y, r.Max.X, r.Max.Y)
	style := aligned(words(textSize, inkOn(shade)), draw.XCenter, draw.YCenter)
	text := number(min(minutes, m.draws.LongestMin), 0)
	if style.Width(text) < r.Size().X {
		put(c, style, vg.Point{X: (r.Min.X + r.Max.X) / 2, Y: (r.Min.Y + r.Max.Y) / 2}, text)
	}
}

// frame gives the edges around the cells in which the household's shower turns
// cold.
func (m *showerMap) frame(x, y func(float64) vg.Length, side compare.Side, state int) [][]vg.Point {
	cold := func(month, flow int) bool {
		inside := month >= 0 && month < calendar.MonthsInAYear && flow >= 0 && flow < len(m.draws.FlowsLPerMin)
		return inside && !m.serves(side, month, state, flow)
	}
	var out [][]vg.Point
	for month := range calendar.MonthsInAYear {
		for flow := range m.draws.FlowsLPerMin {
			if !cold(month, flow) {
				continue
			}
			r := cellAt(x, y, month, flow)
			at := corners(r.Min.X, r.Min.Y, r.Max.X, r.Max.Y)
			// Corners run from the lower left by the lower right.
			for i, next := range [][2]int{{month, flow - 1}, {month + 1, flow}, {month, flow + 1}, {month - 1, flow}} {
				if !cold(next[0], next[1]) {
					out = append(out, []vg.Point{at[i], at[(i+1)%len(at)]})
				}
			}
		}
	}
	return out
}

// inkOn is the colour of words on a shade of the map.
func inkOn(shade int) color.NRGBA {
	if shade >= firstDark {
		return rgb(paperHex)
	}
	return rgb(inkHex)
}

const (
	firstDark = 3 // shade on which words are the colour of paper
	// darkest is the last shade that a map takes: ink itself would hide that what
	// is next to it differs.
	darkest = 4
)

// mapShade turns a share of the longest shower into a shade: the shorter, the
// darker, and paper for one that outlasts the test.
func mapShade(share float64) int {
	if share >= 1 {
		return 0
	}
	return min(1+int((1-max(share, 0))*darkest), darkest)
}

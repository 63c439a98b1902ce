package charts

import (
	"fmt"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// showerMinutes is the picture of how long a shower lasts in each month, however
// the heat pump runs, from a vessel that is charged.
type showerMinutes struct {
	draws *compare.Drawoff
	flow  int // of the tests, the one that is drawn
}

// drawoffChart draws the timed showers at the tested flow that is nearest to the
// household's.
func drawoffChart(d *compare.Drawoff, flowLPerMin float64) Chart {
	s := showerMinutes{draws: d, flow: d.NearestFlow(flowLPerMin)}
	flow := sensible(d.FlowsLPerMin[s.flow])
	return Chart{
		Name:  "shower-minutes",
		Title: s.finding(),
		Alt: fmt.Sprintf("Two panels, minutes of shower until it is too cold, by month. At %s litres a minute and with the heat pump at full output: %s. %s.",
			flow, s.inWords(compare.SideCompact), capital(s.inWords(compare.SideCylinder))),
		subtitle: fmt.Sprintf("One shower of %s litres a minute from a fully warm store or cylinder, until it runs too cold. Lines: what the heat pump does meanwhile; the title is for full output.", flow),
		room:     showerHeight,
		body:     s.draw,
	}
}

const showerHeight = 170.0 // points

const january, july = 0, 6

// finding is of the heat pump's first state, its full output.
func (s *showerMinutes) finding() string {
	m := func(side compare.Side, month int) string { return s.written(s.minutes(side, month, 0)) }
	cylinder := m(compare.SideCylinder, january) + " and " + m(compare.SideCylinder, july)
	if m(compare.SideCylinder, january) == m(compare.SideCylinder, july) {
		cylinder = m(compare.SideCylinder, january) + " in both"
	}
	return fmt.Sprintf("A shower lasts %s minutes in January and %s in July from the compact store, %s from the cylinder",
		m(compare.SideCompact, january), m(compare.SideCompact, july), cylinder)
}

func (s *showerMinutes) inWords(side compare.Side) string {
	return fmt.Sprintf("%v, %s minutes in January and %s in July", side,
		s.written(s.minutes(side, january, 0)), s.written(s.minutes(side, july, 0)))
}

func (s *showerMinutes) minutes(side compare.Side, month, state int) float64 {
	return s.draws.Of(side).ShowerMin[month][state][s.flow]
}

// written says so where the test ended before the shower did.
func (s *showerMinutes) written(minutes float64) string {
	if minutes >= s.draws.LongestMin {
		return number(s.draws.LongestMin, 0) + " or more"
	}
	return number(minutes, 0)
}

func (s *showerMinutes) draw(c draw.Canvas) { leftAndRight(c, s.panel) }

const stateRoom = 58.0 // points, for the names of the lines

func (s *showerMinutes) panel(c draw.Canvas, side compare.Side) {
	head := bold(words(textSize, textOf(side)))
	put(c, head, vg.Point{X: c.Min.X, Y: c.Max.Y}, side.String())
	unit := words(textSize, rgb(mutedHex))
	put(c, unit, vg.Point{X: c.Min.X + head.Width(side.String()) + 2*textGap, Y: c.Max.Y}, "minutes")
	p := newPlot()
	p.X.Min, p.X.Max = 0, calendar.MonthsInAYear-1
	p.Y.Min, p.Y.Max = 0, s.draws.LongestMin
	p.X.Tick.Marker, p.Y.Tick.Marker = thirdMonths(), s.minuteMarks()
	p.Add(drawing(gridAcross), drawing(baseline), drawing(func(c draw.Canvas, p *plot.Plot) { s.lines(c, p, side) }))
	p.Draw(draw.Crop(c, 0, -stateRoom, 0, -step(textSize)-4))
}

// thirdMonths names every third month.
func thirdMonths() marks {
	var out marks
	for i, m := range monthMarks() {
		if i%3 == 0 {
			out = append(out, m)
		}
	}
	return out
}

// minuteMarks say that the top is where the test ends.
func (s *showerMinutes) minuteMarks() marks {
	m := roundMarks(0, s.draws.LongestMin)
	if last := &m[len(m)-1]; last.Value == s.draws.LongestMin {
		last.Label = "≥ " + last.Label
	}
	return m
}

func (s *showerMinutes) lines(c draw.Canvas, p *plot.Plot, side compare.Side) {
	x, y := p.Transforms(&c)
	var ends []endLabel
	for state, name := range s.draws.States {
		pts := make([]vg.Point, calendar.MonthsInAYear)
		for m := range pts {
			pts[m] = vg.Point{X: x(float64(m)), Y: y(min(s.minutes(side, m, state), s.draws.LongestMin))}
		}
		c.StrokeLines(stateStyle(state, side), pts)
		ends = append(ends, endLabel{stateName(name), pts[len(pts)-1].Y})
	}
	nameEnds(c, ends, side)
}

// stateName says plainly what the heat pump does.
func stateName(name string) string {
	switch name {
	case "capped":
		return "half output"
	case "in defrost":
		return "melting ice"
	default:
		return plain(name)
	}
}

// stateStyle is a line of its own for each state.
func stateStyle(state int, side compare.Side) draw.LineStyle {
	dashes := [][]vg.Length{nil, {6, 2}, {1.2, 1.8}, {6, 2, 1.2, 2}}
	return line(fillOf(side), curveWidth, dashes[state%len(dashes)]...)
}

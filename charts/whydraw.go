package charts

import (
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const (
	stairHeight    = 17.0 // points of a row
	stairBar       = 0.62 // of a row's height
	stairLabelRoom = 170.0
)

// rows counts the two options among the effects.
func (s *stairs) rows() int { return len(s.steps) + 2 }

func (s *stairs) room() vg.Length {
	return vg.Points(stairHeight*(float64(s.rows())-1+2*pairsMargin) + axisRoom)
}

func (s *stairs) labels() []string {
	out := []string{compare.SideCylinder.String()}
	for _, step := range s.steps {
		out = append(out, step.label)
	}
	return append(out, compare.SideCompact.String())
}

// reach gives the lowest and the highest step, from the cylinder's.
func (s *stairs) reach() (low, high float64) {
	at := 0.0
	for _, step := range s.steps {
		at += step.kWh
		low, high = min(low, at), max(high, at)
	}
	return min(low, s.difference()), max(high, s.difference())
}

func (s *stairs) draw(c draw.Canvas) {
	labels := s.labels()
	p := rowPlot(labels, stairLabelRoom)
	style, names := words(textSize, nil), vg.Length(0)
	for _, l := range labels {
		names = max(names, min(stairLabelRoom, style.Width(l)))
	}
	s.axis(p, c.Size().X-names)
	p.Add(drawing(gridUp), drawing(s.bars), drawing(originUp), drawing(s.values), drawing(s.totals))
	unit := aligned(words(textSize, rgb(mutedHex)), draw.XRight, draw.YBottom)
	put(c, unit, vg.Point{X: c.Max.X, Y: c.Min.Y}, "kWh a year, compact store against cylinder")
	p.Draw(draw.Crop(c, 0, 0, step(textSize), 0))
}

// axis reaches over all steps, and leaves room for what is written beyond them.
func (s *stairs) axis(p *plot.Plot, wide vg.Length) {
	low, high := s.reach()
	if low == high {
		high = low + 1
	}
	left, right := s.textRooms(low, high, wide)
	bars := wide - left - right
	p.X.Tick.Marker = marksThatFit(low, high, bars, signed)
	perPoint := (high - low) / float64(bars)
	p.X.Min, p.X.Max = low-perPoint*float64(left), high+perPoint*float64(right)
}

// textRooms are what the texts need beyond the steps on either side, on a scale
// that leaves each side the widest of them.
func (s *stairs) textRooms(low, high float64, wide vg.Length) (left, right vg.Length) {
	style, widest := bold(words(textSize, nil)), vg.Length(0)
	texts, ends := s.texts(), s.ends()
	for _, text := range append(texts, ends...) {
		widest = max(widest, style.Width(text)+3*textGap)
	}
	scale := float64(wide-2*widest) / (high - low) // points a kWh
	left = 2 * textGap                             // the names stay off the first mark
	at := 0.0
	need := func(sign float64, text string) {
		w := style.Width(text) + 3*textGap
		if sign < 0 {
			left = max(left, w-vg.Points((at-low)*scale))
		} else {
			right = max(right, w-vg.Points((high-at)*scale))
		}
	}
	need(0, ends[0])
	for i, step := range s.steps {
		at += step.kWh
		need(sideOf(step.kWh, texts[i]), texts[i])
	}
	at = s.difference()
	need(at, ends[1])
	return left, right
}

// sideOf is negative for what is written at the left of its bar: what takes off.
// What rounds to nothing has no bar to be left of.
func sideOf(kWh float64, text string) float64 {
	if text == "0" {
		return 0
	}
	return kWh
}

func (s *stairs) texts() []string {
	out := make([]string, len(s.steps))
	for i, step := range s.steps {
		out[i] = signed(step.kWh, 0)
	}
	return out
}

// ends are what is written for the two options.
func (s *stairs) ends() []string {
	return []string{number(s.cylinder, 0) + " kWh", number(s.compact, 0) + " kWh"}
}

// bars draws each effect in the colour of the option that it burdens, and a line
// from its end down to the next.
func (s *stairs) bars(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	at := 0.0
	for i, step := range s.steps {
		row := -float64(i + 1)
		from, to := x(at), x(at+step.kWh)
		fill := fillOf(compare.SideCompact)
		if step.kWh < 0 {
			fill = fillOf(compare.SideCylinder)
		}
		box(c, fill, from, y(row-stairBar/2), to, y(row+stairBar/2))
		c.StrokeLine2(line(rgb(mutedHex), hairWidth), to, y(row-stairBar/2), to, y(row-1+stairBar/2))
		at += step.kWh
	}
}

// values writes beside each bar what it stands for.
func (s *stairs) values(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	at := 0.0
	for i, text := range s.texts() {
		kWh := s.steps[i].kWh
		at += kWh
		beside(c, vg.Point{X: x(at), Y: y(-float64(i + 1))}, sideOf(kWh, text), words(textSize, rgb(inkHex)), text)
	}
}

// beside writes a value beyond the end of its bar, over any line that runs there.
func beside(c draw.Canvas, end vg.Point, sign float64, s draw.TextStyle, text string) {
	left, half := end.X+textGap, s.Font.Size/2
	if sign < 0 {
		left = end.X - textGap - s.Width(text)
	}
	box(c, rgb(paperHex), left-touch, end.Y-half, left+s.Width(text)+touch, end.Y+half)
	put(c, aligned(s, draw.XLeft, draw.YCenter), vg.Point{X: left, Y: end.Y}, text)
}

// totals marks what each option uses, at the head and at the foot of the stairs.
func (s *stairs) totals(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	texts := s.ends()
	for i, at := range []float64{0, s.difference()} {
		side, row := compare.SideCylinder, 0.0
		if i > 0 {
			side, row = compare.SideCompact, -float64(s.rows()-1)
		}
		c.StrokeLine2(line(fillOf(side), 3), x(at), y(row-stairBar/2), x(at), y(row+stairBar/2))
		beside(c, vg.Point{X: x(at) + vg.Length(math.Copysign(1.5, at)), Y: y(row)}, at, bold(words(textSize, textOf(side))), texts[i])
	}
}

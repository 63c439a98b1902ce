package charts

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

const (
	inputRoom  = 132.0 // points, for the names of inputs
	turnsRoom  = 92.0  // for where the recommendation turns
	tornadoBar = 0.5   // of a row's height
)

func (t *tornado) draw(c draw.Canvas) {
	if len(t.inputs) == 0 {
		empty(c, "no input was varied")
		return
	}
	p := newPlot()
	n := float64(len(t.inputs))
	p.Y.Min, p.Y.Max, p.Y.Tick.Marker = 1-n-pairsMargin, pairsMargin, marks{}
	inner := draw.Crop(c, inputRoom, -turnsRoom, step(textSize), -2*step(textSize))
	t.axis(p, inner.Size().X)
	p.Add(drawing(gridUp), drawing(t.bars), drawing(t.rulers), drawing(t.values), drawing(t.words))
	muted := words(textSize, rgb(mutedHex))
	put(c, aligned(muted, draw.XLeft, draw.YBottom), vg.Point{X: inner.Min.X, Y: c.Min.Y}, "← compact store costs less")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: inner.Max.X, Y: c.Min.Y}, "costs more →")
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: c.Max.X, Y: c.Min.Y}, t.unit+" a year")
	p.Draw(inner)
}

// axis reaches over all bars and zero, and leaves room for the values at their
// ends.
func (t *tornado) axis(p *plot.Plot, wide vg.Length) {
	low, high := min(0, t.base), max(0, t.base)
	room := vg.Length(0)
	style := words(textSize, nil)
	for i := range t.inputs {
		in := &t.inputs[i]
		low = min(low, in.Low.CostDifference, in.High.CostDifference)
		high = max(high, in.Low.CostDifference, in.High.CostDifference)
		room = max(room, style.Width(brief(in.LowValue)), style.Width(brief(in.HighValue)))
	}
	if low == high {
		high = low + 1
	}
	room += 2 * textGap
	around := (high - low) * float64(room/(wide-2*room))
	p.X.Min, p.X.Max = low-around, high+around
	p.X.Tick.Marker = marksThatFit(low, high, wide-2*room, signed)
}

// bars have the colour of the option that costs less there.
func (t *tornado) bars(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for i := range t.inputs {
		low, high, _, _ := ends(&t.inputs[i])
		foot, head := y(-float64(i)-tornadoBar/2), y(-float64(i)+tornadoBar/2)
		if low < 0 {
			box(c, fillOf(compare.SideCompact), x(low), foot, x(min(0, high)), head)
		}
		if high > 0 {
			box(c, fillOf(compare.SideCylinder), x(max(0, low)), foot, x(high), head)
		}
	}
}

// values writes at the ends of each bar the input that leads there, outside the line
// of the case as stated, which a bar need not reach, and clear of that of equal cost.
func (t *tornado) values(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	style, lines := words(textSize, rgb(inkHex)), uprights{x(0), x(t.base)}
	for i := range t.inputs {
		low, high, left, right := ends(&t.inputs[i])
		lines.beside(c, vg.Point{X: x(min(low, t.base)), Y: y(-float64(i))}, -1, style, brief(left))
		lines.beside(c, vg.Point{X: x(max(high, t.base)), Y: y(-float64(i))}, 1, style, brief(right))
	}
}

// ends gives the lower and the higher difference in cost, and the values of the
// input that lead to them.
func ends(in *compare.SensitivityInput) (low, high, left, right float64) {
	low, high = in.Low.CostDifference, in.High.CostDifference
	if low <= high {
		return low, high, in.LowValue, in.HighValue
	}
	return high, low, in.HighValue, in.LowValue
}

// rulers are the line of equal cost and that of the case as it is stated, which is
// named above.
func (t *tornado) rulers(c draw.Canvas, p *plot.Plot) {
	originUp(c, p)
	x, _ := p.Transforms(&c)
	at := x(t.base)
	// On a line of paper it shows on dark bars too.
	c.StrokeLine2(line(rgb(paperHex), 2*hairWidth), at, c.Min.Y, at, c.Max.Y)
	c.StrokeLine2(line(rgb(inkHex), hairWidth, 3, 2), at, c.Min.Y, at, c.Max.Y+1)
	style := aligned(words(textSize, rgb(inkHex)), draw.XCenter, draw.YBottom)
	text := "as stated: " + signed(t.base, 0)
	half := style.Width(text) / 2
	put(c, style, vg.Point{X: min(max(at, c.Min.X+half), c.Max.X-half), Y: c.Max.Y + 3}, text)
}

// words names each input at the left, and where it turns the recommendation at the
// right.
func (t *tornado) words(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	head := aligned(words(textSize, rgb(mutedHex)), draw.XLeft, draw.YBottom)
	put(c, head, vg.Point{X: c.Max.X + 2*textGap, Y: c.Max.Y + 3}, "recommendation")
	for i := range t.inputs {
		rowName(c, t.label(i), y(-float64(i)))
		style := aligned(words(textSize, rgb(mutedHex)), draw.XLeft, draw.YCenter)
		if t.inputs[i].Turn != nil {
			style = bold(style)
			style.Color = rgb(failHex)
		}
		put(c, style, vg.Point{X: c.Max.X + 2*textGap, Y: y(-float64(i))}, fit(turns(&t.inputs[i]), style, turnsRoom-2*textGap))
	}
}

// rowName writes a name left of a canvas, on two lines if need be.
func rowName(c draw.Canvas, name string, middle vg.Length) {
	const mostRows = 2
	style := aligned(words(textSize, rgb(inkHex)), draw.XRight, draw.YCenter)
	lines := balanced(name, style, inputRoom-2*textGap, mostRows)
	for i, l := range lines {
		up := step(textSize) * (vg.Length(len(lines)-1)/2 - vg.Length(i))
		put(c, style, vg.Point{X: c.Min.X - 2*textGap, Y: middle + up}, l)
	}
}

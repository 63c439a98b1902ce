package charts

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// pair is a row of two bars, one for each option.
type pair struct {
	label  string
	values [2]float64
	texts  [2]string // the values as written
}

// pairs are rows of lying bars on one axis from zero.
type pairs struct {
	unit string // of the axis along
	rows []pair
}

const (
	pairHeight  = 27.0 // points of a row
	pairBar     = 0.34 // of a row's height
	pairOffset  = 0.18 // of a bar's middle from the row's
	labelRoom   = 128.0
	textGap     = 3.0
	axisRoom    = 26.0 // marks and unit
	pairsMargin = 0.55 // of a row, above the first and below the last
)

// pairsHeight is what rows take with their axis.
func pairsHeight(rows int) vg.Length {
	return vg.Points(pairHeight*(float64(rows)-1+2*pairsMargin) + axisRoom)
}

// rowPlot is a plot whose upright axis names rows from the top down.
func rowPlot(labels []string) *plot.Plot {
	p := newPlot()
	n := float64(len(labels))
	p.Y.Min, p.Y.Max = 1-n-pairsMargin, pairsMargin
	style := p.Y.Tick.Label
	rows := make(marks, len(labels))
	for i, l := range labels {
		rows[i] = plot.Tick{Value: -float64(i), Label: fit(l, style, labelRoom)}
	}
	p.Y.Tick.Marker = rows
	return p
}

func (r *pairs) draw(c draw.Canvas) {
	p := rowPlot(r.labels())
	ceiling := top(r.highest())
	p.X.Min, p.X.Max = 0, ceiling
	p.X.Tick.Marker = marksThatFit(0, ceiling, c.Size().X-labelRoom-r.textRoom(), number)
	p.Add(drawing(gridUp), drawing(r.bars), drawing(originUp))
	unit := aligned(words(textSize, rgb(mutedHex)), draw.XRight, draw.YBottom)
	put(c, unit, vg.Point{X: c.Max.X, Y: c.Min.Y}, r.unit)
	p.Draw(draw.Crop(c, 0, -r.textRoom(), step(textSize), 0))
}

func (r *pairs) labels() []string {
	out := make([]string, len(r.rows))
	for i := range r.rows {
		out[i] = r.rows[i].label
	}
	return out
}

func (r *pairs) highest() float64 {
	h := 0.0
	for i := range r.rows {
		h = max(h, r.rows[i].values[0], r.rows[i].values[1])
	}
	return h
}

// textRoom is kept free on the right for the longest value.
func (r *pairs) textRoom() vg.Length {
	style := words(textSize, nil)
	room := vg.Length(0)
	for i := range r.rows {
		for _, text := range r.rows[i].texts {
			room = max(room, style.Width(text))
		}
	}
	return room + 2*textGap
}

// gridUp rules a line at each mark of the lying axis.
func gridUp(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	for _, t := range p.X.Tick.Marker.Ticks(p.X.Min, p.X.Max) {
		c.StrokeLine2(line(rgb(gridHex), gridWidth), x(t.Value), c.Min.Y, x(t.Value), c.Max.Y)
	}
}

// originUp rules the zero line over the feet of the bars.
func originUp(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	c.StrokeLine2(line(rgb(inkHex), hairWidth), x(0), c.Min.Y, x(0), c.Max.Y)
}

func (r *pairs) bars(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for i := range r.rows {
		for _, side := range bothSides() {
			at := rowOf(i, side)
			end := x(max(0, r.rows[i].values[side]))
			box(c, fillOf(side), x(0), y(at-pairBar/2), end, y(at+pairBar/2))
			r.write(c, i, side, x(0), end, y(at))
		}
	}
}

// rowOf is where a bar lies: the compact store's above.
func rowOf(row int, side compare.Side) float64 {
	if side == compare.SideCompact {
		return -float64(row) + pairOffset
	}
	return -float64(row) - pairOffset
}

// write puts the value at the end of the bar, and the option's name on its
// longest bar: inside, or behind the value where the bar is too short for it.
func (r *pairs) write(c draw.Canvas, row int, side compare.Side, start, end, y vg.Length) {
	value := aligned(words(textSize, rgb(inkHex)), draw.XLeft, draw.YCenter)
	at := vg.Point{X: end + textGap, Y: y}
	put(c, value, at, r.rows[row].texts[side])
	if row != r.longest(side) {
		return
	}
	inside := aligned(bold(words(textSize, onFill(side))), draw.XLeft, draw.YCenter)
	if inside.Width(side.String())+2*textGap <= end-start {
		put(c, inside, vg.Point{X: start + textGap, Y: y}, side.String())
		return
	}
	inside.Color = textOf(side)
	at.X += value.Width(r.rows[row].texts[side]) + 2*textGap
	put(c, inside, at, side.String())
}

// longest is the row of an option's longest bar.
func (r *pairs) longest(side compare.Side) int {
	best := 0
	for i := range r.rows {
		if r.rows[i].values[side] > r.rows[best].values[side] {
			best = i
		}
	}
	return best
}

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

// room is the height that the rows take with their axis.
func (r *pairs) room() vg.Length {
	if len(r.rows) == 0 {
		return emptyHeight
	}
	return vg.Points(pairHeight*(float64(len(r.rows))-1+2*pairsMargin) + axisRoom)
}

// rowPlot is a plot whose upright axis names rows from the top down, in so much
// room.
func rowPlot(labels []string, room vg.Length) *plot.Plot {
	p := newPlot()
	n := float64(len(labels))
	p.Y.Min, p.Y.Max = 1-n-pairsMargin, pairsMargin
	style := p.Y.Tick.Label
	rows := make(marks, len(labels))
	for i, l := range labels {
		rows[i] = plot.Tick{Value: -float64(i), Label: fit(l, style, room)}
	}
	p.Y.Tick.Marker = rows
	return p
}

func (r *pairs) draw(c draw.Canvas) {
	if len(r.rows) == 0 {
		empty(c, "nothing to show")
		return
	}
	p := rowPlot(r.labels(), labelRoom)
	ceiling := top(r.highest())
	p.X.Min, p.X.Max = 0, ceiling
	p.X.Tick.Marker = marksThatFit(0, ceiling, c.Size().X-r.labelWidth()-r.textRoom(), number)
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

func (r *pairs) labelWidth() vg.Length {
	style := words(textSize, nil)
	wide := vg.Length(0)
	for _, l := range r.labels() {
		wide = max(wide, min(labelRoom, style.Width(l)))
	}
	return wide
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
	for _, side := range bothSides() {
		for i := range r.rows {
			at := rowOf(i, side)
			end := x(max(0, r.rows[i].values[side]))
			box(c, fillOf(side), x(0), y(at-pairBar/2), end, y(at+pairBar/2))
			value := aligned(words(textSize, rgb(inkHex)), draw.XLeft, draw.YCenter)
			put(c, value, vg.Point{X: end + textGap, Y: y(at)}, r.rows[i].texts[side])
		}
		r.name(c, p, side)
	}
}

// rowOf is where a bar lies: the compact store's above.
func rowOf(row int, side compare.Side) float64 {
	if side == compare.SideCompact {
		return -float64(row) + pairOffset
	}
	return -float64(row) - pairOffset
}

// name writes the option's name into its first bar if there is room, or else into
// its longest, or behind the value where even that is too short.
func (r *pairs) name(c draw.Canvas, p *plot.Plot, side compare.Side) {
	x, y := p.Transforms(&c)
	style := aligned(bold(words(textSize, onFill(side))), draw.XLeft, draw.YCenter)
	room := style.Width(side.String()) + 2*textGap
	row := 0
	if x(r.rows[row].values[side]) < x(0)+room {
		row = r.longest(side)
	}
	at := vg.Point{X: x(0) + textGap, Y: y(rowOf(row, side))}
	if end := x(r.rows[row].values[side]); end < x(0)+room {
		style.Color = textOf(side)
		at.X = end + style.Width(r.rows[row].texts[side]) + 3*textGap
	}
	put(c, style, at, side.String())
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

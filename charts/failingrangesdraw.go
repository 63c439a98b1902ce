package charts

import (
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// leastBar lets what does not move be seen, points.
const leastBar = 1.5

func (f *failingRanges) draw(c draw.Canvas) {
	if len(f.inputs) == 0 {
		empty(c, "no input that was varied moves them")
		return
	}
	p := newPlot()
	p.Y.Min, p.Y.Max, p.Y.Tick.Marker = 1-float64(len(f.inputs))-pairsMargin, pairsMargin, marks{}
	inner := draw.Crop(c, inputRoom, 0, step(textSize), -step(textSize))
	f.axis(p, inner.Size().X)
	p.Add(drawing(gridUp), drawing(f.bars), drawing(f.stated), drawing(originUp), drawing(f.rule), drawing(f.values), drawing(f.names))
	muted := words(textSize, rgb(mutedHex))
	put(c, aligned(muted, draw.XRight, draw.YBottom), vg.Point{X: c.Max.X, Y: c.Min.Y}, "failing showers a year")
	p.Draw(inner)
}

// axis begins at zero, with room for the values at the ends of the bars.
func (f *failingRanges) axis(p *plot.Plot, wide vg.Length) {
	high, left, room := max(0, f.allows), vg.Length(0), vg.Length(0)
	style := bold(words(textSize, nil))
	for i := range f.inputs {
		in := &f.inputs[i]
		for _, side := range bothSides() {
			_, most := f.reach(in, side)
			high = max(high, most)
		}
		left = max(left, style.Width(brief(in.LowValue)), style.Width(brief(in.HighValue)))
		room = max(room, style.Width(brief(in.LowValue)+", "+brief(in.HighValue)))
	}
	left += 2 * textGap
	// The name of an option may stand behind a value.
	right := room + 4*textGap + style.Width(compare.SideCompact.String())
	high = top(high)
	perPoint := high / float64(wide-left-right)
	p.X.Min, p.X.Max = -perPoint*float64(left), high+perPoint*float64(right)
	p.X.Tick.Marker = marksThatFit(0, high, wide-left-right, number)
}

// bars reach from one end of an input to the other.
func (f *failingRanges) bars(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	for i := range f.inputs {
		for _, side := range bothSides() {
			low, high, _, _ := f.ends(i, side)
			if low == high && low == failing(&f.base, side) {
				continue // it moves nothing
			}
			foot, head := y(rowOf(i, side)-pairBar/2), y(rowOf(i, side)+pairBar/2)
			box(c, fillOf(side), x(low), foot, max(x(high), x(low)+leastBar), head)
		}
	}
}

// stated rules a line at each option as it is stated, on paper so that it shows on
// bars too.
func (f *failingRanges) stated(c draw.Canvas, p *plot.Plot) {
	x, _ := p.Transforms(&c)
	for _, side := range bothSides() {
		at := x(failing(&f.base, side))
		for _, s := range []draw.LineStyle{line(rgb(paperHex), 3*hairWidth), line(textOf(side), hairWidth)} {
			c.StrokeLine2(s, at, c.Min.Y, at, c.Max.Y)
		}
	}
}

// ends gives the fewer and the more failing showers of a row, and the values of
// the input that lead to them.
func (f *failingRanges) ends(row int, side compare.Side) (low, high, left, right float64) {
	in := &f.inputs[row]
	low, high = failing(&in.Low, side), failing(&in.High, side)
	if low <= high {
		return low, high, in.LowValue, in.HighValue
	}
	return high, low, in.HighValue, in.LowValue
}

// rule is what the service rule lets pass.
func (f *failingRanges) rule(c draw.Canvas, p *plot.Plot) {
	if f.allows < 0 {
		return
	}
	x, _ := p.Transforms(&c)
	at := x(f.allows)
	c.StrokeLine2(line(rgb(failHex), hairWidth, 3, 2), at, c.Min.Y, at, c.Max.Y+1)
	style := aligned(words(textSize, rgb(failHex)), draw.XCenter, draw.YBottom)
	text := "service rule: at most " + sensible(f.allows)
	half := style.Width(text) / 2
	put(c, style, vg.Point{X: min(max(at, c.Min.X+half), c.Max.X-half), Y: c.Max.Y + 2}, text)
}

// lines are the upright lines between which values are written.
func (f *failingRanges) lines(x func(float64) vg.Length) uprights {
	u := uprights{x(0)}
	for _, side := range bothSides() {
		u = append(u, x(failing(&f.base, side)))
	}
	if f.allows >= 0 {
		u = append(u, x(f.allows))
	}
	return u
}

// values writes at each end the value of the input that leads there, or both at
// the right of one that leads to the same, and names the options in the first row.
func (f *failingRanges) values(c draw.Canvas, p *plot.Plot) {
	x, y := p.Transforms(&c)
	style, lines := words(textSize, rgb(inkHex)), f.lines(x)
	for i := range f.inputs {
		for _, side := range bothSides() {
			low, high, left, right := f.ends(i, side)
			end := vg.Point{X: max(x(high), x(low)+leastBar), Y: y(rowOf(i, side))}
			text := brief(right)
			switch {
			case low != high:
				lines.beside(c, vg.Point{X: x(low), Y: end.Y}, -1, style, brief(left))
			case low != failing(&f.base, side):
				text = brief(left) + ", " + text
			default:
				text = ""
			}
			if i > 0 {
				lines.beside(c, end, 1, style, text)
				continue
			}
			name := bold(words(textSize, textOf(side)))
			end.X = lines.clear(end.X, 1, style.Width(text)+2*textGap+name.Width(side.String()))
			beside(c, end, 1, style, text)
			end.X += 2*textGap + style.Width(text)
			beside(c, end, 1, name, side.String())
		}
	}
}

func (f *failingRanges) names(c draw.Canvas, p *plot.Plot) {
	_, y := p.Transforms(&c)
	for i := range f.inputs {
		rowName(c, joinedUnit(plain(f.inputs[i].Label), f.inputs[i].Unit), y(-float64(i)))
	}
}

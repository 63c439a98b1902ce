package charts

import (
	"sort"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"dhwcompare/compare"
)

// endLabel names a line at its end.
type endLabel struct {
	name string
	y    vg.Length
}

// nameEnds writes the names beside the ends, pushed apart where lines meet and kept
// between top and foot.
func nameEnds(c draw.Canvas, ends []endLabel, side compare.Side) {
	sort.SliceStable(ends, func(i, j int) bool { return ends[i].y > ends[j].y })
	apart(ends)
	ceiling := c.Max.Y
	for i := range ends {
		ends[i].y = min(ends[i].y, ceiling)
		ceiling = ends[i].y - step(textSize)
	}
	floor := c.Min.Y
	for i := len(ends) - 1; i >= 0; i-- {
		ends[i].y = max(ends[i].y, floor)
		floor = ends[i].y + step(textSize)
	}
	style := aligned(words(textSize, textOf(side)), draw.XLeft, draw.YCenter)
	for _, e := range ends {
		put(c, style, vg.Point{X: c.Max.X + textGap, Y: e.y}, e.name)
	}
}

// apart pushes names that lie on each other apart, either as far as the other, so
// that each stays near its line.
func apart(ends []endLabel) {
	const rounds = 40 // each halves what is left, more or less
	for range rounds {
		for i := 1; i < len(ends); i++ {
			if short := step(textSize) - (ends[i-1].y - ends[i].y); short > 0 {
				ends[i-1].y += short / 2
				ends[i].y -= short / 2
			}
		}
	}
}

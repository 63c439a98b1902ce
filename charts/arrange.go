package charts

import (
	"fmt"

	"dhwcompare/compare"
)

// thing is an item with a place: left edge and foot, mm from the left end of the
// floor line.
type thing struct {
	compare.SpaceItem
	x, y float64
}

// group is one option's things in their places, and what they span, mm.
type group struct {
	things               []thing
	width, height, depth float64
}

const (
	betweenMM = 50.0  // two things in a row
	overMM    = 100.0 // what hangs, over what stands
)

// arrange stands things in a row from the left, and hangs the others in a row
// above them. Where they hang in a home is for its installer to say.
func arrange(items []compare.SpaceItem) group {
	var g group
	g.row(items, false)
	if g.height > 0 {
		g.height += overMM
	}
	g.row(items, true)
	return g
}

// row adds the things that stand, or those that hang, on top of what there is.
func (g *group) row(items []compare.SpaceItem, hanging bool) {
	foot, x := g.height, 0.0
	for _, item := range items {
		if item.Hangs != hanging {
			continue
		}
		if x > 0 {
			x += betweenMM
		}
		g.things = append(g.things, thing{item, x, foot})
		x += item.WidthMM
		g.height = max(g.height, foot+item.HeightMM)
		g.depth = max(g.depth, item.DepthMM)
	}
	g.width = max(g.width, x)
}

// list names the things with their dimensions.
func (g *group) list() []string {
	out := make([]string, len(g.things))
	for i, t := range g.things {
		out[i] = fmt.Sprintf("%d  %s, %s × %s × %s", i+1, plain(t.Name), number(t.WidthMM, 0), number(t.DepthMM, 0), number(t.HeightMM, 0))
		if t.Hangs {
			out[i] += ", hung"
		}
	}
	return out
}

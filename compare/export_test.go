package compare

import (
	"fmt"
	"iter"
)

// StudiedCases gives the cases at the ends of every input of the sensitivity, and
// those that a search for sizes tries first, with what they are.
func StudiedCases(c *Case) iter.Seq2[string, *Case] {
	return func(yield func(string, *Case) bool) {
		for _, l := range c.levers() {
			for _, v := range []float64{l.low, (l.low + l.high) / 2, l.high} {
				changed := *c
				l.set(&changed, v)
				if !yield(fmt.Sprintf("%s at %g", l.name, v), &changed) {
					return
				}
			}
		}
		for side := range sides {
			if !c.triedSizes(side, yield) {
				return
			}
		}
	}
}

func (c *Case) triedSizes(side Side, yield func(string, *Case) bool) bool {
	for _, litres := range c.sizingVolumes(side) {
		sized, ok := c.resized(side, litres)
		if !ok {
			continue
		}
		v := &volume{side: side, c: sized}
		grid := sized.sizingGrid(side)
		limits := v.limiters()
		for _, limit := range []float64{limits[0], limits[len(limits)-1]} {
			for _, setpointC := range []float64{grid[0], grid[len(grid)-1]} {
				base := sized.withControl(side, func(k *Control) { k.SetpointC, k.MonthSetpointC, k.ShowerLimit = setpointC, nil, limit })
				if !yield(fmt.Sprintf("%v of %g l at %g C, limit %g", side, litres, setpointC, limit), base) {
					return false
				}
				for i, change := range v.changes() {
					changed := base.withControl(side, change)
					if changed.legal(side) && !yield(fmt.Sprintf("%v of %g l at %g C, change %d", side, litres, setpointC, i), changed) {
						return false
					}
				}
			}
		}
	}
	return true
}

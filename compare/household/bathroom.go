package household

import (
	"cmp"
	"slices"
)

// wish is a use of a bathroom as somebody wants it, before the household has
// sorted out who goes when.
type wish struct {
	draw   Draw    // all but its start and, for a shower, its outlet
	headS  float64 // when the first of its chain wants to start
	behind int     // place in a chain of showers back to back, 0 for the first
	busyS  float64 // how long it holds the bathroom
}

// byTurn puts chains in the order in which their first members want to start, and
// keeps the members together: the order then does not depend on how long anybody
// takes.
func byTurn(a, b wish) int {
	return cmp.Or(cmp.Compare(a.headS, b.headS), a.behind-b.behind)
}

// takeTurns gives every wish of the day its start, and a shower its bathroom.
func (g *generator) takeTurns(t today) {
	slices.SortStableFunc(g.wishes, byTurn)
	var beforeEndS float64 // end of the chain member before
	for i := range g.wishes {
		w := &g.wishes[i]
		readyS := w.headS
		if w.behind > 0 {
			readyS = max(readyS, beforeEndS+g.rooms.gapS)
		}
		room, startS := g.rooms.choose(w, readyS)
		beforeEndS = startS + w.busyS
		if startS >= t.endS {
			continue
		}
		g.rooms.hold(room, beforeEndS)
		w.draw.StartS = startS
		if w.draw.Kind == Shower {
			w.draw.Outlet = room
		}
		g.draws = append(g.draws, w.draw)
	}
}

// bathrooms knows when each bathroom is free again.
type bathrooms struct {
	freeS []float64
	gapS  float64
}

func newBathrooms(n int, gapS float64) bathrooms {
	return bathrooms{freeS: make([]float64, n), gapS: gapS}
}

// choose gives the bathroom and the start of a use that is wanted at readyS: the
// bath stands in the first; a shower goes to the person's usual bathroom unless
// another one is free sooner.
func (b *bathrooms) choose(w *wish, readyS float64) (room int, startS float64) {
	if w.draw.Kind == Bath {
		return 0, max(readyS, b.freeS[0])
	}
	room = w.draw.Person % len(b.freeS)
	startS = max(readyS, b.freeS[room])
	for r, freeS := range b.freeS {
		if s := max(readyS, freeS); s < startS {
			room, startS = r, s
		}
	}
	return room, startS
}

func (b *bathrooms) hold(room int, untilS float64) { b.freeS[room] = untilS + b.gapS }

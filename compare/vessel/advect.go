package vessel

import "math"

// advect moves the water of equal cells, bottom first, by a share c (0..1) of one
// cell, up if way is 1 and down if it is -1: water at inC enters at one end, and the
// mean temperature of what leaves at the other, that of the last cell, is returned.
//
// Heat is conserved exactly, no cell leaves the range of itself and its upstream
// neighbour, and c = 1 is a plain shift. A step in temperature stays within one
// cell however far it travels; a gradual change keeps its shape to second order
// (see faceK). With firstOrder the water that crosses a face is that of the cell
// upstream: every cell is then a stirred tank, and n cells are n stirred tanks in
// series.
//
// For c outside 0..1 the scheme is not stable; callers bound their step.
func advect(temps []float64, way int, c, inC float64, firstOrder bool) (outC float64) {
	if math.Abs(c-1) < wholeCell {
		return shift(temps, way, inC)
	}
	n, first := len(temps), 0
	if way < 0 {
		first = n - 1
	}
	inFace, t := inC, temps[first]
	before, slope, rise := 0.0, t-inC, 0.0 // changes from cell to cell, with the flow
	if n > 1 {
		rise = temps[first+way] - t
	}
	reach := 1/c - 1
	for at, left := first, n; left > 0; at, left = at+way, left-1 {
		t, after := temps[at], 0.0
		if left > 2 {
			after = temps[at+2*way] - temps[at+way]
		}
		face := t
		if slope != 0 && !firstOrder {
			face += faceK(before, slope, rise, after, c, reach)
		}
		temps[at] = t + c*(inFace-face)
		inFace, before, slope, rise = face, slope, rise, after
	}
	return inFace
}

// Steps that are made to move one cell miss it by rounding.
const wholeCell = 1e-13

// shift moves all cells on by one.
func shift(temps []float64, way int, inC float64) (outC float64) {
	last := len(temps) - 1
	if way > 0 {
		outC = temps[last]
		copy(temps[1:], temps[:last])
		temps[0] = inC
		return outC
	}
	outC = temps[0]
	copy(temps, temps[1:])
	temps[last] = inC
	return outC
}

// faceK gives how much warmer than a cell the water is that crosses its downstream
// face: no warmer, for a cell that does not lie between its neighbours. The changes from cell to cell
// along the flow are those into the cell upstream of it, into the cell itself, out of
// it, and further on; reach is 1/c - 1.
//
// Where all the change about the face is in one cell it is a front: the value is
// the one downstream as far as stability allows (limited downwind scheme, Despres
// and Lagoutiere 2001, from memory), and the front does not spread. That scheme
// would cut a gradual change into steps, so where the cells further away change
// too it is the central value with a limited slope (Lax and Wendroff, van Leer's
// monotonised central limiter, from memory). In between the two are blended; both
// keep every cell within its neighbours, so any blend does.
func faceK(before, slope, rise, after, c, reach float64) float64 {
	if slope*rise <= 0 {
		return 0
	}
	up, down := math.Abs(slope), math.Abs(rise)
	both := up + down
	k := (1 - c) / 2 * lesser(2*lesser(up, down), both/2)
	if around := gradual * (math.Abs(before) + math.Abs(after)); around < both {
		sharp := lesser(down, up*reach)
		k = sharp + around/both*(k-sharp)
	}
	return math.Copysign(k, rise)
}

// lesser is min without its care for what is not a number.
func lesser(a, b float64) float64 {
	if a < b {
		return a
	}
	return b
}

// A change counts as gradual throughout when the cells further away change by a
// quarter as much as those next to the face; found by trial on fronts and on the
// outlet of a vessel with a stirred inlet.
const gradual = 4

package vessel

import "math"

// advectUp moves the water of equal cells, bottom first, upwards by a share
// c (0..1) of one cell: water at inC enters below, and the mean temperature of
// what leaves at the top is returned. beyondC is the temperature of the water
// above the last cell: what left before.
//
// Heat is conserved exactly, no cell leaves the range of itself and its upstream
// neighbour, and c = 1 is a plain shift. A step in temperature stays within one
// cell however far it travels; a gradual change keeps its shape to second order
// (see faceC). With firstOrder the water that crosses a face is that of the cell
// upstream: every cell is then a stirred tank, and n cells are n stirred tanks in
// series.
//
// For c outside 0..1 the scheme is not stable; callers bound their step.
func advectUp(temps []float64, c, inC, beyondC float64, firstOrder bool) (outC float64) {
	return advect(temps, 0, 1, c, inC, beyondC, firstOrder)
}

// advectDown is advectUp with the water moving down from the top.
func advectDown(temps []float64, c, inC, beyondC float64, firstOrder bool) (outC float64) {
	return advect(temps, len(temps)-1, -1, c, inC, beyondC, firstOrder)
}

// advect walks the cells with the water, from the first one way on.
func advect(temps []float64, first, way int, c, inC, beyondC float64, firstOrder bool) (outC float64) {
	if math.Abs(c-1) < wholeCell {
		return shift(temps, way, inC)
	}
	n := len(temps)
	inFace, far, upstream, t, downstream := inC, inC, inC, temps[first], beyondC
	if n > 1 {
		downstream = temps[first+way]
	}
	reach := 1/c - 1
	for k := range n {
		further := beyondC
		if k+2 < n {
			further = temps[first+way*(k+2)]
		}
		face := t
		if (downstream-t)*(t-upstream) > 0 && !firstOrder {
			face = faceC(far, upstream, t, downstream, further, c, reach)
		}
		temps[first+way*k] = t + c*(inFace-face)
		inFace, far, upstream, t, downstream = face, upstream, t, downstream, further
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

// faceC gives the temperature that crosses the face downstream of a cell at t that
// lies between its neighbours; reach is 1/c - 1.
//
// Where all the change about the face is in one cell it is a front: the value is
// the one downstream as far as stability allows (limited downwind scheme, Despres
// and Lagoutiere 2001, from memory), and the front does not spread. That scheme
// would cut a gradual change into steps, so where the cells further away change
// too it is the central value with a limited slope (Lax and Wendroff, van Leer's
// monotonised central limiter, from memory). In between the two are blended; both
// keep every cell within its neighbours, so any blend does.
func faceC(far, upstream, t, downstream, further, c, reach float64) float64 {
	slope, rise := t-upstream, downstream-t
	both := slope + rise // of one sign
	smooth := (1 - c) / 2 * nearer(nearer(2*slope, 2*rise), both/2)
	around := gradual * (math.Abs(upstream-far) + math.Abs(further-downstream))
	if around >= math.Abs(both) {
		return t + smooth
	}
	sharp := nearer(rise, slope*reach)
	return t + sharp + around/math.Abs(both)*(smooth-sharp)
}

// nearer gives the smaller of two differences of one sign.
func nearer(a, b float64) float64 {
	if math.Abs(a) < math.Abs(b) {
		return a
	}
	return b
}

// A change counts as gradual throughout when the cells further away change by a
// quarter as much as those next to the face; found by trial on fronts and on the
// outlet of a vessel with a stirred inlet.
const gradual = 4

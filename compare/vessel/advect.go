package vessel

// advectUp moves the water of equal cells, bottom first, upwards by a share
// c (0..1) of one cell: water at inC enters below, and the mean temperature of
// what leaves at the top is returned.
//
// The value that crosses a face is the one downstream, limited so that no cell
// leaves the range of itself and its upstream neighbour (limited downwind
// scheme, Despres and Lagoutiere 2001, from memory). A step in temperature stays
// within one cell however far it travels, heat is conserved exactly, and c = 1
// is a plain shift. With firstOrder the face takes the upstream value: every
// cell is then a stirred tank, and n cells are n stirred tanks in series.
//
// For c outside 0..1 the scheme is not stable; callers bound their step.
func advectUp(temps []float64, c, inC float64, firstOrder bool) (outC float64) {
	n := len(temps)
	outC = temps[n-1]
	inverse := steepness(c, firstOrder)
	upstream, inFace := inC, inC
	for i := range n {
		t := temps[i]
		face := t
		if i < n-1 {
			face = limitedFace(upstream, t, temps[i+1], inverse)
		}
		temps[i] = t + c*(inFace-face)
		upstream, inFace = t, face
	}
	return outC
}

// advectDown is advectUp with the water moving down from the top.
func advectDown(temps []float64, c, inC float64, firstOrder bool) (outC float64) {
	outC = temps[0]
	inverse := steepness(c, firstOrder)
	upstream, inFace := inC, inC
	for i := len(temps) - 1; i >= 0; i-- {
		t := temps[i]
		face := t
		if i > 0 {
			face = limitedFace(upstream, t, temps[i-1], inverse)
		}
		temps[i] = t + c*(inFace-face)
		upstream, inFace = t, face
	}
	return outC
}

// steepness gives how far a face value may run ahead of its cell, in units of
// the difference to the cell upstream.
func steepness(c float64, firstOrder bool) float64 {
	if firstOrder || c <= 0 {
		return 1
	}
	return 1 / c
}

// limitedFace gives the value at the face between t and downstream.
func limitedFace(upstream, t, downstream, inverse float64) float64 {
	rise := downstream - t
	slope := t - upstream
	if rise*slope <= 0 {
		return t
	}
	limit := upstream + slope*inverse
	if (rise > 0) == (downstream > limit) {
		return limit
	}
	return downstream
}

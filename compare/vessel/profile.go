package vessel

// atC is the temperature at a height, as a share of the column's. The layers are means;
// between them it is read off a parabola in each layer that keeps its mean, runs
// through the values at its faces and never leaves the range of its neighbours
// (piecewise parabolic method, Colella and Woodward 1984, from memory). A straight line
// between the means would smear what passes, and a sensor would call early.
//
// Water that is owed has moved the layers too far by its share of one.
func (c *column) atC(height float64) float64 {
	n := len(c.temps)
	x := height * float64(n)
	if c.owed.kg > 0 {
		x += float64(c.way) * c.owed.kg / c.layerKg
	}
	i := int(x)
	switch {
	case x <= 0:
		return c.temps[0]
	case i >= n:
		return c.temps[n-1]
	case i < 2 || i > n-3:
		t, low, high := c.temps[i], c.temps[max(i-1, 0)], c.temps[min(i+1, n-1)]
		return parabola((low+t)/2, t, (t+high)/2, x-float64(i))
	}
	t := c.temps[i-2 : i+3]
	return parabola(faceC(t[0], t[1], t[2], t[3]), t[2], faceC(t[1], t[2], t[3], t[4]), x-float64(i))
}

// faceC is the temperature at the face between two layers, b and c: the cubic through
// the means of two layers on either side, no further than those next to it.
func faceC(a, b, c, d float64) float64 {
	return held((7*(b+c)-a-d)*(1.0/12), b, c)
}

// parabola gives the value a share of the way through a layer with the given mean
// between two faces: flat where the mean does not lie between them, and moved at the
// far face where it would leave their range.
func parabola(fromC, meanC, toC, share float64) float64 {
	if (toC-meanC)*(meanC-fromC) <= 0 {
		return meanC
	}
	rise := toC - fromC
	bulge := 6*meanC - 3*(fromC+toC)
	switch {
	case bulge*rise > rise*rise:
		fromC = 3*meanC - 2*toC
	case bulge*rise < -rise*rise:
		toC = 3*meanC - 2*fromC
	}
	rise, bulge = toC-fromC, 6*meanC-3*(fromC+toC)
	return fromC + share*(rise+bulge*(1-share))
}

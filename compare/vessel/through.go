package vessel

import "math"

// advance is water that the column has taken before it came. Water moves through a
// column by whole layers, which only shift the others and blur nothing: a layer moves
// as soon as the first of its water flows, and the rest is owed. Where the flow ends
// before that has come, the column moves back by what is still owed.
type advance struct {
	kg     float64 // still to come
	inC    float64 // temperature at which the whole layer was taken
	moreKK float64 // what has come since was warmer by this, in kg times K
	outC   float64 // mean of what is still to leave for it
	fallK  float64 // by which the last of a layer is colder than its first
}

// heatKgK is what the heat of the layers lacks because of the advance, in kg times deg C.
func (a *advance) heatKgK() float64 { return a.kg*(a.outC-a.inC) + a.moreKK }

// pass moves kg of water, more than none, through the column, in at inC, and gives the mean temperature
// of what leaves. The inlet stirs a zone beside it.
func (c *column) pass(kg, inC float64) (outC float64) {
	if c.stirredThrough() {
		return c.stirThrough(kg, inC)
	}
	outKgK, left := 0.0, kg
	if owed := c.owed.kg; owed > 0 {
		part := lesser(left, owed)
		outKgK = c.pay(part, inC)
		left -= part
	}
	whole := c.layerKg * (1 - wholeCell)
	for ; left >= whole && c.portion == 1; left -= c.layerKg {
		outKgK += c.layerKg * c.move(1, inC)
	}
	for left > 0 && left > wholeCell*kg {
		part := lesser(left, c.layerKg)
		c.takeAhead(inC)
		outKgK += c.pay(part, inC)
		left -= part
	}
	return outKgK / kg
}

// takeAhead moves the column by a layer of which nothing has come.
func (c *column) takeAhead(inC float64) {
	fallK := c.fallK()
	c.goneC = c.move(1, inC)
	c.owed = advance{kg: c.layerKg, inC: inC, outC: c.goneC, fallK: fallK}
}

// fallK is by how much the layer that leaves next gets colder while it does: the lesser
// of the differences to the layers before and after it.
func (c *column) fallK() float64 {
	if c.portion == 1 || c.stirredThrough() {
		return 0
	}
	last := c.lastLayer()
	return lesserOf(c.goneC-c.temps[last], c.temps[last]-c.temps[last-c.way])
}

// lesserOf is the one nearer to zero of two numbers of one sign; zero if they differ.
func lesserOf(a, b float64) float64 {
	if a*b <= 0 {
		return 0
	}
	if math.Abs(a) < math.Abs(b) {
		return a
	}
	return b
}

// pay takes water that is owed, no more than that, and gives what leaves for it, in kg
// times deg C.
func (c *column) pay(kg, inC float64) (outKgK float64) {
	a := &c.owed
	outKgK = kg * a.leavesC(a.kg/c.layerKg, c.portion)
	a.moreKK += kg * (inC - a.inC)
	if left := a.kg - kg; left > wholeCell*c.layerKg {
		a.outC = (a.outC*a.kg - outKgK) / left
		a.kg = left
		return outKgK
	}
	outKgK = kg * a.outC
	c.pour(a.moreKK, max(c.inlet.layers, 1), inC)
	*a = advance{}
	return outKgK
}

// toComplete is how much water may come until the given number of layers is complete,
// in kg, or a portion of one.
func (c *column) toComplete(layers float64) float64 {
	if c.owed.kg > 0 {
		layers += c.owed.kg/c.layerKg - 1
	}
	if c.portion < 1 {
		layers = lesser(layers, c.portion)
	}
	return layers * c.layerKg
}

// leavesC is the temperature at which the next portion of a layer leaves.
func (c *column) leavesC() float64 {
	a := &c.owed
	if a.kg > 0 {
		return a.leavesC(a.kg/c.layerKg, c.portion)
	}
	outC := c.temps[c.lastLayer()]
	if c.portion == 1 {
		return outC
	}
	return (&advance{outC: outC, fallK: c.fallK()}).leavesC(1, c.portion)
}

// leavesC is the mean temperature of the first portion of what is still to leave, a
// share of the layer.
func (a *advance) leavesC(share, portion float64) float64 {
	if share <= portion {
		return a.outC
	}
	return a.outC + a.fallK*(share-portion)/2
}

// lastLayer is where water leaves.
func (c *column) lastLayer() int {
	if c.way > 0 {
		return len(c.temps) - 1
	}
	return 0
}

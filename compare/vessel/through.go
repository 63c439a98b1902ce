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

// pass moves kg of water through the column, in at inC, and gives the mean temperature
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
	for left > wholeCell*kg {
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

// stirredThrough: the inlet stirs all layers or all but one, or every layer is a stirred
// tank of its own.
func (c *column) stirredThrough() bool { return c.firstOrder || c.inlet.layers >= len(c.temps)-1 }

// stirThrough passes water through a column that is stirred throughout, or in every
// layer, no more than a layer at a time.
func (c *column) stirThrough(kg, inC float64) (outC float64) {
	outKgK := 0.0
	for left := kg; left > wholeCell*kg; {
		part := lesser(left, c.layerKg)
		outKgK += part * c.move(part/c.layerKg, inC)
		left -= part
	}
	return outKgK / kg
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

// pour gives heat, in kg times K, to the layers at the inlet, the more the further each
// is from limitC, and what takes them beyond it to one layer after the other that is
// still short of it.
func (c *column) pour(kgK float64, layers int, limitC float64) {
	if kgK == 0 {
		return
	}
	c.disturbed = true
	n, first := len(c.temps), 0
	if c.way < 0 {
		first = n - 1
	}
	roomK, leftK := 0.0, kgK/c.layerKg
	for i := range layers {
		roomK += short(c.temps[first+c.way*i], limitC, leftK)
	}
	share := 0.0
	if roomK != 0 {
		share = min(1, leftK/roomK)
	}
	for i := range layers {
		t := &c.temps[first+c.way*i]
		*t += share * short(*t, limitC, leftK)
	}
	leftK -= share * roomK
	for i := layers; i < n && leftK != 0; i++ {
		t := &c.temps[first+c.way*i]
		part := lesserOf(short(*t, limitC, leftK), leftK)
		*t += part
		leftK -= part
	}
	for i := range c.temps {
		c.temps[i] += leftK / float64(n)
	}
}

// short is by how much a layer at tempC falls short of a limit that heat of the given
// sign takes it to; zero where it is beyond.
func short(tempC, limitC, heat float64) float64 {
	if gap := limitC - tempC; gap*heat > 0 {
		return gap
	}
	return 0
}

// land moves the column back by the water that has not come. What its stirring did is
// undone in the layers that it reached: the stirred ones, the edge and the one after.
func (c *column) land() {
	kgK := c.goBack()
	if kgK == 0 {
		return
	}
	n, reach := len(c.temps), 1
	if c.inlet.layers > 0 {
		reach = min(c.inlet.layers+2, n-1)
	}
	beyondC := c.temps[reach]
	if c.way < 0 {
		beyondC = c.temps[n-1-reach]
	}
	c.pour(kgK, reach, beyondC)
}

// goBack is land without the heat that the water taken ahead has taken up since, in kg
// times K: that is still to be given back.
func (c *column) goBack() (kgK float64) {
	if c.owed.kg > 0 {
		a := c.owed
		c.owed, c.disturbed = advance{}, true
		undoneC := advect(c.temps, -c.way, a.kg/c.layerKg, a.outC, false)
		kgK = a.kg*(undoneC-a.inC) + a.moreKK
	}
	c.goneC = c.temps[c.lastLayer()]
	return kgK
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

// move shifts the column by a layer or part of one: water at inC enters, and the mean
// temperature of what leaves is returned.
func (c *column) move(layers, inC float64) (outC float64) {
	c.disturbed = true
	n, z := len(c.temps), c.inlet.layers
	stirred, beyond := c.temps[:z], c.temps[z:]
	if c.way < 0 {
		stirred, beyond = c.temps[n-z:], c.temps[:n-z]
	}
	switch {
	case z == 0:
		outC = inC
	case c.inlet.part > 0 && layers == 1:
		return c.moveByEdge(inC)
	default:
		outC = c.inlet.flush(stirred, layers, inC)
	}
	if len(beyond) == 0 {
		return outC
	}
	return advect(beyond, c.way, layers, outC, c.firstOrder)
}

// moveByEdge moves the column by a layer where the stirred body ends within one, its
// edge: what lies there beyond the body is found from the edge's mean, within what
// follows it.
//
// A layer passes the body, and what leaves that lies across two layers: the quiet rest
// of the edge and the body's part of the next.
func (c *column) moveByEdge(inC float64) (outC float64) {
	z, edge := &c.inlet, c.inlet.layers
	stirred, next := c.temps[:edge], edge+1
	if c.way < 0 {
		edge = len(c.temps) - 1 - z.layers
		stirred, next = c.temps[edge+1:], edge-1
	}
	edgeC, quiet := c.temps[edge], 1-z.part
	nextC := edgeC
	if next >= 0 && next < len(c.temps) {
		nextC = c.temps[next]
	}
	quietC := held((edgeC-z.part*mean(stirred))/quiet, edgeC, nextC)
	size := float64(z.layers) + z.part
	bodyC := (float64(z.layers)*mean(stirred) + edgeC - quiet*quietC) / size
	flushed := z.flushing.Share(1 / size)
	above := (bodyC - inC) * flushed
	goneC := inC + above*size
	for i := range stirred {
		stirred[i] = bodyC - above
	}
	c.temps[edge] = z.part*(bodyC-above) + quiet*goneC
	outC = z.part*goneC + quiet*quietC
	switch {
	case next < 0 || next == len(c.temps):
		return outC
	case c.way > 0:
		return shift(c.temps[next:], c.way, outC)
	default:
		return shift(c.temps[:edge], c.way, outC)
	}
}

// held holds a temperature between two.
func held(tempC, oneC, otherC float64) float64 {
	if (tempC-oneC)*(tempC-otherC) <= 0 {
		return tempC
	}
	if (tempC-oneC)*(otherC-oneC) < 0 {
		return oneC
	}
	return otherC
}

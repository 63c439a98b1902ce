package vessel

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
	if leftK != 0 {
		for i := range c.temps {
			c.temps[i] += leftK / float64(n)
		}
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

package vessel

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

// stirredThrough: the inlet stirs all layers or all but one, or every layer is a stirred
// tank of its own.
func (c *column) stirredThrough() bool { return c.firstOrder || c.inlet.layers >= len(c.temps)-1 }

// stirThrough passes water through a column that is stirred throughout, or in every
// layer, no more than a layer at a time.
func (c *column) stirThrough(kg, inC float64) (outC float64) {
	outKgK := 0.0
	for left := kg; left > 0 && left > wholeCell*kg; {
		part := lesser(left, c.layerKg)
		outKgK += part * c.move(part/c.layerKg, inC)
		left -= part
	}
	return outKgK / kg
}

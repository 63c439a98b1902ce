package vessel

import "math"

// next gives the temperature at which water leaves a last layer at tempC, with
// those upstream of it at upstreamC and farC.
func (c *column) next(farC, upstreamC, tempC float64) float64 {
	if (c.beyondC-tempC)*(tempC-upstreamC) <= 0 || c.firstOrder {
		return tempC
	}
	return tempC + faceK(upstreamC-farC, tempC-upstreamC, c.beyondC-tempC, 0, 0, math.Inf(1))
}

// riseThrough moves kg of water up the column, in at the bottom at inC, and gives
// the mean temperature of what leaves. The inlet stirs a zone above the bottom.
func (c *column) riseThrough(kg, inC float64) (outC float64) {
	moved := kg / c.layerKg
	stirred, above := c.temps[:c.inlet.layers], c.temps[c.inlet.layers:]
	outC = inC
	if len(stirred) == 0 {
		outC = advectUp(above, moved, inC, c.beyondC, c.firstOrder)
		c.beyondC = outC
		return outC
	}
	p := c.inlet.passageOf(moved)
	outC = c.inlet.flush(stirred, moved, inC, p)
	if len(above) > 0 {
		outC = advectUp(above, moved, outC, c.beyondC, c.firstOrder)
		c.inlet.fringe(stirred, &above[0], p)
	}
	c.beyondC = outC
	return outC
}

// sinkThrough moves kg of water down the column, in at the top at inC, and gives
// the mean temperature of what leaves. The inlet stirs a zone below the top.
func (c *column) sinkThrough(kg, inC float64) (outC float64) {
	moved := kg / c.layerKg
	rest := len(c.temps) - c.inlet.layers
	below, stirred := c.temps[:rest], c.temps[rest:]
	if len(stirred) == 0 {
		outC = advectDown(below, moved, inC, c.beyondC, c.firstOrder)
		c.beyondC = outC
		return outC
	}
	p := c.inlet.passageOf(moved)
	outC = c.inlet.flush(stirred, moved, inC, p)
	if rest > 0 {
		outC = advectDown(below, moved, outC, c.beyondC, c.firstOrder)
		c.inlet.fringe(stirred, &below[rest-1], p)
	}
	c.beyondC = outC
	return outC
}

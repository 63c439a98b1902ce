package vessel

import "math"

// next gives the temperature at which water leaves a last layer at tempC, with
// those upstream of it at upstreamC and farC.
func (c *column) next(farC, upstreamC, tempC float64) float64 {
	if (c.beyondC-tempC)*(tempC-upstreamC) <= 0 || c.firstOrder {
		return tempC
	}
	return faceC(farC, upstreamC, tempC, c.beyondC, c.beyondC, 0, math.Inf(1))
}

// riseThrough moves kg of water up the column, in at the bottom at inC, and gives
// the mean temperature of what leaves. The lowest share of the volume is stirred
// by the inlet.
func (c *column) riseThrough(kg, inC, stirShare float64) (outC float64) {
	moved := kg / c.layerKg
	z := c.stir(stirShare)
	above := c.temps[z.layers:]
	outC = z.flush(c.temps[:z.layers], moved, inC)
	if len(above) > 0 {
		outC = advectUp(above, moved, outC, c.beyondC, c.firstOrder)
		z.fringe(c.temps[:z.layers], &above[0], moved)
	}
	c.beyondC = outC
	return outC
}

// sinkThrough moves kg of water down the column, in at the top at inC, and gives
// the mean temperature of what leaves. The highest share of the volume is stirred
// by the inlet.
func (c *column) sinkThrough(kg, inC, stirShare float64) (outC float64) {
	moved := kg / c.layerKg
	z := c.stir(stirShare)
	below := c.temps[:len(c.temps)-z.layers]
	stirred := c.temps[len(below):]
	outC = z.flush(stirred, moved, inC)
	if len(below) > 0 {
		outC = advectDown(below, moved, outC, c.beyondC, c.firstOrder)
		z.fringe(stirred, &below[len(below)-1], moved)
	}
	c.beyondC = outC
	return outC
}

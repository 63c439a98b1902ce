package vessel

import (
	"math"

	"dhwcompare/compare/relax"
	"dhwcompare/compare/water"
)

// column is a body of water in equal layers, bottom first, with what happens
// along its height whatever the kind of vessel: through-flow, stirring at an
// inlet, conduction, loss and buoyancy.
type column struct {
	temps      []float64
	beyondC    float64 // of the water that left last, see advectUp
	pools      []pool  // workspace of settle
	layerKg    float64 // water in one layer
	layerJPerK float64
	mixPerS    float64 // conduction between neighbours, 1/s
	lossPerS   float64 // loss to the room, 1/s
	firstOrder bool    // plain upwind flow: every layer fully stirred (tests)
}

// newColumn makes a column of n layers that holds litres of water (at density
// kgPerL), heightM high, with the stated effective conductivity and loss.
func newColumn(n int, litres, heightM, conductivityWPerMK, lossWPerK float64) column {
	kg := litres * water.VesselKgPerLitre / float64(n)
	capacity := kg * water.CpJPerKgK
	layerM := heightM / float64(n)
	areaM2 := litres / 1000 / heightM
	return column{
		temps:      make([]float64, n),
		pools:      make([]pool, n),
		layerKg:    kg,
		layerJPerK: capacity,
		mixPerS:    conductivityWPerMK * areaM2 / layerM / capacity,
		lossPerS:   lossWPerK / float64(n) / capacity,
	}
}

// fillWith changes the specific heat of what the column holds from that of water;
// conduction and loss stay what they are in watts.
func (c *column) fillWith(cpJPerKgK float64) {
	share := cpJPerKgK / water.CpJPerKgK
	c.layerJPerK *= share
	c.mixPerS /= share
	c.lossPerS /= share
}

// primaryCp is the specific heat of heating water whose heat content is the given
// share of that of water; 0 counts as 1.
func primaryCp(share float64) float64 {
	if share == 0 {
		share = 1
	}
	return share * water.CpJPerKgK
}

func (c *column) fill(tempC float64) {
	for i := range c.temps {
		c.temps[i] = tempC
	}
	c.beyondC = tempC
}

// snapshot adds all that the column remembers to a list, restore takes it from
// the front of one and gives the rest.
func (c *column) snapshot(list []float64) []float64 {
	return append(append(list, c.temps...), c.beyondC)
}

func (c *column) restore(list []float64) (rest []float64) {
	n := copy(c.temps, list)
	c.beyondC = list[n]
	return list[n+1:]
}

func (c *column) heatJ() float64 {
	sum := 0.0
	for _, t := range c.temps {
		sum += t
	}
	return sum * c.layerJPerK
}

// atC interpolates between layer centres.
func (c *column) atC(height float64) float64 {
	n := len(c.temps)
	x := height*float64(n) - 0.5
	if x <= 0 {
		return c.temps[0]
	}
	i := int(x)
	if i >= n-1 {
		return c.temps[n-1]
	}
	return c.temps[i] + (x-float64(i))*(c.temps[i+1]-c.temps[i])
}

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

// conductAndLose marches conduction between neighbours and loss to the room,
// and gives the heat lost in joules. Conduction is explicit in substeps that
// stay well inside its stability limit; loss is exact for each layer.
func (c *column) conductAndLose(dt, roomC float64) (lossJ float64) {
	const largest = 0.3 // explicit diffusion is stable below 0.5
	substeps := 1
	if c.mixPerS*dt > largest {
		substeps = int(math.Ceil(c.mixPerS * dt / largest))
	}
	share := c.mixPerS * dt / float64(substeps)
	for range substeps {
		c.conduct(share)
	}
	share = relax.Share(c.lossPerS * dt)
	lostK := 0.0
	for i, t := range c.temps {
		lost := (t - roomC) * share
		lostK += lost
		c.temps[i] = t - lost
	}
	return lostK * c.layerJPerK
}

func (c *column) conduct(share float64) {
	temps := c.temps
	below := 0.0 // heat that came up from the layer below, K of a layer
	for i := 0; i < len(temps)-1; i++ {
		up := share * (temps[i] - temps[i+1])
		temps[i] += below - up
		below = up
	}
	temps[len(temps)-1] += below
}

// warm heats the layer at a height by an electric element; what gets lighter than
// the water above rises when the column settles.
func (c *column) warm(height, heatJ float64) {
	n := len(c.temps)
	i := min(max(int(height*float64(n)), 0), n-1)
	c.temps[i] += heatJ / c.layerJPerK
}

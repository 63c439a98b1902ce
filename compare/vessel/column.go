package vessel

import (
	"math"

	"dhwcompare/compare/water"
)

// column is a body of water in equal layers, bottom first, with what happens
// along its height whatever the kind of vessel: through-flow, stirring at an
// inlet, conduction, loss and buoyancy.
type column struct {
	temps      []float64
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

// stirBottom mixes the lowest share of the volume, as an inlet jet does.
func (c *column) stirBottom(share float64) {
	whole, part := c.stirred(share)
	sum := 0.0
	for i := range whole {
		sum += c.temps[i]
	}
	next := 0.0
	if part > 0 {
		next = c.temps[whole]
	}
	mean := (sum + part*next) / (float64(whole) + part)
	for i := range whole {
		c.temps[i] = mean
	}
	if part > 0 {
		c.temps[whole] = part*mean + (1-part)*next
	}
}

// stirTop mixes the highest share of the volume.
func (c *column) stirTop(share float64) {
	whole, part := c.stirred(share)
	n := len(c.temps)
	sum := 0.0
	for i := n - whole; i < n; i++ {
		sum += c.temps[i]
	}
	next := 0.0
	if part > 0 {
		next = c.temps[n-whole-1]
	}
	mean := (sum + part*next) / (float64(whole) + part)
	for i := n - whole; i < n; i++ {
		c.temps[i] = mean
	}
	if part > 0 {
		c.temps[n-whole-1] = part*mean + (1-part)*next
	}
}

// stirred splits a share of the volume into whole layers and a part of the next.
// A share below one layer stirs nothing that is not already one layer.
func (c *column) stirred(share float64) (whole int, part float64) {
	n := len(c.temps)
	x := share * float64(n)
	if x <= 1 {
		return 1, 0
	}
	whole = int(x)
	if whole >= n {
		return n, 0
	}
	return whole, x - float64(whole)
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
	share = decay(c.lossPerS * dt)
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

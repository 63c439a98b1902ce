package vessel

import (
	"math"

	"dhwcompare/compare/relax"
)

// moving reports whether water crosses the boundary.
func (f *Flows) moving() bool { return f.DrawKgPerS > 0 || f.PrimaryKgPerS > 0 }

// loseBefore takes the first half of a step's loss while water moves, and loseRest
// what is left: counted at its end alone, the loss of a vessel that is being
// emptied would fall short.
func (c *column) loseBefore(f *Flows) (lossJ float64) {
	if !f.moving() {
		return 0
	}
	return c.lose(f.DtS/2, f.RoomC)
}

func (c *column) loseRest(f *Flows) (lossJ float64) {
	if !f.moving() {
		return c.lose(f.DtS, f.RoomC)
	}
	return c.lose(f.DtS/2, f.RoomC)
}

// lose gives heat to the room, exactly for each layer, and how much in joules.
func (c *column) lose(dt, roomC float64) (lossJ float64) {
	share := relax.Share(c.lossPerS * dt)
	lostK := 0.0
	for i, t := range c.temps {
		lost := (t - roomC) * share
		lostK += lost
		c.temps[i] = t - lost
	}
	return lostK * c.layerJPerK
}

// evenEveryS is how long conduction may be put off while water moves: in that time
// it evens out a hundredth of the difference between two layers.
const evenEveryS = 30

// even marches conduction between neighbours. While water moves its steps are
// short, and several are taken at once.
func (c *column) even(dt float64, moving bool) {
	c.unevenS += dt
	if !moving || c.unevenS >= evenEveryS {
		c.diffuse(c.unevenS)
		c.unevenS = 0
	}
}

// diffuse is conduction over dt, explicit in substeps that stay well inside its
// stability limit.
func (c *column) diffuse(dt float64) {
	const largest = 0.3 // explicit diffusion is stable below 0.5
	substeps := 1
	if c.mixPerS*dt > largest {
		substeps = int(math.Ceil(c.mixPerS * dt / largest))
	}
	share := c.mixPerS * dt / float64(substeps)
	for range substeps {
		c.conduct(share)
	}
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

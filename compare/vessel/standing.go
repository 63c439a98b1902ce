package vessel

import (
	"math"

	"dhwcompare/compare/relax"
)

// moving reports whether water crosses the boundary.
func (f *Flows) moving() bool { return f.DrawKgPerS > 0 || f.PrimaryKgPerS > 0 }

// loseMidway takes the loss of a step that moves water. It is due at the middle of
// the step, so that a vessel that is being emptied loses neither too much nor too
// little: the second half of each step is put off and taken with the first half of
// the next, and whatever is put off is taken when the vessel comes to rest.
func (c *column) loseMidway(f *Flows) (lossJ float64) {
	dt := c.owedS + f.DtS
	c.owedS = 0
	if f.moving() {
		c.owedS = f.DtS / 2
		dt -= c.owedS
	}
	return c.lose(dt, f.RoomC)
}

// lose gives heat to the room, exactly for each layer, and how much in joules.
func (c *column) lose(dt, roomC float64) (lossJ float64) {
	share := relax.Share(c.lossPerS * dt)
	kept, gain := 1-share, share*roomC
	temps := c.temps
	var even, odd float64 // two sums need not wait for each other
	for i := 0; i+1 < len(temps); i += 2 {
		a, b := temps[i], temps[i+1]
		even += a
		odd += b
		temps[i], temps[i+1] = a*kept+gain, b*kept+gain
	}
	if n := len(temps); n%2 == 1 {
		even += temps[n-1]
		temps[n-1] = temps[n-1]*kept + gain
	}
	return share * (even + odd - float64(len(temps))*roomC) * c.layerJPerK
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

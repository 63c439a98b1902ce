package vessel

import "math"

// moving reports whether water crosses the boundary.
func (f *Flows) moving() bool { return f.DrawKgPerS > 0 || f.PrimaryKgPerS > 0 }

// standEveryS is how long loss and conduction may be put off while water moves: in that
// time conduction evens out a few hundredths of the difference between two layers.
const standEveryS = 120

// stand lets dt pass for what goes on whether water moves or not, loss to the room and
// conduction along the height, and gives the loss in joules. While water moves the
// steps are short, and several are taken at once, at the middle of their time: so a
// vessel that is being emptied loses neither too much nor too little.
func (c *column) stand(dt, roomC float64, moving bool) (lossJ float64) {
	c.unstoodS += dt
	dt = c.unstoodS
	if moving {
		if dt < standEveryS/2 {
			return 0
		}
		dt += standEveryS / 2
	}
	if dt <= 0 {
		return 0
	}
	c.unstoodS -= dt
	lossJ = c.lose(dt, roomC)
	c.diffuse(dt)
	return lossJ
}

// lose gives heat to the room, exactly for each layer, and how much in joules.
func (c *column) lose(dt, roomC float64) (lossJ float64) {
	share := c.losing.Share(c.lossPerS * dt)
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
	here, below := temps[0], 0.0 // and heat that came up from the layer below, K of a layer
	for i, above := range temps[1:] {
		up := share * (here - above)
		temps[i] = here + (below - up)
		here, below = above, up
	}
	temps[len(temps)-1] = here + below
}

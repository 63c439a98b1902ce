package plant

import (
	"dhwcompare/compare/household"
	"dhwcompare/compare/water"
)

// flow books a part of dt seconds in which the vessel gave water at outC.
func (g *drawing) flow(dt, outC, mainsC float64, m *Month) {
	g.waiting = g.holdS > 0 || g.flushKg > 0
	if g.holdS > 0 {
		g.holdS = whole(g.holdS - dt)
		g.outcome.HeldS += dt
		return
	}
	hotKg := g.hotKgPerS * dt
	if g.waiting {
		g.deliveredC = g.legC
		m.DeadLegLoss += hotKg * water.CpJPerKgK * (g.legC - mainsC)
		g.refill(hotKg, outC)
		g.flushKg = whole(g.flushKg - hotKg)
		g.outcome.WaitS += dt
		return
	}
	supplyC := outC
	if g.warmKg > 0 {
		supplyC = g.legC
		g.refill(hotKg, outC)
		g.warmKg = whole(g.warmKg - hotKg)
	}
	g.deliveredC = mainsC + g.share*(supplyC-mainsC)
	g.deliver(dt, g.deliveredC, mainsC, m)
}

// whole rounds the crumbs of a subtraction to nothing.
func whole(kg float64) float64 {
	const crumbKg = 1e-9
	if kg < crumbKg {
		return 0
	}
	return kg
}

// refill notes water that entered the leg, and settles the leg once it is full.
func (g *drawing) refill(kg, tempC float64) {
	if kg > 0 {
		g.refillC = (g.refillC*g.refillKg + tempC*kg) / (g.refillKg + kg)
		g.refillKg += kg
	}
	old := max(g.leg.kg-g.refillKg, 0)
	g.leg.tempC = (g.refillC*g.refillKg + g.legC*old) / (g.refillKg + old)
}

// deliver books mixed water at the outlet.
func (g *drawing) deliver(dt, mixedC, mainsC float64, m *Month) {
	o := &g.outcome
	kg := g.mixedKgPerS * dt
	got := kg * water.CpJPerKgK * (mixedC - mainsC)
	o.FlowingS += dt
	g.bookTime(g.since(dt, mixedC), mixedC, m)
	g.warmUp(mixedC)
	g.lastC, g.lastS = mixedC, dt
	o.LowestC = min(o.LowestC, mixedC)
	litres := kg / g.kgPerL
	o.MeanC += litres * mixedC
	o.Litres += litres
	g.want(dt, got, kg, mainsC, m)
}

// stretch is a time at the outlet, and the temperature with which it begins.
type stretch struct{ seconds, fromC float64 }

// since is the stretch from the middle of the step before up to the middle of this
// one: each step's temperature holds at its middle, and the water turns cold between
// two of them.
func (g *drawing) since(dt, mixedC float64) stretch {
	if g.lastS == 0 {
		return stretch{dt / 2, mixedC}
	}
	return stretch{(g.lastS + dt) / 2, g.lastC}
}

// bookTime books how long the water was how warm in a stretch that ends with a
// temperature: the time below the lowest acceptable one, and all of a shower's.
func (g *drawing) bookTime(s stretch, toC float64, m *Month) {
	g.outcome.ColdS += s.seconds * shareBelow(g.draw.MinC, s.fromC, toC)
	if g.draw.Kind == household.Shower {
		m.ShowerTime.add(s.seconds, s.fromC, toC)
	}
}

// warmUp follows how long the water is too cold before it is warm for the first
// time.
func (g *drawing) warmUp(mixedC float64) {
	if !g.warm {
		g.outcome.WarmUpS = g.outcome.ColdS
		g.warm = mixedC >= g.draw.MinC
	}
}

// shareBelow is the share of a straight line from one temperature to another that
// lies below a limit.
func shareBelow(limitC, fromC, toC float64) float64 {
	low, high := min(fromC, toC), max(fromC, toC)
	switch {
	case low >= limitC:
		return 0
	case high < limitC:
		return 1
	default:
		return (limitC - low) / (high - low)
	}
}

// want sets what was delivered against what was wanted, and counts down the end
// of the draw.
func (g *drawing) want(dt, got, kg, mainsC float64, m *Month) {
	o := &g.outcome
	wanted := kg * water.CpJPerKgK * (g.draw.WantC - mainsC)
	switch g.draw.End.By {
	case household.BySeconds:
		wanted = g.nominalKgPerS() * dt * water.CpJPerKgK * (g.draw.WantC - mainsC)
		g.left -= dt
	case household.ByLitres:
		g.left -= kg / g.kgPerL
	case household.ByJoules:
		wanted = got
		g.left -= got
	}
	o.WantedJ += wanted
	o.DeliveredJ += got
	m.Wanted += wanted
	m.Delivered += got
}

// end closes a draw-off at time t and judges it.
func (p *Plant) end(g *drawing, t float64, m *Month) Outcome {
	g.leg.inUse--
	g.leg.atS = t
	g.bookTime(stretch{g.lastS / 2, g.lastC}, g.lastC, m)
	o := g.outcome
	if !g.warm {
		o.WarmUpS = o.ColdS
	}
	if g.draw.End.By == household.ByJoules {
		o.WantedJ += max(g.left, 0)
		m.Wanted += max(g.left, 0)
	}
	if o.Litres > 0 {
		o.MeanC /= o.Litres
		o.Failed = p.params.Service.fails(&o)
	} else {
		o.LowestC = 0 // cut off before any of its water came
	}
	tally := &m.Draws[g.draw.Kind]
	tally.Count++
	tally.ColdS += o.ColdS
	tally.WaitS += o.WaitS
	tally.Litres += o.Litres
	if o.Failed {
		tally.Failed++
	}
	return o
}

// fails judges a finished draw-off. A shower may be too cold for a while; a bath
// is judged by the water in the tub and by the time it took; any other draw by
// its mean.
func (s Service) fails(o *Outcome) bool {
	const crumbK = 1e-6 // a mean of many terms misses an exact temperature by rounding
	switch o.Draw.Kind {
	case household.Shower:
		return o.ColdS > s.ColdSeconds
	case household.Bath:
		return o.MeanC < o.Draw.MinC-crumbK || o.WaitS+o.FlowingS > s.BathPatienceS
	default:
		return o.MeanC < o.Draw.MinC-crumbK
	}
}

package plant

import (
	"math"

	"dhwcompare/compare/household"
	"dhwcompare/compare/water"
)

const secondsPerMinute = 60

// drawing is one draw-off in progress. First the cooled water of the dead leg
// runs out, if it is too cold to use; then comes what still stands warm in the
// leg; then what the vessel gives.
type drawing struct {
	draw        *household.Draw
	leg         *leg
	flushKg     float64 // cold water still to run out
	warmKg      float64 // usable water still in the leg
	legC        float64 // its temperature
	refillKg    float64 // water that has entered the leg
	refillC     float64 // and its mean temperature
	left        float64 // seconds, litres or joules still to come
	holdS       float64 // patience left before the shower begins
	turnDown    float64 // share of the flow that is kept when it runs cold; 0: all
	kgPerL      float64 // of the mixed water
	flowLPerMin float64 // that the outlet takes
	outcome     Outcome

	// The step in hand.
	mixedKgPerS float64
	hotKgPerS   float64
	share       float64
	usefulW     float64 // heat above mains that the mixed water is to carry
	waiting     bool    // the step lets cooled water run out
	deliveredC  float64

	// The step before, once water has been delivered.
	lastC, lastS float64
	warm         bool // the water has been warm enough
}

// begin starts a draw-off.
func (m *march) begin(d *household.Draw) {
	l := &m.legs[d.Outlet]
	g := drawing{
		draw: d, leg: l, left: d.End.Amount,
		kgPerL:      water.KgPerLitre(d.WantC),
		flowLPerMin: m.params.Supply.limited(d),
		outcome:     Outcome{Draw: *d, LowestC: math.Inf(1)},
	}
	if l.inUse == 0 {
		m.coolLeg(l)
		g.legC = l.tempC
		if l.tempC < d.MinC {
			g.flushKg = l.kg
		} else {
			g.warmKg = l.kg
		}
	}
	if d.Kind == household.Shower {
		g.holdS, g.turnDown = m.params.Supply.PatienceS, m.params.Supply.TurnDownShare
	}
	l.inUse++
	m.active = append(m.active, g)
}

// nominalKgPerS is the mixed flow that the draw asks for, or that a fitted limiter
// lets through.
func (g *drawing) nominalKgPerS() float64 {
	return g.flowLPerMin / secondsPerMinute * g.kgPerL
}

// limited is the flow of a draw behind a fitted limiter.
func (s *Supply) limited(d *household.Draw) float64 {
	if d.Kind == household.Shower && s.ShowerLimitLPerMin > 0 {
		return min(d.FlowLPerMin, s.ShowerLimitLPerMin)
	}
	return d.FlowLPerMin
}

// plan works out the flows of a step from the water at hand. throttle is the
// share of the wanted flow that the mains lets through.
func (g *drawing) plan(outletC, mainsC, marginK, throttle float64) {
	g.mixedKgPerS = g.nominalKgPerS() * throttle
	if g.holdS > 0 {
		g.share, g.hotKgPerS, g.mixedKgPerS = 0, 0, 0
		return
	}
	if g.flushKg > 0 {
		g.share, g.hotKgPerS = 1, g.mixedKgPerS
		return
	}
	supplyC := outletC
	if g.warmKg > 0 {
		supplyC = g.legC
	}
	var mixedC float64
	g.share, mixedC = water.Mix(g.draw.WantC, supplyC, mainsC, marginK)
	if g.turnDown > 0 && mixedC < g.draw.MinC {
		g.mixedKgPerS *= g.turnDown
	}
	g.hotKgPerS = g.share * g.mixedKgPerS
	g.usefulW = g.mixedKgPerS * water.CpJPerKgK * (mixedC - mainsC)
}

// hold lets people wait before a shower while the vessel's water is too cold for
// it, as long as their patience lasts.
func (g *drawing) hold(outletC, marginK float64) {
	if g.holdS > 0 && outletC >= g.draw.WantC+marginK {
		g.holdS = 0
	}
}

// limitS gives the longest step for which the plan holds.
func (g *drawing) limitS(mainsC float64) float64 {
	if g.holdS > 0 {
		return g.holdS
	}
	if g.flushKg > 0 {
		return g.flushKg / g.mixedKgPerS
	}
	limit := g.remainingS(mainsC)
	if g.warmKg > 0 && g.hotKgPerS > 0 {
		limit = min(limit, g.warmKg/g.hotKgPerS)
	}
	return limit
}

// remainingS gives the time to the end of the draw at the flow of this step. A
// draw that ends by heat is given up after three times its proper length: nobody
// waits for ever at a tap that stays cold.
func (g *drawing) remainingS(mainsC float64) float64 {
	switch g.draw.End.By {
	case household.BySeconds:
		return g.left
	case household.ByLitres:
		return g.left * g.kgPerL / g.mixedKgPerS
	default:
		const patience = 3
		proper := g.draw.End.Amount / (g.nominalKgPerS() * water.CpJPerKgK * max(g.draw.WantC-mainsC, 1))
		limit := max(patience*proper-g.outcome.FlowingS, 0)
		if g.usefulW > 0 {
			limit = min(limit, g.left/g.usefulW)
		}
		return limit
	}
}

// flow books a step of dt seconds in which the vessel gave water at outC.
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

// over reports whether the draw has ended.
func (g *drawing) over(mainsC float64) bool {
	const crumb = 1e-6 // of the amount
	if g.flushKg > 0 || g.holdS > 0 {
		return false
	}
	return g.left <= crumb*g.draw.End.Amount || g.remainingS(mainsC) <= 0
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

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

	// The part in hand.
	mixedKgPerS float64
	hotKgPerS   float64
	share       float64
	usefulW     float64 // heat above mains that the mixed water is to carry
	waiting     bool    // the part lets cooled water run out
	deliveredC  float64

	// The part before, once water has been delivered.
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

// plan works out the flows of a part from the water at hand. throttle is the
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

// limitS gives the longest part for which the plan holds.
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

// remainingS gives the time to the end of the draw at the flow of this part. A
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
			limit = min(limit, max(g.left, 0)/g.usefulW)
		}
		return limit
	}
}

// over reports whether the draw has ended.
func (g *drawing) over(mainsC float64) bool {
	const crumb = 1e-6 // of the amount
	if g.flushKg > 0 || g.holdS > 0 {
		return false
	}
	return g.left <= crumb*g.draw.End.Amount || g.remainingS(mainsC) <= 0
}

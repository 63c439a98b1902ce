package plant

import (
	"math"

	"dhwcompare/compare/heatpump"
)

// Step lengths. Water on the move is followed closely; a plant at rest changes
// slowly, and its step grows with the time since water last moved.
const (
	shortestS     = 0.25 // never less, so that a run ends
	drawingS      = 20   // longest while water is drawn
	startingS     = 15   // longest while the heat pump comes up
	startedS      = 120  // after which it has come up
	runningS      = 60   // longest while it runs on
	firstRestS    = 60   // first step at rest
	restingGrowth = 8    // of the time since water last moved; the half hour is the longest
	fastestFallKS = 4e-4 // K/s, faster than any vessel cools at rest
	warmS         = 20   // least for the sake of a vessel about to call
	elementK      = 2    // K by which an immersion heater may warm the water above it in a step
)

// step is the plan for the step in hand, and what it brings.
type step struct {
	dt         float64
	hotKgPerS  float64
	outletC    float64
	immersionW float64
	overrun    bool           // the pump runs on without the compressor
	point      heatpump.Point // for hot water, once looked up

	hotWaterJ      float64 // electricity for hot water, beside immersion and standby
	indoorJ        float64 // heat lost into the rooms by the hot-water side
	houseJ         float64 // heat that reached the rooms from heating
	houseElectricJ float64
}

// plan works out the flows and the length of the next step.
func (m *march) plan() {
	m.step = step{outletC: m.vessel.OutletC(), indoorJ: m.step.indoorJ, point: m.step.point}
	m.step.immersionW = m.runImmersion()
	m.step.overrun = m.overruns()
	if len(m.active) > 0 {
		m.planDraws()
	}
	dt := min(min(m.untilS, m.endS), m.openS) - m.t
	if m.nextDraw < len(m.in.Draws) {
		dt = min(dt, m.in.Draws[m.nextDraw].StartS-m.t)
	}
	events := dt
	dt = min(dt, m.flowS())
	foreseen := min(m.controlS(), m.houseLimitS())
	if m.duty != idle {
		foreseen = min(foreseen, m.frost.limitS(m.growth))
	}
	m.step.dt = notBelow(min(dt, foreseen), dt, events)
}

// flowS bounds the step by how fast water moves and changes.
func (m *march) flowS() float64 {
	dt, primary := math.Inf(1), 0.0
	if m.duty == forWater || m.step.overrun || m.frost.onStore {
		primary = m.primaryKgPerS
		dt = m.runS()
	}
	for i := range m.active {
		dt = min(dt, min(drawingS, m.active[i].limitS(m.mainsC)))
	}
	dt = min(dt, m.vessel.StepLimitS(m.step.hotKgPerS, primary))
	if m.step.immersionW > 0 || m.hygiene.on {
		dt = min(dt, runningS)
	}
	if m.step.immersionW > 0 {
		dt = min(dt, elementK*m.vessel.AboveJPerK(m.params.Immersion.Height)/m.step.immersionW)
	}
	if len(m.active) == 0 && primary == 0 && m.step.immersionW == 0 {
		dt = min(dt, m.restS())
	}
	return dt
}

// controlS gives the time to the controls' next decision that can be foreseen.
func (m *march) controlS() float64 {
	limit := m.crossingS()
	for _, end := range [...]float64{m.pauseEndS(), m.changeS + m.params.Loop.ValveS, m.overrunS} {
		if end > m.t {
			limit = min(limit, end-m.t)
		}
	}
	return limit
}

// pauseEndS is when the least run or the least pause of hot water is over.
func (m *march) pauseEndS() float64 {
	if m.duty == forWater {
		return m.changeS + m.params.Control.MinRunS
	}
	return m.changeS + m.params.Control.AntiCycleS
}

// notBelow keeps a foreseen decision from shrinking the step to nothing.
func notBelow(dt, physical, events float64) float64 {
	return min(max(dt, shortestS), min(physical, events))
}

// runS bounds the step of a heat pump that heats water.
func (m *march) runS() float64 {
	if m.t < m.changeS+startedS || m.frost.defrostLeft > 0 {
		return startingS
	}
	return runningS
}

// restS bounds the step of a vessel at rest.
func (m *march) restS() float64 {
	limit := max(firstRestS, restingGrowth*(m.t-m.busyS))
	if above := m.aroundC - m.callC(); above > 0 {
		limit = min(limit, max(above/fastestFallKS, warmS))
	}
	return limit
}

// planDraws sets each draw's flow; together they take no more than mains and
// vessel let through.
func (m *march) planDraws() {
	total := 0.0
	for i := range m.active {
		g := &m.active[i]
		g.hold(m.step.outletC, m.params.Supply.MixerMarginK[g.draw.Outlet])
		if g.holdS == 0 {
			total += g.flowLPerMin
		}
	}
	if total == 0 {
		total = m.params.Supply.LargestFlowLPerMin
	}
	throttle := min(1, m.params.Supply.LargestFlowLPerMin/total)
	for i := range m.active {
		g := &m.active[i]
		g.plan(m.step.outletC, m.mainsC, m.params.Supply.MixerMarginK[g.draw.Outlet], throttle)
		m.step.hotKgPerS += g.hotKgPerS
	}
}

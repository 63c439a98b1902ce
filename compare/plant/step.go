package plant

import "math"

// pace says how long the steps may be, in seconds, where nothing foreseen ends them. At
// rest that is the half hour, unless the vessel may call.
type pace struct {
	drawingS   float64 // longest while water is drawn
	refillingS float64 // longest while the heat pump heats the vessel meanwhile
	startingS  float64 // longest while it comes up
	runningS   float64 // longest while it runs on
	longestS   float64 // of all steps, and of their parts (see parts.go)
}

// ownPace is the pace of every plant but those of a test that asks for another; it
// comes from the table of error against time in DEVELOPERS.md.
var ownPace = pace{drawingS: 40, refillingS: 60, startingS: 65, runningS: 130, longestS: math.Inf(1)}

const (
	edgeS         = 15   // longest where the flow may soon be hotter than it may,
	edgeK         = 1    // within this much of it
	shortestS     = 0.25 // least for the sake of what is foreseen
	startedS      = 120  // after which a heat pump has come up
	fastestFallKS = 4e-4 // K/s, taken as the fastest that a vessel cools at rest
	slowFallKS    = 2e-4 // K/s, as slow as most do
	warmS         = 20   // least for the sake of a vessel about to call
	elementK      = 1.5  // K by which an immersion heater may warm the water above it in a step
)

// step is the plan for the step in hand, and what it brings.
type step struct {
	dt         float64
	immersionW float64
	overrun    bool // the pump runs on without the compressor

	hotWaterJ      float64 // electricity for hot water, beside immersion and standby
	indoorJ        float64 // heat lost into the rooms by the hot-water side
	houseJ         float64 // heat that reached the rooms from heating
	houseElectricJ float64
}

// plan works out the length of the next step.
func (m *march) plan() {
	m.step.immersionW = m.runImmersion()
	m.step.overrun = m.overruns()
	m.step.hotWaterJ, m.step.houseJ, m.step.houseElectricJ = 0, 0, 0
	events := shorter(shorter(m.untilS, m.endS), m.openS) - m.t
	if m.nextDraw < len(m.in.Draws) {
		events = shorter(events, m.in.Draws[m.nextDraw].StartS-m.t)
	}
	physical := shorter(events, m.flowS())
	foreseen := shorter(m.controlS(physical), m.houseLimitS())
	if m.duty != idle {
		foreseen = shorter(foreseen, m.frost.limitS(m.growth))
	}
	if foreseen < shortestS {
		foreseen = shortestS
	}
	m.step.dt = shorter(foreseen, physical)
}

// circulates reports whether heating water passes through the vessel.
func (m *march) circulates() bool {
	return m.duty == forWater || m.step.overrun || m.frost.onStore
}

// flowS bounds the step by how fast water and heat move.
func (m *march) flowS() float64 {
	dt, p := m.params.pace.longestS, &m.params.pace
	switch {
	case m.circulates() && len(m.active) > 0:
		dt = shorter(dt, shorter(m.runS(), p.refillingS))
	case m.circulates():
		dt = shorter(dt, m.wholePartsS(m.runS()))
	case len(m.active) > 0:
		dt = shorter(dt, p.drawingS)
	case m.step.immersionW == 0:
		dt = shorter(dt, m.restS())
	}
	if m.step.immersionW > 0 || m.hygiene.on {
		dt = shorter(dt, p.runningS)
	}
	if m.step.immersionW > 0 {
		dt = shorter(dt, elementK*m.vessel.AboveJPerK(m.params.Immersion.Height)/m.step.immersionW)
	}
	return dt
}

// wholePartsS shortens a step of heating water alone so that its last part is about as
// long as the others.
func (m *march) wholePartsS(dt float64) float64 {
	partS := m.vessel.StepLimitS(0, m.primaryKgPerS)
	if dt <= partS {
		return dt
	}
	return partS * math.Floor(dt/partS)
}

// controlS gives the time to the controls' next decision that can be foreseen within
// dt.
func (m *march) controlS(dt float64) float64 {
	limit := m.crossingS(dt)
	for _, end := range [...]float64{m.pauseEndS(), m.changeS + m.params.Loop.ValveS, m.overrunS, m.holdS, m.hygieneS()} {
		if end > m.t {
			limit = shorter(limit, end-m.t)
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

// hygieneS is when the next hot spell is due; long past where there is none.
func (m *march) hygieneS() float64 {
	if m.params.Hygiene.EveryS <= 0 {
		return math.Inf(-1)
	}
	return m.hygiene.dueS
}

// runS bounds the step of a heat pump that heats water.
func (m *march) runS() float64 {
	if m.pointKnown && m.pointNow.LeavingC > m.params.HeatPump.HighestFlowC()-edgeK {
		return edgeS
	}
	if m.t < m.changeS+startedS || m.frost.defrostLeft > 0 {
		return m.params.pace.startingS
	}
	return m.params.pace.runningS
}

// restS bounds the step of a vessel at rest, so that it calls on time, for the heat
// pump or for the immersion heater.
func (m *march) restS() float64 {
	limit := math.Inf(1)
	if m.open || m.hygiene.on || m.mode != Normal {
		limit = m.fallS(m.aroundC - m.callC())
	}
	if i := &m.params.Immersion; i.BoostBelowC > 0 {
		limit = shorter(limit, m.fallS(m.vessel.NearC(i.Height)-i.BoostBelowC))
	}
	return limit
}

// fallS is a time in which a vessel at rest does not cool by aboveK: at twice the rate of
// the last step, or at the fastest that any does; for ever if it is there.
func (m *march) fallS(aboveK float64) float64 {
	if aboveK <= 0 {
		return math.Inf(1)
	}
	kPerS := min(max(-2*m.aroundKPerS, slowFallKS), fastestFallKS)
	return max(aboveK/kPerS, warmS)
}

package plant

import (
	"math"

	"dhwcompare/compare/vessel"
)

// part is a piece of a step, as short as moving water asks for.
type part struct {
	dt        float64 // s
	hotKgPerS float64 // out of the vessel, of all draws
	outletC   float64 // of the vessel, as the part begins
	ends      bool    // so short that a draw-off or its waiting ends with it
}

// leastPartS is long enough to change a clock. A draw-off that is out of patience when a
// half hour brings colder mains has nothing left, and no part may last nothing.
const leastPartS = 1e-8

// mostParts is far more than any step needs: one with so many does not get on.
const mostParts = 100_000

// shorter is min for lengths of time, without its care for what is not a number.
func shorter(a, b float64) float64 {
	if a < b {
		return a
	}
	return b
}

// runWater marches vessel, loop and draw-offs through the step, part by part: the
// flows to the taps follow the vessel's outlet from one to the next, while controls,
// heat pump and house take the step as a whole. Where water circulates between vessel
// and heat pump, that gives it heatW.
func (m *march) runWater(circulates bool, heatW float64) {
	began, left, returnKS := m.t, m.step.dt, 0.0
	m.flows.MainsC, m.flows.ImmersionW, m.flows.PrimaryKgPerS = m.mainsC, m.step.immersionW, 0
	if circulates {
		m.flows.PrimaryKgPerS = m.primaryKgPerS
	}
	for parts := 0; left > 0; parts++ {
		if parts == mostParts {
			m.stuck = true
			break
		}
		m.planPart(left)
		m.flows.DtS, m.flows.DrawKgPerS = m.part.dt, m.part.hotKgPerS
		var r vessel.Result
		if circulates {
			r = m.circulate(heatW)
			returnKS += m.sample.ReturnC * m.part.dt
		} else {
			r = m.vessel.Step(&m.flows)
		}
		m.bookPart(&r)
		left -= m.part.dt
	}
	if circulates && m.duty == forWater {
		m.returning.note(returnKS/m.step.dt, began, m.step.dt)
	}
	m.t = began
}

// planPart works out the flows and the length of the next part.
func (m *march) planPart(left float64) {
	m.part = part{dt: shorter(left, m.params.pace.longestS), outletC: m.vessel.OutletC()}
	if len(m.active) > 0 {
		m.planDraws()
	}
	m.part.dt = shorter(m.part.dt, m.vessel.StepLimitS(m.part.hotKgPerS, m.flows.PrimaryKgPerS))
	for i := range m.active {
		if limit := m.active[i].limitS(m.mainsC); limit <= m.part.dt {
			m.part.dt, m.part.ends = limit, true
		}
	}
	if m.part.dt < leastPartS {
		m.part.dt = leastPartS
	}
	if left-m.part.dt < clockSlackS {
		m.part.dt = left
	}
}

// bookPart books what the part gave, and ends the draw-offs that are over with it.
func (m *march) bookPart(r *vessel.Result) {
	dt := m.part.dt
	m.month.VesselLoss += r.LossJ
	m.step.indoorJ += r.LossJ
	if m.part.outletC < TepidC {
		m.month.TepidS += dt
	}
	for i := range m.active {
		g := &m.active[i]
		g.flow(dt, r.DrawOutC, m.mainsC, m.month)
		m.part.ends = m.part.ends || g.left <= 0 // warmer than planned, by water that warmed meanwhile
	}
	if m.trace != nil {
		m.record(dt)
	}
	m.t += dt
	if m.part.ends {
		m.endDraws(false)
	}
}

// planDraws sets each draw's flow; together they take no more than mains and
// vessel let through.
func (m *march) planDraws() {
	total := 0.0
	for i := range m.active {
		g := &m.active[i]
		g.hold(m.part.outletC, m.params.Supply.MixerMarginK[g.draw.Outlet])
		if g.holdS == 0 {
			total += g.flowLPerMin
		}
	}
	if total == 0 {
		total = m.params.Supply.LargestFlowLPerMin
	}
	throttle := math.Min(1, m.params.Supply.LargestFlowLPerMin/total)
	for i := range m.active {
		g := &m.active[i]
		g.plan(m.part.outletC, m.mainsC, m.params.Supply.MixerMarginK[g.draw.Outlet], throttle)
		m.part.hotKgPerS += g.hotKgPerS
	}
}

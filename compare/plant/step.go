package plant

import (
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/vessel"
)

// Step lengths. Water on the move is followed closely; a plant at rest changes
// slowly, and its step grows with the time since water last moved.
const (
	shortestS     = 0.25 // never less, so that a run ends
	drawingS      = 10   // longest while water is drawn
	startingS     = 10   // longest while the heat pump comes up
	startedS      = 240  // after which it has come up
	runningS      = 30   // longest while it runs on
	firstRestS    = 2    // first step at rest
	restingS      = 900  // longest at rest
	restingGrowth = 0.25 // of the time since water last moved
	fastestFallKS = 4e-4 // K/s, faster than any vessel cools at rest
)

// step is the plan for the step in hand.
type step struct {
	dt        float64
	hotKgPerS float64
	outletC   float64
}

// plan works out the flows and the length of the next step.
func (m *march) plan() {
	m.step.outletC = m.vessel.OutletC()
	m.planDraws()
	dt := math.Min(math.Min(m.untilS, m.endS), m.openS) - m.t
	if m.nextDraw < len(m.in.Draws) {
		dt = math.Min(dt, m.in.Draws[m.nextDraw].StartS-m.t)
	}
	events := dt
	primary := 0.0
	if m.running {
		primary = m.primaryKgPerS
		dt = math.Min(dt, m.runS())
	}
	for i := range m.active {
		dt = math.Min(dt, math.Min(drawingS, m.active[i].limitS(m.mainsC)))
	}
	dt = math.Min(dt, m.vessel.StepLimitS(m.step.hotKgPerS, primary))
	if len(m.active) == 0 && !m.running {
		dt = math.Min(dt, m.restS())
	}
	m.step.dt = m.notBelow(math.Min(dt, m.controlS()), dt, events)
}

// controlS gives the time to the controls' next decision that can be foreseen.
func (m *march) controlS() float64 {
	limit := m.crossingS()
	pause := m.params.Control.AntiCycleS
	if m.running {
		pause = m.params.Control.MinRunS
	}
	if end := m.changeS + pause; end > m.t {
		return math.Max(math.Min(limit, end-m.t), 0)
	}
	return limit
}

// notBelow keeps a foreseen decision from shrinking the step to nothing.
func (m *march) notBelow(dt, physical, events float64) float64 {
	return math.Min(math.Max(dt, shortestS), math.Min(physical, events))
}

// runS bounds the step of a running heat pump.
func (m *march) runS() float64 {
	if m.t < m.changeS+startedS {
		return startingS
	}
	return runningS
}

// restS bounds the step of a plant at rest.
func (m *march) restS() float64 {
	grown := math.Max(firstRestS, restingGrowth*(m.t-m.busyS))
	limit := math.Min(restingS, grown)
	if above := m.vessel.AtC(m.params.Control.SensorHeight) - m.callC(); above > 0 {
		limit = math.Min(limit, math.Max(above/fastestFallKS, drawingS))
	}
	return limit
}

// planDraws sets each draw's flow; together they take no more than mains and
// vessel let through.
func (m *march) planDraws() {
	m.step.hotKgPerS = 0
	if len(m.active) == 0 {
		return
	}
	total := 0.0
	for i := range m.active {
		total += m.active[i].draw.FlowLPerMin
	}
	throttle := math.Min(1, m.params.Supply.LargestFlowLPerMin/total)
	for i := range m.active {
		g := &m.active[i]
		g.plan(m.step.outletC, m.mainsC, m.params.Supply.MixerMarginK[g.draw.Outlet], throttle)
		m.step.hotKgPerS += g.hotKgPerS
	}
}

// march takes the step.
func (m *march) march() {
	dt := m.step.dt
	flows := vessel.Flows{DtS: dt, DrawKgPerS: m.step.hotKgPerS, MainsC: m.mainsC, RoomC: m.params.RoomC}
	var electricJ float64
	var r vessel.Result
	if m.running {
		r, electricJ = m.heat(flows)
	} else {
		r = m.rest(flows)
	}
	m.month.VesselLoss += r.LossJ
	for i := range m.active {
		m.active[i].flow(dt, r.DrawOutC, m.mainsC, m.month)
	}
	m.bookElectricity(dt, electricJ)
	m.readSensor(dt)
	if m.running || len(m.active) > 0 {
		m.busyS = m.t + dt
	}
	if m.trace != nil {
		m.record(dt)
	}
	m.advance(dt)
}

// advance moves the clock, landing exactly on the end of a half hour.
func (m *march) advance(dt float64) {
	const slack = 1e-6
	m.t += dt
	if m.t > m.untilS-slack {
		m.t = m.untilS
	}
	if m.t > m.endS-slack {
		m.t = m.endS
	}
}

// rest marches vessel and loop with the heat pump off.
func (m *march) rest(flows vessel.Flows) vessel.Result {
	m.sample.HeatW, m.sample.ElectricW, m.sample.PumpW = 0, 0, 0
	m.sample.FlowC, m.sample.ReturnC = m.loop.tempC, m.loop.tempC
	m.month.LoopLoss += m.loop.idle(flows.DtS, m.params.RoomC, m.outdoorC)
	return m.vessel.Step(flows)
}

// heat marches heat pump, loop and vessel together, and gives the electricity of
// compressor and pump.
func (m *march) heat(flows vessel.Flows) (vessel.Result, float64) {
	dt := flows.DtS
	pt, slope, intercept := m.point(m.outdoorC, m.params.Control.OutputCap, m.targetC())
	ran := m.t - m.changeS
	heatShare := m.params.Start.HeatShare(ran, ran+dt)
	electricShare := m.params.Start.ElectricityShare(ran, ran+dt)
	heatW, electricW := pt.OutputW*heatShare, pt.ElectricityW*electricShare

	lossWPK, around := m.loop.surroundings(m.params.RoomC, m.outdoorC)
	flows.PrimaryKgPerS = m.primaryKgPerS
	flows.FlowInC = m.loop.approach(dt, heatW, m.primaryWPerK, slope, intercept, lossWPK, around)
	r := m.vessel.Step(flows)
	loopLoss := lossWPK * (flows.FlowInC - around) * dt
	m.loop.balance(heatW*dt - r.PrimaryInJ - loopLoss)

	m.month.HeatPumpHeat += heatW * dt
	m.month.LoopLoss += loopLoss
	m.month.RunS += dt
	if pt.Extrapolated != 0 {
		m.month.ExtrapolatedS += dt
	}
	used := pt.ElectricityW * heatShare * dt
	m.month.ElectricRun += used
	m.month.ElectricGone += electricW*dt - used
	m.month.ElectricPump += m.params.Power.PumpW * dt
	m.sample.HeatW, m.sample.ElectricW, m.sample.PumpW = heatW, electricW, m.params.Power.PumpW
	returnC := slope*flows.FlowInC + intercept
	m.sample.ReturnC, m.sample.FlowC = returnC, returnC+heatW/m.primaryWPerK
	return r, (electricW + m.params.Power.PumpW) * dt
}

// bookElectricity adds a step's electricity to its half hour.
func (m *march) bookElectricity(dt, hotWaterJ float64) {
	const joulesPerKWh = 3.6e6
	idle := m.params.Power.StandbyW * dt
	m.month.ElectricIdle += idle
	i := m.halfHour % calendar.HalfHours
	if i < 0 {
		i += calendar.HalfHours
	}
	m.ledger.HalfHourKWh[HotWater][i] += hotWaterJ / joulesPerKWh
	m.ledger.HalfHourKWh[Standby][i] += idle / joulesPerKWh
}

// record hands the step to the trace.
func (m *march) record(dt float64) {
	s := &m.sample
	s.T, s.Dt, s.OutdoorC, s.MainsC, s.Running = m.t, dt, m.outdoorC, m.mainsC, m.running
	s.BottomC, s.MiddleC, s.TopC = m.vessel.AtC(0), m.vessel.AtC(0.5), m.vessel.AtC(1)
	s.OutletC = m.step.outletC
	s.Draws = s.Draws[:0]
	for i := range m.active {
		s.Draws = append(s.Draws, m.active[i].sample(m.step.outletC, m.mainsC))
	}
	m.trace(s)
}

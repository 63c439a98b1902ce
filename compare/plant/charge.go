package plant

import (
	"math"

	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
)

// point gives what the heat pump would do now in steady running for hot water, by
// its certified mean.
func (m *march) point() heatpump.Point {
	returnC, known := m.returning.next(m.t)
	if !known {
		slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, 0)
		returnC = slope*m.loop.tempC + intercept
	}
	pt := m.params.HeatPump.At(m.outdoorC, returnC, m.primaryWPerK, m.outputCap, m.targetC())
	if m.params.Level != (Level{}) {
		m.level(&pt, m.outdoorC)
	}
	return pt
}

// returning follows the mean return temperature of the steps of a run. A return
// that rises all through a run would be read too cold at the start of each step, so
// the next mean is foreseen from the last two.
type returning struct {
	lastC, beforeC float64
	untilS         float64 // end of the last step
	steps          int     // of this run
}

// note takes the mean return of a step of dt seconds that begins at t.
func (r *returning) note(meanC, t, dt float64) {
	if math.Abs(t-r.untilS) > clockSlackS {
		r.steps = 0
	}
	r.beforeC, r.lastC, r.untilS = r.lastC, meanC, t+dt
	r.steps++
}

// next foresees the mean return of a step that begins at t; false where none came
// right before it.
func (r *returning) next(t float64) (meanC float64, known bool) {
	const largestK = 0.5 // a jump is no trend
	if r.steps == 0 || math.Abs(t-r.untilS) > clockSlackS {
		return 0, false
	}
	if r.steps == 1 {
		return r.lastC, true
	}
	return r.lastC + min(max(r.lastC-r.beforeC, -largestK), largestK), true
}

// presentPoint gives the working point of the step in hand, which the controls
// have usually looked up already.
func (m *march) presentPoint() *heatpump.Point {
	if m.step.point.OutputW == 0 {
		m.step.point = m.point()
	}
	return &m.step.point
}

// heat marches heat pump, loop and vessel together for hot water.
func (m *march) heat(flows vessel.Flows) vessel.Result {
	m.pump(flows.DtS)
	if m.frost.defrostLeft > 0 {
		return m.defrost(flows)
	}
	dt := flows.DtS
	pt := m.presentPoint()
	heatShare, electricShare := m.comeUp(dt)
	electricW := pt.ElectricityW * electricShare
	heatW := pt.OutputW * heatShare * m.params.Frost.clean(m.growth, pt.OutputW)
	r := m.circulate(flows, heatW)

	m.month.HeatPumpHeat += heatW * dt
	m.month.RunS += dt
	if pt.Extrapolated != 0 {
		m.month.ExtrapolatedS += dt
	}
	used := pt.ElectricityW * heatShare * dt
	m.month.ElectricRun += used
	m.month.ElectricGone += electricW*dt - used
	m.step.hotWaterJ += electricW * dt
	m.sample.HeatW, m.sample.ElectricW = heatW, electricW
	m.grow(dt, &m.month.Defrosts)
	return r
}

// comeUp gives the shares of its steady heat and electricity that a unit has in the
// step in hand, on its way up from a start.
func (m *march) comeUp(dt float64) (heatShare, electricShare float64) {
	if m.riseS != m.t {
		m.rise = m.params.Start.After(m.t - m.startS)
	}
	m.riseS = m.t + dt
	return m.params.Start.Step(&m.rise, dt)
}

// defrost marches a defrost while the valve stays at hot water: no heat comes,
// some is taken back, and the compressor goes on.
func (m *march) defrost(flows vessel.Flows) vessel.Result {
	dt, f := flows.DtS, &m.params.Frost
	m.frost.defrostLeft = whole(m.frost.defrostLeft - dt)
	pt := m.presentPoint()
	takenW := f.HeatJ / f.DurationS
	r := m.circulate(flows, -takenW)
	m.month.DefrostHeat += takenW * dt
	m.month.RunS += dt
	m.month.ElectricDefrost += pt.ElectricityW * dt
	m.step.hotWaterJ += pt.ElectricityW * dt
	m.sample.HeatW, m.sample.ElectricW = -takenW, pt.ElectricityW
	return r
}

// circulate passes primary water through loop and vessel while the heat pump
// gives it heatW.
func (m *march) circulate(flows vessel.Flows, heatW float64) vessel.Result {
	dt := flows.DtS
	slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, dt)
	lossWPK, around := m.loop.surroundings(m.params.RoomC, m.outdoorC)
	flows.PrimaryKgPerS = m.primaryKgPerS
	flows.FlowInC = m.loop.approach(dt, heatW, m.primaryWPerK, slope, intercept, lossWPK, around)
	r := m.vessel.Step(flows)
	loss := lossWPK * (flows.FlowInC - around) * dt
	m.loop.balance(heatW*dt - r.PrimaryInJ - loss)
	m.month.LoopLoss += loss
	m.month.LoopToVessel += r.PrimaryInJ
	m.step.indoorJ += m.loop.indoorWPK * (flows.FlowInC - m.params.RoomC) * dt
	m.sample.ReturnC = flows.FlowInC - r.PrimaryInJ/(m.primaryWPerK*dt)
	m.returning.note(m.sample.ReturnC, m.t, dt)
	m.sample.FlowC = m.sample.ReturnC + heatW/m.primaryWPerK
	return r
}

// pump runs the circulation pump for hot water.
func (m *march) pump(dt float64) {
	m.month.ElectricPump += m.params.Power.PumpW * dt
	m.step.hotWaterJ += m.params.Power.PumpW * dt
	m.sample.PumpW = m.params.Power.PumpW
}

// overruns: the pump brings loop heat into the vessel after a stop, as long as it
// does bring heat.
func (m *march) overruns() bool {
	if m.duty != idle || m.loopOfHouse || m.t >= m.overrunS {
		return false
	}
	slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, 0)
	return m.loop.tempC > slope*m.loop.tempC+intercept
}

// coolLoop lets the loop stand for dt. Its loss is booked with whoever used it
// last.
func (m *march) coolLoop(dt float64) {
	m.sample.FlowC, m.sample.ReturnC = m.loop.tempC, m.loop.tempC
	total, indoor := m.loop.idle(dt, m.params.RoomC, m.outdoorC)
	if m.loopOfHouse {
		m.month.HeatingLoopLoss += total - indoor
		m.step.houseJ += indoor
		return
	}
	m.month.LoopLoss += total
	m.step.indoorJ += indoor
}

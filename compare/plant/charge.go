package plant

import (
	"math"

	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
)

// point gives what the heat pump would do in steady running for hot water over the
// next step, by its certified mean.
func (m *march) point() heatpump.Point {
	slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, m.runS())
	m.returning.lineC = slope*m.loop.tempC + intercept
	m.returning.foreseenC = m.returning.next(m.t)
	pt := m.params.HeatPump.At(m.outdoorC, m.returning.foreseenC, m.primaryWPerK, m.outputCap, m.targetC())
	if m.params.Level != (Level{}) {
		m.level(&pt, m.outdoorC)
	}
	return pt
}

// returning foresees the mean return temperature of a step. What is to leave the
// vessel is known from its layers; by how much that was wrong in the step before,
// because water was drawn or the flow got hotter, it will be wrong again.
type returning struct {
	lineC  float64 // what the layers say of the next longest step
	offK   float64 // what came in the last step, less what they said
	untilS float64 // end of that step

	foreseenC float64 // for the step in hand
}

// meanC is the mean return of the last step.
func (r *returning) meanC() float64 { return r.lineC + r.offK }

// note takes the mean return of a step of dt seconds that begins at t.
func (r *returning) note(meanC, t, dt float64) {
	r.offK, r.untilS = meanC-r.lineC, t+dt
}

// next gives the mean return of the step that begins at t.
func (r *returning) next(t float64) float64 {
	if math.Abs(t-r.untilS) > clockSlackS {
		return r.lineC
	}
	return r.lineC + r.offK
}

// presentPoint gives the working point of the step in hand, which the controls
// have usually looked up already.
func (m *march) presentPoint() *heatpump.Point {
	if !m.pointKnown {
		m.pointNow, m.pointKnown = m.point(), true
	}
	return &m.pointNow
}

// heat marches heat pump, loop and vessel together for hot water.
func (m *march) heat(dt float64) {
	m.pump(dt)
	if m.frost.defrostLeft > 0 {
		m.defrost(dt)
		return
	}
	pt := m.presentPoint()
	heatShare, electricShare := m.comeUp(dt)
	heatW := pt.OutputW * heatShare * m.params.Frost.clean(m.growth, pt.OutputW)
	m.sample.HeatW = heatW
	m.runWater(true, heatW)
	m.setRight(pt)
	electricW := pt.ElectricityW * electricShare
	m.sample.ElectricW = electricW

	m.month.HeatPumpHeat += heatW * dt
	m.month.RunS += dt
	if pt.Extrapolated != 0 {
		m.month.ExtrapolatedS += dt
	}
	used := pt.ElectricityW * heatShare * dt
	m.month.ElectricRun += used
	m.month.ElectricGone += electricW*dt - used
	m.step.hotWaterJ += electricW * dt
	m.grow(dt, &m.month.Defrosts)
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

// setRight gives a working point the electricity of the return temperature that came,
// in place of that foreseen; the heat has been given.
func (m *march) setRight(pt *heatpump.Point) {
	pt.LeavingC += m.returning.meanC() - m.returning.foreseenC
	if m.params.Level != (Level{}) {
		m.level(pt, m.outdoorC)
		return
	}
	pt.COP = m.params.HeatPump.COP(m.outdoorC, pt.LeavingC, pt.Share)
	pt.ElectricityW = pt.OutputW / pt.COP
}

// defrost marches a defrost while the valve stays at hot water: no heat comes,
// some is taken back, and the compressor goes on.
func (m *march) defrost(dt float64) {
	f, pt := &m.params.Frost, m.presentPoint()
	takenW := f.HeatJ / f.DurationS
	m.sample.HeatW, m.sample.ElectricW = -takenW, pt.ElectricityW
	m.runWater(true, -takenW)
	m.frost.defrostLeft = whole(m.frost.defrostLeft - dt)
	m.month.DefrostHeat += takenW * dt
	m.month.RunS += dt
	m.month.ElectricDefrost += pt.ElectricityW * dt
	m.step.hotWaterJ += pt.ElectricityW * dt
}

// circulate passes primary water through loop and vessel while the heat pump
// gives it heatW.
func (m *march) circulate(heatW float64) vessel.Result {
	flows := &m.flows
	dt := flows.DtS
	slope, intercept := m.vessel.ReturnLine(m.primaryKgPerS, dt)
	flows.FlowInC = m.loop.approach(dt, heatW, m.primaryWPerK, slope, intercept)
	r := m.vessel.Step(flows)
	loss := m.loop.lossWPK * (flows.FlowInC - m.loop.aroundC) * dt
	m.loop.balance(heatW*dt - r.PrimaryInJ - loss)
	m.month.LoopLoss += loss
	m.month.LoopToVessel += r.PrimaryInJ
	m.step.indoorJ += m.loop.indoorWPK * (flows.FlowInC - m.params.RoomC) * dt
	m.sample.ReturnC = flows.FlowInC - r.PrimaryInJ/(m.primaryWPerK*dt)
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
	total, indoor := m.loop.idle(dt, m.params.RoomC)
	if m.loopOfHouse {
		m.month.HeatingLoopLoss += total - indoor
		m.step.houseJ += indoor
		return
	}
	m.month.LoopLoss += total
	m.step.indoorJ += indoor
}

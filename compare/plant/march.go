package plant

import (
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
)

// march takes the step.
func (m *march) march() {
	dt := m.step.dt
	m.sample.HeatW, m.sample.ElectricW, m.sample.PumpW, m.sample.HouseW, m.sample.HouseElectricW = 0, 0, 0, 0, 0
	flows := vessel.Flows{
		DtS: dt, DrawKgPerS: m.step.hotKgPerS, MainsC: m.mainsC, RoomC: m.params.RoomC,
		ImmersionW: m.step.immersionW, ImmersionHeight: m.params.Immersion.Height,
	}
	m.sample.Defrosting = m.frost.defrostLeft > 0
	r := m.serve(flows)
	m.month.VesselLoss += r.LossJ
	if m.step.outletC < TepidC {
		m.month.TepidS += dt
	}
	m.step.indoorJ += r.LossJ
	for i := range m.active {
		m.active[i].flow(dt, r.DrawOutC, m.mainsC, m.month)
	}
	m.liveHouse(dt)
	m.bookElectricity(dt)
	m.readSensor(dt)
	m.holdHygiene(dt)
	if m.duty == forWater || m.step.overrun || m.frost.onStore || m.step.immersionW > 0 || len(m.active) > 0 {
		m.busyS = m.t + dt
	}
	if m.trace != nil {
		m.record(dt)
	}
	m.step.indoorJ, m.step.point = 0, heatpump.Point{}
	m.advance(dt)
}

// serve marches vessel, loop and compressor by the duty in hand.
func (m *march) serve(flows vessel.Flows) vessel.Result {
	switch {
	case m.duty == forWater && m.t >= m.changeS+m.params.Loop.ValveS:
		return m.heat(flows)
	case m.duty == forWater:
		m.pump(flows.DtS)
		m.coolLoop(flows.DtS)
	case m.frost.onStore:
		return m.defrostOnStore(flows)
	case m.duty == forHouse:
		m.heatHouse(flows.DtS)
	case m.step.overrun:
		m.frost.melt(flows.DtS, m.outdoorC, &m.params.Frost)
		m.pump(flows.DtS)
		return m.circulate(flows, 0)
	default:
		m.frost.melt(flows.DtS, m.outdoorC, &m.params.Frost)
		m.coolLoop(flows.DtS)
	}
	return m.vessel.Step(flows)
}

// liveHouse marches the house with what the step brought it.
func (m *march) liveHouse(dt float64) {
	h := &m.params.House
	if !h.there() {
		return
	}
	waiting := m.duty == forWater && m.room.needW(h, m.outdoorC) > 0
	m.room.live(h, dt, m.step.houseJ, h.HeatedShare*m.step.indoorJ, m.outdoorC, m.month)
	m.room.missing(dt, waiting, m.month)
}

// clockSlackS is a difference of times that is rounding.
const clockSlackS = 1e-6

// advance moves the clock, landing exactly on the end of a half hour.
func (m *march) advance(dt float64) {
	m.t += dt
	if m.t > m.untilS-clockSlackS {
		m.t = m.untilS
	}
	if m.t > m.endS-clockSlackS {
		m.t = m.endS
	}
}

package plant

// march takes the step.
func (m *march) march() {
	dt := m.step.dt
	m.sample.HeatW, m.sample.ElectricW, m.sample.PumpW, m.sample.HouseW, m.sample.HouseElectricW = 0, 0, 0, 0, 0
	m.sample.Defrosting = m.frost.defrostLeft > 0
	m.serve()
	m.liveHouse(dt)
	m.bookElectricity(dt)
	m.readSensor(dt)
	m.holdHygiene(dt)
	m.step.indoorJ, m.pointKnown = 0, false
	m.advance(dt)
	if m.trace != nil {
		m.hand()
	}
}

// serve marches heat pump, loop and vessel by the duty in hand.
func (m *march) serve() {
	dt := m.step.dt
	switch {
	case m.duty == forWater && m.t >= m.changeS+m.params.Loop.ValveS:
		m.heat(dt)
	case m.duty == forWater:
		m.pump(dt)
		m.coolLoop(dt)
		m.runWater(false, 0)
	case m.frost.onStore:
		m.defrostOnStore(dt)
	case m.duty == forHouse:
		m.heatHouse(dt)
		m.runWater(false, 0)
		m.turnToStore()
	case m.step.overrun:
		m.frost.melt(dt, m.outdoorC, &m.params.Frost)
		m.pump(dt)
		m.runWater(true, 0)
	default:
		m.frost.melt(dt, m.outdoorC, &m.params.Frost)
		m.coolLoop(dt)
		m.runWater(false, 0)
	}
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

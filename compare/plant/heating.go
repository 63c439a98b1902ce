package plant

import "math"

// bandJ is half the swing of the heating thermostat: with it, a run at the least
// output lasts about MinRunS when little heat is needed.
func (m *march) bandJ() float64 {
	h := &m.params.House
	least := m.params.HeatPump.MinOutputW(m.outdoorC, h.flowC(m.outdoorC))
	return least * h.MinRunS / 2
}

// houseCalls reports whether the house needs heat: below its base temperature,
// and short of heat by more than the given multiple of the thermostat's band.
func (m *march) houseCalls(bands float64) bool {
	h := &m.params.House
	if !h.there() || m.mode != Normal || m.outdoorC >= h.BaseC {
		return false
	}
	return m.room.deficitJ(h) > bands*m.bandJ()
}

// decideHouse starts and stops heating.
func (m *march) decideHouse() {
	switch {
	case m.duty == idle && m.houseCalls(1):
		m.month.HeatingStarts++
		m.startS = m.t
		m.takeLoop()
		m.duty = forHouse
	case m.duty == forHouse && !m.houseCalls(-1):
		m.duty = idle
	}
}

// takeLoop gives the loop to the house with the heat that is in it.
func (m *march) takeLoop() {
	if m.loopOfHouse {
		return
	}
	m.month.LoopToHouse += m.loop.heatJ()
	m.loopOfHouse = true
}

// houseLimitS bounds a step so that the heating thermostat acts on time.
func (m *march) houseLimitS() float64 {
	h := &m.params.House
	if !h.there() || m.mode != Normal || m.duty == forWater || m.outdoorC >= h.BaseC {
		return math.Inf(1)
	}
	deficit, band := m.room.deficitJ(h), m.bandJ()
	cooling := h.LossWPerK*(m.room.tempC-m.outdoorC) - h.gainsW()
	if m.duty == idle {
		return crossing(band-deficit, cooling)
	}
	output, _ := m.houseOutput()
	return crossing(band+deficit, output-cooling)
}

// crossing is the time in which a power covers an amount of heat.
func crossing(heatJ, powerW float64) float64 {
	if powerW <= 0 {
		return math.Inf(1)
	}
	return max(heatJ/powerW, shortestHouseS)
}

// shortestHouseS is the least step for the heating thermostat's sake.
const shortestHouseS = 10

// houseOutput gives the heat and electricity of steady heating now.
func (m *march) houseOutput() (outputW, electricW float64) {
	h, unit := &m.params.House, m.params.HeatPump
	flowC := h.flowC(m.outdoorC)
	most, least := unit.MaxOutputW(m.outdoorC, flowC), unit.MinOutputW(m.outdoorC, flowC)
	outputW = min(max(m.room.needW(h, m.outdoorC), least), most)
	return outputW, outputW / unit.COP(m.outdoorC, flowC, outputW/most)
}

// heatHouse runs the heat pump for the house for dt. The loop is at the heating
// flow temperature; what it loses indoors is heating too.
func (m *march) heatHouse(dt float64) {
	outputW, electricW := m.houseOutput()
	frost := &m.params.Frost
	var heatJ, electricJ float64
	if m.frost.defrostLeft > 0 {
		m.frost.defrostLeft = whole(m.frost.defrostLeft - dt)
		taken := frost.HeatJ * dt / frost.DurationS
		m.month.HeatingDefrost += taken
		heatJ, electricJ = -taken, electricW*dt
	} else {
		ran := m.t - m.startS
		heatJ = outputW * frost.clean(m.growth, outputW) * m.params.Start.HeatShare(ran, ran+dt) * dt
		electricJ = electricW * m.params.Start.ElectricityShare(ran, ran+dt) * dt
		m.month.HeatingHeat += heatJ
		m.grow(dt, &m.month.HeatingDefrosts)
	}
	m.month.HeatingRunS += dt
	m.month.ElectricHeating += electricJ
	m.month.ElectricHousePump += m.params.Power.PumpW * dt
	m.step.houseJ += heatJ - m.warmLoop(dt)
	m.step.houseElectricJ += electricJ + m.params.Power.PumpW*dt
	m.sample.HouseW, m.sample.HouseElectricW = heatJ/dt, electricJ/dt
}

// warmLoop brings the house's loop to the heating flow temperature and gives the
// heat that this and its outdoor loss took.
func (m *march) warmLoop(dt float64) (tookJ float64) {
	before := m.loop.heatJ()
	m.loop.tempC = m.params.House.flowC(m.outdoorC)
	outside := m.loop.outdoorWPK * (m.loop.tempC - m.outdoorC) * dt
	m.month.HeatingLoopLoss += outside
	return m.loop.heatJ() - before + outside
}

// grow adds the frost of a step and counts the defrost that it begins.
func (m *march) grow(dt float64, defrosts *int) {
	m.frost.grow(dt, m.growth, &m.params.Frost)
	if m.frost.defrostLeft > 0 {
		*defrosts++
	}
}

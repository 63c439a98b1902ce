package plant

import "math"

// weather is what heating the house can do in the half hour in hand.
type weather struct {
	flowC        float64 // heating flow temperature
	mostW        float64 // largest and least output at it
	leastW       float64
	bandJ        float64 // half the swing of the thermostat
	needsHeating bool    // outdoor air is below the base temperature
}

// readHouse looks the house's part of the half hour up. The thermostat's band is
// such that a run at the least output lasts about MinRunS when little heat is
// needed.
func (m *march) readHouse() {
	h, unit := &m.params.House, m.params.HeatPump
	if !h.there() || m.mode != Normal {
		return
	}
	w := weather{flowC: h.flowC(m.outdoorC), needsHeating: m.outdoorC < h.BaseC}
	w.mostW, w.leastW = unit.MaxOutputW(m.outdoorC, w.flowC), unit.MinOutputW(m.outdoorC, w.flowC)
	w.bandJ = w.leastW * h.MinRunS / 2
	m.heating = w
}

// houseCalls reports whether the house needs heat: below its base temperature,
// and short of heat by more than the given multiple of the thermostat's band.
func (m *march) houseCalls(bands float64) bool {
	return m.heating.needsHeating && m.room.deficitJ(&m.params.House) > bands*m.heating.bandJ
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

// leaveHouse ends heating where a timed test begins, in the middle of a defrost if
// need be: the test is of hot water alone.
func (m *march) leaveHouse() {
	m.duty = idle
	m.frost.defrostLeft, m.frost.onStore = 0, false
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
	if !m.heating.needsHeating || m.duty == forWater {
		return math.Inf(1)
	}
	h := &m.params.House
	deficit, band := m.room.deficitJ(h), m.heating.bandJ
	cooling := h.LossWPerK*(m.room.tempC-m.outdoorC) - h.gainsW()
	if m.duty == idle {
		return crossing(band-deficit, cooling)
	}
	_, outputW := m.houseOutput()
	return crossing(band+deficit, outputW-cooling)
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

// houseOutput is the heat of steady heating now, by the certified mean and as a
// clean exchanger gives it: what the house needs, within what the unit can do.
func (m *march) houseOutput() (meanW, cleanW float64) {
	need, frost := m.room.needW(&m.params.House, m.outdoorC), &m.params.Frost
	meanW = min(max(need/frost.clean(m.growth, need), m.heating.leastW), m.heating.mostW)
	return meanW, meanW * frost.clean(m.growth, meanW)
}

// heatHouse runs the heat pump for the house for dt. The loop is at the heating
// flow temperature; what it loses indoors is heating too.
func (m *march) heatHouse(dt float64) {
	meanW, cleanW := m.houseOutput()
	electricW := meanW / m.params.HeatPump.COP(m.outdoorC, m.heating.flowC, meanW/m.heating.mostW)
	frost := &m.params.Frost
	var heatJ, electricJ float64
	if m.frost.defrostLeft > 0 {
		m.frost.defrostLeft = whole(m.frost.defrostLeft - dt)
		taken := frost.HeatJ * dt / frost.DurationS
		m.month.HeatingDefrost += taken
		heatJ, electricJ = -taken, electricW*dt
	} else {
		heatShare, electricShare := m.comeUp(dt)
		heatJ, electricJ = cleanW*heatShare*dt, electricW*electricShare*dt
		m.month.HeatingHeat += heatJ
		m.grow(dt, &m.month.HeatingDefrosts)
	}
	m.month.HeatingRunS += dt
	m.month.ElectricHeating += electricJ
	m.month.ElectricHousePump += m.params.Power.PumpW * dt
	m.step.houseJ += heatJ - m.warmLoop(dt)
	m.step.houseElectricJ += electricJ + m.params.Power.PumpW*dt
	m.sample.HouseW, m.sample.HouseElectricW = heatJ/dt, electricJ/dt
	m.sample.FlowC, m.sample.ReturnC = m.loop.tempC, m.loop.tempC
	if spreadK := heatJ / dt / m.primaryWPerK; spreadK < 0 {
		m.sample.FlowC += spreadK // a defrost cools the water that comes back
	} else {
		m.sample.ReturnC -= spreadK
	}
}

// warmLoop brings the house's loop to the heating flow temperature and gives the
// heat that this and its loss outside the heated rooms took.
func (m *march) warmLoop(dt float64) (tookJ float64) {
	before := m.loop.heatJ()
	m.loop.tempC = m.heating.flowC
	outside := m.loop.outdoorWPK*(m.loop.tempC-m.outdoorC)*dt + m.params.House.TankWasteWPerK*(m.loop.tempC-m.params.RoomC)*dt
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

package plant

// middleHeight is where a vessel's water stands for what a defrost can take.
const middleHeight = 0.5

// turnToStore lets a defrost of heating that has just begun take its heat from the
// vessel, where that is so arranged: the valve turns to hot water for it, and the
// loop goes along with what is in it. A vessel no warmer than the heating water has
// nothing to give, and then the heating circuit gives it as ever.
func (m *march) turnToStore() {
	f := &m.params.Frost
	if !f.FromStore || m.frost.defrostLeft != f.DurationS || m.vessel.AtC(middleHeight) <= m.heating.flowC {
		return
	}
	m.frost.onStore = true
	m.month.LoopFromHouse += m.loop.heatJ()
	m.loopOfHouse = false
}

// defrostOnStore marches such a defrost. Its heat is hot water's loss; electricity
// and pump are heating's, which goes on as soon as it is over, with the store's
// water that is then in the loop.
func (m *march) defrostOnStore(dt float64) {
	f := &m.params.Frost
	takenW := f.HeatJ / f.DurationS
	meanW, _ := m.houseOutput()
	electricW := meanW / m.params.HeatPump.COP(m.outdoorC, m.heating.flowC, meanW/m.heating.mostW)
	m.sample.HeatW, m.sample.HouseElectricW = -takenW, electricW
	m.runWater(true, -takenW)
	m.frost.defrostLeft = whole(m.frost.defrostLeft - dt)
	m.month.DefrostHeat += takenW * dt
	m.month.HeatingRunS += dt
	m.month.ElectricHeating += electricW * dt
	m.month.ElectricHousePump += m.params.Power.PumpW * dt
	m.step.houseElectricJ += (electricW + m.params.Power.PumpW) * dt
	if m.frost.defrostLeft == 0 {
		m.frost.onStore = false
		m.takeLoop()
	}
}

package plant

// decide starts or stops the heat pump, for either duty, and the immersion
// heater, at the present moment. A defrost is always finished first.
func (m *march) decide() {
	m.readSchedules()
	m.runHygiene()
	m.setpointC = m.wantedC()
	if m.frost.defrostLeft > 0 {
		return
	}
	switch {
	case m.duty == forWater:
		m.stopWater()
	case m.mayStart():
		m.beginWater()
	}
	if m.duty != forWater {
		m.decideHouse()
	}
}

// readSchedules looks the windows up again when one has opened or closed.
func (m *march) readSchedules() {
	if m.t < m.openS {
		return
	}
	m.open, m.openS = m.allowed.open(m.t)
	m.raisedTo = -1
	for i := range m.raised {
		open, until := m.raised[i].open(m.t)
		m.openS = min(m.openS, until)
		if open {
			m.raisedTo = i
		}
	}
}

// wantedC is the setpoint in force: of the month, raised in a window of its own or
// by a hot spell, and less what the sensor reads too much.
func (m *march) wantedC() float64 {
	c := &m.params.Control
	setpoint := c.SetpointC
	if c.MonthC != nil {
		setpoint = c.MonthC[m.monthNo]
	}
	if m.raisedTo >= 0 {
		setpoint = c.Raised[m.raisedTo].SetpointC
	}
	if m.hygiene.on {
		setpoint = max(setpoint, m.hygieneSetpointC())
	}
	return setpoint - c.SensorErrorK
}

// mayStart: the sensor calls, the window is open, and the least pause is over. A
// hot spell waits for no window.
func (m *march) mayStart() bool {
	c := &m.params.Control
	switch m.mode {
	case Off:
		return false
	case On, InDefrost:
		return m.sensorC <= m.setpointC
	default:
		calls := m.sensorC <= m.setpointC-c.HysteresisK
		return calls && (m.open || m.hygiene.on) && m.t >= m.changeS+c.AntiCycleS && m.t >= m.holdS
	}
}

// beginWater turns the heat pump to hot water: a start from standstill, or a
// changeover from heating. The loop comes with what is in it.
func (m *march) beginWater() {
	if m.duty == forHouse {
		m.month.Changeovers++
	} else {
		m.month.Starts++
		m.startS = m.t + m.params.Loop.ValveS
	}
	if m.loopOfHouse {
		m.month.LoopFromHouse += m.loop.heatJ()
		m.loopOfHouse = false
	}
	m.duty, m.changeS = forWater, m.t
}

// stopWater ends a run that must end. A house that needs heat gets the heat pump
// at once, and the hot water in the loop with it.
func (m *march) stopWater() {
	if !m.mustStop() {
		return
	}
	m.duty, m.changeS, m.pointKnown = idle, m.t, false
	if m.houseCalls(-1) {
		m.takeLoop()
		m.duty = forHouse
		return
	}
	m.overrunS = m.t + m.params.Loop.OverrunS
}

// mustStop: satisfied, out of the window or as hot as it may get, once the least
// run is over; at the unit's highest flow temperature at once.
func (m *march) mustStop() bool {
	if m.mode == Off {
		return true
	}
	c := &m.params.Control
	pt := m.presentPoint()
	if pt.LeavingC > m.params.HeatPump.HighestFlowC() {
		return true
	}
	if m.t < m.changeS+c.MinRunS {
		return false
	}
	if m.sensorC >= m.setpointC || pt.OvershootK > c.OvershootK {
		return true
	}
	return m.mode == Normal && ((!m.open && !m.hygiene.on) || m.waterTooLong())
}

// waterTooLong: the house has waited for the longest run that hot water is given.
func (m *march) waterTooLong() bool {
	c := &m.params.Control
	if c.LongestRunS <= 0 || m.t < m.changeS+c.LongestRunS || !m.houseCalls(0) {
		return false
	}
	m.holdS = m.t + m.params.House.MinRunS
	return true
}

// targetC is the flow temperature at which output turns down.
func (m *march) targetC() float64 {
	return min(m.setpointC+m.params.Control.FlowAboveK, m.params.HeatPump.HighestFlowC())
}

// callC is the sensor reading at which hot water changes over next: it stops at
// the setpoint and starts a hysteresis below.
func (m *march) callC() float64 {
	if m.duty == forWater || m.mode == On || m.mode == InDefrost {
		return m.setpointC
	}
	return m.setpointC - m.params.Control.HysteresisK
}

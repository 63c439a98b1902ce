package plant

import "math"

// decide starts or stops the heat pump at the present moment.
func (m *march) decide() {
	m.open, m.openS = m.allowed.open(m.t)
	if m.running {
		if m.mustStop() {
			m.switchTo(false)
		}
		return
	}
	if m.mayStart() {
		m.switchTo(true)
		m.month.Starts++
	}
}

func (m *march) switchTo(on bool) {
	m.running = on
	m.changeS = m.t
}

// mayStart: the sensor calls, the window is open, and the least pause is over.
func (m *march) mayStart() bool {
	c := &m.params.Control
	switch m.mode {
	case Off:
		return false
	case On:
		return m.sensorC < c.SetpointC
	default:
		return m.open && m.t >= m.changeS+c.AntiCycleS && m.sensorC <= c.SetpointC-c.HysteresisK
	}
}

// mustStop: satisfied, out of the window or as hot as it may get, once the least
// run is over; at the unit's highest flow temperature at once.
func (m *march) mustStop() bool {
	if m.mode == Off {
		return true
	}
	c := &m.params.Control
	pt, _, _ := m.point(m.outdoorC, c.OutputCap, m.targetC())
	if pt.LeavingC > m.params.HeatPump.HighestFlowC() {
		return true
	}
	if m.t < m.changeS+c.MinRunS {
		return false
	}
	return m.sensorC >= c.SetpointC || pt.OvershootK > c.OvershootK || (!m.open && m.mode == Normal)
}

// targetC is the flow temperature at which output turns down.
func (m *march) targetC() float64 {
	return math.Min(m.params.Control.SetpointC+m.params.Control.FlowAboveK, m.params.HeatPump.HighestFlowC())
}

// callC is the sensor reading at which the heat pump changes over next: it stops
// at the setpoint and starts a hysteresis below.
func (m *march) callC() float64 {
	if m.running {
		return m.params.Control.SetpointC
	}
	return m.params.Control.SetpointC - m.params.Control.HysteresisK
}

// readSensor moves the sensor towards the water around it.
func (m *march) readSensor(dt float64) {
	waterC := m.vessel.AtC(m.params.Control.SensorHeight)
	if m.params.Control.SensorLagS <= 0 {
		m.sensorC = waterC
		return
	}
	m.sensorC += (waterC - m.sensorC) * -math.Expm1(-dt/m.params.Control.SensorLagS)
}

// crossingS gives the time until the sensor, drifting towards the water around
// it as that is now, reads the temperature at which the heat pump changes over.
func (m *march) crossingS() float64 {
	waterC := m.vessel.AtC(m.params.Control.SensorHeight)
	call := m.callC()
	gapNow, gapThen := m.sensorC-waterC, call-waterC
	if gapThen == 0 || gapNow/gapThen <= 1 {
		return math.Inf(1)
	}
	return m.params.Control.SensorLagS * math.Log(gapNow/gapThen)
}

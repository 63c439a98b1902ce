package plant

import "math"

// readSensor moves the sensor towards the water around it, which changes in a
// straight line over the step: the exact answer of a first-order lag to a ramp.
func (m *march) readSensor(dt float64) {
	was := m.aroundC
	m.aroundC = m.vessel.AtC(m.params.Control.SensorHeight)
	kPerS := (m.aroundC - was) / dt
	m.sensorC = m.lagged(was, kPerS, dt)
	if dt >= shortestS { // shorter, it says little of how the water changes
		m.aroundKPerS = kPerS
	}
}

// lagged is the sensor's reading after dt in water that begins at aroundC and changes
// by kPerS:
//
//	T = T_0 + (T_w - T_0) (1 - exp(-x)) + r dt (1 - (1 - exp(-x))/x),  x = dt/lag
func (m *march) lagged(aroundC, kPerS, dt float64) float64 {
	if m.params.Control.SensorLagS <= 0 {
		return aroundC + kPerS*dt
	}
	share, mean := m.lagging.Shares(dt / m.params.Control.SensorLagS)
	return m.sensorC + (aroundC-m.sensorC)*share + kPerS*dt*mean
}

// crossingS gives the time until the sensor reads the temperature at which hot water
// changes over, if the water around it goes on as in the last step and that is
// within dt; else forever.
func (m *march) crossingS(dt float64) float64 {
	callC, way := m.callC(), -1.0
	if m.duty == forWater {
		way = 1
	}
	toGoK := way * (callC - m.sensorC)
	if toGoK <= 0 || toGoK > way*(m.aroundC-m.sensorC)+max(0, way*m.aroundKPerS*dt) {
		return math.Inf(1)
	}
	doneK := way * (m.lagged(m.aroundC, m.aroundKPerS, dt) - m.sensorC)
	if doneK < toGoK {
		return math.Inf(1)
	}
	return min(m.crossedS(callC, dt*toGoK/doneK), dt)
}

// crossedS closes in on the time at which the sensor reads callC, from a guess, by the
// rate at which it then follows the water (Newton). A moment later it has crossed.
func (m *march) crossedS(callC, guessS float64) float64 {
	const (
		turns   = 8
		closeK  = 1e-4
		momentS = 0.05
	)
	t := guessS
	for range turns {
		reading := m.lagged(m.aroundC, m.aroundKPerS, t)
		kPerS := m.aroundKPerS
		if lagS := m.params.Control.SensorLagS; lagS > 0 {
			kPerS = (m.aroundC + m.aroundKPerS*t - reading) / lagS
		}
		if kPerS == 0 || math.Abs(callC-reading) < closeK {
			break
		}
		t = math.Max(0, t+(callC-reading)/kPerS)
	}
	return t + momentS
}

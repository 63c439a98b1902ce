package plant

import (
	"math"
	"testing"
)

// sensing is a march whose sensor reads a temperature in water at another that changes
// steadily; it calls at 50 C at rest and stops at 53 C.
func sensing(t *testing.T, sensorC, aroundC, kPerS float64, d duty) *march {
	t.Helper()
	m := &march{Plant: New(compactParams(t)), setpointC: 53}
	m.sensorC, m.aroundC, m.aroundKPerS, m.duty = sensorC, aroundC, kPerS, d
	return m
}

// The reading in water that changes in a straight line is that of a lag followed in
// steps of a hundredth of a second.
func TestSensorFollowsARamp(t *testing.T) {
	const dt = 0.01
	for _, kPerS := range []float64{-0.05, 0, 0.03} {
		m := sensing(t, 50, 54, kPerS, forWater)
		reading := 50.0
		for at := 0.0; at < 120; at += dt {
			reading += (54 + kPerS*(at+dt/2) - reading) * dt / m.params.Control.SensorLagS
		}
		band{reading - 2e-3, reading + 2e-3}.check(t, "reading, C", m.lagged(54, kPerS, 120))
	}
}

// A crossing is foreseen where the reading then is that of the switch, a moment later,
// and not where the reading does not get there.
func TestCrossingIsForeseen(t *testing.T) {
	for _, c := range []struct {
		sensorC, aroundC, kPerS float64
		duty                    duty
		foreseen                bool
	}{
		{52, 53.5, 0.02, forWater, true},
		{52.99, 52.99, 0.02, forWater, true}, // from rest, as the square of the time
		{52, 52, 0.02, forWater, true},
		{52, 52.5, 0, forWater, false},
		{53.5, 55, 0.02, forWater, false}, // it has crossed
		{51, 49, 0, idle, true},
		{51, 51, -0.02, idle, true},
		{51, 50.5, 0.02, idle, false},
	} {
		const longestS = 130
		m := sensing(t, c.sensorC, c.aroundC, c.kPerS, c.duty)
		got := m.crossingS(longestS)
		if !c.foreseen {
			if !math.IsInf(got, 1) {
				t.Errorf("%+v: %g s", c, got)
			}
			continue
		}
		if reading := m.lagged(c.aroundC, c.kPerS, got); got > longestS || math.Abs(reading-m.callC()) > 3e-3 {
			t.Errorf("%+v: after %g s it reads %g C, the switch is at %g C", c, got, reading, m.callC())
		}
	}
}

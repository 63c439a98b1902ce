package climate

import (
	"math"
	"testing"
)

// Saturation pressures over water, handbook values from memory; the Magnus form
// is stated to hold within 0.4 percent.
func TestSaturationPressure(t *testing.T) {
	for airC, wantPa := range map[float64]float64{0: 611.2, 10: 1228, 20: 2339, 30: 4247, 40: 7384} {
		if got := saturationPa(airC); math.Abs(got/wantPa-1) > 0.004 {
			t.Errorf("%g deg C: %.1f Pa, want %.1f", airC, got, wantPa)
		}
	}
}

func TestDryDayKeepsItsMeanAndItsDewPoint(t *testing.T) {
	air := []float64{5, 8, 12, 9}
	rh := make([]float64, len(air))
	fillDayHumidity(rh, air, 70)
	if got := average(rh); math.Abs(got-70) > 1e-12 { // rounding
		t.Errorf("mean %v, want 70", got)
	}
	for h := range air {
		vapour, first := rh[h]*saturationPa(air[h]), rh[0]*saturationPa(air[0])
		if math.Abs(vapour/first-1) > 1e-14 { // rounding
			t.Errorf("hour %d: vapour pressure %v, want %v all day", h, vapour, first)
		}
	}
}

func TestMistIsCutAtSaturation(t *testing.T) {
	air := []float64{0, 10}
	rh := make([]float64, len(air))
	fillDayHumidity(rh, air, 95)
	if rh[0] != 100 || rh[1] >= 95 {
		t.Errorf("got %v, want 100 in the cold hour and a drier warm one", rh)
	}
}

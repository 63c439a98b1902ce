package plant

import (
	"testing"

	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
)

func failingShowers(l *Ledger) float64 {
	return total(l, func(m *Month) float64 { return float64(m.Draws[household.Shower].Failed) })
}

// larger makes the option's vessel of so many litres, as tall and as wide in
// proportion; the same litres lie above the sensor whatever the volume.
func larger(t *testing.T, o option, litres float64) Params {
	t.Helper()
	const aboveL = 25
	p := alwaysAllowed(o.params(t))
	p.Control.SensorHeight = 1 - aboveL/litres
	if o.name == "cylinder" {
		v := tallCylinder()
		v.VolumeL = litres
		p.Vessel = vessel.NewCylinder(v)
		return p
	}
	v := compactStore()
	v.VolumeL = litres
	p.Vessel = vessel.NewCompact(v)
	return p
}

// A larger vessel, otherwise equal, has no more failing showers: over five paired years,
// within two standard errors.
func TestLargerVesselFailsNoMore(t *testing.T) {
	if testing.Short() {
		t.Skip("thirty years")
	}
	for _, c := range []struct {
		option
		litres []float64
	}{{options()[0], []float64{50, 60, 80}}, {options()[1], []float64{80, 100, 120}}} {
		var before [referenceYears]*Ledger
		for i, litres := range c.litres {
			now := ledgers(t, func() Params { return larger(t, c.option, litres) })
			if i > 0 {
				gap, se := gapOf(before, now, failingShowers)
				t.Logf("%s, %g instead of %g litres: %+.1f failing showers a year (standard error %.1f)", c.name, litres, c.litres[i-1], gap, se)
				if gap > 2*se {
					t.Errorf("%s: %g litres fail more often than %g", c.name, litres, c.litres[i-1])
				}
				if gap >= 0 {
					t.Errorf("%s: none of the showers that fail at %g litres is saved: nothing is tested", c.name, c.litres[i-1])
				}
			}
			before = now
		}
	}
}

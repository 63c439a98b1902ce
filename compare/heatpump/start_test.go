package heatpump_test

import (
	"math"
	"testing"

	"dhwcompare/compare/heatpump"

	"gonum.org/v1/gonum/integrate/quad"
)

// mean gives the mean shares of heat and electricity from one time after a start to
// another.
func mean(s heatpump.Start, fromS, toS float64) (heat, electricity float64) {
	r := s.After(fromS)
	return s.Step(&r, toS-fromS)
}

func TestComingUpEqualsQuadrature(t *testing.T) {
	for _, s := range []heatpump.Start{{HeatTauS: 30, ElectricityTauS: 60}, {HeatTauS: 60, ElectricityTauS: 120}} {
		for _, span := range [][2]float64{{0, 1}, {0, 10}, {5, 35}, {0, 600}, {299, 300}, {1000, 2000}} {
			heat, electricity := mean(s, span[0], span[1])
			// 64 Gauss points integrate an exponential over some time constants to rounding.
			for tauS, got := range map[float64]float64{s.HeatTauS: heat, s.ElectricityTauS: electricity} {
				integral := quad.Fixed(func(x float64) float64 { return 1 - math.Exp(-x/tauS) }, span[0], span[1], 64, nil, 0)
				near(t, "mean", got, integral/(span[1]-span[0]), 1e-12)
			}
		}
	}
}

func TestComingUpAtItsEdges(t *testing.T) {
	s := heatpump.Start{HeatTauS: 60}
	for _, c := range []struct {
		what              string
		fromS, toS, share float64
		rounding          float64
	}{
		{"at the start", 0, 0, 0, 0},
		{"one time constant", 60, 60, 1 - 1/math.E, 1e-15},
		{"settled", 2400, 2410, 1, 0},
		{"just before settled", 2000, 2010, 1, 1e-14},
	} {
		heat, electricity := mean(s, c.fromS, c.toS)
		near(t, c.what, heat, c.share, c.rounding)
		near(t, c.what+", no lag", electricity, 1, 0)
	}
}

// A lag below a second is a lag.
func TestShortLag(t *testing.T) {
	heat, _ := mean(heatpump.Start{HeatTauS: 0.5}, 0.25, 0.25)
	near(t, "share", heat, 1-math.Exp(-0.5), 1e-15)
}

// Steps add up to the whole whatever their length, also one after the other.
func TestComingUpAddsUp(t *testing.T) {
	s := heatpump.Start{HeatTauS: 60, ElectricityTauS: 30}
	r := s.After(0)
	heat, electricity := 0.0, 0.0
	for at, dt := 0.0, 7.5; at < 900; at += dt {
		h, e := s.Step(&r, dt)
		heat, electricity = heat+dt*h, electricity+dt*e
	}
	wantHeat, wantElectricity := mean(s, 0, 900)
	near(t, "heat", heat, 900*wantHeat, 1e-9)
	near(t, "electricity", electricity, 900*wantElectricity, 1e-9)
}

func TestStartLossIsWhatALongRunMisses(t *testing.T) {
	s := heatpump.Defaults().Start
	const outputW, runS = 6000.0, 3600.0 // sixty time constants of heat: exp(-60) is nothing
	heat, electricity := mean(s, 0, runS)
	missingJ := outputW * runS * (electricity - heat)
	near(t, "missing heat, J", missingJ, outputW*(s.HeatTauS-s.ElectricityTauS), 1e-6)
	near(t, "missing heat, kWh", missingJ/3.6e6, 0.05, 1e-12)
}

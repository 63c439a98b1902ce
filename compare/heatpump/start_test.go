package heatpump_test

import (
	"math"
	"testing"

	"dhwcompare/compare/heatpump"

	"gonum.org/v1/gonum/integrate/quad"
)

func TestLagMeanEqualsQuadrature(t *testing.T) {
	for _, tauS := range []float64{30, 60, 120} {
		for _, span := range [][2]float64{{0, 1}, {0, 10}, {5, 35}, {0, 600}, {299, 300}, {1000, 2000}} {
			integral := quad.Fixed(func(s float64) float64 { return 1 - math.Exp(-s/tauS) }, span[0], span[1], 64, nil, 0)
			// 64 Gauss points integrate an exponential over at most 20 time constants to rounding.
			near(t, "mean", heatpump.LagMean(tauS, span[0], span[1]), integral/(span[1]-span[0]), 1e-12)
		}
	}
}

func TestLagMeanAtItsEdges(t *testing.T) {
	near(t, "at the start", heatpump.LagMean(60, 0, 0), 0, 0)
	near(t, "one time constant", heatpump.LagMean(60, 60, 60), 1-1/math.E, 1e-15)
	near(t, "no lag", heatpump.LagMean(0, 0, 10), 1, 0)
	near(t, "settled", heatpump.LagMean(60, 2400, 2410), 1, 0)
	near(t, "just before settled", heatpump.LagMean(60, 2399, 2410), 1, 1e-15)
}

// Steps add up to the whole whatever their length.
func TestLagMeanAddsUp(t *testing.T) {
	sum := 0.0
	for s := 0.0; s < 900; s += 7.5 {
		sum += 7.5 * heatpump.LagMean(60, s, s+7.5)
	}
	near(t, "sum of steps", sum, 900*heatpump.LagMean(60, 0, 900), 1e-9)
}

func TestStartLossIsWhatALongRunMisses(t *testing.T) {
	s := heatpump.Defaults().Start
	const outputW, runS = 6000.0, 3600.0 // sixty time constants of heat: exp(-60) is nothing
	missing := outputW * runS * (s.ElectricityShare(0, runS) - s.HeatShare(0, runS))
	near(t, "missing heat, J", missing, s.LossJ(outputW), 1e-6)
	near(t, "missing heat, kWh", s.LossJ(outputW)/3.6e6, 0.05, 1e-12)
}

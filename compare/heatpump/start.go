package heatpump

import (
	"math"

	"dhwcompare/compare/relax"
)

// Start is how a unit comes up after a start: heat and electricity each
// approach their steady value exponentially, heat the more slowly.
//
// Valid for any time since the start; a stop is taken as sudden. Only the
// losses inside the unit are meant: water and metal of loop and exchanger
// warm up in a balance of their own.
type Start struct {
	HeatTauS        float64 // s, 0 for no lag
	ElectricityTauS float64 // s, 0 for no lag
}

// HeatShare is the mean of heat over steady heat from fromS to toS seconds
// after the start.
func (s Start) HeatShare(fromS, toS float64) float64 { return LagMean(s.HeatTauS, fromS, toS) }

// ElectricityShare is the same for electricity.
func (s Start) ElectricityShare(fromS, toS float64) float64 {
	return LagMean(s.ElectricityTauS, fromS, toS)
}

// LossJ is the heat that a start costs for good at a steady output:
// output * (HeatTauS - ElectricityTauS), the heat that the electricity drawn
// would have made at the steady COP less the heat that came. With the default
// lags and 6 kW it is 0.05 kWh; 0.02-0.10 kWh is common practice, no source.
// It holds for runs much longer than the lags.
func (s Start) LossJ(outputW float64) float64 {
	return outputW * (s.HeatTauS - s.ElectricityTauS)
}

// settledTaus is the age, in time constants, at which exp(-age) no longer
// changes a float64 near one.
const settledTaus = 40

// LagMean is the mean of 1 - exp(-t/tau) for t from fromS to toS, in seconds,
// 0 <= fromS <= toS:
//
//	1 - tau/(to-from) * (exp(-from/tau) - exp(-to/tau))
//
// An empty interval gives the value at that moment; tau zero or less gives 1.
func LagMean(tauS, fromS, toS float64) float64 {
	if fromS >= settledTaus*tauS {
		return 1
	}
	missing := math.Exp(-fromS / tauS)
	if spans := (toS - fromS) / tauS; spans > 0 {
		missing *= relax.Share(spans) / spans
	}
	return 1 - missing
}

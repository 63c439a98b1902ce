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
//
// For good a start costs, at a steady output, output*(HeatTauS - ElectricityTauS):
// the heat that the electricity drawn would have made at the steady COP less the
// heat that came. With the default lags and 6 kW that is 0.05 kWh; 0.02-0.10 kWh
// is common practice, no source. It holds for runs much longer than the lags.
type Start struct {
	HeatTauS        float64 // s, 0 for no lag
	ElectricityTauS float64 // s, 0 for no lag
}

// Rise is how far a unit has come up: the shares of heat and of electricity that are
// still missing. A unit that starts misses both whole.
type Rise struct{ heat, electricity float64 }

// After gives the rise at a time in seconds after the start, zero or more.
func (s Start) After(ranS float64) Rise {
	return Rise{missing(s.HeatTauS, ranS), missing(s.ElectricityTauS, ranS)}
}

// missing is exp(-t/tau); none without a lag.
func missing(tauS, ranS float64) float64 {
	if tauS <= 0 {
		return 0
	}
	return math.Exp(-ranS / tauS)
}

// Step lets dtS seconds pass and gives the means over them of heat and electricity
// over their steady values:
//
//	1 - exp(-from/tau) (1 - exp(-dt/tau)) tau/dt
//
// A step of no length gives the values of the moment.
func (s Start) Step(r *Rise, dtS float64) (heatShare, electricityShare float64) {
	return step(&r.heat, s.HeatTauS, dtS), step(&r.electricity, s.ElectricityTauS, dtS)
}

func step(missing *float64, tauS, dtS float64) (share float64) {
	const nothing = 1e-13 // of what a unit gives: it has come up
	if *missing < nothing {
		return 1
	}
	passed, mean := relax.Shares(dtS / tauS)
	share = 1 - *missing*(1-mean)
	*missing *= 1 - passed
	return share
}

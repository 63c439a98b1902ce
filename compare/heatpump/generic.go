package heatpump

import "math"

// Size is a class of unit in the generic map.
type Size string

// The two classes of unit whose certified results the generic map rests on.
const (
	Small  Size = "small"  // declared output 4-6 kW at -10 C, 55 C water
	Medium Size = "medium" // declared output 6-9 kW
)

// NominalKW is the output by which the class is named; zero for an unknown size.
func (s Size) NominalKW() float64 {
	switch s {
	case Small:
		return 5
	case Medium:
		return 8
	default:
		return 0
	}
}

// generic is the map used when the user has no table.
//
// With outdoor air A and leaving water W in deg C:
//
//	Qmax = min(ceiling, at7 + perK*(A-7)) * (1 - 0.003*(W-45))
//	Qmin = max(floor, minAt7 + minPerK*(A-7))
//	COP  = eta(share) * (W+2+273.15) / ((W+2) - (A-6))
//	eta  = 0.56 - penalty * max(0, share-0.5)/0.5
//
// Condensing 2 K above leaving water, evaporating 6 K below outdoor air. The
// efficiency is fitted to the medians of 323 certified propane units (rms error
// 4 %, worst 9 %: testdata/published/heatpump_certified_medians.csv). The
// capacity lines are anchored on the certified outputs at -7 C; their slope
// and their ceiling are common practice, no source. Certified points lie
// within A -10..12 and W 24..55; beyond, expect 5 % in efficiency at W 60 or
// A 20 and 10 % at W 65. Certified results at 2 C and -7 C include defrosting.
//
// Outdoor air is held within -25..40 C, beyond which the capacity line means
// nothing. Water less than 12 K above the air gets the COP of water 12 K
// above it: no smaller lift was ever certified, and the ideal COP runs to
// infinity.
type generic struct {
	ceilingW, maxAt7W, maxPerK float64
	floorW, minAt7W, minPerK   float64
	fullEta                    float64
}

const (
	kelvin          = 273.15
	condensingK     = 2.0   // above leaving water; see generic
	evaporatingK    = 6.0   // below outdoor air
	smallestLiftK   = 12.0  // leaving water above outdoor air at the certified point A12/W24
	lightLoadEta    = 0.56  // share of the ideal COP at half output and below
	kneeShare       = 0.5   // output share up to which efficiency stays flat
	capacityPerK    = 0.003 // of Qmax lost per K of leaving water
	capacityAnchorC = 45.0
	outdoorAnchorC  = 7.0
)

func newGeneric(p Params) generic {
	g := generic{ceilingW: 9000, maxAt7W: 6400, maxPerK: 144, floorW: 1000, minAt7W: 2000, minPerK: 40}
	if p.Size == Medium {
		g = generic{ceilingW: 12400, maxAt7W: 8800, maxPerK: 200, floorW: 1000, minAt7W: 3000, minPerK: 50}
	}
	g.scale(p.NominalKW / p.Size.NominalKW())
	g.fullEta = lightLoadEta - p.LoadPenalty
	return g
}

func (g *generic) scale(by float64) {
	for _, w := range []*float64{&g.ceilingW, &g.maxAt7W, &g.maxPerK, &g.floorW, &g.minAt7W, &g.minPerK} {
		*w *= by
	}
}

func (g *generic) maxAt45W(outdoorC float64) float64 {
	return min(g.ceilingW, g.maxAt7W+g.maxPerK*(outdoorC-outdoorAnchorC))
}

func (g *generic) minW(outdoorC float64) float64 {
	return max(g.floorW, g.minAt7W+g.minPerK*(outdoorC-outdoorAnchorC))
}

func (g *generic) fullCOP(outdoorC, leavingC float64) float64 {
	waterC := max(leavingC, outdoorC+smallestLiftK)
	return g.fullEta * (waterC + condensingK + kelvin) / (waterC + condensingK - (outdoorC - evaporatingK))
}

func leavingFactor(leavingC float64) float64 {
	return 1 - capacityPerK*(leavingC-capacityAnchorC)
}

// genericLeavingC is the closed form of leaving = return + Q/C with Q linear
// in leaving water: Q = Q45 * (1 - k*(return-45)) / (1 + k*Q45/C).
func genericLeavingC(at45W, returnC, capacityRateWPerK float64) float64 {
	return returnC + at45W*leavingFactor(returnC)/(capacityRateWPerK+capacityPerK*at45W)
}

func genericCovered() Range {
	return Range{OutdoorMinC: -10, OutdoorMaxC: 12, LeavingMinC: 24, LeavingMaxC: 55}
}

func genericHeld() Range {
	return Range{OutdoorMinC: -25, OutdoorMaxC: 40, LeavingMinC: math.Inf(-1), LeavingMaxC: math.Inf(1)}
}

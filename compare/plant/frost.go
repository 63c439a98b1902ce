package plant

import "math"

// Frost is what ice on the outdoor exchanger costs.
//
// It grows with the time that the compressor runs, for whatever duty, in humid
// air between about -12 and 6 C, fastest from 0 to 2 C; it melts off by itself
// only above 1 C with the compressor off. Once a full load has grown, the unit
// defrosts: for a while it gives no heat and takes some from the water.
//
// Certified performance near freezing includes defrosting (from memory of the
// test method). While frost is counted here, the running output and COP are
// raised so that a whole cycle of growing and melting comes back to the certified
// mean: nothing is counted twice.
type Frost struct {
	IntervalS float64 // run from clean to full at 0 to 2 C; 0: no frost
	DurationS float64 // of a defrost
	HeatJ     float64 // taken from the water by one defrost
	MeltS     float64 // time in which a full load melts off by itself above 1 C
	FromStore bool    // defrosts of heating take their heat from the vessel, which holds heating water
}

// growth is the rate at which frost grows, as a share of a full load a second.
//
// Shape: one defrost in 50 minutes of running at 0 to 2 C and in 90 minutes at
// -7 C, fading out to nothing at -12 and 6 C; none below 65 % relative humidity
// and the full rate from 85 %. Judgement on published surveys (defrosting most
// frequent in humid air from -12 to -1 C; growth peaks at 0 C).
func (f *Frost) growth(outdoorC, rhPercent float64) float64 {
	if f.IntervalS <= 0 {
		return 0
	}
	const (
		noneBelowC, slowC, fastC, fastToC, noneAboveC = -12.0, -7.0, 0.0, 2.0, 6.0
		slowShare                                     = 50.0 / 90
		dryPercent, humidPercent                      = 65.0, 85.0
	)
	share := 0.0
	switch {
	case outdoorC <= noneBelowC || outdoorC >= noneAboveC:
		return 0
	case outdoorC < slowC:
		share = slowShare * (outdoorC - noneBelowC) / (slowC - noneBelowC)
	case outdoorC < fastC:
		share = slowShare + (1-slowShare)*(outdoorC-slowC)/(fastC-slowC)
	case outdoorC <= fastToC:
		share = 1
	default:
		share = (noneAboveC - outdoorC) / (noneAboveC - fastToC)
	}
	humid := min(max((rhPercent-dryPercent)/(humidPercent-dryPercent), 0), 1)
	return share * humid / f.IntervalS
}

// clean is how much more than the certified mean a frost-free exchanger gives at
// outputW, so that after the pause and the heat of a defrost the mean comes back:
//
//	clean = 1 + growth (duration + heat/output)
func (f *Frost) clean(growthPerS, outputW float64) float64 {
	if growthPerS == 0 || outputW <= 0 {
		return 1
	}
	return 1 + growthPerS*(f.DurationS+f.HeatJ/outputW)
}

// frostState is the ice at present.
type frostState struct {
	load        float64 // share of a full load
	defrostLeft float64 // seconds of defrost still to go
	onStore     bool    // the one in hand is of heating and takes its heat from the vessel
}

// melt lets frost run off while the compressor stands still.
func (s *frostState) melt(dt, outdoorC float64, f *Frost) {
	const meltsAboveC = 1
	if outdoorC > meltsAboveC && f.MeltS > 0 {
		s.load = max(0, s.load-dt/f.MeltS)
	}
}

// grow adds frost and begins a defrost when the load is full.
func (s *frostState) grow(dt, growthPerS float64, f *Frost) {
	s.load += growthPerS * dt
	if s.load >= 1 {
		s.load, s.defrostLeft = 0, f.DurationS
	}
}

// limitS bounds a step so that a defrost begins and ends on time.
func (s *frostState) limitS(growthPerS float64) float64 {
	if s.defrostLeft > 0 {
		return s.defrostLeft
	}
	if growthPerS > 0 {
		return max((1-s.load)/growthPerS, shortestS)
	}
	return math.Inf(1)
}

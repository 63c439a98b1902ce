// Package heatpump is the steady performance of an air-to-water heat pump: how
// much heat it can give, what that costs in electricity, and how both come up
// after a start.
//
// A [Unit] answers for one working point at a time and keeps no state. Whether
// the compressor runs, for how long, and when it may start again is decided
// by whoever drives it.
package heatpump

import "errors"

// Unit is a heat pump at steady running. It is made by [New], never changes
// afterwards and may be shared between goroutines.
type Unit struct {
	generic      generic
	table        *grid // the user's own table, or nil for the generic map
	minimumShare float64
	highestFlowC float64
	derate       float64
	loadGain     float64
	covered      Range
	held         Range
}

// New builds a unit. The error joins every [Problem] that [Params.Validate]
// finds.
func New(p Params) (*Unit, error) {
	if problems := p.Validate(); len(problems) > 0 {
		return nil, joined(problems)
	}
	u := &Unit{
		minimumShare: p.MinimumShare,
		highestFlowC: p.HighestFlowC,
		derate:       p.FieldDerate,
		loadGain:     p.LoadPenalty / (lightLoadEta - p.LoadPenalty),
	}
	if len(p.Table) > 0 {
		rated := newGrid(p.Table)
		u.table = rated.extended(p.OutdoorMarginK, p.LeavingMarginK)
		u.covered, u.held = rated.span(), u.table.span()
		return u, nil
	}
	u.generic = newGeneric(p)
	u.covered, u.held = genericCovered(), genericHeld()
	return u, nil
}

func joined(problems []Problem) error {
	errs := make([]error, len(problems))
	for i, p := range problems {
		errs[i] = p
	}
	return errors.Join(errs...)
}

// Point is one working point at steady running.
type Point struct {
	OutputW      float64 // heat into the water
	LeavingC     float64 // leaving water: return + OutputW / capacity rate
	COP          float64
	ElectricityW float64 // compressor and fan; circulation pump and standby are counted elsewhere
	Share        float64 // output over the largest output at this point
	// OvershootK is how far the leaving water lies above the lower of target
	// and highest flow temperature. It is zero unless AtMinimum.
	OvershootK   float64
	AtMinimum    bool // the unit cannot turn down further
	Extrapolated Extrapolation
}

// At gives the working point for outdoor air and return water in deg C and a
// capacity rate (mass flow times specific heat) in W/K.
//
// Output is the largest that meets three limits: shareCap (0..1) of the
// largest output; leaving water no hotter than targetLeavingC; leaving water
// no hotter than the highest flow temperature of the unit. It never drops
// below the smallest output: then AtMinimum is set, the leaving water may
// overshoot, and stopping is left to the caller. Capacity depends on leaving
// water and leaving water on output, so both are solved together, exactly.
//
// Without flow (capacity rate zero or less) nothing can be given off: the
// point has no output, no COP, and the return temperature as leaving water.
func (u *Unit) At(outdoorC, returnC, capacityRateWPerK, shareCap, targetLeavingC float64) Point {
	if !(capacityRateWPerK > 0) {
		return Point{LeavingC: returnC}
	}
	var c curve
	c.set(u, outdoorC)
	limitC := min(targetLeavingC, u.highestFlowC)
	leavingC := min(c.leavingC(min(shareCap, 1), returnC, capacityRateWPerK), limitC)
	outputW, maxW := capacityRateWPerK*(leavingC-returnC), c.maxOutputW(leavingC)
	atMinimum := outputW < c.minOutputW(maxW)
	if atMinimum {
		leavingC = c.leavingAtMinimumC(returnC, capacityRateWPerK)
		outputW, maxW = capacityRateWPerK*(leavingC-returnC), c.maxOutputW(leavingC)
	}
	cop := u.loaded(c.fullCOP(leavingC), outputW/maxW)
	return Point{
		OutputW:      outputW,
		LeavingC:     leavingC,
		COP:          cop,
		ElectricityW: outputW / cop,
		Share:        outputW / maxW,
		OvershootK:   max(0, leavingC-limitC),
		AtMinimum:    atMinimum,
		Extrapolated: u.extrapolation(outdoorC, leavingC),
	}
}

// MaxOutputW is the largest steady heat output at an outdoor and a leaving
// temperature.
func (u *Unit) MaxOutputW(outdoorC, leavingC float64) float64 {
	var c curve
	c.set(u, outdoorC)
	return c.maxOutputW(leavingC)
}

// MinOutputW is the smallest steady heat output at an outdoor and a leaving
// temperature.
func (u *Unit) MinOutputW(outdoorC, leavingC float64) float64 {
	var c curve
	c.set(u, outdoorC)
	return c.minOutputW(c.maxOutputW(leavingC))
}

// COP is the coefficient of performance at a share (0..1) of the largest
// output, field derate included.
func (u *Unit) COP(outdoorC, leavingC, share float64) float64 {
	var c curve
	c.set(u, outdoorC)
	return u.loaded(c.fullCOP(leavingC), share)
}

// HighestFlowC is the hottest leaving water the unit can make.
func (u *Unit) HighestFlowC() float64 { return u.highestFlowC }

// loaded turns the COP at full output into the COP at a share of it:
// eta(share)/eta(1) with the efficiency of [Params.LoadPenalty], flat at half
// output and below. The user's own table gives full output only and takes the
// same shape.
func (u *Unit) loaded(fullCOP, share float64) float64 {
	if share <= kneeShare {
		return u.derate * fullCOP * (1 + u.loadGain)
	}
	lightness := (1 - min(share, 1)) / (1 - kneeShare)
	return u.derate * fullCOP * (1 + u.loadGain*lightness)
}

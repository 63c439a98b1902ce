package compare

import "math"

// sizingStepK lies between the setpoints that are tried.
const sizingStepK = 2.0

// sizingGrid lists the setpoints to try, rising: even ones from the lowest that is
// legal, and the highest.
func (c *Case) sizingGrid(side Side) []float64 {
	k := c.control(side)
	low, high := c.lowestSetpointC(side), c.highestSetpointC(k)
	var grid []float64
	for t := math.Ceil(low/sizingStepK) * sizingStepK; t < high; t += sizingStepK {
		grid = append(grid, t)
	}
	if low <= high {
		grid = append(grid, high)
	}
	return grid
}

// lowestSetpointC is the lowest setpoint that makes sense with a control: heating
// starts while the water is still of use at some outlet, and before the immersion
// heater helps.
func (c *Case) lowestSetpointC(side Side) float64 {
	const aboveBoostK = 1
	h, k, i := &c.Household, c.control(side), &c.body(side).Immersion
	low := math.Max(leastSetpointC, math.Min(h.ShowerMinC, math.Min(h.BathMinC, h.TapMinC))+k.HysteresisK)
	if i.PowerKW > 0 {
		low = math.Max(low, i.BoostBelowC+aboveBoostK)
	}
	return low
}

// resized gives the case with another volume of one option; false where the
// volume cannot hold the coil or has no known outer dimensions.
func (c *Case) resized(side Side, litres float64) (*Case, bool) {
	changed := *c
	b := changed.body(side)
	if b.VolumeL != litres {
		b.VolumeL, b.HeightM, b.LossW, b.WidthMM, b.DepthMM, b.OutsideHeightMM = litres, nil, nil, nil, nil, nil
	}
	if side == SideCompact && !changed.Compact.fitCoil(b.VolumeL != c.Compact.VolumeL) {
		return nil, false
	}
	_, err := changed.Things(side)
	return &changed, err == nil
}

// largestCoilShare is the share of a small store that a coil may fill: beyond it
// too little heating water is left. Judgement.
const largestCoilShare = 0.4

// fitCoil shortens the coil of a store that was made another size; false where the
// coil is stated by its own figures and does not fit.
func (s *CompactStore) fitCoil(resized bool) bool {
	if !resized || s.CoilDisplacedL() <= largestCoilShare*s.VolumeL {
		return true
	}
	if s.CoilBodyL != nil || s.CoilWaterL != nil || s.CoilUAWPerK != nil {
		return false
	}
	s.CoilLengthM *= largestCoilShare * s.VolumeL / s.CoilDisplacedL()
	return true
}

package heatpump

// curve is the map at one outdoor temperature: output and COP against leaving
// water. The generic map and the user's table differ only here; a branch
// instead of an interface keeps a working point to some tens of nanoseconds.
type curve struct {
	unit     *Unit
	table    *grid   // nil for the generic map
	outdoorC float64 // held within the range of the map
	maxAt45W float64 // generic map: largest output with leaving water at 45 C
	minW     float64 // generic map: smallest output
	rows     cell    // table: the two outdoor rows around
}

// set fills in place: returning a curve would copy it, which costs as much as
// solving it.
func (c *curve) set(u *Unit, outdoorC float64) {
	c.unit, c.table = u, u.table
	c.outdoorC = min(max(outdoorC, u.held.OutdoorMinC), u.held.OutdoorMaxC)
	if c.table != nil {
		c.rows = locate(c.table.outdoorC, c.outdoorC)
		return
	}
	c.maxAt45W, c.minW = u.generic.maxAt45W(c.outdoorC), u.generic.minW(c.outdoorC)
}

// leavingC solves capacityRate * (leaving - return) = share * maxOutput(leaving).
func (c *curve) leavingC(share, returnC, capacityRateWPerK float64) float64 {
	if c.table != nil {
		return c.table.leavingC(c.rows, share, returnC, capacityRateWPerK)
	}
	return genericLeavingC(share*c.maxAt45W, returnC, capacityRateWPerK)
}

func (c *curve) leavingAtMinimumC(returnC, capacityRateWPerK float64) float64 {
	if c.table != nil {
		return c.table.leavingC(c.rows, c.unit.minimumShare, returnC, capacityRateWPerK)
	}
	return returnC + c.minW/capacityRateWPerK
}

func (c *curve) maxOutputW(leavingC float64) float64 {
	if c.table != nil {
		return c.table.at(c.table.maxW, c.rows, leavingC)
	}
	return c.maxAt45W * leavingFactor(leavingC)
}

// minOutputW is the smallest output where maxW is the largest.
func (c *curve) minOutputW(maxW float64) float64 {
	if c.table != nil {
		return c.unit.minimumShare * maxW
	}
	return c.minW
}

func (c *curve) fullCOP(leavingC float64) float64 {
	if c.table != nil {
		return c.table.at(c.table.fullCOP, c.rows, leavingC)
	}
	return c.unit.generic.fullCOP(c.outdoorC, leavingC)
}

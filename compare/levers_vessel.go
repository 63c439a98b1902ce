package compare

import (
	"math"
	"slices"
)

// Ranges of the vessels.
const (
	leastLossW, mostLossW = 5, 400
	leastCoilM, mostCoilM = 5, 100
	leastUA, mostUA       = 100, 10_000 // W/K
	leastU, mostU         = 50, 2000    // W/m2K
	mostCoilShare         = 0.7         // of a store's volume
)

func (c *Case) vesselLevers() []lever {
	s := &c.Cylinder
	return []lever{
		{"standing_loss_w", "standing losses of both times", "", 1, 0.7, 1.5, func(c *Case, by float64) {
			for side := range sides {
				b := c.body(side)
				w := math.Min(math.Max(b.StandingLossW()*by, leastLossW), mostLossW)
				b.LossW = &w
			}
		}},
		c.coilLever(),
		lever{"cylinder.coil_u_w_per_m2k", "cylinder's coil transfer", "W/m2K", s.CoilUWPerM2, 0.7 * s.CoilUWPerM2, 1.3 * s.CoilUWPerM2,
			func(c *Case, v float64) { c.Cylinder.CoilUWPerM2 = v }}.within(leastU, mostU),
		c.setpointLever(SideCompact, "compact_store", 4, 4),
		c.setpointLever(SideCylinder, "cylinder", 3, 5),
	}
}

// coilLever is the store's coil: its length, or what is stated in place of it.
func (c *Case) coilLever() lever {
	s := &c.Compact
	if s.CoilUAWPerK != nil {
		ua := *s.CoilUAWPerK
		return lever{"compact_store.coil_ua_w_per_k", "store's coil transfer", "W/K", ua, 0.7 * ua, 1.3 * ua,
			func(c *Case, v float64) { c.Compact.CoilUAWPerK = &v }}.within(leastUA, mostUA)
	}
	l := lever{"compact_store.coil_length_m", "length of the store's coil", "m", s.CoilLengthM, 0.6 * s.CoilLengthM, 1.2 * s.CoilLengthM,
		func(c *Case, v float64) { c.Compact.CoilLengthM = v }}
	if s.CoilBodyL != nil || s.CoilWaterL != nil {
		return lever{} // the stated litres are those of this coil
	}
	perMetre := s.CoilDisplacedL() / s.CoilLengthM
	return l.within(leastCoilM, math.Min(mostCoilM, mostCoilShare*s.VolumeL/perMetre))
}

// setpointLever moves all setpoints of an option that are not for hours of their
// own, as far as all of them may go.
func (c *Case) setpointLever(side Side, section string, lessK, moreK float64) lever {
	k := c.control(side)
	low, high := k.SetpointC, k.SetpointC
	if k.MonthSetpointC != nil {
		low, high = slices.Min(k.MonthSetpointC[:]), slices.Max(k.MonthSetpointC[:])
	}
	base := k.SetpointC
	l := lever{section + ".control.setpoint_c", "setpoint of the " + side.String(), "C", base, base - lessK, base + moreK, func(c *Case, v float64) {
		*c = *c.withControl(side, func(k *Control) { k.shift(v - base) })
	}}
	return l.within(base+c.lowestSetpointC(side)-low, base+c.highestSetpointC(k)-high)
}

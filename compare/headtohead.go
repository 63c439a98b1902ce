package compare

import (
	"fmt"
	"slices"

	"dhwcompare/compare/wording"
)

// headToHead sets the two cheapest against each other, year by year: both have
// lived through the same years.
func headToHead(c *Case, s *Sizing) *HeadToHead {
	compact, cylinder := s.Compact.Cheapest, s.Cylinder.Cheapest
	if compact == nil || cylinder == nil {
		return nil
	}
	gaps := slices.Clone(compact.costs)
	for i, cost := range cylinder.costs {
		gaps[i] -= cost
	}
	h := &HeadToHead{
		CompactVolumeL: compact.VolumeL, CylinderVolumeL: cylinder.VolumeL,
		Cost:        DifferenceSpread{Spread: SpreadOf(gaps), ShareBetter: shareBetter(gaps, Less)},
		SpaceFreedL: cylinder.SpaceL - compact.SpaceL, FloorFreedM2: cylinder.FloorAreaM2 - compact.FloorAreaM2,
	}
	h.Text = h.words(c, compact, cylinder)
	return h
}

func (h *HeadToHead) words(c *Case, compact, cylinder *Size) string {
	return wording.Sprintf("A %.0f l compact store at %.0f C and a %.0f l cylinder at %.0f C both keep the showers warm. %s It %s of cupboard and %s of floor.",
		compact.VolumeL, compact.SetpointC, cylinder.VolumeL, cylinder.SetpointC, h.costWords(c),
		saved(h.SpaceFreedL, "%.0f litres"), saved(h.FloorFreedM2, "%.2f m2"))
}

// saved says how much less of something the store takes, or how much more.
func saved(v float64, form string) string {
	if v < 0 {
		return "takes " + fmt.Sprintf(form, -v) + " more"
	}
	return "saves " + fmt.Sprintf(form, v)
}

func (h *HeadToHead) costWords(c *Case) string {
	interval := wording.Sprintf("(90 %% interval of the difference %s %+.0f to %+.0f)", c.Currency, h.Cost.CILow, h.Cost.CIHigh)
	band := c.Money.MaterialityPerYear
	switch {
	case h.Cost.CILow >= -band && h.Cost.CIHigh <= band:
		return fmt.Sprintf("Their running costs do not really differ %s.", interval)
	case h.Cost.Mean > 0:
		return wording.Sprintf("The store costs %s %.0f a year more to run %s.", c.Currency, h.Cost.Mean, interval)
	default:
		return wording.Sprintf("The store costs %s %.0f a year less to run %s.", c.Currency, -h.Cost.Mean, interval)
	}
}

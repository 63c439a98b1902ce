package compare

import (
	"cmp"
	"fmt"
	"slices"
)

// report lists what was confirmed of one option.
func (r *SizingResult) report(all []*volume, side Side) {
	r.Sizes, r.Failing = []Size{}, []float64{}
	for _, v := range all {
		switch {
		case v.side != side:
		case v.found == nil:
			r.Failing = append(r.Failing, v.c.body(side).VolumeL)
		default:
			r.Sizes = append(r.Sizes, v.size(v.found, len(v.found.records())))
		}
	}
	markNonDominated(r.Sizes)
	r.choose()
}

// size describes a setting by its first n years.
func (v *volume) size(l *lived, n int) Size {
	k := l.c.control(v.side)
	s := Size{
		VolumeL: l.c.body(v.side).VolumeL, SetpointC: k.SetpointC, SummerC: k.SetpointC, HysteresisK: k.HysteresisK,
		OutputCap: k.OutputCap, ShowerLimit: k.ShowerLimit, NeedsLimiter: k.ShowerLimit != v.c.control(v.side).ShowerLimit, FloorAreaM2: v.space.FloorAreaM2, SpaceL: v.space.SpaceL,
		Trial: l.trial(n),
	}
	if k.MonthSetpointC != nil {
		s.SummerC = k.MonthSetpointC[firstSummerMonth]
	}
	for i := range n {
		s.costs = append(s.costs, l.records()[i].totals.CostPerYear)
	}
	return s
}

// choose picks the smallest and the cheapest; of equals the cheaper, the smaller. A
// flow limiter saves hot water as well as cost, so a size that needs one is picked
// only where none serves without.
func (r *SizingResult) choose() {
	for i := range r.Sizes {
		s := &r.Sizes[i]
		if r.Smallest == nil || cmp.Or(s.limited()-r.Smallest.limited(), cmp.Compare(s.SpaceL, r.Smallest.SpaceL), cmp.Compare(s.Trial.Cost, r.Smallest.Trial.Cost)) < 0 {
			r.Smallest = s
		}
		if r.Cheapest == nil || cmp.Or(s.limited()-r.Cheapest.limited(), cmp.Compare(s.Trial.Cost, r.Cheapest.Trial.Cost), cmp.Compare(s.SpaceL, r.Cheapest.SpaceL)) < 0 {
			r.Cheapest = s
		}
	}
	switch {
	case len(r.Sizes) > 0:
	case len(r.Failing) > 0:
		r.Note = "no size that is tried keeps the service rule at any setting that heat pump and controller allow"
	default:
		r.Note = "no size that is tried fits the room"
	}
}

// limited is 1 for a size that serves with a flow limiter that the case has not.
func (s *Size) limited() int {
	if s.NeedsLimiter {
		return 1
	}
	return 0
}

// markNonDominated compares every size with every other.
func markNonDominated(sizes []Size) {
	for i := range sizes {
		sizes[i].NonDominated = true
		for j := range sizes {
			if i != j && sizes[j].dominates(&sizes[i]) {
				sizes[i].NonDominated = false
			}
		}
	}
}

// merits are what sizes are weighed by: less is better in each.
func (s *Size) merits() [5]float64 {
	throttled := 0.0
	if s.ShowerLimit > 0 {
		throttled = 1 / s.ShowerLimit
	}
	return [5]float64{s.Trial.Cost, s.Trial.Failing.Mean, s.SpaceL, s.Trial.RunsADay, throttled}
}

func (s *Size) dominates(o *Size) bool {
	a, b := s.merits(), o.merits()
	better := false
	for i := range a {
		if a[i] > b[i] {
			return false
		}
		better = better || a[i] < b[i]
	}
	return better
}

// set gives the case with a size of one option in place.
func (s *Size) set(c *Case, side Side) *Case {
	sized, ok := c.resized(side, s.VolumeL)
	if !ok {
		return c // a size of another case
	}
	return sized.withControl(side, func(k *Control) {
		k.SetpointC, k.MonthSetpointC = s.SetpointC, nil
		if s.SummerC != s.SetpointC {
			k.MonthSetpointC = summerLower(s.SetpointC, s.SetpointC-s.SummerC)
		}
		k.HysteresisK, k.OutputCap, k.ShowerLimit = s.HysteresisK, s.OutputCap, s.ShowerLimit
	})
}

// Best gives the case with the cheapest size of each option that serves; false
// where an option has none.
func (s *Sizing) Best(c *Case) (*Case, bool) {
	if s.Compact.Cheapest == nil || s.Cylinder.Cheapest == nil {
		return c, false
	}
	return s.Cylinder.Cheapest.set(s.Compact.Cheapest.set(c, SideCompact), SideCylinder), true
}

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
	return fmt.Sprintf("Best against best: a %.0f l compact store at %.0f C and a %.0f l cylinder at %.0f C both keep the showers warm. %s It %s of cupboard and %s of floor.",
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
	interval := fmt.Sprintf("(90 %% interval of the difference %s %+.0f to %+.0f)", c.Currency, h.Cost.CILow, h.Cost.CIHigh)
	band := c.Money.MaterialityPerYear
	switch {
	case h.Cost.CILow >= -band && h.Cost.CIHigh <= band:
		return fmt.Sprintf("Their running costs do not really differ %s.", interval)
	case h.Cost.Mean > 0:
		return fmt.Sprintf("The store costs %s %.0f a year more to run %s.", c.Currency, h.Cost.Mean, interval)
	default:
		return fmt.Sprintf("The store costs %s %.0f a year less to run %s.", c.Currency, -h.Cost.Mean, interval)
	}
}

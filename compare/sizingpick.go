package compare

import "cmp"

// report lists what was confirmed of one option.
func (r *SizingResult) report(all []*volume, side Side) {
	r.Sizes, r.Failing = []Size{}, []float64{}
	for _, v := range all {
		switch {
		case v.side != side:
		case v.found == nil:
			r.Failing = append(r.Failing, v.c.body(side).VolumeL)
		default:
			r.Sizes = append(r.Sizes, v.size(v.found, len(v.found.years)))
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
		s.costs = append(s.costs, l.years[i].CostPerYear)
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

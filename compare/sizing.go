package compare

import (
	"context"
	"fmt"
	"sort"
)

// Sizing sets the best compact store against the best cylinder: for each option
// the sizes and settings that keep the service rule, what they trade against each
// other, and the two winners head to head.
type Sizing struct {
	ScreenYears  int          `json:"screen_years"`
	ConfirmYears int          `json:"confirm_years"`
	Tried        int          `json:"settings_tried"`
	Compact      SizingResult `json:"compact"`
	Cylinder     SizingResult `json:"cylinder"`
	// HeadToHead compares the cheapest of each that serves; null where an option
	// has none.
	HeadToHead *HeadToHead `json:"head_to_head"`
}

// Of gives one option's result.
func (s *Sizing) Of(side Side) *SizingResult {
	if side == SideCompact {
		return &s.Compact
	}
	return &s.Cylinder
}

// SizingResult is one option's sizes. Every size in it has been confirmed.
type SizingResult struct {
	Sizes    []Size `json:"sizes"`
	Smallest *Size  `json:"smallest"` // that serves and fits; null if none does
	Cheapest *Size  `json:"cheapest"`
	Note     string `json:"note"`
}

// Size is one way of setting an option up.
type Size struct {
	VolumeL     float64 `json:"volume_l"`
	SetpointC   float64 `json:"setpoint_c"`
	SummerC     float64 `json:"summer_setpoint_c"` // from April to October; the same unless a lower one serves
	HysteresisK float64 `json:"hysteresis_k"`
	OutputCap   float64 `json:"output_cap_share"`
	ShowerLimit float64 `json:"shower_limit_l_per_min"` // 0: none
	FloorAreaM2 float64 `json:"floor_area_m2"`
	SpaceL      float64 `json:"space_l"`
	Fits        bool    `json:"fits"`
	Trial       Trial   `json:"trial"`
	// NonDominated: no other size is at least as good in cost, failures, space and
	// runs, and better in one.
	NonDominated bool `json:"non_dominated"`
}

// HeadToHead compares two winners over the same years.
type HeadToHead struct {
	CompactVolumeL  float64          `json:"compact_volume_l"`
	CylinderVolumeL float64          `json:"cylinder_volume_l"`
	Cost            DifferenceSpread `json:"cost_difference_spread"` // compact store less cylinder
	SpaceFreedL     float64          `json:"space_freed_l"`
	FloorFreedM2    float64          `json:"floor_freed_m2"`
	Text            string           `json:"text"`
}

// sizingYears are lived through to screen a setting.
const sizingYears = 3

// sizingVolumes lists the litres that are tried: the sizes in the trade (from
// memory), and the case's own.
func (c *Case) sizingVolumes(side Side) []float64 {
	volumes := []float64{120, 150, 180, 210, 250, 300}
	if side == SideCompact {
		volumes = []float64{50, 60, 80, 100, 120, 150}
	}
	own := c.body(side).VolumeL
	for _, v := range volumes {
		if v == own {
			return volumes
		}
	}
	volumes = append(volumes, own)
	sort.Float64s(volumes)
	return volumes
}

// SizeBoth searches both options. progress is told of settings tried, of a number
// that is estimated.
func SizeBoth(ctx context.Context, c *Case, workers int, progress Progress) (*Sizing, error) {
	s := &Sizing{ScreenYears: min(sizingYears, c.Years), ConfirmYears: c.Years}
	for side := range sides {
		q := &sizer{c: c, side: side, workers: workers, screen: s.ScreenYears, progress: progress, tried: &s.Tried}
		r, err := q.search(ctx)
		if err != nil {
			return nil, err
		}
		*s.Of(side) = r
	}
	var err error
	s.HeadToHead, err = c.headToHead(ctx, s, workers)
	return s, err
}

// sizer searches one option.
type sizer struct {
	c        *Case
	side     Side
	workers  int
	screen   int
	progress Progress
	tried    *int
}

// expectedTrials is roughly how many settings a search tries, for its progress.
const expectedTrials = 110

func (q *sizer) trial(ctx context.Context, c *Case, n int) (Trial, error) {
	*q.tried++
	if q.progress != nil {
		q.progress(min(*q.tried, expectedTrials-1), expectedTrials)
	}
	return c.trial(ctx, q.side, n, q.workers)
}

// search finds for each volume the lowest setpoint that serves, then what other
// settings of the most promising volumes bring, and confirms what it reports.
func (q *sizer) search(ctx context.Context) (SizingResult, error) {
	var found []*Case
	for _, volume := range q.c.sizingVolumes(q.side) {
		sized, ok := q.c.resized(q.side, volume)
		if !ok {
			continue
		}
		best, err := q.lowestSetpoint(ctx, sized)
		if err != nil {
			return SizingResult{}, err
		}
		if best == nil {
			best, err = q.withLimiter(ctx, sized)
			if err != nil {
				return SizingResult{}, err
			}
		}
		if best != nil {
			found = append(found, best)
		}
	}
	if len(found) == 0 {
		return SizingResult{Sizes: []Size{}, Note: "no size that is tried keeps the service rule at any setpoint that heat pump and controller allow"}, nil
	}
	var variants []*Case
	for _, base := range found {
		more, err := q.variants(ctx, base)
		if err != nil {
			return SizingResult{}, err
		}
		variants = append(variants, more...)
	}
	return q.confirm(ctx, append(found, variants...))
}

// lowestSetpoint finds the lowest setpoint that serves on few years; nil for none.
func (q *sizer) lowestSetpoint(ctx context.Context, c *Case) (*Case, error) {
	grid := c.sizingGrid(q.side)
	at := func(i int) *Case {
		return c.withControl(q.side, func(k *Control) { k.SetpointC, k.MonthSetpointC = grid[i], nil })
	}
	first, err := firstThat(len(grid), func(i int) (bool, error) {
		t, err := q.trial(ctx, at(i), q.screen)
		return q.serves(&t), err
	})
	if err != nil || first == len(grid) {
		return nil, err
	}
	return at(first), nil
}

// serves is the rule on few years: the mean, for an interval of few years says
// little. What passes is confirmed on many.
func (q *sizer) serves(t *Trial) bool { return t.Failing.Mean <= q.c.Service.FailuresPerYear }

// sizingGrid lists the setpoints to try, in steps of 2 K up to what is allowed.
func (c *Case) sizingGrid(side Side) []float64 {
	const stepK = 2
	var grid []float64
	k := c.control(side)
	for t := leastSetpointC + stepK; t <= c.highestSetpointC(k); t += stepK {
		grid = append(grid, t)
	}
	return grid
}

// withLimiter tries a fitted flow limiter where no setpoint serves.
func (q *sizer) withLimiter(ctx context.Context, c *Case) (*Case, error) {
	for _, limit := range c.limiters()[1:] {
		best, err := q.lowestSetpoint(ctx, c.withControl(q.side, func(k *Control) { k.ShowerLimit = limit }))
		if err != nil || best != nil {
			return best, err
		}
	}
	return nil, nil
}

// summerLessK is how much lower a summer setpoint is tried.
const summerLessK = 4

// variants changes one other setting at a time and keeps what serves and costs
// less than the setting that it starts from.
func (q *sizer) variants(ctx context.Context, base *Case) ([]*Case, error) {
	start, err := q.trial(ctx, base, q.screen)
	if err != nil {
		return nil, err
	}
	var kept []*Case
	for _, change := range q.changes(base) {
		changed := base.withControl(q.side, change)
		t, err := q.trial(ctx, changed, q.screen)
		if err != nil {
			return nil, err
		}
		if q.serves(&t) && t.Cost < start.Cost {
			kept = append(kept, changed)
		}
	}
	return kept, nil
}

// changes lists the other settings to try: a lower setpoint in summer, the output
// cap and the hysteresis either way.
func (q *sizer) changes(base *Case) []func(*Control) {
	k := base.control(q.side)
	list := []func(*Control){func(k *Control) { k.MonthSetpointC = summerLower(k.SetpointC, summerLessK) }}
	for _, limit := range []float64{0.5, 0.7, 1} {
		if limit != k.OutputCap {
			list = append(list, func(k *Control) { k.OutputCap = limit })
		}
	}
	for _, h := range []float64{3, 6} {
		if h >= q.c.HeatPump.Limits.LeastHysteresisK && h != k.HysteresisK {
			list = append(list, func(k *Control) { k.HysteresisK = h })
		}
	}
	return list
}

// summerLower gives a setpoint by month, lower from April to October.
func summerLower(setpointC, lessK float64) *[12]float64 {
	const firstSummerMonth, lastSummerMonth = 3, 9
	var months [12]float64
	for m := range months {
		months[m] = setpointC
		if m >= firstSummerMonth && m <= lastSummerMonth {
			months[m] = setpointC - lessK
		}
	}
	return &months
}

// confirm lives the whole ensemble through each setting and reports those that
// keep the rule on it.
func (q *sizer) confirm(ctx context.Context, list []*Case) (SizingResult, error) {
	r := SizingResult{Sizes: []Size{}}
	for _, c := range list {
		t, err := q.trial(ctx, c, q.c.Years)
		if err != nil {
			return r, err
		}
		if !t.Meets {
			continue
		}
		size, err := c.sizeOf(q.side, t)
		if err != nil {
			return r, err
		}
		r.Sizes = append(r.Sizes, size)
	}
	markNonDominated(r.Sizes)
	sort.SliceStable(r.Sizes, func(i, j int) bool { return r.Sizes[i].before(&r.Sizes[j]) })
	r.choose()
	return r, nil
}

func (s *Size) before(o *Size) bool {
	if s.VolumeL != o.VolumeL {
		return s.VolumeL < o.VolumeL
	}
	return s.Trial.Cost < o.Trial.Cost
}

// choose picks the smallest and the cheapest of what fits.
func (r *SizingResult) choose() {
	for i := range r.Sizes {
		s := &r.Sizes[i]
		if !s.Fits {
			continue
		}
		if r.Smallest == nil || s.SpaceL < r.Smallest.SpaceL {
			r.Smallest = s
		}
		if r.Cheapest == nil || s.Trial.Cost < r.Cheapest.Trial.Cost {
			r.Cheapest = s
		}
	}
	switch {
	case len(r.Sizes) == 0:
		r.Note = "what served on few years did not keep the rule on all"
	case r.Cheapest == nil:
		r.Note = "nothing that serves fits the room"
	}
}

// resized gives the case with another volume of one option; false where the
// volume cannot hold the coil or has no known outer dimensions.
func (c *Case) resized(side Side, litres float64) (*Case, bool) {
	changed := *c
	b := changed.body(side)
	if b.VolumeL != litres {
		b.VolumeL, b.HeightM, b.LossW, b.WidthMM, b.DepthMM, b.OutsideHeightMM = litres, nil, nil, nil, nil, nil
	}
	if side == SideCompact {
		changed.Compact.shortenCoil()
	}
	_, err := changed.Things(side)
	return &changed, err == nil
}

// largestCoilShare is the share of a small store that a coil may fill: beyond it
// too little heating water is left. Judgement.
const largestCoilShare = 0.4

// shortenCoil fits the coil into the store.
func (s *CompactStore) shortenCoil() {
	if s.CoilBodyL != nil || s.CoilUAWPerK != nil {
		return
	}
	perMetre := s.Coil().DisplacedLitres() / s.CoilLengthM
	s.CoilLengthM = min(s.CoilLengthM, largestCoilShare*s.VolumeL/perMetre)
}

func (c *Case) sizeOf(side Side, t Trial) (Size, error) {
	k := c.control(side)
	var o Option
	if err := o.takeSpace(c, side); err != nil {
		return Size{}, err
	}
	s := Size{
		VolumeL: c.body(side).VolumeL, SetpointC: k.SetpointC, SummerC: k.SetpointC, HysteresisK: k.HysteresisK,
		OutputCap: k.OutputCap, ShowerLimit: k.ShowerLimit, FloorAreaM2: o.FloorAreaM2, SpaceL: o.SpaceL, Fits: o.fits(), Trial: t,
	}
	if k.MonthSetpointC != nil {
		const july = 6
		s.SummerC = k.MonthSetpointC[july]
	}
	return s, nil
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

func (s *Size) merits() [4]float64 {
	return [4]float64{s.Trial.Cost, s.Trial.Failing.Mean, s.SpaceL, s.Trial.RunsADay}
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
	sized, _ := c.resized(side, s.VolumeL)
	return sized.withControl(side, func(k *Control) {
		k.SetpointC, k.MonthSetpointC = s.SetpointC, nil
		if s.SummerC != s.SetpointC {
			k.MonthSetpointC = summerLower(s.SetpointC, s.SetpointC-s.SummerC)
		}
		k.HysteresisK, k.OutputCap, k.ShowerLimit = s.HysteresisK, s.OutputCap, s.ShowerLimit
	})
}

// Best gives the case with the cheapest size of each option that serves and fits;
// false where an option has none.
func (s *Sizing) Best(c *Case) (*Case, bool) {
	if s.Compact.Cheapest == nil || s.Cylinder.Cheapest == nil {
		return c, false
	}
	return s.Cylinder.Cheapest.set(s.Compact.Cheapest.set(c, SideCompact), SideCylinder), true
}

func (c *Case) headToHead(ctx context.Context, s *Sizing, workers int) (*HeadToHead, error) {
	best, ok := s.Best(c)
	if !ok {
		return nil, nil
	}
	cmp, err := Compare(ctx, best, workers, nil)
	if err != nil {
		return nil, err
	}
	h := &HeadToHead{
		CompactVolumeL: s.Compact.Cheapest.VolumeL, CylinderVolumeL: s.Cylinder.Cheapest.VolumeL,
		Cost: cmp.Difference.Spread["cost_per_year"], SpaceFreedL: -cmp.Difference.SpaceL, FloorFreedM2: -cmp.Difference.FloorAreaM2,
	}
	h.Text = fmt.Sprintf("Best against best: a %.0f l compact store at %.0f C against a %.0f l cylinder at %.0f C differs by %s %+.0f a year (90 %% interval %+.0f to %+.0f) and frees %.0f litres of cupboard.",
		h.CompactVolumeL, s.Compact.Cheapest.SetpointC, h.CylinderVolumeL, s.Cylinder.Cheapest.SetpointC,
		c.Currency, h.Cost.Mean, h.Cost.CILow, h.Cost.CIHigh, h.SpaceFreedL)
	return h, nil
}

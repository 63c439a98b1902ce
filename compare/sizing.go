package compare

import (
	"context"
	"slices"
)

// Sizing sets the best compact store against the best cylinder: for each option
// the sizes and settings that keep the service rule, what they trade against each
// other, and the two winners head to head.
type Sizing struct {
	ScreenYears  int `json:"screen_years"`
	ConfirmYears int `json:"confirm_years"`
	Tried        int `json:"settings_tried"`
	// OptionYears are the years of one option that the search lived through.
	OptionYears int          `json:"option_years"`
	Compact     SizingResult `json:"compact"`
	Cylinder    SizingResult `json:"cylinder"`
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

// SizingResult is one option's sizes. Every size in it fits the room as far as one
// is stated, and keeps the service rule over the whole ensemble.
type SizingResult struct {
	Sizes    []Size `json:"sizes"`    // the best of each volume, by volume
	Smallest *Size  `json:"smallest"` // by the cupboard it takes; null if no size serves
	Cheapest *Size  `json:"cheapest"`
	// TooLarge are the litres that do not fit the room, Failing those that keep the
	// rule at no setting tried.
	TooLarge []float64 `json:"volumes_too_large_l"`
	Failing  []float64 `json:"volumes_failing_l"`
	Note     string    `json:"note"` // why there is no size; empty if there is
}

// Size is one way of setting an option up.
type Size struct {
	VolumeL     float64 `json:"volume_l"`
	SetpointC   float64 `json:"setpoint_c"`
	SummerC     float64 `json:"summer_setpoint_c"` // from April to October; the same unless a lower one serves
	HysteresisK float64 `json:"hysteresis_k"`
	OutputCap   float64 `json:"output_cap_share"`
	ShowerLimit float64 `json:"shower_limit_l_per_min"` // 0: none
	// NeedsLimiter: it serves only with a flow limiter that the case does not have,
	// which people notice and which saves hot water by itself.
	NeedsLimiter bool    `json:"needs_limiter"`
	FloorAreaM2  float64 `json:"floor_area_m2"`
	SpaceL       float64 `json:"space_l"`
	Trial        Trial   `json:"trial"`
	// NonDominated: no other size is at least as good in cost, failures, space, runs
	// and flow of the shower, and better in one.
	NonDominated bool `json:"non_dominated"`

	costs []float64 // of each year
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
	if i, there := slices.BinarySearch(volumes, own); !there {
		volumes = slices.Insert(volumes, i, own)
	}
	return volumes
}

// SizeBoth searches both options. Windows are those that are stated, as with
// Compare. Progress counts years of one option, of a number that is estimated.
func SizeBoth(ctx context.Context, c *Case, workers int, progress Progress) (*Sizing, error) {
	scout, err := newScout(c, newWorlds(c))
	if err != nil {
		return nil, err
	}
	q := &sizer{c: c, scout: scout, workers: workers, screen: min(sizingYears, c.Years)}
	s := &Sizing{ScreenYears: q.screen, ConfirmYears: c.Years}
	var all []*volume
	for side := range sides {
		found, tooLarge, err := q.volumes(side)
		if err != nil {
			return nil, err
		}
		s.Of(side).TooLarge = tooLarge
		all = append(all, found...)
	}
	if err := q.searchAll(ctx, all, progress); err != nil {
		return nil, err
	}
	for side := range sides {
		s.Of(side).report(all, side)
	}
	s.Tried, s.OptionYears = q.tried(all), q.meter.counted
	s.HeadToHead = headToHead(c, s)
	return s, nil
}

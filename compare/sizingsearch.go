package compare

import (
	"context"
	"math"
)

// sizer searches volumes and settings for sizes that serve.
type sizer struct {
	c       *Case
	workers int
	screen  int
	meter   meter
}

// volume is one volume of one option in the search.
type volume struct {
	side  Side
	c     *Case // with the volume in place
	found []*lived
	tried int
	space Option // what it takes
}

// volumes lists the volumes of an option that can be built and fit the room, and
// the litres of those that do not fit.
func (q *sizer) volumes(side Side) (list []*volume, tooLarge []float64, err error) {
	tooLarge = []float64{}
	for _, litres := range q.c.sizingVolumes(side) {
		sized, ok := q.c.resized(side, litres)
		if !ok {
			continue
		}
		v := &volume{side: side, c: sized}
		if err := v.space.takeSpace(sized, side); err != nil {
			return nil, nil, err
		}
		if v.space.fits() {
			list = append(list, v)
		} else {
			tooLarge = append(tooLarge, litres)
		}
	}
	return list, tooLarge, nil
}

// What a search is expected to live through, for its progress: settings screened
// to find the setpoint of a volume, ensembles lived to confirm it, settings
// screened to improve on it, and volumes that are worth it.
const (
	expectedScreens  = 4
	expectedConfirms = 1.2
	expectedChanges  = 8
	promising        = 2 // of each option: the cheapest and the smallest
)

// plan sets the progress up.
func (q *sizer) plan(volumes int, progress Progress) {
	q.meter.progress = progress
	q.meter.of = q.baseYears(volumes) + q.changeYears(promising*int(sides))
}

func (q *sizer) baseYears(volumes int) int {
	return volumes * (expectedScreens*q.screen + int(math.Ceil(expectedConfirms*float64(q.c.Years))))
}

func (q *sizer) changeYears(volumes int) int { return volumes * (expectedChanges*q.screen + q.c.Years) }

// searchAll finds the lowest setpoint that serves for each volume, then what other
// settings of the most promising volumes bring. What is in found of a volume has
// been confirmed.
func (q *sizer) searchAll(ctx context.Context, bases []*volume) error {
	q.meter.stage(q.baseYears(len(bases)))
	err := inParallel(q.workers, len(bases), func(i int) error { return q.settle(ctx, bases[i]) })
	if err != nil {
		return err
	}
	var best []*volume
	for side := range sides {
		best = append(best, promisingOf(bases, side)...)
	}
	q.meter.stage(q.changeYears(promising * int(sides)))
	err = inParallel(q.workers, len(best), func(i int) error { return q.improve(ctx, best[i]) })
	q.meter.stage(0)
	return err
}

// promisingOf gives the volumes of an option that serve at the least cost and in
// the least space, without a flow limiter if they can.
func promisingOf(bases []*volume, side Side) []*volume {
	var r SizingResult
	r.report(bases, side)
	var list []*volume
	for _, v := range bases {
		if v.side != side || len(v.found) == 0 {
			continue
		}
		litres := v.c.body(side).VolumeL
		if litres == r.Cheapest.VolumeL || litres == r.Smallest.VolumeL {
			list = append(list, v)
		}
	}
	return list
}

// cost is that of the volume's first setting that was found.
func (v *volume) cost() float64 { return v.found[0].trial(len(v.found[0].records())).Cost }

func (q *sizer) tried(bases []*volume) int {
	n := 0
	for _, v := range bases {
		n += v.tried
	}
	return n
}

// try begins to live through a volume with its control changed.
func (q *sizer) try(v *volume, from *Case, change func(*Control)) (*lived, error) {
	v.tried++
	return newLived(from.withControl(v.side, change), v.side, q.meter.tick)
}

// settle finds the lowest setpoint at which a volume serves: without a flow
// limiter beyond the case's own, or else with the loosest that makes it serve.
func (q *sizer) settle(ctx context.Context, v *volume) error {
	for i, limit := range v.limiters() {
		ladder := q.ladder(v, limit)
		first, err := ladder.lowest(ctx, i > 0)
		if err != nil {
			return err
		}
		if err := ladder.confirmFrom(ctx, first); err != nil || len(v.found) > 0 {
			return err
		}
	}
	return nil
}

// limiters lists the flow limiters that a volume is tried with, the case's own
// first, within what the case file allows.
func (v *volume) limiters() []float64 {
	const largest = 20 // l/min
	own := v.c.control(v.side).ShowerLimit
	list := []float64{own}
	for _, limit := range v.c.limiters()[1:] {
		if limit <= largest && (own == 0 || limit < own) {
			list = append(list, limit)
		}
	}
	return list
}

// ladder is a volume with a flow limiter at rising setpoints.
type ladder struct {
	q    *sizer
	v    *volume
	c    *Case
	grid []float64
	at   []*lived // nil until tried
}

func (q *sizer) ladder(v *volume, limit float64) *ladder {
	limited := v.c.withControl(v.side, func(k *Control) { k.ShowerLimit = limit })
	grid := limited.sizingGrid(v.side)
	return &ladder{q: q, v: v, c: limited, grid: grid, at: make([]*lived, len(grid))}
}

func (s *ladder) rung(i int) (*lived, error) {
	if s.at[i] != nil {
		return s.at[i], nil
	}
	var err error
	s.at[i], err = s.q.try(s.v, s.c, func(k *Control) { k.SetpointC, k.MonthSetpointC = s.grid[i], nil })
	return s.at[i], err
}

// lowest finds the first rung that serves on few years; the number of rungs for
// none. Where doubtful, it asks the last one first.
func (s *ladder) lowest(ctx context.Context, doubtful bool) (int, error) {
	serves := func(i int) (bool, error) {
		l, err := s.rung(i)
		if err != nil {
			return false, err
		}
		return l.serves(ctx, s.q.screen)
	}
	if doubtful && len(s.grid) > 0 {
		if ok, err := serves(len(s.grid) - 1); err != nil || !ok {
			return len(s.grid), err
		}
	}
	return firstThat(len(s.grid), serves)
}

// confirmFrom lives the whole ensemble through a rung, and through the next ones
// until one keeps the rule.
func (s *ladder) confirmFrom(ctx context.Context, first int) error {
	for i := first; i < min(len(s.grid), first+confirmations); i++ {
		l, err := s.rung(i)
		if err != nil {
			return err
		}
		ok, err := l.keeps(ctx, s.q.c.Years)
		if err != nil {
			return err
		}
		if ok {
			s.v.found = append(s.v.found, l)
			return nil
		}
	}
	return nil
}

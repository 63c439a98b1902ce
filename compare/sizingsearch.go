package compare

import (
	"context"
	"iter"
	"math"
	"slices"
)

// sizer searches volumes and settings for sizes that serve.
type sizer struct {
	c       *Case
	scout   *scout
	workers int
	screen  int
	meter   meter
}

// volume is one volume of one option in the search.
type volume struct {
	side  Side
	c     *Case  // with the volume in place
	space Option // what it takes
	tried int

	limit  int      // of limiters, with which it serves on few years
	ladder *ladder  // of setpoints with that limiter; nil while none serves
	first  int      // lowest rung that serves on few years
	chain  []*lived // that rung, and what serves there at ever less cost
	found  *lived   // confirmed; nil if nothing could be
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
// to find the setpoint of a volume, settings screened to improve on it, volumes
// that are worth that, and ensembles lived to confirm one.
const (
	expectedScreens  = 3
	expectedChanges  = 7
	promising        = 2 // of each option: the cheapest and the smallest
	expectedConfirms = 1.2
)

// searchAll finds for each volume the lowest setpoint that serves on few years, for
// the most promising volumes what other settings bring, and confirms the outcome
// over the whole ensemble.
func (q *sizer) searchAll(ctx context.Context, all []*volume, progress Progress) error {
	screens := len(all) * expectedScreens * q.screen
	rest := promising*int(sides)*expectedChanges*q.screen + len(all)*int(math.Ceil(expectedConfirms*float64(q.c.Years)))
	q.meter.progress, q.meter.of = progress, screens+rest
	q.meter.stage(screens)
	err := inParallel(q.workers, len(all), func(i int) error { return q.settle(ctx, all[i]) })
	if err != nil {
		return err
	}
	q.meter.stage(rest)
	// What takes longest comes first, so that no worker is left with it at the end.
	list := slices.Concat(q.promising(all, SideCompact), q.promising(all, SideCylinder))
	longer := len(list)
	for _, v := range all {
		if !slices.Contains(list[:longer], v) {
			list = append(list, v)
		}
	}
	err = inParallel(q.workers, len(list), func(i int) error {
		if i < longer {
			if err := q.improve(ctx, list[i]); err != nil {
				return err
			}
		}
		return q.confirm(ctx, list[i])
	})
	q.meter.stage(0)
	return err
}

// promising gives the volumes of an option that serve on few years at the least cost
// and in the least space, without a flow limiter if they can.
func (q *sizer) promising(all []*volume, side Side) []*volume {
	var r SizingResult
	for _, v := range all {
		if v.side == side && v.ladder != nil {
			r.Sizes = append(r.Sizes, v.size(v.chain[0], q.screen))
		}
	}
	r.choose()
	var list []*volume
	for _, v := range all {
		if litres := v.c.body(side).VolumeL; v.side == side && r.Cheapest != nil && (litres == r.Cheapest.VolumeL || litres == r.Smallest.VolumeL) {
			list = append(list, v)
		}
	}
	return list
}

func (q *sizer) tried(all []*volume) int {
	n := 0
	for _, v := range all {
		n += v.tried
	}
	return n
}

// try begins to live through a volume with its control changed.
func (q *sizer) try(v *volume, from *Case, change func(*Control)) *lived {
	v.tried++
	return q.scout.begin(from.withControl(v.side, change), v.side, q.meter.tick)
}

// settle finds the lowest setpoint at which a volume serves on few years: without a
// flow limiter beyond the case's own, or else with the loosest that makes it serve.
func (q *sizer) settle(ctx context.Context, v *volume) error { return q.settleFrom(ctx, v, 0) }

// settleFrom begins with one of the limiters.
func (q *sizer) settleFrom(ctx context.Context, v *volume, limit int) error {
	v.ladder, v.chain = nil, nil
	limits := v.limiters()
	for ; limit < len(limits); limit++ {
		ladder := q.ladder(v, limits[limit])
		first, err := ladder.lowest(ctx, limit > 0)
		if err != nil {
			return err
		}
		if first < len(ladder.grid) {
			v.limit, v.ladder, v.first, v.chain = limit, ladder, first, []*lived{ladder.at[first]}
			return nil
		}
	}
	return nil
}

// confirm lives the whole ensemble through the best setting of a volume, and then
// through the next best ones, until one keeps the rule: those found by changes, the
// setpoint found first, the next higher ones, and those with tighter limiters.
func (q *sizer) confirm(ctx context.Context, v *volume) (err error) {
	for v.ladder != nil && v.found == nil {
		if v.found, err = firstThatKeeps(ctx, q.c.Years, slices.Backward(v.chain[1:])); err != nil || v.found != nil {
			return err
		}
		if v.found, err = v.ladder.confirmFrom(ctx, v.first); err != nil || v.found != nil {
			return err
		}
		if err := q.settleFrom(ctx, v, v.limit+1); err != nil {
			return err
		}
	}
	return nil
}

func firstThatKeeps(ctx context.Context, years int, list iter.Seq2[int, *lived]) (*lived, error) {
	for _, l := range list {
		if ok, err := l.keeps(ctx, years); err != nil || ok {
			return l, err
		}
	}
	return nil, nil
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

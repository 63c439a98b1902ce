package compare

import (
	"context"
	"math"
)

// rungs are rising setpoints of an option, with the years lived through at each so
// far. Failures are taken to fall from rung to rung.
type rungs struct {
	at       []*lived
	screen   int // years to screen a rung on
	years    int // years to confirm one on
	asStated int // rung of the case as stated, whose years are all known, or none
}

// none is no rung.
const none = -1

func (r *rungs) serves(ctx context.Context, i int) (bool, error) {
	return r.at[i].serves(ctx, r.screen)
}

func (r *rungs) keeps(ctx context.Context, i int) (bool, error) { return r.at[i].keeps(ctx, r.years) }

// lowest finds the lowest rung that keeps the rule, the number of rungs for none: by
// bisection over few years, then confirmed over the whole ensemble, further up if the
// confirmation fails. The few years are part of the confirmation.
func (r *rungs) lowest(ctx context.Context) (int, error) {
	low, high, err := r.bracket(ctx)
	if err != nil {
		return high, err
	}
	first, err := firstThat(high-low, func(i int) (bool, error) { return r.serves(ctx, low+i) })
	first += low
	if err != nil || first == high {
		return high, err
	}
	start, err := r.promising(ctx, first, high)
	if err != nil {
		return high, err
	}
	return confirmedAbout(first, start, high, func(i int) (bool, error) { return r.keeps(ctx, i) })
}

// bracket gives the rungs to look at, from low up to below high, which keeps the rule
// or is beyond the last. The case as stated says on which side of it they lie. If it
// keeps the rule, the next lower rung is asked first: below a setpoint that was chosen
// well there is none that serves.
func (r *rungs) bracket(ctx context.Context) (low, high int, err error) {
	i := r.asStated
	if i == none {
		return 0, len(r.at), nil
	}
	kept, err := r.keeps(ctx, i)
	if err != nil || !kept {
		return i + 1, len(r.at), err
	}
	if i == 0 {
		return i, i, nil
	}
	served, err := r.serves(ctx, i-1)
	if err != nil || !served {
		return i, i, err
	}
	if r.promises(i - 1) {
		return 0, i, nil
	}
	kept, err = r.keeps(ctx, i-1)
	if err != nil || !kept {
		return i, i, err
	}
	return 0, i - 1, nil
}

// promising gives the first of the rungs from first up that promises to keep the rule,
// the last of them if none does.
func (r *rungs) promising(ctx context.Context, first, high int) (int, error) {
	for i := first; i < high-1; i++ {
		served, err := r.serves(ctx, i)
		if err != nil || served && r.promises(i) {
			return i, err
		}
	}
	return high - 1, nil
}

// promises reports whether a rung that was screened would keep the rule in all years if
// its failures stayed in the same proportion to those of the case as stated. It only
// says where to begin.
func (r *rungs) promises(i int) bool {
	if r.asStated == none {
		return true
	}
	all := r.at[r.asStated].failing()
	stated, here := 0.0, 0.0
	for year, failed := range r.at[i].failing() {
		here += failed
		stated += all[year]
	}
	if stated == 0 {
		return true
	}
	s := SpreadOf(all)
	s.Mean *= here / stated
	s.SE *= math.Sqrt(here / stated) // as that of rare events that do not know of each other
	return meetsServiceRule(&r.at[i].c.Service, s, r.years)
}

// confirmedAbout finds the first of n, from first on, that is confirmed, when all after
// it are; n for none. It begins at start: down from there one by one if that is
// confirmed, or else up.
func confirmedAbout(first, start, n int, confirmed func(int) (bool, error)) (int, error) {
	ok, err := confirmed(start)
	if err != nil {
		return n, err
	}
	if !ok {
		return confirmedFrom(start+1, n, confirmed)
	}
	for ; start > first; start-- {
		if ok, err := confirmed(start - 1); err != nil || !ok {
			return start, err
		}
	}
	return first, nil
}

// confirmations are asked for one by one before the rest is halved.
const confirmations = 4

// confirmedFrom finds the first of n, from first on, that is confirmed; n for none.
// Few years mislead by little as a rule, so it goes up one by one at first; what is
// left above it halves.
func confirmedFrom(first, n int, confirmed func(int) (bool, error)) (int, error) {
	rest := min(n, first+confirmations)
	for i := first; i < rest; i++ {
		if ok, err := confirmed(i); err != nil || ok {
			return i, err
		}
	}
	above, err := firstThat(n-rest, func(i int) (bool, error) { return confirmed(rest + i) })
	return rest + above, err
}

// firstThat finds the first of n that holds, when all after it do; n for none.
func firstThat(n int, holds func(int) (bool, error)) (int, error) {
	low, high := 0, n
	for low < high {
		middle := (low + high) / 2
		ok, err := holds(middle)
		if err != nil {
			return n, err
		}
		if ok {
			high = middle
		} else {
			low = middle + 1
		}
	}
	return low, nil
}

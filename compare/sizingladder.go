package compare

import "context"

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

func (s *ladder) rung(i int) *lived {
	if s.at[i] == nil {
		s.at[i] = s.q.try(s.v, s.c, func(k *Control) { k.SetpointC, k.MonthSetpointC = s.grid[i], nil })
	}
	return s.at[i]
}

// lowest finds the first rung that serves on few years; the number of rungs for
// none. Where doubtful, it asks the last one first.
func (s *ladder) lowest(ctx context.Context, doubtful bool) (int, error) {
	serves := func(i int) (bool, error) { return s.rung(i).serves(ctx, s.q.screen) }
	if doubtful && len(s.grid) > 0 {
		if ok, err := serves(len(s.grid) - 1); err != nil || !ok {
			return len(s.grid), err
		}
	}
	return firstThat(len(s.grid), serves)
}

// confirmFrom lives the whole ensemble through a rung, and through others above it
// until the lowest that keeps the rule is found; nil if none does.
func (s *ladder) confirmFrom(ctx context.Context, first int) (*lived, error) {
	lowest, err := confirmedFrom(first, len(s.grid), func(i int) (bool, error) { return s.rung(i).keeps(ctx, s.q.c.Years) })
	if err != nil || lowest == len(s.grid) {
		return nil, err
	}
	return s.rung(lowest), nil
}

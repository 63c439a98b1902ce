package compare

import (
	"context"
	"slices"
)

// summerLessK is how much lower a summer setpoint is tried.
const summerLessK = 4

// improve changes one other setting after the other of a volume that serves, and
// keeps what serves on few years and costs less.
func (q *sizer) improve(ctx context.Context, v *volume) error {
	for _, change := range v.changes() {
		better, err := q.cheaperWith(ctx, v, v.chain[len(v.chain)-1], change)
		if err != nil {
			return err
		}
		if better != nil {
			v.chain = append(v.chain, better)
		}
	}
	return nil
}

// cheaperWith tries a change at the setpoint as it is. If it does not serve there
// but costs less, the next higher setpoint is tried, and if it serves better than
// before, the next lower one. Nil if none of it serves at less cost.
func (q *sizer) cheaperWith(ctx context.Context, v *volume, base *lived, change func(*Control)) (*lived, error) {
	same := q.shifted(v, base, change, 0)
	if same == nil {
		return nil, nil
	}
	if promises, err := same.promises(ctx, base); err != nil || !promises {
		return nil, err
	}
	served, err := same.serves(ctx, q.screen)
	if err != nil {
		return nil, err
	}
	was, is := base.trial(len(same.years)), same.trial(len(same.years))
	step, best := 0.0, base
	switch {
	case !served && is.Cost < was.Cost:
		step = sizingStepK
	case served && is.Failing.Mean < was.Failing.Mean:
		step = -sizingStepK
	}
	if served && same.trial(q.screen).Cost < best.trial(q.screen).Cost {
		best = same
	}
	if step != 0 {
		if best, err = q.cheaper(ctx, v, base, change, step, best); err != nil {
			return nil, err
		}
	}
	if best == base {
		return nil, nil
	}
	return best, nil
}

// cheaper screens a change at another setpoint, and gives it if it serves at less
// cost than the best so far, or else that.
func (q *sizer) cheaper(ctx context.Context, v *volume, base *lived, change func(*Control), byK float64, best *lived) (*lived, error) {
	l := q.shifted(v, base, change, byK)
	if l == nil {
		return best, nil
	}
	served, err := l.serves(ctx, q.screen)
	if err != nil || !served || l.trial(q.screen).Cost >= best.trial(q.screen).Cost {
		return best, err
	}
	return l, nil
}

// promises reports whether a change costs less or serves better in the first year:
// in the same year the costs of two settings are told apart to a fraction of what
// they differ by.
func (l *lived) promises(ctx context.Context, base *lived) (bool, error) {
	if err := l.until(ctx, 1); err != nil || len(l.years) == 0 {
		return false, err
	}
	was, is := base.trial(1), l.trial(1)
	return is.Cost < was.Cost || is.Failing.Mean < was.Failing.Mean, nil
}

// shifted gives a change with the setpoint moved; nil where that is beyond limits.
func (q *sizer) shifted(v *volume, base *lived, change func(*Control), byK float64) *lived {
	l := q.try(v, base.c, func(k *Control) { change(k); k.shift(byK) })
	if !l.c.legal(v.side) {
		return nil
	}
	return l
}

// shift moves every setpoint of a control.
func (k *Control) shift(byK float64) {
	k.SetpointC += byK
	if k.MonthSetpointC != nil {
		months := *k.MonthSetpointC
		for m := range months {
			months[m] += byK
		}
		k.MonthSetpointC = &months
	}
}

// legal reports whether the setpoints of an option lie within what heat pump,
// controller and household allow.
func (c *Case) legal(side Side) bool {
	k := c.control(side)
	low, high := k.SetpointC, k.SetpointC
	if k.MonthSetpointC != nil {
		low, high = slices.Min(k.MonthSetpointC[:]), slices.Max(k.MonthSetpointC[:])
	}
	return low >= c.lowestSetpointC(side) && high <= c.highestSetpointC(k)
}

// changes lists the other settings to try on a volume: the output cap and the
// hysteresis either way, and a lower setpoint in summer.
func (v *volume) changes() []func(*Control) {
	k := v.c.control(v.side)
	var list []func(*Control)
	for _, share := range []float64{0.5, 0.7, 1} {
		if share != k.OutputCap {
			list = append(list, func(k *Control) { k.OutputCap = share })
		}
	}
	for _, h := range []float64{3, 6} {
		if h >= v.c.HeatPump.Limits.LeastHysteresisK && h != k.HysteresisK {
			list = append(list, func(k *Control) { k.HysteresisK = h })
		}
	}
	return append(list, func(k *Control) { k.MonthSetpointC = summerLower(k.SetpointC, summerLessK) })
}

// The months in which a lower setpoint holds, April to October.
const firstSummerMonth, lastSummerMonth = 3, 9

// summerLower gives a setpoint by month, lower in summer.
func summerLower(setpointC, lessK float64) *[12]float64 {
	var months [12]float64
	for m := range months {
		months[m] = setpointC
		if m >= firstSummerMonth && m <= lastSummerMonth {
			months[m] = setpointC - lessK
		}
	}
	return &months
}

package compare

import (
	"context"
	"slices"
)

// summerLessK is how much lower a summer setpoint is tried.
const summerLessK = 4

// improve changes one other setting after the other of a volume that serves, keeps
// what serves on few years and costs less, and confirms the last of it that keeps
// the rule on all.
func (q *sizer) improve(ctx context.Context, v *volume) error {
	chain := []*lived{v.found[0]}
	for _, change := range v.changes() {
		better, err := q.cheaperWith(ctx, v, chain[len(chain)-1], change)
		if err != nil {
			return err
		}
		if better != nil {
			chain = append(chain, better)
		}
	}
	for _, l := range slices.Backward(chain[1:]) {
		ok, err := l.keeps(ctx, q.c.Years)
		if err != nil {
			return err
		}
		if ok && l.trial(q.c.Years).Cost < v.cost() {
			v.found = append(v.found, l)
			return nil
		}
	}
	return nil
}

// cheaperWith tries a change at the setpoint as it is, at the next higher one if
// that does not serve, and at the next lower one if it does; nil if none of it
// serves at less cost.
func (q *sizer) cheaperWith(ctx context.Context, v *volume, base *lived, change func(*Control)) (*lived, error) {
	best, cost := (*lived)(nil), base.trial(q.screen).Cost
	at := func(shiftK float64) (serves bool, err error) {
		l, err := q.try(v, base.c, func(k *Control) { change(k); k.shift(shiftK) })
		if err != nil || !l.c.legal(v.side) {
			return false, err
		}
		if serves, err = l.serves(ctx, q.screen); err != nil || !serves {
			return false, err
		}
		if c := l.trial(q.screen).Cost; c < cost {
			best, cost = l, c
		}
		return true, nil
	}
	served, err := at(0)
	if err != nil {
		return nil, err
	}
	next := sizingStepK
	if served {
		next = -sizingStepK
	}
	_, err = at(next)
	return best, err
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

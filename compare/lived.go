package compare

import (
	"context"
	"math"

	"dhwcompare/compare/plant"
)

// lived is one option of a case with the years that it has lived through so far: a
// screening on few years is carried on to the whole ensemble without living them
// again.
type lived struct {
	c    *Case
	side Side
	k    *collector
	tick func() // told of each year
}

func newLived(c *Case, side Side, tick func()) (*lived, error) {
	k, err := newCollector(c)
	if err != nil {
		return nil, err
	}
	return &lived{c: c, side: side, k: k, tick: tick}, nil
}

func (l *lived) records() []record { return l.k.years[l.side] }

// recall takes over years that the option has lived through elsewhere, so far as a
// trial sums them up.
func (l *lived) recall(years []YearRecord) {
	for i := range years {
		l.k.years[l.side] = append(l.k.years[l.side], record{totals: years[i].Totals})
	}
}

// until lives on to n years, and stops before where these cannot be expected to
// keep the service rule any more.
func (l *lived) until(ctx context.Context, n int) error {
	if len(l.records()) >= n || l.hopeless(n) {
		return nil
	}
	fresh, err := oneAsStated(l.c, l.side).fresh()
	if err != nil {
		return err
	}
	ledger := plant.NewLedger()
	for year := len(l.records()); year < n && !l.hopeless(n); year++ {
		world, err := l.c.World(year)
		if err != nil {
			return err
		}
		ledger.Reset()
		if err := Live(ctx, fresh[l.side].again(), world, plant.Recorder{Ledger: ledger}); err != nil {
			return err
		}
		pair := Pair{World: world}
		pair.Ledgers[l.side] = ledger
		if err := l.k.take(year, pair); err != nil {
			return err
		}
		l.tick()
	}
	return nil
}

// Years after which too many failures a year are taken to stay too many, and after
// which their spread is taken to stay what it is.
const fairTrial, longTrial = 6, 10

// hopeless reports whether n years will not keep the rule: more showers have failed
// than all of them may have, or too many a year in a fair trial, or so many in a
// long one that the rest would have to be better. It only ever rejects: what is
// reported has lived through all its years.
func (l *lived) hopeless(n int) bool {
	var failing []float64
	sum := 0.0
	for i := range l.records() {
		failing = append(failing, l.records()[i].totals.FailingShowers)
		sum += failing[i]
	}
	years, most := len(failing), l.c.Service.FailuresPerYear
	switch {
	case sum > most*float64(n):
		return true
	case years < fairTrial || years >= n:
		return false
	case years < longTrial:
		return sum > most*float64(years)
	default:
		s := SpreadOf(failing)
		s.SE *= math.Sqrt(float64(years) / float64(n)) // as that of n such years
		return !meetsServiceRule(&l.c.Service, s, n)
	}
}

// serves reports whether the first n years keep the rule in the mean: an interval
// of few years says little. What passes has to be confirmed on all.
func (l *lived) serves(ctx context.Context, n int) (bool, error) {
	err := l.until(ctx, n)
	return err == nil && len(l.records()) >= n && l.trial(n).Failing.Mean <= l.c.Service.FailuresPerYear, err
}

// keeps reports whether all n years keep the rule at the confidence asked.
func (l *lived) keeps(ctx context.Context, n int) (bool, error) {
	err := l.until(ctx, n)
	return err == nil && len(l.records()) >= n && l.trial(n).Meets, err
}

// trial sums up the first n years, which have been lived.
func (l *lived) trial(n int) Trial {
	few := collector{weight: 1 / float64(n)}
	few.years[l.side] = l.records()[:n]
	c := *l.c
	c.Years = n
	return few.trial(&c, l.side)
}

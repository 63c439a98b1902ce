package compare

import (
	"context"
	"math"
)

// lived is one option of a case with the years that it has lived through so far: a
// screening on few years is carried on to the whole ensemble without living them
// again.
type lived struct {
	c     *Case
	side  Side
	scout *scout
	years []Totals
	tick  func() // told of each year
}

func (s *scout) begin(c *Case, side Side, tick func()) *lived {
	return &lived{c: c, side: side, scout: s, tick: tick}
}

// recall takes over years that the option has lived through elsewhere.
func (l *lived) recall(years []YearRecord) {
	for i := range years {
		l.years = append(l.years, years[i].Totals)
	}
}

// until lives on to n years, and stops before where these cannot be expected to
// keep the service rule any more.
func (l *lived) until(ctx context.Context, n int) error {
	return l.while(ctx, n, func() bool { return !l.hopeless(n) })
}

// all lives on to n years, come what may.
func (l *lived) all(ctx context.Context, n int) error {
	return l.while(ctx, n, func() bool { return true })
}

// while lives on to n years, so long as there is a reason.
func (l *lived) while(ctx context.Context, n int, reason func() bool) error {
	if len(l.years) >= n || !reason() {
		return nil
	}
	fresh, err := l.c.asStated(l.side).fresh()
	if err != nil {
		return err
	}
	for len(l.years) < n && reason() {
		t, err := l.scout.year(ctx, l.c, fresh.again(), len(l.years))
		if err != nil {
			return err
		}
		l.years = append(l.years, t)
		l.tick()
	}
	return nil
}

// Years after which too many failures a year are taken to stay too many, and after
// which their spread is taken to stay what it is.
const fairTrial, longTrial = 6, 10

// hopeless reports whether n years will not keep the rule: more showers have failed
// than all of them may have, or too many a year in a fair trial, or so many in a
// long one that the rest would have to be better by more than luck brings. It only ever
// rejects: what is reported has lived through all its years.
func (l *lived) hopeless(n int) bool {
	failing := l.failing()
	sum := 0.0
	for _, f := range failing {
		sum += f
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
		return !meetsServiceRule(&l.c.Service, withLuck(SpreadOf(failing), float64(years), float64(n)), n)
	}
}

// withLuck is the spread of n years, of which that of some is known, if the rest turn
// out so well that one in twenty such rests does.
func withLuck(s Spread, years, n float64) Spread {
	const oneInTwenty = 1.64
	of := s.SE * math.Sqrt(years) // one year
	s.SE = of / math.Sqrt(n)
	s.Mean -= oneInTwenty * of * (n - years) / n * math.Sqrt(1/years+1/(n-years))
	return s
}

// failing lists the failing showers of each year so far.
func (l *lived) failing() []float64 {
	list := make([]float64, len(l.years))
	for i := range l.years {
		list[i] = l.years[i].FailingShowers
	}
	return list
}

// serves reports whether the first n years keep the rule in the mean: an interval
// of few years says little. What passes has to be confirmed on all.
func (l *lived) serves(ctx context.Context, n int) (bool, error) {
	err := l.until(ctx, n)
	return err == nil && len(l.years) >= n && l.trial(n).Failing.Mean <= l.c.Service.FailuresPerYear, err
}

// keeps reports whether all n years keep the rule at the confidence asked.
func (l *lived) keeps(ctx context.Context, n int) (bool, error) {
	err := l.until(ctx, n)
	return err == nil && len(l.years) >= n && l.trial(n).Meets, err
}

// trial sums up the first n years, which have been lived.
func (l *lived) trial(n int) Trial { return trialOf(&l.c.Service, l.years[:n]) }

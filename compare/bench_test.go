package compare

import (
	"context"
	"errors"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// TestRunUntil stops within half an hour of having seen enough, asks no more after it, and
// goes to the end where nothing is enough.
func TestRunUntil(t *testing.T) {
	c := british(1)
	b, err := newTestBench(&c, SideCompact)
	if err != nil {
		t.Fatal(err)
	}
	const long = 6 * calendar.HourS
	for _, enoughS := range []float64{0, 40 * secondsPerMinute, 2 * long} {
		p, start := b.set(c.ofMonth(0), 50)
		asked, last := 0, 0.0
		err := runUntil(t.Context(), p, start, start+long, b.inputs(start), plant.Override{}, func(s *plant.Sample) bool {
			if asked++; last >= enoughS && asked > 1 {
				t.Errorf("enough at %g s: asked again at %g s", enoughS, s.T-start)
			}
			last = s.T - start
			return last >= enoughS
		})
		if err != nil || last > enoughS+calendar.HalfHourS || last < min(enoughS, long-calendar.HalfHourS) {
			t.Errorf("enough at %g s: last asked at %g s, %v", enoughS, last, err)
		}
	}
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	p, start := b.set(c.ofMonth(0), 50)
	if err := runUntil(ctx, p, start, start+long, b.inputs(start), plant.Override{}, func(*plant.Sample) bool { return true }); !errors.Is(err, context.Canceled) {
		t.Errorf("after the end of its time: %v", err)
	}
}

package climate

import (
	"testing"

	"dhwcompare/compare/calendar"
)

func TestAtHoldsEachHourAndWraps(t *testing.T) {
	s := Synthesize(british(t), 1, 0)
	for _, c := range []struct {
		seconds float64
		hour    int
	}{
		{0, 0}, {3599.9, 0}, {3600, 1}, {calendar.YearS - 1, calendar.Hours - 1},
		{-1, calendar.Hours - 1}, {-calendar.DayS, calendar.Hours - 24}, {calendar.YearS, 0},
	} {
		out, rh, mains := s.At(c.seconds)
		if out != s.OutdoorC[c.hour] || rh != s.RHPercent[c.hour] || mains != s.MainsC[c.hour] {
			t.Errorf("at %g s: not the values of hour %d", c.seconds, c.hour)
		}
	}
}

package plant

import (
	"context"
	"math"
	"slices"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// Days on which the clocks change in a year that begins on a Thursday: 29 March
// and 25 October, both at 01:00 standard time.
const (
	springDay = 87
	autumnDay = 297
)

// clock is a time of day in seconds.
func clock(hour, minute int) float64 { return float64(hour*calendar.HourS + minute*60) }

func on(day, hour, minute int) float64 { return float64(day)*calendar.DayS + clock(hour, minute) }

func windows(t testing.TB, w ...Window) Schedule {
	t.Helper()
	s, err := DailyWindows(w, testYear())
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// span is a stretch of standard time.
type span struct{ from, to float64 }

// openSpans lists the stretches of a day, or a little more, that are open.
func openSpans(s Schedule, from, to float64) []span {
	var list []span
	c := s.at(from)
	for t := from; t < to; {
		open, until := c.open(t)
		until = math.Min(until, to)
		if open {
			list = append(list, span{t, until})
		}
		t = until
	}
	return list
}

func TestDailyWindows(t *testing.T) {
	afternoon := Window{clock(13, 0), clock(16, 0)}
	night := Window{clock(22, 0), clock(5, 0)}
	const winter, summer = 20, 180
	for _, c := range []struct {
		name     string
		windows  []Window
		from, to float64
		want     []span
	}{
		{"no windows: always", nil, on(winter, 0, 0), on(winter, 24, 0), []span{{on(winter, 0, 0), on(winter, 24, 0)}}},
		{"winter", []Window{afternoon}, on(winter, 0, 0), on(winter, 24, 0), []span{{on(winter, 13, 0), on(winter, 16, 0)}}},
		{"summer: an hour earlier", []Window{afternoon}, on(summer, 0, 0), on(summer, 24, 0), []span{{on(summer, 12, 0), on(summer, 15, 0)}}},
		{
			"over midnight", []Window{night}, on(winter, 0, 0), on(winter, 24, 0),
			[]span{{on(winter, 0, 0), on(winter, 5, 0)}, {on(winter, 22, 0), on(winter, 24, 0)}},
		},
		{"over the first midnight of the year", []Window{night}, on(0, 0, 0), on(0, 12, 0), []span{{on(0, 0, 0), on(0, 5, 0)}}},
		{"to the end of the year", []Window{night}, on(364, 12, 0), on(364, 24, 0), []span{{on(364, 22, 0), on(364, 24, 0)}}},
		{
			"touching windows are one", []Window{{clock(8, 0), clock(10, 0)}, {clock(10, 0), clock(12, 0)}},
			on(winter, 0, 0), on(winter, 24, 0), []span{{on(winter, 8, 0), on(winter, 12, 0)}},
		},
		{
			"overlapping windows in any order", []Window{{clock(9, 0), clock(12, 0)}, {clock(8, 0), clock(10, 0)}, {clock(9, 0), clock(9, 30)}},
			on(winter, 0, 0), on(winter, 24, 0), []span{{on(winter, 8, 0), on(winter, 12, 0)}},
		},
		{"to midnight", []Window{{clock(20, 0), clock(24, 0)}}, on(winter, 0, 0), on(winter, 24, 0), []span{{on(winter, 20, 0), on(winter, 24, 0)}}},
		{"whole day", []Window{{clock(7, 0), clock(7, 0)}}, on(winter, 0, 0), on(winter+3, 0, 0), []span{{on(winter, 0, 0), on(winter+3, 0, 0)}}},
		{
			"whole day beside another", []Window{{clock(7, 0), clock(7, 0)}, {clock(8, 0), clock(9, 0)}},
			on(winter, 0, 0), on(winter+1, 0, 0), []span{{on(winter, 0, 0), on(winter+1, 0, 0)}},
		},
		{ // 01:00 becomes 02:00: the window loses an hour
			"spring night", []Window{{clock(0, 30), clock(3, 30)}}, on(springDay, 0, 0), on(springDay, 12, 0),
			[]span{{on(springDay, 0, 30), on(springDay, 2, 30)}},
		},
		{"skipped in spring", []Window{{clock(1, 15), clock(1, 45)}}, on(springDay, 0, 0), on(springDay, 12, 0), nil},
		{
			"spring, over midnight", []Window{night}, on(springDay, 0, 0), on(springDay, 12, 0),
			[]span{{on(springDay, 0, 0), on(springDay, 4, 0)}},
		},
		{ // 02:00 becomes 01:00: the window gains an hour, from 23:30 standard time
			"autumn night", []Window{{clock(0, 30), clock(3, 30)}}, on(autumnDay-1, 12, 0), on(autumnDay, 12, 0),
			[]span{{on(autumnDay-1, 23, 30), on(autumnDay, 3, 30)}},
		},
		{ // the hour that the clock shows twice counts the first time
			"repeated in autumn", []Window{{clock(1, 15), clock(1, 45)}}, on(autumnDay, 0, 0), on(autumnDay, 12, 0),
			[]span{{on(autumnDay, 0, 15), on(autumnDay, 0, 45)}},
		},
		{
			"autumn, over midnight", []Window{night}, on(autumnDay-1, 12, 0), on(autumnDay, 12, 0),
			[]span{{on(autumnDay-1, 21, 0), on(autumnDay, 5, 0)}},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := openSpans(windows(t, c.windows...), c.from, c.to)
			if len(got) != len(c.want) {
				t.Fatalf("open %v, want %v", got, c.want)
			}
			for i := range got {
				if got[i] != c.want[i] {
					t.Errorf("open %v, want %v", got, c.want)
				}
			}
		})
	}
}

// The hour that a clock skips or repeats belongs to the change alone: a calendar
// without summer time keeps both days like any other.
func TestWindowsWithoutSummerTime(t *testing.T) {
	s, err := DailyWindows([]Window{{clock(0, 30), clock(3, 30)}}, calendar.WithoutSummerTime(time.Thursday))
	if err != nil {
		t.Fatal(err)
	}
	for _, day := range []int{0, springDay, 180, autumnDay, 364} {
		got := openSpans(s, on(day, 0, 0), on(day, 24, 0))
		if len(got) != 1 || got[0] != (span{on(day, 0, 30), on(day, 3, 30)}) {
			t.Errorf("day %d: open %v", day, got)
		}
	}
}

func TestWindowsOutsideTheDayAreRefused(t *testing.T) {
	for _, w := range []Window{
		{-1, clock(3, 0)}, {clock(24, 0), clock(3, 0)}, {clock(3, 0), -1}, {clock(3, 0), clock(24, 0) + 1},
		{math.NaN(), clock(3, 0)}, {clock(3, 0), math.NaN()}, {math.Inf(1), 0}, {0, math.Inf(1)},
	} {
		if _, err := DailyWindows([]Window{{0, clock(1, 0)}, w}, testYear()); err == nil {
			t.Errorf("window %v was taken", w)
		}
	}
}

// The heat pump runs within its windows only, over a year with both changes of
// the clock, though the cylinder often calls for heat outside them. Only the least
// run may carry a run past the end of a window.
func TestRunsOnlyInsideWindows(t *testing.T) {
	in := twoPeople()
	for _, leastRunS := range []float64{0, 180} {
		p := cylinderParams(t)
		p.Control.MinRunS = leastRunS
		p.Control.Allowed = windows(t, Window{clock(23, 30), clock(2, 30)}, Window{clock(13, 0), clock(14, 30)})
		w := windowWatch{y: testYear(), callC: p.Control.SetpointC - p.Control.HysteresisK}
		if err := New(p).Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Trace: w.note}); err != nil {
			t.Fatal(err)
		}
		if w.ranS < 100*calendar.HourS || w.calledS < 100*calendar.HourS {
			t.Errorf("ran for %.0f s and called in vain for %.0f s: too little to tell", w.ranS, w.calledS)
		}
		if w.longestOutsideS > leastRunS {
			t.Errorf("ran on for %.0f s outside its windows, with a least run of %.0f s", w.longestOutsideS, leastRunS)
		}
	}
}

// windowWatch adds up runs inside and outside the windows of the test above.
type windowWatch struct {
	y                         calendar.Year
	callC                     float64
	ranS, calledS             float64
	outsideS, longestOutsideS float64
}

func (w *windowWatch) note(s *Sample) {
	// The wall clock at the middle of the step: steps end where windows do.
	now := math.Mod(w.y.Local(s.T+s.Dt/2), calendar.DayS)
	inside := now >= clock(23, 30) || now < clock(2, 30) || now >= clock(13, 0) && now < clock(14, 30)
	switch {
	case s.Running && inside:
		w.ranS, w.outsideS = w.ranS+s.Dt, 0
	case s.Running:
		w.outsideS += s.Dt
		w.longestOutsideS = math.Max(w.longestOutsideS, w.outsideS)
	case s.MiddleC < w.callC:
		w.calledS, w.outsideS = w.calledS+s.Dt, 0
	default:
		w.outsideS = 0
	}
}

// Stretches are taken out of what is open: at an edge, across several windows, all of
// one, and of a schedule that was always open. The schedule itself stays as it was.
func TestScheduleWithout(t *testing.T) {
	const day = 30
	always, morning := Schedule{}, windows(t, Window{clock(6, 0), clock(9, 0)}, Window{clock(10, 0), clock(12, 0)})
	for _, c := range []struct {
		name string
		s    Schedule
		out  [][2]float64
		want []span
	}{
		{"nothing", morning, nil, []span{{on(day, 6, 0), on(day, 9, 0)}, {on(day, 10, 0), on(day, 12, 0)}}},
		{"of always", always, [][2]float64{{on(day, 3, 0), on(day, 4, 0)}}, []span{{on(day, 0, 0), on(day, 3, 0)}, {on(day, 4, 0), on(day, 24, 0)}}},
		{"inside one", morning, [][2]float64{{on(day, 7, 0), on(day, 8, 0)}},
			[]span{{on(day, 6, 0), on(day, 7, 0)}, {on(day, 8, 0), on(day, 9, 0)}, {on(day, 10, 0), on(day, 12, 0)}}},
		{"across two", morning, [][2]float64{{on(day, 8, 0), on(day, 11, 0)}}, []span{{on(day, 6, 0), on(day, 8, 0)}, {on(day, 11, 0), on(day, 12, 0)}}},
		{"one whole", morning, [][2]float64{{on(day, 6, 0), on(day, 9, 0)}}, []span{{on(day, 10, 0), on(day, 12, 0)}}},
		{"two stretches", morning, [][2]float64{{on(day, 5, 0), on(day, 7, 0)}, {on(day, 11, 0), on(day, 13, 0)}},
			[]span{{on(day, 7, 0), on(day, 9, 0)}, {on(day, 10, 0), on(day, 11, 0)}}},
		{"all of it", always, [][2]float64{{on(day-1, 0, 0), on(day+1, 0, 0)}}, nil},
	} {
		before := openSpans(c.s, on(day, 0, 0), on(day, 24, 0))
		if got := openSpans(c.s.Without(c.out), on(day, 0, 0), on(day, 24, 0)); !slices.Equal(got, c.want) {
			t.Errorf("%s: open %v, want %v", c.name, got, c.want)
		}
		if after := openSpans(c.s, on(day, 0, 0), on(day, 24, 0)); !slices.Equal(before, after) {
			t.Errorf("%s: the schedule itself has changed", c.name)
		}
	}
	if got := openSpans(Never(), on(0, 0, 0), on(364, 24, 0)); got != nil {
		t.Errorf("never is open %v", got)
	}
}

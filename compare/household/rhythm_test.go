package household

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
)

func TestRhythmNames(t *testing.T) {
	for _, r := range []Rhythm{MeasuredRhythm, MorningRhythm, EveningRhythm, EvenRhythm} {
		back, err := ParseRhythm(r.String())
		if err != nil || back != r {
			t.Errorf("%s reads back as %s, %v", r, back, err)
		}
	}
	if _, err := ParseRhythm("noon"); err == nil || !strings.Contains(err.Error(), `"noon"`) {
		t.Errorf("error %v does not name the rhythm", err)
	}
}

// Shares before noon by rhythm. Measured: the sum of the weekday and weekend
// tables before noon, weighted 5 to 2. Even: 6 of 17 hours. About 22,000 showers:
// 0.02 is six standard errors.
func TestRhythmsMoveShowers(t *testing.T) {
	p := Defaults(3, false)
	p.BackToBackShare, p.Bathrooms = 0, 6
	for rhythm, want := range map[Rhythm]float64{
		MeasuredRhythm: (5*0.5428 + 2*0.5332) / 7, MorningRhythm: 0.8, EveningRhythm: 0.2, EvenRhythm: 6.0 / 17,
	} {
		p.Rhythm = rhythm
		before, all := 0, 0
		for year := range 20 {
			for _, d := range only(yearOf(p, year), Shower) {
				local := testYear.Local(d.StartS)
				if local-float64(calendar.DayOf(local))*calendar.DayS < calendar.DayS/2 {
					before++
				}
				all++
			}
		}
		if got := float64(before) / float64(all); math.Abs(got-want) > 0.02 {
			t.Errorf("%s: %.3f of showers before noon, want %.3f", rhythm, got, want)
		}
	}
}

func TestClockRisesAndEndsAtMidnight(t *testing.T) {
	c := newClock(MeasuredRhythm.shape(showerWeekday))
	before := -1.0
	for i := range 1000 {
		at := c.timeS(float64(i) / 1000)
		if at < before || at < 0 || at >= calendar.DayS {
			t.Fatalf("share %g begins at %g, after %g", float64(i)/1000, at, before)
		}
		before = at
	}
	if last := c.timeS(math.Nextafter(1, 0)); last >= calendar.DayS {
		t.Errorf("the last share begins at %g, after midnight", last)
	}
}

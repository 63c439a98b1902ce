package household

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// Everybody uses the taps for the time that they are there: of two residents, one
// who is there three days in ten, and two guests, 4.3 people in all. About 160,000
// draws: 0.005 is four standard errors.
func TestTapsAreSharedByPresence(t *testing.T) {
	p := Defaults(2.3, true)
	p.Guests = []Stay{{DayRange{0, calendar.Days - 1}, 2}}
	counts := make([]float64, 6)
	total := 0.0
	for year := range 10 {
		for _, d := range only(yearOf(p, year), Tap) {
			counts[d.Person]++
			total++
		}
	}
	for person, presence := range []float64{1, 1, 0.3, 1, 1, 0} {
		if got, want := counts[person]/total, presence/4.3; math.Abs(got-want) > 0.005 {
			t.Errorf("person %d makes %.4f of the tap draws, want %.4f", person, got, want)
		}
	}
}

// 10 litres at 52 C mixed to 42 C with water at 10 C: 10 x 42/32.
func TestMixedShare(t *testing.T) {
	if got, want := 10*mixedShare(42, 10), 13.125; math.Abs(got-want) > 1e-12 {
		t.Errorf("10 hot litres give %g mixed, want %g", got, want)
	}
}

// A day's litres are those of its small and long draws together.
func TestTapLitresAddUp(t *testing.T) {
	p := Defaults(3, true)
	l := newTapLitres(&p)
	sum := p.TapsPerDay * ((1-p.LongTapShare)*l.small + p.LongTapShare*l.long)
	if math.Abs(sum-p.TapLitresPerDay) > 1e-9 || math.Abs(l.long/l.small-7.5) > 1e-9 {
		t.Errorf("small %g, long %g: %g litres a day, want %g and a ratio of 7.5", l.small, l.long, sum, p.TapLitresPerDay)
	}
}

func TestHomeWithoutTaps(t *testing.T) {
	p := Defaults(2, true)
	p.TapsPerDay, p.TapLitresPerDay = 0, 0
	if n := len(only(yearOf(p, 0), Tap)); n != 0 {
		t.Errorf("%d tap draws in a home without", n)
	}
}

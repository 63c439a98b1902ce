package compare

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"
)

// smallHome is a case that takes little time: no heating, two years.
func smallHome() *Case {
	c := Default()
	c.Household.People, c.Years, c.Dwelling.HeatLossWPerK = 2, 2, 0
	c.Climate.OutdoorC = [12]float64{4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5}
	c.Climate.MainsC = &[12]float64{8, 8, 9, 12, 15, 17, 18, 18, 17, 14, 11, 9}
	return &c
}

// sized searches a case and watches the progress.
func sized(t *testing.T, c *Case, workers int) *Sizing {
	t.Helper()
	s, err := SizeBoth(t.Context(), c, workers, advancing(t))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestSizeBoth searches a home whose ceiling is low, which one cylinder stands, and
// whose door is narrow, which keeps the large stores out.
func TestSizeBoth(t *testing.T) {
	c := smallHome()
	c.Room.HeightMM, c.Room.DoorWidthMM = 1460, 520
	c.HeatPump.Limits.LargestSetpointC, c.HeatPump.Limits.LeastHysteresisK, c.Service.FailuresPerYear = 64, 3, 30
	s := sized(t, c, 2)
	if want := []float64{120, 150}; !slices.Equal(s.Compact.TooLarge, want) {
		t.Errorf("stores too large: %v, want %v", s.Compact.TooLarge, want)
	}
	if want := []float64{150, 180, 210, 250, 300}; !slices.Equal(s.Cylinder.TooLarge, want) {
		t.Errorf("cylinders too large: %v, want %v", s.Cylinder.TooLarge, want)
	}
	for side := range sides {
		holdResult(t, c, side, s.Of(side))
	}
	if s.HeadToHead == nil {
		t.Fatal("no best against best")
	}
	holdBest(t, c, s)
}

func TestSizeBothDoesNotDependOnWorkers(t *testing.T) {
	c := smallHome()
	c.Years, c.Household.LoadProfile = 1, "S"
	c.Room.HeightMM, c.Room.DoorWidthMM = 1460, 520
	a, errA := json.Marshal(sized(t, c, 1))
	b, errB := json.Marshal(sized(t, c, 3))
	if errA != nil || errB != nil || string(a) != string(b) {
		t.Error("the result depends on the number of workers")
	}
}

// holdResult holds that every size was lived through for all years, keeps the rule,
// and stays within what heat pump, controller and room allow.
func holdResult(t *testing.T, c *Case, side Side, r *SizingResult) {
	t.Helper()
	if len(r.Sizes) == 0 || r.Smallest == nil || r.Cheapest == nil {
		t.Fatalf("%v: no size serves: %+v", side, r)
	}
	for i := range r.Sizes {
		s := &r.Sizes[i]
		if s.Trial.Years != c.Years || !s.Trial.Meets {
			t.Errorf("%v of %g l was not confirmed: %+v", side, s.VolumeL, s.Trial)
		}
		set := s.set(c, side)
		k := set.control(side)
		if !set.legal(side) || s.HysteresisK < c.HeatPump.Limits.LeastHysteresisK || k.FlowAboveK+s.SetpointC > c.HeatPump.HighestFlowC {
			t.Errorf("%v of %g l is beyond limits: %+v", side, s.VolumeL, s)
		}
		var o Option
		if err := o.takeSpace(set, side); err != nil || !o.fits() {
			t.Errorf("%v of %g l does not fit (%v)", side, s.VolumeL, err)
		}
		if s.Trial.Cost < r.Cheapest.Trial.Cost && s.NeedsLimiter == r.Cheapest.NeedsLimiter {
			t.Errorf("%v: %g l at %.2f is cheaper than the cheapest at %.2f", side, s.VolumeL, s.Trial.Cost, r.Cheapest.Trial.Cost)
		}
		if s.SpaceL < r.Smallest.SpaceL && s.NeedsLimiter == r.Smallest.NeedsLimiter {
			t.Errorf("%v: %g l is smaller than the smallest", side, s.VolumeL)
		}
	}
}

// holdBest compares the two winners anew: the plain comparison gives the same.
func holdBest(t *testing.T, c *Case, s *Sizing) {
	t.Helper()
	best, ok := s.Best(c)
	if !ok {
		t.Fatal("no best case")
	}
	cmp, err := Compare(t.Context(), best, 2, nil)
	if err != nil {
		t.Fatal(err)
	}
	for side := range sides {
		o, want := cmp.Options.Of(side), s.Of(side).Cheapest
		// Sums of two years in another order.
		closeTo(t, side.String()+": cost", o.CostPerYear, want.Trial.Cost, 1e-9)
		closeTo(t, side.String()+": failing showers", o.FailingShowers, want.Trial.Failing.Mean, 1e-12)
		if !o.MeetsServiceRule || o.VolumeL != want.VolumeL {
			t.Errorf("%v of %g l, wanted %g l, serves %t", side, o.VolumeL, want.VolumeL, o.MeetsServiceRule)
		}
	}
	closeTo(t, "head to head", s.HeadToHead.Cost.Mean, cmp.Difference.CostPerYear, 1e-9)
	closeTo(t, "space freed", s.HeadToHead.SpaceFreedL, -cmp.Difference.SpaceL, 1e-9)
	if !strings.Contains(s.HeadToHead.Text, "compact store at") {
		t.Errorf("text %q", s.HeadToHead.Text)
	}
}

// TestSizeBothWithoutRoom has a ceiling under which nothing fits.
func TestSizeBothWithoutRoom(t *testing.T) {
	c := smallHome()
	c.Room.HeightMM = 500
	s := sized(t, c, 1)
	if s.HeadToHead != nil || s.Tried != 0 || s.Compact.Note != "no size that is tried fits the room" || len(s.Cylinder.TooLarge) != 6 {
		t.Errorf("got %+v", s)
	}
	if _, ok := s.Best(c); ok {
		t.Error("there is a best case")
	}
}

// TestLivedGoesOn lives on from a screening and expects what one go gives.
func TestLivedGoesOn(t *testing.T) {
	c := smallHome()
	c.Household.LoadProfile, c.Years = "S", 3
	for side := range sides {
		l := scouting(t, c).begin(c, side, func() {})
		for n := 1; n <= 3; n++ {
			if err := l.until(t.Context(), n); err != nil {
				t.Fatal(err)
			}
		}
		want := tried(t, c, side, 3)
		if got := l.trial(3); got != want {
			t.Errorf("%v: %+v, want %+v", side, got, want)
		}
	}
}

// TestHopeless knows from few years what the many cannot mend.
func TestHopeless(t *testing.T) {
	c := Default()
	c.Service.FailuresPerYear = 2
	for _, test := range []struct {
		failing []float64
		n       int
		want    bool
	}{
		{nil, 3, false},
		{[]float64{6}, 3, false},
		{[]float64{7}, 3, true},   // three years may have six
		{[]float64{7}, 20, false}, // twenty may have forty
		{[]float64{3, 3, 3, 3, 3}, 20, false},
		{[]float64{3, 3, 3, 3, 3, 0}, 20, true}, // 15 in six years
		{[]float64{2, 2, 2, 2, 2, 2}, 20, false},
		{[]float64{3, 0, 3, 3, 0, 3, 3, 0, 3}, 20, false},    // nine years of 18, too few to tell
		{[]float64{3, 0, 3, 3, 0, 3, 3, 0, 3, 1}, 20, false}, // ten of 1.9: the rest may be as much better
		{[]float64{3, 1, 3, 3, 1, 3, 3, 1, 3, 1}, 20, true},  // ten of 2.2 may not
		{[]float64{2, 1, 2, 2, 1, 2, 2, 1, 2, 1}, 20, false},
		{[]float64{3, 0, 3, 3, 0, 3, 3, 0, 3, 1}, 10, false}, // all are lived: the rule itself decides
	} {
		l := lived{c: &c}
		for _, f := range test.failing {
			l.years = append(l.years, Totals{FailingShowers: f})
		}
		if got := l.hopeless(test.n); got != test.want {
			t.Errorf("%v of %d years: hopeless is %t", test.failing, test.n, got)
		}
	}
}

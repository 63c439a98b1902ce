package compare

import (
	"slices"
	"testing"
)

// madeUpSize is a size whose merits are stated.
func madeUpSize(litres, cost, failing, space, runs float64) Size {
	s := Size{VolumeL: litres, SpaceL: space}
	s.Trial.Cost, s.Trial.Failing.Mean, s.Trial.RunsADay = cost, failing, runs
	return s
}

func TestMarkNonDominated(t *testing.T) {
	limited := madeUpSize(7, 100, 1, 100, 5)
	limited.ShowerLimit = 6
	sizes := []Size{
		madeUpSize(1, 100, 1, 100, 5),
		madeUpSize(2, 100, 1, 100, 5),  // the same as the first: neither is better
		madeUpSize(3, 101, 1, 100, 5),  // dearer, and no better in anything
		madeUpSize(4, 110, 1, 100, 4),  // dearer, with fewer runs
		madeUpSize(5, 110, 1, 101, 4),  // larger than the fourth
		madeUpSize(6, 300, 9, 50, 50),  // worst in all but space
		limited,                        // like the first, with less water at the shower
		madeUpSize(8, 100, 0.9, 99, 5), // better than the first in two, worse in none
	}
	markNonDominated(sizes)
	var kept []float64
	for i := range sizes {
		if sizes[i].NonDominated {
			kept = append(kept, sizes[i].VolumeL)
		}
	}
	if want := []float64{4, 6, 8}; !slices.Equal(kept, want) {
		t.Errorf("not dominated are %v, want %v", kept, want)
	}
	markNonDominated(sizes[:2])
	if !sizes[0].NonDominated || !sizes[1].NonDominated {
		t.Error("one of two equals dominates the other")
	}
}

func TestChoose(t *testing.T) {
	dear, cheap, small := madeUpSize(100, 300, 1, 400, 5), madeUpSize(150, 200, 1, 500, 5), madeUpSize(50, 100, 1, 200, 5)
	small.NeedsLimiter = true
	r := SizingResult{Sizes: []Size{small, dear, cheap}}
	r.choose()
	if r.Smallest.VolumeL != 100 || r.Cheapest.VolumeL != 150 || r.Note != "" {
		t.Errorf("smallest %g, cheapest %g: one that needs a flow limiter goes last", r.Smallest.VolumeL, r.Cheapest.VolumeL)
	}
	r = SizingResult{Sizes: []Size{small}}
	r.choose()
	if r.Smallest.VolumeL != 50 || r.Cheapest.VolumeL != 50 {
		t.Error("where nothing else serves, a size with a limiter is picked")
	}
	r = SizingResult{Failing: []float64{50}}
	r.choose()
	if r.Smallest != nil || r.Cheapest != nil || r.Note == "" {
		t.Errorf("nothing serves: %+v", r)
	}
}

// TestSizingGridKeepsLimits tries controllers and heat pumps of all kinds.
func TestSizingGridKeepsLimits(t *testing.T) {
	for _, test := range []struct {
		largestC, highestFlowC, hysteresisK, boostC float64
		first, last                                 float64
		n                                           int
	}{
		{65, 70, 3, 0, 42, 65, 13},  // the household's least wish, 38 C, and 3 K more is 41
		{55, 70, 3, 0, 42, 55, 8},   // the controller ends it
		{65, 50, 3, 0, 42, 45, 3},   // flow is 5 K above the setpoint
		{65, 70, 10, 0, 48, 65, 10}, // heating starts while the water is of use
		{65, 70, 3, 50, 52, 65, 8},  // the immersion heater leaves work to the heat pump
		{65, 44, 3, 0, 0, 0, 0},     // nothing is possible
		{65, 46, 3, 0, 41, 41, 1},   // one setpoint is, and no even one
	} {
		c := Default()
		c.HeatPump.Limits.LargestSetpointC, c.HeatPump.HighestFlowC = test.largestC, test.highestFlowC
		c.Compact.Control.HysteresisK = test.hysteresisK
		c.Compact.Immersion.PowerKW, c.Compact.Immersion.BoostBelowC = 3, test.boostC
		grid := c.sizingGrid(SideCompact)
		if len(grid) != test.n || test.n > 0 && (grid[0] != test.first || grid[test.n-1] != test.last) {
			t.Errorf("%+v: grid %v", test, grid)
		}
		if !slices.IsSorted(grid) {
			t.Errorf("%v does not rise", grid)
		}
	}
}

// TestFitCoil makes stores smaller than their coils allow.
func TestFitCoil(t *testing.T) {
	c := Default()
	small, ok := c.resized(SideCompact, 50)
	if !ok {
		t.Fatal("50 l cannot be built")
	}
	closeTo(t, "share of the coil", small.Compact.CoilDisplacedL()/50, largestCoilShare, 1e-12)
	if c.Compact.CoilLengthM != 32 || c.Compact.VolumeL != 100 {
		t.Error("the case itself was changed")
	}
	own, _ := c.resized(SideCompact, 100)
	if own.Compact.CoilLengthM != 32 {
		t.Errorf("the coil of a store that keeps its size became %g m", own.Compact.CoilLengthM)
	}
	litres := 25.0
	c.Compact.CoilBodyL = &litres
	if _, ok := c.resized(SideCompact, 50); ok {
		t.Error("a coil that is stated by its litres was shortened")
	}
	if _, ok := c.resized(SideCompact, 80); !ok {
		t.Error("25 of 80 l is no reason to refuse")
	}
}

// TestSetRestoresASize puts a size into a case.
func TestSetRestoresASize(t *testing.T) {
	c := Default()
	s := Size{VolumeL: 80, SetpointC: 60, SummerC: 56, HysteresisK: 6, OutputCap: 0.7, ShowerLimit: 7}
	got := s.set(&c, SideCompact)
	k := &got.Compact.Control
	if got.Compact.VolumeL != 80 || k.SetpointC != 60 || k.HysteresisK != 6 || k.OutputCap != 0.7 || k.ShowerLimit != 7 {
		t.Errorf("set %+v", k)
	}
	if want := (&[12]float64{60, 60, 60, 56, 56, 56, 56, 56, 56, 56, 60, 60}); *k.MonthSetpointC != *want {
		t.Errorf("setpoints by month %v", *k.MonthSetpointC)
	}
	if got.Cylinder.VolumeL != c.Cylinder.VolumeL || c.Compact.VolumeL != 100 {
		t.Error("something else was changed")
	}
}

func TestMeterNeverGoesBack(t *testing.T) {
	var seen []int
	m := meter{of: 10, progress: func(done, _ int) { seen = append(seen, done) }}
	m.stage(4)
	for range 7 {
		m.tick() // more than foreseen
	}
	m.stage(6)
	m.tick() // fewer than foreseen
	m.stage(0)
	if want := []int{0, 1, 2, 3, 4, 4, 5, 10}; !slices.Equal(seen, want) {
		t.Errorf("told %v, want %v", seen, want)
	}
	if m.counted != 8 {
		t.Errorf("counted %d, want 8", m.counted)
	}
}

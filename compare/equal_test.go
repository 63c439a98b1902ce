package compare

import (
	"context"
	"testing"
)

// largest finds the largest value that holds to its resolution.
func TestLargest(t *testing.T) {
	for _, edge := range []float64{0.5, 1.7, 9.2, 20} {
		got, err := largest(1, 15, 0.1, func(x float64) (bool, error) { return x <= edge, nil })
		want := edge
		if edge < 1 {
			want = 0
		}
		if edge > 15 {
			want = 15
		}
		if err != nil || got > want || got < want-0.1 {
			t.Errorf("edge %g: found %g, %v", edge, got, err)
		}
	}
}

// The setpoint of equal service keeps the rule over the case's own years, its cost and
// failures are those of the case at that setpoint, and one kelvin less does not keep it.
func TestEqualServiceIsTheLowestThatServes(t *testing.T) {
	if testing.Short() {
		t.Skip("some thirty years")
	}
	c := british(3)
	c.Compact.VolumeL, c.Compact.Control.SetpointC = 120, 55
	c.Household.ShowerFlowLPerMin = 6
	got, err := c.equalService(context.Background(), scouting(t, &c), SideCompact, nil)
	if err != nil {
		t.Fatal(err)
	}
	if !got.Meets || got.Trial == nil {
		t.Fatalf("nothing serves: %+v", got)
	}
	t.Logf("%g C, limiter %g l/min: %.1f failing showers, cost %.2f", got.SetpointC, got.ShowerLimit, got.Trial.Failing.Mean, got.Trial.Cost)
	at := func(setpointC float64) Trial {
		changed := c.withControl(SideCompact, func(k *Control) { k.SetpointC, k.ShowerLimit = setpointC, got.ShowerLimit })
		return tried(t, changed, SideCompact, c.Years)
	}
	if again := at(got.SetpointC); again != *got.Trial || !again.Meets {
		t.Errorf("the case at %g C: %+v, the search says %+v", got.SetpointC, again, *got.Trial)
	}
	if less := at(got.SetpointC - equalStepK); less.Meets {
		t.Errorf("%g C keeps the rule as well: %+v", got.SetpointC-equalStepK, less)
	}
}

// The years lived as stated stand in for those of the search at that setpoint: true
// ones leave its answer as it is, and ones in which the store fails change it.
func TestEqualServiceUsesTheYearsLived(t *testing.T) {
	if testing.Short() {
		t.Skip("some thirty years")
	}
	c := british(3)
	search := func(years []YearRecord) EqualService {
		found, err := c.equalService(context.Background(), scouting(t, &c), SideCylinder, years)
		if err != nil || found.Trial == nil {
			t.Fatalf("%+v, %v", found, err)
		}
		return found
	}
	plain := search(nil)
	c.Cylinder.Control.SetpointC = plain.SetpointC
	cmp, err := Compare(context.Background(), &c, 2, func(int, int) {})
	if err != nil {
		t.Fatal(err)
	}
	years := cmp.EachYear[SideCylinder]
	if got := search(years); got.SetpointC != plain.SetpointC || *got.Trial != *plain.Trial {
		t.Errorf("with the years lived %+v, without %+v", got, plain)
	}
	for i := range years {
		years[i].Totals.FailingShowers = 1000
	}
	if got := search(years); got.SetpointC <= plain.SetpointC {
		t.Errorf("%g C although the years lived at %g C fail", got.SetpointC, plain.SetpointC)
	}
}

// Where nothing within limits serves, the result says so and gives no cost.
func TestEqualServiceOfAHopelessStore(t *testing.T) {
	c := tooSmall(1)
	c.HeatPump.Limits.LargestSetpointC = 45
	c.Compact.Control.SetpointC = 45
	c.Household.ShowerFlowLPerMin = 6
	c.Service.FailuresPerYear = 0
	got, err := c.equalService(context.Background(), scouting(t, &c), SideCompact, nil)
	if err != nil {
		t.Fatal(err)
	}
	if got.Meets || got.Trial != nil || got.Note == "" {
		t.Errorf("%+v", got)
	}
}

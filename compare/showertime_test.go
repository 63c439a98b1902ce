package compare

import (
	"testing"

	"dhwcompare/compare/plant"
)

// Two years of which one is half warm and half cold: the curve is of their mean.
func TestShowerTimeAddsYearsUp(t *testing.T) {
	var k showerClock
	classOf := func(c float64) int {
		class := 0
		for plant.ShowerClassC(class) < c {
			class++
		}
		return class
	}
	warm, cold := plant.NewLedger(), plant.NewLedger()
	warm.Months[0].ShowerTime[classOf(40)] = 6000
	cold.Months[1].ShowerTime[classOf(40)] = 3000
	cold.Months[11].ShowerTime[classOf(37)] = 2400
	cold.Months[11].ShowerTime[classOf(37.1)] = 600
	k.take(warm, 0.5)
	k.take(cold, 0.5)
	k.wantC, k.leastC = 40, 38
	got := k.time()
	closeTo(t, "minutes", got.Minutes, 100, 1e-9)
	for c, want := range map[float64]float64{30: 0, 37: 0, 37.05: 10, 37.1: 20, 37.2: 25, 38: 25, 40: 25, 40.05: 62.5, 40.1: 100, 60: 100} {
		closeTo(t, "colder than", got.ColderThan(c), want, 1e-6)
	}
	closeTo(t, "too cold", got.TooCold(), 25, 1e-9)
	closeTo(t, "not as wanted", got.NotAsWanted(), 25, 1e-9)
	if first, last := got.Colder[0], got.Colder[len(got.Colder)-1]; first.Minutes != 0 || last.Share != 1 {
		t.Errorf("from %+v to %+v", first, last)
	}
	var none showerClock
	if empty := none.time(); empty.Colder != nil || empty.ColderThan(40) != 0 {
		t.Errorf("without showers: %+v", empty)
	}
}

// The curve and the minutes too cold are booked apart and agree, as the limit is the
// foot of a class; so do all minutes and the showers' own.
func TestShowerTimeAgreesWithTheYear(t *testing.T) {
	c := tooSmall(1)
	cmp := compared(t, &c)
	for side := range sides {
		o := cmp.Options.Of(side)
		if side == SideCompact && o.TooColdMinutes == 0 {
			t.Error("no shower of the test runs cold")
		}
		closeTo(t, "minutes too cold", o.ShowerTime.TooCold(), o.TooColdMinutes, 1e-6)
		if o.ShowerTime.WantC != c.Household.ShowerC || o.ShowerTime.LeastC != c.Household.ShowerMinC {
			t.Errorf("%v: wanted %g, least %g", side, o.ShowerTime.WantC, o.ShowerTime.LeastC)
		}
	}
}

package compare

import (
	"reflect"
	"testing"
)

// TestWorldsAreThoseOfTheCase: what is handed out is what the case makes by itself, made
// once for all that meet the same weather and draw-offs and anew for who does not.
func TestWorldsAreThoseOfTheCase(t *testing.T) {
	c := british(1)
	w := newWorlds(&c)
	hotter, fewer, colder, reseeded, profiled := c, c, c, c, c
	hotter.Compact.Control.SetpointC += 5
	fewer.Household.People--
	colder.Climate.OutdoorC[0] -= 3
	reseeded.Seed++
	profiled.Household.LoadProfile = "S"
	for _, test := range []struct {
		name   string
		c      *Case
		year   int
		shared bool
	}{
		{"the case", &c, 0, true}, {"another year", &c, 1, true}, {"a year beyond those kept", &c, keptYears, false},
		{"another setpoint", &hotter, 0, true}, {"fewer people", &fewer, 0, false}, {"another place", &colder, 0, false},
		{"another seed", &reseeded, 0, false}, {"a load profile", &profiled, 0, false},
	} {
		got, err := w.of(test.c, test.year)
		want, errWant := test.c.World(test.year)
		again, errAgain := w.of(test.c, test.year)
		if err != nil || errWant != nil || errAgain != nil || !reflect.DeepEqual(got, want) {
			t.Errorf("%s: not the world of the case (%v, %v, %v)", test.name, err, errWant, errAgain)
		}
		if shared := got.Weather == again.Weather; shared != test.shared {
			t.Errorf("%s: made once: %t, want %t", test.name, shared, test.shared)
		}
	}
	if world, err := (*worlds)(nil).of(&c, 0); err != nil || len(world.Draws) == 0 {
		t.Errorf("without worlds: %d draws, %v", len(world.Draws), err)
	}
}

// TestScoutSeesTheComparisonsYears: a scout's trial of the case as stated is that of the
// years of the comparison, on the first of two tariffs.
func TestScoutSeesTheComparisonsYears(t *testing.T) {
	c := british(1)
	c.Tariffs = append(c.Tariffs[:1:1], c.Tariffs[0])
	cmp := compared(t, &c)
	for side := range sides {
		want := trialOf(&c.Service, []Totals{cmp.EachYear[side][0].Totals})
		if got := tried(t, &c, side, 1); got != want || want.Cost <= 0 {
			t.Errorf("%v: %+v, want %+v", side, got, want)
		}
	}
	c.Tariffs = nil
	if got := tried(t, &c, SideCompact, 1); got.Cost != 0 || got.KWh <= 0 {
		t.Errorf("without a tariff: %+v", got)
	}
}

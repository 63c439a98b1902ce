package compare

import (
	"math"
	"slices"
	"testing"

	"dhwcompare/compare/plant"
)

// everythingOn is a small home with all effects switched on that a case knows.
func everythingOn(years int) Case {
	c := british(years)
	c.HeatPump.GlycolPercent, c.HeatPump.PumpOverrunS = 25, 120
	for _, body := range []*Body{&c.Compact.Body, &c.Cylinder.Body} {
		body.Immersion = Immersion{PowerKW: 3, Height: 0.3, BoostBelowC: 38, BoostK: 5}
		body.Hygiene.EveryDays = 7
	}
	for _, k := range []*Control{&c.Compact.Control, &c.Cylinder.Control} {
		months := [12]float64{}
		for m := range months {
			months[m] = k.SetpointC - 2
		}
		months[0], months[1], months[11] = k.SetpointC+2, k.SetpointC+2, k.SetpointC+2
		k.MonthSetpointC, k.SensorErrorK = &months, 0.5
		k.Raised = []Raised{{Window{13 * 60, 15 * 60}, k.SetpointC + 3}}
	}
	c.Household.TurnDownShare, c.Household.PatienceMin = 0.8, 5
	return c
}

// share is the tolerance of sums of a few hundred terms.
const sumShare = 1e-9

// The parts of electricity by cause add up to the electricity: in each month and the
// year of each simulated year's mean, with everything on. None is missing from the list.
func TestCausesAddUp(t *testing.T) {
	c := everythingOn(2)
	cmp := compared(t, &c)
	for side := range sides {
		o := cmp.Options.Of(side)
		closeTo(t, o.Name+", year", o.ElectricityByCause.Sum(), o.ElectricityKWh, sumShare*o.ElectricityKWh)
		for m := range o.Months {
			month := &o.Months[m]
			closeTo(t, o.Name+", month", month.ElectricityByCause.Sum(), month.ElectricityKWh, sumShare*month.ElectricityKWh)
		}
		for i := range cmp.EachYear[side] {
			for m := range cmp.EachYear[side][i].Months {
				month := &cmp.EachYear[side][i].Months[m]
				closeTo(t, o.Name+", month of a year", month.ElectricityByCause.Sum(), month.ElectricityKWh, sumShare*month.ElectricityKWh)
			}
		}
		for _, cause := range CauseList() {
			if *cause.Of(&o.ElectricityByCause) == 0 {
				t.Errorf("%s: nothing for %s, so its sum says too little", o.Name, cause.Name)
			}
		}
		if !(o.FirstLawResidual <= 1e-12) { // rounding; 1e-6 is asked for
			t.Errorf("%s: first law residual %g", o.Name, o.FirstLawResidual)
		}
		closeTo(t, o.Name+", whole house less hot water", o.WholeHouseKWh-o.ElectricityKWh, sumOfMonths(o, func(m *MonthTotals) float64 {
			return m.WholeHouseKWh - m.ElectricityKWh
		}), sumShare*o.WholeHouseKWh)
	}
}

func sumOfMonths(o *Option, of func(*MonthTotals) float64) float64 {
	sum := 0.0
	for m := range o.Months {
		sum += of(&o.Months[m])
	}
	return sum
}

// Months in which odd things happen: a run that only warmed the store, heat drawn from
// the store alone, a loop that brought more from the house than it took back, nothing.
func TestCausesOfOddMonths(t *testing.T) {
	for name, m := range map[string]plant.Month{
		"nothing":             {},
		"only standby":        {ElectricIdle: 5e6},
		"only warmed":         {ElectricRun: 1e7, StoreGain: 3e7, HeatPumpHeat: 3e7, ElectricPump: 1e5},
		"only drawn":          {Delivered: 1e7, VesselLoss: 2e6, StoreGain: -1.2e7},
		"more from the house": {ElectricRun: 1e7, Delivered: 2e7, LoopLoss: 1e6, LoopFromHouse: 5e6, LoopToHouse: 2e6, ElectricGone: 3e5},
		"more to the house":   {ElectricRun: 1e7, Delivered: 2e7, LoopLoss: 1e6, LoopFromHouse: 2e6, LoopToHouse: 5e6, DefrostHeat: 1e6, ElectricDefrost: 2e5},
		"heater alone":        {ImmersionHeat: 1e7, Delivered: 8e6, VesselLoss: 2e6},
		"warm room":           {ElectricRun: 1e6, VesselLoss: -2e5, LoopLoss: -1e5, Delivered: 4e6},
	} {
		c := causesOf(&m)
		closeTo(t, name, c.Sum(), m.Electricity()/joulesPerKWh, sumShare*math.Max(1, m.Electricity()/joulesPerKWh))
	}
}

// The parts of the difference add up to it. Taken one after the other, the effects leave
// hardly anything but the interaction, which is what the two options differ by when all
// are gone.
func TestDifferenceByCauseAddsUp(t *testing.T) {
	if testing.Short() {
		t.Skip("some twenty years")
	}
	c := british(1)
	cmp := compared(t, &c)
	s := scouting(t, &c)
	found(t, cmp.causeSearch(t.Context(), &c, s))
	d := cmp.ByCause
	gap := func(taken []effect) float64 {
		var kWh [sides]float64
		for side := range sides {
			years, err := s.years(t.Context(), &c, without(&c, taken, side), 1)
			if err != nil {
				t.Fatal(err)
			}
			kWh[side] = years[0].WholeHouseKWh
		}
		return kWh[SideCompact] - kWh[SideCylinder]
	}
	sum, seen := 0.0, map[string]bool{}
	for _, part := range d.Parts {
		t.Logf("%s: %+.1f kWh", part.Label, part.KWh)
		sum += part.KWh
		if seen[part.Name] || part.Label == "" {
			t.Errorf("%q twice or without a label", part.Name)
		}
		seen[part.Name] = true
	}
	closeTo(t, "sum of the parts", sum, cmp.Difference.WholeHouseKWh, sumShare*math.Abs(cmp.Difference.WholeHouseKWh))
	closeTo(t, "what is divided", d.KWh, cmp.Difference.WholeHouseKWh, 0)
	if len(d.Parts) != len(effects())+1 || d.Parts[len(d.Parts)-1].Name != "interaction" {
		t.Fatalf("%d parts, the last is %q", len(d.Parts), d.Parts[len(d.Parts)-1].Name)
	}
	closeTo(t, "difference with nothing taken away", gap(nil), d.KWh, sumShare*math.Abs(d.KWh))
	interaction := d.Parts[len(d.Parts)-1].KWh
	closeTo(t, "interaction", interaction, gap(effects()), sumShare*math.Abs(d.KWh))
	if math.Abs(interaction) > 0.03*cmp.Options.Cylinder.WholeHouseKWh {
		t.Errorf("an interaction of %.0f kWh explains nothing", interaction)
	}
	if c.Compact.LossW != nil || c.Cylinder.LossW != nil {
		t.Error("the case itself was changed")
	}
}

// without makes a plant with some effects taken away, those of the books too.
func without(c *Case, taken []effect, side Side) maker {
	return func() (plant.Params, error) {
		p, err := c.without(taken, side)()
		for _, e := range taken {
			if e.name == "pump" {
				p.Power.PumpW = 0
			}
		}
		return p, err
	}
}

// TestAbsentEffectsChangeNothing: what an option does not have can be taken away from it
// without a trace.
func TestAbsentEffectsChangeNothing(t *testing.T) {
	c := british(1)
	s := scouting(t, &c)
	for _, e := range effects() {
		for side := range sides {
			if e.absent == nil || !e.absent(&c, side) {
				continue
			}
			with, errWith := s.years(t.Context(), &c, c.asStated(side), 1)
			without, errWithout := s.years(t.Context(), &c, c.without([]effect{e}, side), 1)
			if errWith != nil || errWithout != nil || with[0] != without[0] {
				t.Errorf("%s of the %v: %+v with, %+v without (%v, %v)", e.name, side, with, without, errWith, errWithout)
			}
		}
	}
	for _, change := range []func(*Case){func(c *Case) { c.Compact.Hygiene.EveryDays = 7 }, func(c *Case) { c.Compact.Immersion.PowerKW = 3 }} {
		changed := british(1)
		if !neverDisinfects(&changed, SideCompact) {
			t.Error("a store without disinfection or heater has one")
		}
		change(&changed)
		if neverDisinfects(&changed, SideCompact) {
			t.Error("disinfection or a heater is overlooked")
		}
	}
}

// TestWhatIsOnlyCountedChangesNothingElse: a plant whose pump takes nothing uses, to the
// bit, what the books of one with a pump show without it.
func TestWhatIsOnlyCountedChangesNothingElse(t *testing.T) {
	c := british(1)
	s := scouting(t, &c)
	pump := slices.DeleteFunc(effects(), func(e effect) bool { return e.name != "pump" })
	for side := range sides {
		lived, err := s.years(t.Context(), &c, without(&c, pump, side), 1)
		if err != nil {
			t.Fatal(err)
		}
		with, err := s.years(t.Context(), &c, c.asStated(side), 1)
		if err != nil {
			t.Fatal(err)
		}
		counted, err := c.kWhWithout(t.Context(), s, side, pump, []int{1}, 1)
		if err != nil {
			t.Fatal(err)
		}
		if counted[0] != lived[0].WholeHouseKWh || counted[0] >= with[0].WholeHouseKWh-1 {
			t.Errorf("%v: %v kWh counted, %v lived, %v with the pump", side, counted[0], lived[0].WholeHouseKWh, with[0].WholeHouseKWh)
		}
	}
}

// TestLevelsOfOnePlant: an effect that an option does not have, and one that is only
// counted, are lived through with the effect before.
func TestLevelsOfOnePlant(t *testing.T) {
	c := british(1)
	list := effects()
	for side, alike := range [sides][]string{SideCompact: {"disinfection", "pump"}, SideCylinder: {"pump"}} {
		next := 1
		for _, levels := range c.levels(list, Side(side)) {
			for i, taken := range levels {
				if taken != next {
					t.Fatalf("%v: level %d where %d is due", Side(side), taken, next)
				}
				if joined := slices.Contains(alike, list[taken-1].name); joined != (i > 0) {
					t.Errorf("%v: %s is lived through with the effect before: %t", Side(side), list[taken-1].name, i > 0)
				}
				next++
			}
		}
		if next != len(list)+1 {
			t.Errorf("%v: %d levels", Side(side), next-1)
		}
	}
}

package plant

import (
	"context"
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
	"dhwcompare/compare/water"
)

const (
	testMainsC = 10.0
	legKg      = water.VesselKgPerLitre // of a dead leg of one litre
)

// still is a cylinder full of water at one temperature that neither cools nor is
// heated: what a draw gets from it can be worked out by hand.
func still(t testing.TB) Params {
	t.Helper()
	p := cylinderParams(t)
	c := tallCylinder()
	c.LossWPerK, c.ConductivityWPerMK, c.InletMixingShare = 0, 0, 0
	p.Vessel = vessel.NewCylinder(c)
	p.Supply.MixerMarginK = []float64{0, 0, 0, 0}
	return p
}

// served gives the ledger of draws from a plant charged to tempC, with the heat
// pump off, up to a day later.
func served(t testing.TB, p Params, tempC float64, draws ...household.Draw) *Ledger {
	t.Helper()
	pl := New(p)
	pl.Charge(tempC)
	in := Inputs{Weather: steady(15, testMainsC), Draws: draws}
	return marched(t, pl, noon, noon+calendar.DayS, in, Override{Mode: Off})
}

func near(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Abs(want)) { // false for NaN
		t.Errorf("%s: %.9g, want %.9g within %g of it", what, got, want, share)
	}
}

// exact allows for rounding of a few hundred terms.
const exact = 1e-9

// A litre of cold water runs out first. It takes its mass over the wanted mass
// flow; it costs the heat of a leg full of hot water: what it held above mains went
// down the drain, and what took its place cools away in the day that follows
// (exp(-58) of it is left).
func TestColdLegRunsOutFirst(t *testing.T) {
	l := served(t, still(t), 55, shower(7, 6))
	o := l.Outcomes[0]
	near(t, "waiting, s", o.WaitS, legKg/(7*water.KgPerLitre(40)/secondsPerMinute), exact)
	near(t, "time at the outlet after that, s", o.FlowingS, 360, exact)
	near(t, "litres", o.Litres, 42, exact)
	near(t, "mean temperature", o.MeanC, 40, exact)
	near(t, "wanted heat", o.WantedJ, 42*water.KgPerLitre(40)*water.CpJPerKgK*(40-testMainsC), exact)
	near(t, "delivered heat", o.DeliveredJ, o.WantedJ, exact)
	lost := total(l, func(m *Month) float64 { return m.DeadLegLoss })
	near(t, "dead leg loss", lost, legKg*water.CpJPerKgK*(55-testMainsC), exact)
	if o.ColdS != 0 || o.Failed {
		t.Errorf("waiting was judged as a cold shower: %+v", o)
	}
}

// The first thing that the trace shows is cold water, marked as waiting.
func TestFirstWaterIsCold(t *testing.T) {
	p := still(t)
	var waiting, flowing []float64
	watch := func(s *Sample) {
		for _, d := range s.Draws {
			if d.Waiting {
				waiting = append(waiting, d.DeliveredC)
			} else {
				flowing = append(flowing, d.DeliveredC)
			}
		}
	}
	in := Inputs{Weather: steady(15, testMainsC), Draws: []household.Draw{shower(7, 2)}}
	if err := New(p).Run(context.Background(), noon, noon+600, in, Override{Mode: Off}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	if len(waiting) == 0 || waiting[0] != p.RoomC {
		t.Errorf("waiting at %v, want the room's %g C", waiting, p.RoomC)
	}
	for _, x := range flowing {
		near(t, "after that", x, 40, exact)
	}
}

// A draw that the end of the stretch cuts off before any of its water came has no
// temperatures, and nobody can say that it failed.
func TestDrawCutOffBeforeItsWaterCame(t *testing.T) {
	for _, kind := range []household.Kind{household.Shower, household.Bath, household.Tap} {
		d := shower(7, 2)
		d.Kind = kind
		in := Inputs{Weather: steady(15, testMainsC), Draws: []household.Draw{d}}
		l := marched(t, New(still(t)), noon, d.StartS+1, in, Override{Mode: Off})
		o := l.Outcomes[0]
		if o.LowestC != 0 || o.MeanC != 0 || o.Failed || o.WaitS != 1 || o.Litres != 0 || o.WantedJ != 0 {
			t.Errorf("%v: %+v", kind, o)
		}
	}
}

// A leg that is still warm enough is used: its water at 55 C cools towards 20 C
// with 1500 s and reaches 38 C after 1500 ln(35/18) = 997.5 s.
func TestWarmLegIsUsedAgain(t *testing.T) {
	wait := legKg / (7 * water.KgPerLitre(40) / secondsPerMinute)
	full := legKg * water.CpJPerKgK * (55 - testMainsC)
	for _, c := range []struct {
		pauseS float64
		waits  bool
	}{{10, false}, {600, false}, {990, false}, {1005, true}, {6000, true}} {
		first, second := shower(7, 2), shower(7, 2)
		second.StartS = first.StartS + wait + 120 + c.pauseS
		l := served(t, still(t), 55, first, second)
		o := l.Outcomes[1]
		lost := total(l, func(m *Month) float64 { return m.DeadLegLoss })
		legC := 20 + (55-20)*math.Exp(-c.pauseS/1500)
		if c.waits {
			near(t, "waiting for a cold leg, s", o.WaitS, wait, exact)
			// Each of the two wastes a leg full of hot water: what the second
			// flushes is what the first left in the pipe, less what had cooled away.
			near(t, "lost by two legs full", lost, 2*full, exact)
			continue
		}
		near(t, "coldest water, C", o.LowestC, min(40, legC), exact)
		if o.WaitS != 0 || o.Failed {
			t.Errorf("a leg at %.1f C was not used: %+v", legC, o)
		}
		// One leg full in all, and what it cooled by in the pause.
		near(t, "lost by a leg used twice", lost, full+legKg*water.CpJPerKgK*(55-legC), exact)
	}
}

// Other outlets have legs of their own.
func TestEachOutletHasItsOwnLeg(t *testing.T) {
	first, other := shower(7, 2), shower(7, 2)
	other.StartS, other.Outlet, other.Kind = first.StartS+300, 3, household.Tap
	l := served(t, still(t), 55, first, other)
	half := still(t).Supply.DeadLegsL[3]
	near(t, "waiting at the basin", l.Outcomes[1].WaitS, half*l.Outcomes[0].WaitS, exact)
}

// The mains lets through 15 l/min. A shower that asks for 20 goes on for its
// minutes and leaves a quarter unmet; a bath takes a third longer and leaves none.
func TestMainsLimitsTheFlow(t *testing.T) {
	p := atTheStore(still(t), 0)
	l := served(t, p, 55, shower(20, 2))
	o := l.Outcomes[0]
	near(t, "litres of the shower", o.Litres, 30, exact)
	near(t, "delivered share", o.DeliveredJ/o.WantedJ, 0.75, exact)

	l = served(t, atTheStore(still(t), 0), 55, bath(20, 60))
	o = l.Outcomes[0]
	near(t, "minutes of the bath", o.FlowingS/secondsPerMinute, 4, 2e-6) // a draw ends within a millionth of its amount
	near(t, "litres of the bath", o.Litres, 60, 2e-6)
	near(t, "delivered share", o.DeliveredJ/o.WantedJ, 1, exact)
}

// bath is a bath at noon of so many litres at 40 C, too cold below 39 C.
func bath(flowLPerMin, litres float64) household.Draw {
	return household.Draw{
		StartS: noon, Outlet: 1, Kind: household.Bath, FlowLPerMin: flowLPerMin, WantC: 40, MinC: 39,
		End: household.End{By: household.ByLitres, Amount: litres},
	}
}

// Three taps ask for 8, 10 and 6 l/min: all get the same share of their wish, 15/24,
// while all run; alone, each gets its wish.
func TestSimultaneousDrawsShareTheFlow(t *testing.T) {
	p := atTheStore(still(t), 0)
	a, b, c := shower(8, 10), shower(10, 4), shower(6, 2)
	b.Outlet, c.Outlet = 1, 3
	b.StartS, c.StartS = a.StartS+60, a.StartS+120
	var most float64
	seen := map[int]float64{}
	watch := func(s *Sample) {
		sum, wish := 0.0, 0.0
		for _, d := range s.Draws {
			sum += d.FlowLPerMin
			wish += map[int]float64{0: 8, 1: 10, 3: 6}[d.Outlet]
		}
		most = max(most, sum)
		for _, d := range s.Draws {
			near(t, "flow", d.FlowLPerMin, map[int]float64{0: 8, 1: 10, 3: 6}[d.Outlet]*min(1, 15/wish), exact)
		}
		seen[len(s.Draws)] += s.Dt
	}
	in := Inputs{Weather: steady(15, testMainsC), Draws: []household.Draw{a, b, c}}
	if err := New(p).Run(context.Background(), noon, noon+900, in, Override{Mode: Off}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	near(t, "largest flow", most, 15, exact)
	for n, want := range map[int]float64{1: 60 + 300, 2: 60 + 60, 3: 120} {
		near(t, "seconds of that many draws", seen[n], want, exact)
	}
}

// A draw that ends by heat gives up after three times its proper length when
// nothing warm comes; the heat that never came counts as wanted.
func TestHeatDrawGivesUp(t *testing.T) {
	d := shower(6, 0)
	d.End = household.End{By: household.ByJoules, Amount: joulesPerKWh}
	proper := joulesPerKWh / (6 * water.KgPerLitre(40) / secondsPerMinute * water.CpJPerKgK * (40 - testMainsC))

	o := served(t, atTheStore(still(t), 0), testMainsC, d).Outcomes[0]
	near(t, "seconds from a cold store", o.FlowingS, 3*proper, exact)
	near(t, "wanted from a cold store", o.WantedJ, joulesPerKWh, exact)
	if o.DeliveredJ != 0 || !o.Failed {
		t.Errorf("a cold store served %+v", o)
	}
}

// Water that is no warmer than it is wanted, or hardly, counts as a kelvin short when a
// draw is given up: at half a kelvin the heat comes in twice that time.
func TestHeatDrawFromWarmMains(t *testing.T) {
	perK := joulesPerKWh / (6 * water.KgPerLitre(40) / secondsPerMinute * water.CpJPerKgK)
	for _, c := range []struct{ mainsC, ofAKelvin float64 }{{39.5, 2}, {40, 3}, {41, 3}} {
		d := shower(6, 0)
		d.End = household.End{By: household.ByJoules, Amount: joulesPerKWh}
		in := Inputs{Weather: steady(15, c.mainsC), Draws: []household.Draw{d}}
		l := marched(t, New(atTheStore(still(t), 0)), noon, noon+2*calendar.DayS, in, Override{Mode: Off})
		near(t, "seconds", l.Outcomes[0].FlowingS, c.ofAKelvin*perK, 2e-6)
	}
}

// A bath is over when the tub is full, however cold.
func TestBathEndsByLitres(t *testing.T) {
	for _, storeC := range []float64{55, 40, 25, testMainsC} {
		o := served(t, atTheStore(still(t), 0), storeC, bath(10, 73)).Outcomes[0]
		near(t, "litres", o.Litres, 73, 2e-6)
		near(t, "minutes", o.FlowingS/secondsPerMinute, 7.3, 2e-6)
		near(t, "mean temperature", o.MeanC, min(40, storeC), exact)
	}
}

// The rules of service, on both sides of each edge.
func TestServiceRules(t *testing.T) {
	tap := func(minC float64) household.Draw {
		d := shower(6, 1)
		d.Outlet, d.Kind, d.MinC = 3, household.Tap, minC
		return d
	}
	wait := legKg / (10 * water.KgPerLitre(40) / secondsPerMinute)
	for _, c := range []struct {
		name   string
		storeC float64
		legs   bool
		draw   household.Draw
		fails  bool
	}{
		{"shower too cold for 30 s", 30, false, shower(7, 30.0/60), false},
		{"shower too cold for 31 s", 30, false, shower(7, 31.0/60), true},
		{"shower just warm enough", 38.01, false, shower(7, 5), false},
		{"shower just too cold", 37.99, false, shower(7, 5), true},
		{"bath just warm enough", 39.01, false, bath(10, 73), false},
		{"bath just too cold", 38.99, false, bath(10, 73), true},
		{"bath in 24.9 minutes", 55, false, bath(4, 99.6), false},
		{"bath in 25.1 minutes", 55, false, bath(4, 100.4), true},
		{"bath whose wait is within its patience", 55, true, bath(10, (1500-wait-1)/6), false},
		{"bath whose wait is beyond its patience", 55, true, bath(10, (1500-wait+1)/6), true},
		{"tap just warm enough", 38, false, tap(37.99), false},
		{"tap just too cold", 38, false, tap(38.01), true},
	} {
		p := still(t)
		if !c.legs {
			p = atTheStore(p, 0)
		}
		l := served(t, p, c.storeC, c.draw)
		if got := l.Outcomes[0]; got.Failed != c.fails {
			t.Errorf("%s: failed %v: %+v", c.name, got.Failed, got)
		}
		month := &l.Months[calendar.MonthOfDay(200)]
		tally := month.Draws[c.draw.Kind]
		if tally.Count != 1 || (tally.Failed == 1) != c.fails {
			t.Errorf("%s: counted %+v", c.name, tally)
		}
	}
}

// A tap is judged by its mean: one that turns cold halfway fails only if too much
// of it was cold. The store's water runs out after its own kilograms.
func TestTapIsJudgedByItsMean(t *testing.T) {
	p := atTheStore(still(t), 0)
	p.Supply.LargestFlowLPerMin = 30
	volumeKg := tallCylinder().VolumeL * water.VesselKgPerLitre
	hotS := volumeKg / (20 * water.KgPerLitre(40) / secondsPerMinute) // at 40 C the tap takes hot water alone
	for _, c := range []struct {
		minC  float64
		fails bool
	}{{24.5, false}, {25.5, true}} {
		d := shower(20, 2*hotS/secondsPerMinute)
		d.Kind, d.Outlet, d.MinC = household.Tap, 3, c.minC
		o := served(t, p, 40, d).Outcomes[0]
		// Half at 40 C and half at 10 C; the front is one of 32 layers thick, and
		// lies evenly about the half.
		near(t, "mean", o.MeanC, 25, 0.005)
		if o.Failed != c.fails {
			t.Errorf("at least %g C on the mean: %+v", c.minC, o)
		}
		p = atTheStore(still(t), 0)
		p.Supply.LargestFlowLPerMin = 30
	}
}

// A thermostatic mixer gives the wanted temperature while the hot side is warmer
// by its margin, and stays that much below the hot side from there on.
func TestMixerMargin(t *testing.T) {
	for _, c := range []struct{ marginK, storeC, wantC float64 }{
		{0, 41, 40}, {0, 39, 39}, {5, 45, 40}, {5, 44, 39}, {5, 42, 37}, {10, 49, 39},
	} {
		o := served(t, atTheStore(still(t), c.marginK), c.storeC, shower(6, 3)).Outcomes[0]
		near(t, "mixed water", o.MeanC, c.wantC, exact)
	}
}

// Away over a whole day: nothing is drawn, nothing is judged.
func TestNoDrawsNoOutcomes(t *testing.T) {
	l := served(t, still(t), 55)
	m := l.Months[calendar.MonthOfDay(200)]
	if len(l.Outcomes) != 0 || m.Wanted != 0 || m.DeadLegLoss != 0 || m.VesselLoss != 0 {
		t.Errorf("%d outcomes, %+v", len(l.Outcomes), m)
	}
}

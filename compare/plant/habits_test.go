package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

// People who turn a shower that runs cold down draw less from then on: it ends in the
// same minutes with fewer litres and no colder, and what they went without counts as
// unmet.
func TestPeopleTurnAColdShowerDown(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		with := func(share float64) Outcome {
			p := atTheStore(params(t), 0)
			p.Supply.TurnDownShare = share
			return served(t, p, 50, shower(10, 30)).Outcomes[0]
		}
		plain, down := with(0), with(0.6)
		if plain.ColdS == 0 {
			t.Fatal("the shower never ran cold, so nothing is tested")
		}
		near(t, "minutes", down.FlowingS, plain.FlowingS, exact)
		near(t, "wanted heat", down.WantedJ, plain.WantedJ, exact)
		near(t, "litres", down.Litres, plain.Litres-0.4*10*down.ColdS/secondsPerMinute, 0.01) // known to half a step
		if down.MeanC <= plain.MeanC || down.LowestC < plain.LowestC-exact {
			t.Errorf("turned down: mean %.2f C, lowest %.2f C; else %.2f and %.2f C", down.MeanC, down.LowestC, plain.MeanC, plain.LowestC)
		}
	})
}

// People with patience wait before a shower while the vessel is too cold for it, as long
// as it takes or their patience lasts; a bath or a tap waits for nobody.
func TestPeopleWaitForHotWater(t *testing.T) {
	const patienceS = 1800
	p := atTheStore(compactParams(t), 0)
	p.Supply.PatienceS = patienceS
	waits := func(startC float64, mode Mode, d household.Draw) Outcome {
		pl := New(p)
		pl.Charge(startC)
		l := marched(t, pl, noon, noon+calendar.DayS, Inputs{Weather: steady(20, testMainsC), Draws: []household.Draw{d}}, Override{Mode: mode})
		return l.Outcomes[0]
	}
	if hot := waits(55, Off, shower(6, 5)); hot.HeldS != 0 {
		t.Errorf("waited %.0f s for a hot store", hot.HeldS)
	}
	never := waits(30, Off, shower(6, 5))
	near(t, "waiting for a store that stays cold, s", never.HeldS, patienceS, exact)
	near(t, "and the shower then, s", never.FlowingS, 300, exact)
	soon := waits(30, On, shower(6, 5))
	if soon.HeldS < 60 || soon.HeldS >= patienceS || soon.Failed || !never.Failed {
		t.Errorf("store being heated: waited %.0f s, failed %v; stays cold: failed %v", soon.HeldS, soon.Failed, never.Failed)
	}
	if tub := waits(30, Off, bath(10, 60)); tub.HeldS != 0 {
		t.Errorf("a bath waited %.0f s", tub.HeldS)
	}
}

// A fitted limiter bounds the flow of showers alone, and never raises it.
func TestShowerLimiter(t *testing.T) {
	p := atTheStore(still(t), 0)
	p.Supply.ShowerLimitLPerMin = 6
	tap := shower(9, 4)
	tap.Outlet, tap.Kind = 3, household.Tap
	for _, c := range []struct {
		draw   household.Draw
		litres float64
	}{{shower(9, 4), 24}, {shower(5, 4), 20}, {tap, 36}, {bath(9, 36), 36}} {
		o := served(t, p, 55, c.draw).Outcomes[0]
		near(t, "litres", o.Litres, c.litres, 2e-6)
		near(t, "delivered of what the limiter lets through", o.DeliveredJ, o.WantedJ, 2e-6)
	}
}

// While the diverting valve travels no water reaches the vessel and no heat is made;
// starts take that much longer.
func TestValveTravelComesFirst(t *testing.T) {
	for _, travelS := range []float64{0, 7, 15, 20, 60} {
		p := compactParams(t)
		p.Loop.ValveS = travelS
		pl := New(p)
		pl.Charge(45)
		first := math.Inf(1)
		watch := func(s *Sample) {
			if s.HeatW > 0 {
				first = math.Min(first, s.T-noon)
			}
		}
		if err := pl.Run(t.Context(), noon, noon+600, Inputs{Weather: steady(7, 10)}, Override{Mode: On}, Recorder{Trace: watch}); err != nil {
			t.Fatal(err)
		}
		if math.Abs(first-travelS) > exact {
			t.Errorf("valve of %g s: first heat after %g s", travelS, first)
		}
	}
}

// A pump that runs on brings loop heat into the vessel: the loop then loses less, and
// the heat pump has less to make. It stops once the loop has nothing more to bring.
func TestPumpOverrunBringsLoopHeat(t *testing.T) {
	in := twoPeople()
	const to = 60 * calendar.DayS
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		var lost, heat, pump [2]float64
		for i, overrunS := range []float64{0, 300} {
			p := params(t)
			p.Loop.OverrunS = overrunS
			p.Loop.IndoorLossWPerK, p.Loop.OutdoorLossWPerK = 4, 4
			l := marched(t, New(p), 0, to, in, Override{})
			lost[i] = total(l, func(m *Month) float64 { return m.LoopLoss })
			heat[i] = total(l, func(m *Month) float64 { return m.HeatPumpHeat - m.Delivered })
			pump[i] = total(l, func(m *Month) float64 { return m.ElectricPump })
		}
		t.Logf("loop loss %.2f to %.2f kWh, heat beyond the taps' %.2f to %.2f kWh", lost[0]/joulesPerKWh, lost[1]/joulesPerKWh, heat[0]/joulesPerKWh, heat[1]/joulesPerKWh)
		if lost[1] >= lost[0] || heat[1] >= heat[0] || pump[1] <= 0 {
			t.Errorf("loop loss %g to %g J, heat %g to %g J", lost[0], lost[1], heat[0], heat[1])
		}
	})
}

// The pump runs on as long as the loop is warmer than what comes back, and not with a
// loop that is colder; after its time it stops in any case.
func TestPumpOverrunOnlyWhileItBringsHeat(t *testing.T) {
	for _, c := range []struct {
		loopC, overrunS float64
		ran             band // s
	}{{40, 600, band{0, 0}}, {50, 600, band{0, 0}}, {60, 600, band{1, 599}}, {60, 20, band{20, 20}}} {
		p := lossless(t)
		p.Loop.OverrunS = c.overrunS
		pl := New(p)
		pl.Charge(50)
		pl.WarmLoop(c.loopC)
		pl.overrunS = c.overrunS // as if a run had just ended
		l := marched(t, pl, noon, noon+calendar.HourS, Inputs{Weather: steady(7, 10)}, Override{Mode: Off})
		c.ran.check(t, "seconds of the pump", total(l, func(m *Month) float64 { return m.ElectricPump })/p.Power.PumpW)
	}
}

// In front of a store that stays cold people wait out their patience, to the second
// and below, and then shower as long as ever.
func TestPatienceRunsOut(t *testing.T) {
	for _, patienceS := range []float64{0.5, 1.5, 90} {
		p := atTheStore(still(t), 0)
		p.Supply.PatienceS = patienceS
		o := served(t, p, 25, shower(7, 2)).Outcomes[0]
		near(t, "seconds held", o.HeldS, patienceS, exact)
		near(t, "seconds of the shower", o.FlowingS, 120, exact)
	}
}

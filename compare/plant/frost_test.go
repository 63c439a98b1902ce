package plant

import (
	"math"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

// humid is unchanging weather of 90 % relative humidity.
func humid(outdoorC, mainsC float64) *climate.Series {
	s := steady(outdoorC, mainsC)
	for i := range s.RHPercent {
		s.RHPercent[i] = 90
	}
	return s
}

// Growth has its stated shape: a full load in 50 minutes of running at 0 to 2 C and
// in 90 minutes at -7 C (judgement on published surveys), none at the ends and in
// dry air, rising to 0 C and falling from 2 C.
func TestFrostGrowthShape(t *testing.T) {
	f := testFrost()
	for _, c := range []struct{ outdoorC, rhPercent, minutes float64 }{
		{0, 90, 50}, {1, 85, 50}, {1.6, 90, 50}, {2, 100, 50}, {-7, 90, 90}, {4, 90, 100}, {1, 75, 100},
	} {
		near(t, "minutes to a full load", 1/f.growth(c.outdoorC, c.rhPercent)/secondsPerMinute, c.minutes, exact)
	}
	for _, c := range [][2]float64{{-12, 90}, {-20, 90}, {6, 90}, {12, 90}, {1, 65}, {1, 40}} {
		if got := f.growth(c[0], c[1]); got != 0 {
			t.Errorf("frost grows at %g C, %g %%: %g", c[0], c[1], got)
		}
	}
	for a := -15.0; a < 10; a += 0.25 {
		now, next := f.growth(a, 90), f.growth(a+0.25, 90)
		if a < 0 && next < now || a >= 2 && next > now {
			t.Errorf("from %g C: growth goes from %g to %g", a, now, next)
		}
	}
	if got := (&Frost{}).growth(1, 90); got != 0 {
		t.Errorf("no frost grows at %g", got)
	}
}

// A frost-free exchanger gives more than the mean by the pause and the heat of a
// defrost; where no frost grows, or nothing is given, there is no more.
func TestCleanExchanger(t *testing.T) {
	f := testFrost()
	const growth, outputW = 1.0 / 3000, 6000
	near(t, "at 6 kW", f.clean(growth, outputW), 1+growth*(300+0.3*joulesPerKWh/outputW), exact)
	for _, c := range [][2]float64{{0, outputW}, {growth, 0}, {growth, -1}, {0, 0}} {
		if got := f.clean(c[0], c[1]); got != 1 {
			t.Errorf("growth %g at %g W: %g", c[0], c[1], got)
		}
	}
}

// Frost melts off by itself above 1 C only, in its stated time.
func TestFrostMelts(t *testing.T) {
	f := testFrost()
	for _, c := range []struct{ outdoorC, afterS, left float64 }{
		{0.9, 1e6, 0.8}, {1, 1e6, 0.8}, {1.1, 900, 0.3}, {1.1, 1440, 0}, {8, 5000, 0},
	} {
		s := frostState{load: 0.8}
		s.melt(c.afterS, c.outdoorC, &f)
		if math.Abs(s.load-c.left) > exact {
			t.Errorf("at %g C after %g s: load %g, want %g", c.outdoorC, c.afterS, s.load, c.left)
		}
	}
}

// Short runs hours apart: below 1 C their frost adds up to a defrost, above it melts
// in between.
func TestFrostOfShortRunsAddsUpBelowOneDegree(t *testing.T) {
	for _, c := range []struct {
		outdoorC float64
		some     bool
	}{{0.5, true}, {1.5, false}} {
		p := compactParams(t)
		p.Frost = testFrost()
		l := marched(t, New(p), 0, 20*calendar.DayS, Inputs{Weather: humid(c.outdoorC, 10)}, Override{})
		m := &l.Months[0]
		t.Logf("%g C: %d starts, %d defrosts", c.outdoorC, m.Starts, m.Defrosts)
		if m.Starts < 20 || (m.Defrosts > 0) != c.some {
			t.Errorf("%g C: %d defrosts in %d starts", c.outdoorC, m.Defrosts, m.Starts)
		}
	}
}

// Heating without a pause for nine days in which frost grows: over each cycle the
// mean heat and COP come back to those without frost, which are the certified ones.
// The last cycle is cut, which a hundred cycles hide to better than 1 %.
func TestFrostKeepsTheCertifiedMeanInHeating(t *testing.T) {
	for _, outdoorC := range []float64{-7, 0, 1, 2, 4} {
		heat, cop := [2]float64{}, [2]float64{}
		for i, frost := range []Frost{{}, testFrost()} {
			p := compactParams(t)
			p.House, p.Frost = testHouse(), frost
			p.House.LossWPerK = 2000 // more than the unit can give: it never stops
			p.Control.SetpointC = 15 // hot water never calls
			in := Inputs{Weather: humid(outdoorC, 10)}
			l := marched(t, New(p), 0, 9*calendar.DayS, in, Override{})
			m := &l.Months[0]
			if (frost.IntervalS > 0) != (m.HeatingDefrosts > 50) || m.Starts != 0 {
				t.Errorf("%g C: %d defrosts, %d hot-water starts", outdoorC, m.HeatingDefrosts, m.Starts)
			}
			heat[i] = m.HeatingHeat - m.HeatingDefrost
			cop[i] = heat[i] / m.ElectricHeating
		}
		t.Logf("%g C: heat %+.3f %%, COP %+.3f %%", outdoorC, 100*(heat[1]/heat[0]-1), 100*(cop[1]/cop[0]-1))
		near(t, "mean heat", heat[1], heat[0], 0.01)
		near(t, "mean COP", cop[1], cop[0], 0.01)
	}
}

// The same for hot water that runs without end. The heat of each defrost comes out
// of the vessel, whose temperature then swings, so that the return is not quite that
// of the steady run.
func TestFrostKeepsTheCertifiedMeanInHotWater(t *testing.T) {
	const days = 9
	for _, outdoorC := range []float64{0, 1, 2} {
		heat, cop := [2]float64{}, [2]float64{}
		for i, frost := range []Frost{{}, testFrost()} {
			p := atTheStore(compactParams(t), 0)
			p.Frost = frost
			d := bath(5.5, 1e6)
			d.StartS = 0
			in := Inputs{Weather: humid(outdoorC, 10), Draws: []household.Draw{d}}
			l := marched(t, New(p), 0, days*calendar.DayS, in, Override{})
			m := &l.Months[0]
			if (frost.IntervalS > 0) != (m.Defrosts > 50) || m.Starts != 1 {
				t.Errorf("%g C: %d defrosts, %d starts", outdoorC, m.Defrosts, m.Starts)
			}
			heat[i] = m.HeatPumpHeat - m.DefrostHeat
			cop[i] = heat[i] / (m.ElectricRun + m.ElectricGone + m.ElectricDefrost)
		}
		t.Logf("%g C: heat %.2f kW %+.3f %%, COP %.3f %+.3f %%", outdoorC, heat[0]/days/calendar.DayS/1000,
			100*(heat[1]/heat[0]-1), cop[0], 100*(cop[1]/cop[0]-1))
		near(t, "mean heat", heat[1], heat[0], 0.01)
		near(t, "mean COP", cop[1], cop[0], 0.01)
	}
}

// A timed test that begins in a defrost takes the whole of its heat from the water
// before any comes.
func TestTestInDefrost(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := params(t)
		p.Frost = testFrost()
		in, l := Inputs{Weather: steady(1, 6)}, NewLedger()
		for _, c := range []struct{ to, defrostJ float64 }{{p.Frost.DurationS, p.Frost.HeatJ}, {2 * p.Frost.DurationS, p.Frost.HeatJ}} {
			l.Reset()
			pl := New(p)
			pl.Charge(45)
			if err := pl.Run(t.Context(), noon, noon+c.to, in, Override{Mode: InDefrost}, Recorder{Ledger: l}); err != nil {
				t.Fatal(err)
			}
			m := &l.Months[calendar.MonthOfDay(calendar.DayOf(noon))]
			near(t, "heat taken", m.DefrostHeat, c.defrostJ, 1e-9)
			near(t, "seconds of the compressor", m.RunS, c.to, 1e-9)
			if (m.HeatPumpHeat > 0) != (c.to > p.Frost.DurationS) || m.Starts != 1 {
				t.Errorf("after %g s: %g J of heat, %d starts", c.to, m.HeatPumpHeat, m.Starts)
			}
		}
	})
}

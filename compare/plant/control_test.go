package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// runsOf lists the hot-water runs of a stretch as a watcher of its trace.
type runsOf struct {
	runs    []span
	running bool
}

func (r *runsOf) note(s *Sample) {
	switch {
	case s.Running && !r.running:
		r.runs = append(r.runs, span{s.T, s.T + s.Dt})
	case s.Running:
		r.runs[len(r.runs)-1].to = s.T + s.Dt
	}
	r.running = s.Running
}

// Between two hot-water runs lies at least the anti-cycle time; no run is shorter
// than the least run.
func TestPausesAndLeastRuns(t *testing.T) {
	in := twoPeople()
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		for _, minutes := range []float64{5, 30} {
			p := alwaysAllowed(params(t))
			p.Control.AntiCycleS, p.Control.MinRunS = minutes*secondsPerMinute, 10*secondsPerMinute
			var r runsOf
			if err := New(p).Run(t.Context(), 0, 120*calendar.DayS, in, Override{}, Recorder{Trace: r.note}); err != nil {
				t.Fatal(err)
			}
			shortestRun, shortestPause := math.Inf(1), math.Inf(1)
			for i, run := range r.runs {
				shortestRun = math.Min(shortestRun, run.to-run.from)
				if i > 0 {
					shortestPause = math.Min(shortestPause, run.from-r.runs[i-1].to)
				}
			}
			t.Logf("pause %g min: %d runs, shortest run %.0f s, shortest pause %.0f s", minutes, len(r.runs), shortestRun, shortestPause)
			if shortestPause < p.Control.AntiCycleS-clockSlackS || shortestRun < p.Control.MinRunS-clockSlackS {
				t.Errorf("shortest run %g s, shortest pause %g s", shortestRun, shortestPause)
			}
			if shortestPause > p.Control.AntiCycleS+calendar.HourS {
				t.Error("the pause never bound, so the test says nothing")
			}
		}
	})
}

// Hot water gives way to a house that needs heat after its longest run, and the house
// then gets at least its own least run.
func TestLongestHotWaterRun(t *testing.T) {
	p := housed(t, cylinderParams)
	p.Control.Allowed, p.Control.LongestRunS = Schedule{}, 1500
	pl := New(p)
	pl.Charge(10)
	var r runsOf
	in := Inputs{Weather: steady(0, 6)}
	l := NewLedger()
	if err := pl.Run(t.Context(), 0, calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: r.note}); err != nil {
		t.Fatal(err)
	}
	if len(r.runs) < 4 {
		t.Fatalf("%d runs", len(r.runs))
	}
	for i, run := range r.runs {
		// A run may end late by one step of running.
		if length := run.to - run.from; length > p.Control.LongestRunS+ownPace.runningS {
			t.Errorf("run %d: %.0f s", i, length)
		}
		if i > 0 && run.from-r.runs[i-1].to < p.House.MinRunS-clockSlackS {
			t.Errorf("the house got %.0f s between runs", run.from-r.runs[i-1].to)
		}
	}
	band{p.Control.LongestRunS, p.Control.LongestRunS + ownPace.runningS}.check(t, "longest gap, s", l.Months[0].LongestGapS)
	p.Control.LongestRunS = 0
	pl = New(p)
	pl.Charge(10)
	free := marched(t, pl, 0, calendar.DayS, in, Override{})
	if free.Months[0].LongestGapS <= 2*1500 {
		t.Errorf("without a limit hot water keeps the house waiting for %.0f s only", free.Months[0].LongestGapS)
	}
}

// The setpoint follows its month: the vessel is heated to it and not beyond, by more
// than the step in which the sensor says stop.
func TestSetpointByMonth(t *testing.T) {
	in := Inputs{Weather: steady(7, 10)}
	p := compactParams(t)
	months := [12]float64{60, 60, 55, 55, 50, 48, 48, 48, 50, 55, 55, 60}
	p.Control.MonthC = &months
	p.Control.SensorLagS = 0
	var hottest [12]float64
	pl := New(p)
	watch := func(s *Sample) {
		day := calendar.DayOf(s.T)
		m := calendar.MonthOfDay(day)
		if day-calendar.MonthStartDay(m) >= 5 { // what the month before left has cooled
			hottest[m] = math.Max(hottest[m], pl.vessel.AtC(p.Control.SensorHeight))
		}
	}
	if err := pl.Run(t.Context(), 0, calendar.YearS, in, Override{}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	for m, h := range hottest {
		// The least run of 3 min goes on past the setpoint by what 9 kW bring.
		band{months[m] - 0.1, months[m] + 4}.check(t, calendarMonth(m), h)
	}
}

func calendarMonth(m int) string {
	return [...]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}[m]
}

// A raised setpoint acts while its window is open and only then: the heat pump starts
// as it opens and charges to it; while it is closed nothing starts it until the water
// has fallen to the ordinary call.
func TestRaisedSetpointActsInItsWindow(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := alwaysAllowed(params(t))
		ordinaryC := p.Control.SetpointC
		p.Control.Raised = []Raised{{When: windows(t, Window{clock(2, 0), clock(5, 0)}), SetpointC: ordinaryC + 6}}
		pl := New(p)
		days := map[int]float64{} // hottest water in the window of each day
		started := 0
		before := false
		watch := func(s *Sample) {
			at := pl.vessel.AtC(p.Control.SensorHeight)
			hour := math.Mod(s.T, calendar.DayS) / calendar.HourS
			open := hour >= 2 && hour < 5
			if s.Running && !before {
				switch {
				case open && math.Abs(hour-2) < 1e-9:
					started++
				case !open && pl.sensorC > ordinaryC-p.Control.HysteresisK+1:
					t.Errorf("started at %.2f h with the sensor at %.2f C", hour, pl.sensorC)
				}
			}
			before = s.Running
			if open {
				day := calendar.DayOf(s.T)
				days[day] = math.Max(days[day], at)
			}
		}
		if err := pl.Run(t.Context(), 0, 20*calendar.DayS, Inputs{Weather: steady(7, 10)}, Override{}, Recorder{Trace: watch}); err != nil {
			t.Fatal(err)
		}
		for day, hottest := range days {
			if hottest < ordinaryC+6-0.1-p.Control.HysteresisK || day < 2 && hottest < ordinaryC+5.5 {
				t.Errorf("day %d: %.2f C in the window", day, hottest)
			}
		}
		if started < 2 { // a cylinder stays hot enough for some days
			t.Errorf("started %d times in 20 days as the window opened", started)
		}
	})
}

// A sensor that reads too high stops the heat pump early by just its error.
func TestSensorErrorShiftsTheSetpoint(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		in := Inputs{Weather: steady(7, 10), Draws: twoPeople().Draws}
		const to = 30 * calendar.DayS
		errs := alwaysAllowed(params(t))
		errs.Control.SensorErrorK = 2
		shifted := alwaysAllowed(params(t))
		shifted.Control.SetpointC -= 2
		pl := New(errs)
		pl.Charge(shifted.Control.SetpointC)
		sameLedger(t, marched(t, New(shifted), 0, to, in, Override{}), marched(t, pl, 0, to, in, Override{}))
	})
}

// At the unit's highest flow temperature it stops at once, however long its least run:
// water that cannot be made is not made for the rule's sake.
func TestHighestFlowEndsARunAtOnce(t *testing.T) {
	const highestC = 55
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := alwaysAllowed(params(t))
		p.HeatPump = upTo(t, highestC)
		p.Control.SetpointC, p.Control.MinRunS, p.Control.OutputCap = 65, calendar.HourS, 1
		pl := New(p)
		pl.Charge(50)
		hottest, vesselC := 0.0, 0.0
		watch := func(s *Sample) {
			if s.Running {
				hottest = math.Max(hottest, s.FlowC)
			}
			vesselC = math.Max(vesselC, pl.vessel.AtC(1))
		}
		if err := pl.Run(t.Context(), noon, noon+6*calendar.HourS, Inputs{Weather: steady(15, 10)}, Override{}, Recorder{Trace: watch}); err != nil {
			t.Fatal(err)
		}
		// The step in hand is finished: at least output, 2 kW and 17 l/min, a kelvin or two.
		band{highestC - 3, highestC + 2}.check(t, "hottest leaving water, C", hottest)
		band{highestC - 7, highestC}.check(t, "hottest vessel, C", vesselC)
	})
}

// A run goes on at the highest flow temperature until the vessel is warm. The output is
// set for the mean of a step, within which the return rises by a kelvin or so.
func TestRunGoesOnAtTheHighestFlow(t *testing.T) {
	p := alwaysAllowed(compactParams(t))
	p.HeatPump = upTo(t, 55)
	p.Control.SetpointC, p.Control.FlowAboveK, p.Control.MinRunS = 52, 10, 0
	pl := New(p)
	pl.Charge(45)
	atHighestS, warmest := 0.0, 0.0
	watch := func(s *Sample) {
		warmest = max(warmest, s.MiddleC)
		if s.Running && math.Abs(s.FlowC-55) < 0.2 {
			atHighestS += s.Dt
		}
	}
	if err := pl.Run(t.Context(), noon, noon+calendar.HourS, Inputs{Weather: steady(15, 10)}, Override{}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	if atHighestS < 30 || warmest < 52 {
		t.Errorf("%g s at the highest flow, vessel at %g C", atHighestS, warmest)
	}
}

// A plant at rest calls when its sensor reads the call, and not at the end of a half
// hour: a twentieth of a kelvin is less than two minutes of cooling.
func TestStoreCallsOnTime(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := alwaysAllowed(params(t))
		pl, call := New(p), p.Control.SetpointC-p.Control.HysteresisK
		before, calls := math.NaN(), 0
		watch := func(s *Sample) {
			if !s.Running {
				before = pl.sensorC
				return
			}
			if !math.IsNaN(before) {
				calls++
				band{call - 0.05, call}.check(t, "sensor at the call, C", before)
			}
			before = math.NaN()
		}
		if err := pl.Run(t.Context(), noon, noon+4*calendar.DayS, Inputs{Weather: steady(7, 10)}, Override{}, Recorder{Trace: watch}); err != nil {
			t.Fatal(err)
		}
		if calls < 2 {
			t.Errorf("%d calls say nothing", calls)
		}
	})
}

// A timed run that begins with the year is that which begins at any other moment.
func TestAnyTimeBeginsAlike(t *testing.T) {
	in := Inputs{Weather: steady(7, 10)}
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		var heat, electricity [2]float64
		for i, from := range []float64{0, noon} {
			pl := New(params(t))
			pl.Charge(40)
			l := marched(t, pl, from, from+1200, in, Override{Mode: On})
			heat[i] = total(l, func(m *Month) float64 { return m.HeatPumpHeat })
			electricity[i] = total(l, (*Month).Electricity)
		}
		near(t, "heat", heat[0], heat[1], 1e-9)
		near(t, "electricity", electricity[0], electricity[1], 1e-9)
	})
}

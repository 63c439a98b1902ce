package plant

import (
	"math"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
)

// humidDays is freezing fog on end: -2 to 2 C by the hour of the day, 95 % relative
// humidity, mains at 5 C.
func humidDays() *climate.Series {
	w := steady(0, 5)
	for i := range w.OutdoorC {
		w.OutdoorC[i] = -2 * math.Cos(2*math.Pi*float64(i%24-3)/24)
		w.RHPercent[i] = 95
	}
	return w
}

// Ten cold humid days in a row, every draw of the household's January, frost and house
// on: after the first two days it gets no worse. The rooms come back to within a tenth
// of a kelvin each day, and a shower-free stretch of the night always ends with the
// vessel charged. How long it takes after the last draw-off of the day is told.
func TestColdHumidDaysDoNotSpiral(t *testing.T) {
	const days = 12
	draws := twoPeople().Draws
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := alwaysAllowed(housed(t, params))
		p.Frost, p.Loop.ValveS, p.Control.LongestRunS = testFrost(), 15, 2*calendar.HourS
		pl, l := New(p), NewLedger()
		warmest := [days]float64{}
		caughtUpMin := [days]float64{}
		lastDrawS := 0.0
		watch := func(s *Sample) {
			day := calendar.DayOf(s.T)
			warmest[day] = math.Max(warmest[day], s.RoomTempC)
			if len(s.Draws) > 0 {
				lastDrawS, caughtUpMin[day] = s.T+s.Dt, 0
				return
			}
			behind := s.Running || pl.sensorC < p.Control.SetpointC-p.Control.HysteresisK || s.RoomTempC < p.House.RoomC-0.1
			if behind && calendar.DayOf(lastDrawS) == day {
				caughtUpMin[day] = (s.T + s.Dt - lastDrawS) / secondsPerMinute
			}
		}
		in := Inputs{Weather: humidDays(), Draws: draws}
		if err := pl.Run(t.Context(), 0, days*calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: watch}); err != nil {
			t.Fatal(err)
		}
		m := &l.Months[0]
		t.Logf("caught up after the last draw of the day, min: %.0f", caughtUpMin)
		t.Logf("%d defrosts in hot water and %d in heating, worst dip %.2f K, longest gap %.0f min, %d of %d showers fail",
			m.Defrosts, m.HeatingDefrosts, m.WorstDipK, m.LongestGapS/secondsPerMinute, m.Draws[0].Failed, m.Draws[0].Count)
		if m.Defrosts+m.HeatingDefrosts < days*5 {
			t.Errorf("%d defrosts in %d humid days", m.Defrosts+m.HeatingDefrosts, days)
		}
		for day := 2; day < days; day++ {
			if warmest[day] < p.House.RoomC-0.1 {
				t.Errorf("day %d: the rooms never came back to more than %.2f C", day, warmest[day])
			}
			if caughtUpMin[day] > 180 {
				t.Errorf("day %d: still behind %.0f min after the last draw", day, caughtUpMin[day])
			}
		}
		band{0, rounding}.check(t, "residual", l.Residual())
	})
}

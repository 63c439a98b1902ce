package plant

import (
	"fmt"
	"math"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
)

// housed puts an option into the test house.
func housed(t testing.TB, params func(testing.TB) Params) Params {
	t.Helper()
	p := params(t)
	p.House = testHouse()
	return p
}

// The first law of house and plant together, each month.
func TestFirstLawWithHouse(t *testing.T) {
	in := twoPeople()
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		l := marched(t, New(housed(t, params)), 0, calendar.YearS, in, Override{})
		band{0, rounding}.check(t, "residual", l.Residual())
		for i := range l.Months {
			if m := &l.Months[i]; m.HouseLoss <= 0 {
				t.Errorf("month %d: no heat lost by the house", i+1)
			}
		}
		if total(l, func(m *Month) float64 { return m.HeatingHeat }) <= 0 {
			t.Error("no heating")
		}
	})
}

// waterSide is a month without what it says of the house.
func waterSide(m Month) string {
	m.HouseHeat, m.HouseFromWater, m.Credited, m.HouseGain, m.HouseLoss, m.HouseAired, m.HouseKept = 0, 0, 0, 0, 0, 0, 0
	m.WorstDipK = 0
	return fmt.Sprint(m)
}

// A house that needs no heat, because it loses none or because it is warm outdoors,
// leaves the plant alone: not one bit differs.
func TestNoHeatingDemandIsThePlantAlone(t *testing.T) {
	in := twoPeople()
	warm := Inputs{Weather: steady(16, 12), Draws: in.Draws}
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		lossless := func() Params {
			p := housed(t, params)
			p.House.LossWPerK = 0
			return p
		}
		sameLedger(t, marched(t, New(params(t)), 0, calendar.YearS, in, Override{}),
			marched(t, New(lossless()), 0, calendar.YearS, in, Override{}))

		alone := marched(t, New(params(t)), 0, calendar.YearS, warm, Override{})
		beside := marched(t, New(housed(t, params)), 0, calendar.YearS, warm, Override{})
		for i := range alone.Months {
			if a, b := waterSide(alone.Months[i]), waterSide(beside.Months[i]); a != b {
				t.Errorf("month %d:\n%s\n%s", i+1, a, b)
			}
		}
		if fmt.Sprint(alone.Outcomes) != fmt.Sprint(beside.Outcomes) || fmt.Sprint(alone.HalfHourKWh) != fmt.Sprint(beside.HalfHourKWh) {
			t.Error("outcomes or half hours differ")
		}
	})
}

// heatingJ is the heat that came to the rooms and was not aired away: from the heat
// pump, and from what hot water lost.
func heatingJ(l *Ledger) float64 {
	return total(l, func(m *Month) float64 { return m.HouseHeat + m.HouseFromWater - m.HouseAired })
}

// degreeHeatJ is degree-hours times loss.
func degreeHeatJ(h *House, w *climate.Series) float64 {
	sum := 0.0
	for _, t := range w.OutdoorC {
		sum += math.Max(0, h.BaseC-t) * calendar.HourS
	}
	return sum * h.LossWPerK
}

// A year's heating is degree-hours times heat loss within 3 %, in weather that never
// changes.
func TestHeatingFollowsDegreeDays(t *testing.T) {
	draws := twoPeople().Draws
	for _, weather := range []*climate.Series{steady(-2, 8), steady(5, 10), steady(12, 14)} {
		for _, o := range options() {
			p := housed(t, o.params)
			l := marched(t, New(p), 0, calendar.YearS, Inputs{Weather: weather, Draws: draws}, Override{})
			want := degreeHeatJ(&p.House, weather)
			t.Logf("%g C, %s: %.0f kWh, degree-hours %.0f kWh (%+.2f %%)", weather.OutdoorC[0], o.name, heatingJ(l)/joulesPerKWh, want/joulesPerKWh, 100*(heatingJ(l)/want-1))
			near(t, o.name+", heating", heatingJ(l), want, 0.03)
		}
	}
}

// bridgedHeatJ is what a year of weather asks of an ideal thermostat: one lump of heat
// capacity, hour by hour, whose gains of mild hours serve cold ones until the rooms are
// a kelvin too warm and are aired. Exact within the hour.
func bridgedHeatJ(h *House, w *climate.Series) float64 {
	kept := math.Exp(-h.LossWPerK * calendar.HourS / h.CapacityJPerK)
	roomC, sum := h.RoomC, 0.0
	for range 2 { // the second year begins as it ends
		sum = 0
		for _, t := range w.OutdoorC {
			final := t + h.gainsW()/h.LossWPerK
			roomC = final + (roomC-final)*kept
			if roomC < h.RoomC {
				sum += (h.RoomC - roomC) * h.CapacityJPerK
				roomC = h.RoomC
			}
			roomC = math.Min(roomC, h.RoomC+ventK)
		}
	}
	return sum
}

// The same for a synthetic year, against degree-hours that the house's heat capacity
// bridges; plain degree-hours ask for about 7 % more, since they know nothing of the
// gains of a mild hour.
func TestHeatingOfASyntheticYear(t *testing.T) {
	in := twoPeople()
	for _, o := range options() {
		p := housed(t, o.params)
		l := marched(t, New(p), 0, calendar.YearS, in, Override{})
		want, plain := bridgedHeatJ(&p.House, in.Weather), degreeHeatJ(&p.House, in.Weather)
		t.Logf("%s: %.0f kWh, bridged degree-hours %.0f kWh (%+.2f %%), plain ones %.0f kWh", o.name, heatingJ(l)/joulesPerKWh,
			want/joulesPerKWh, 100*(heatingJ(l)/want-1), plain/joulesPerKWh)
		near(t, o.name+", heating", heatingJ(l), want, 0.03)
	}
}

// In each hour what is credited is no more than the heat that hot water lost, nor
// than the heating demand of the hour; and some of it is.
func TestCreditIsBounded(t *testing.T) {
	in := twoPeople()
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := housed(t, params)
		p.House.HeatedShare = 0.8
		l := NewLedger()
		var credited, lost, most float64 // of the hour in hand
		hour, hours := -1, 0
		var before Month
		month := -1
		close := func() {
			if credited > math.Min(lost, most)*(1+exact)+1 {
				t.Fatalf("hour %d: credited %.0f J, lost %.0f J, demand %.0f J", hour, credited, lost, most)
			}
			if credited > 0 {
				hours++
			}
			credited, lost, most = 0, 0, 0
		}
		watch := func(s *Sample) {
			if h := calendar.HourOf(s.T); h != hour {
				close()
				hour = h
			}
			if m := calendar.MonthOfDay(calendar.DayOf(s.T)); m != month {
				month, before = m, Month{}
			}
			now := &l.Months[month]
			credited += now.Credited - before.Credited
			lost += math.Max(0, now.HouseFromWater-before.HouseFromWater)
			most += p.House.LossWPerK * math.Max(0, p.House.BaseC-s.OutdoorC) * s.Dt
			before = *now
		}
		if err := New(p).Run(t.Context(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l, Trace: watch}); err != nil {
			t.Fatal(err)
		}
		band{2000, calendar.Hours}.check(t, "hours with a credit", float64(hours))
		credit, from := total(l, func(m *Month) float64 { return m.Credited }), total(l, func(m *Month) float64 { return m.HouseFromWater })
		band{0.3, 0.95}.check(t, "share of the losses that is credited", credit/from)
		losses := total(l, func(m *Month) float64 { return m.VesselLoss + m.LoopLoss + m.DeadLegLoss })
		band{0, 0.8}.check(t, "share of all losses that lands in heated rooms", from/losses)
	})
}

// Hot water keeps the heat pump from the house for an hour: the rooms fall as one
// lump of heat capacity does. 200 W/K, 20 K, one hour and 10 kWh/K make 0.4 K by the
// straight line, 0.396 K by the exponential.
func TestDipOfTheRooms(t *testing.T) {
	p := cylinderParams(t)
	p.House = House{
		LossWPerK: 200, CapacityJPerK: 10 * joulesPerKWh, RoomC: 20, BaseC: 20, DesignC: -3, FlowDesignC: 45, FlowBaseC: 28, MinRunS: 1200,
	}
	p.Control.Allowed, p.Control.LongestRunS, p.Control.OutputCap = Schedule{}, calendar.HourS, 0.5
	p.Loop.WaterL, p.Loop.MetalJPerK = 0.2, 0 // the loop's own warming would take heat from the rooms as well
	pl := New(p)
	pl.Charge(10)
	l := marched(t, pl, 0, 75*secondsPerMinute, Inputs{Weather: steady(0, 8)}, Override{})
	m := &l.Months[0]
	near(t, "longest gap, s", m.LongestGapS, calendar.HourS, exact)
	near(t, "minutes interrupted", m.InterruptedS/secondsPerMinute, 60, exact)
	near(t, "dip, K", m.WorstDipK, 20*(1-math.Exp(-200.0*calendar.HourS/(10*joulesPerKWh))), 0.01)
	near(t, "dip, K, straight line", m.WorstDipK, 0.4, 0.02)
	if m.Starts != 1 || m.HeatingStarts != 0 {
		t.Errorf("%d starts for hot water, %d for heating", m.Starts, m.HeatingStarts)
	}
}

// The flow temperature of heating is a straight line from base to design
// temperature, level beyond, and the unit's heating water has it.
func TestWeatherCompensation(t *testing.T) {
	h := testHouse()
	for _, c := range []struct{ outdoorC, flowC float64 }{{-3, 45}, {15.5, 28}, {6.25, 36.5}, {-15, 45}, {20, 28}} {
		near(t, "flow", h.flowC(c.outdoorC), c.flowC, exact)
	}
	for _, outdoorC := range []float64{-8, 0, 6} {
		p := housed(t, compactParams)
		p.Control.SetpointC = 20 // hot water never calls
		pl, seconds := New(p), 0.0
		watch := func(s *Sample) {
			if s.HouseW > 0 {
				near(t, "flow of a heating run", pl.loop.tempC, h.flowC(outdoorC), exact)
				seconds += s.Dt
			}
		}
		err := pl.Run(t.Context(), 0, calendar.DayS, Inputs{Weather: steady(outdoorC, 8)}, Override{}, Recorder{Trace: watch})
		if err != nil || seconds < calendar.HourS {
			t.Errorf("%g C: %.0f s of heating, %v", outdoorC, seconds, err)
		}
	}
}

// Heating modulates to what the house needs while that lies within the unit's range:
// one start, no stop. Where less is needed it cycles, with runs of the length that
// the thermostat aims at.
func TestHeatingModulatesAndCycles(t *testing.T) {
	for _, outdoorC := range []float64{-2, 2, 12, 14} {
		p := housed(t, compactParams)
		p.Control.SetpointC = 20
		p.Loop.OutdoorLossWPerK = 0 // else the pipes need heat as well
		least, needs := p.HeatPump.MinOutputW(outdoorC, p.House.flowC(outdoorC)), p.House.steadyNeedW(outdoorC)
		var runS, longestRest, restS, heat float64
		runs := []float64{}
		watch := func(s *Sample) {
			heat += s.HouseW * s.Dt
			if s.HouseW > 0 {
				runS += s.Dt
				restS = 0
				return
			}
			if runS > 0 {
				runs = append(runs, runS)
			}
			runS, restS = 0, restS+s.Dt
			longestRest = math.Max(longestRest, restS)
		}
		l := NewLedger()
		if err := New(p).Run(t.Context(), 0, 10*calendar.DayS, Inputs{Weather: steady(outdoorC, 8)}, Override{}, Recorder{Ledger: l, Trace: watch}); err != nil {
			t.Fatal(err)
		}
		near(t, "mean heat, W", heat/(10*calendar.DayS), needs, 0.02) // the thermostat's band and the loop's first warming
		n := l.Months[0].HeatingStarts
		if needs > least {
			if n != 1 || len(runs) != 0 {
				t.Errorf("%g C: needs %.0f W of at least %.0f W and starts %d times", outdoorC, needs, least, n)
			}
			continue
		}
		shortest := runs[0]
		for _, r := range runs {
			shortest = math.Min(shortest, r)
		}
		t.Logf("%g C: needs %.0f W of at least %.0f W, %d starts in 10 days, shortest run %.1f min", outdoorC, needs, least, n, shortest/secondsPerMinute)
		if n < 10 || shortest < p.House.MinRunS-shortestHouseS {
			t.Errorf("%g C: %d starts, shortest run %.0f s, aimed at %.0f s", outdoorC, n, shortest, p.House.MinRunS)
		}
	}
}

// The loop changes hands with what is in it. In steady cold hot water takes it over
// at the heating flow temperature each time, and hands it back hotter, near its own.
func TestHotLoopReturnsToTheEmitters(t *testing.T) {
	const outdoorC = 0
	in := Inputs{Weather: steady(outdoorC, 8), Draws: twoPeople().Draws}
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := housed(t, params)
		pl := New(p)
		marched(t, pl, 0, calendar.DayS, in, Override{}) // heating has begun
		l := marched(t, pl, calendar.DayS, 21*calendar.DayS, in, Override{})
		m := &l.Months[0]
		if m.Changeovers < 15 || m.Starts != 0 || m.HeatingStarts != 0 {
			t.Fatalf("%d changeovers, %d starts, %d heating starts", m.Changeovers, m.Starts, m.HeatingStarts)
		}
		times := float64(m.Changeovers) * pl.loop.jPerK
		near(t, "loop taken over, C", m.LoopFromHouse/times, p.House.flowC(outdoorC), exact)
		band{p.Control.SetpointC - 3, p.Control.SetpointC + 10}.check(t, "loop handed back, C", m.LoopToHouse/times)
		band{0, rounding}.check(t, "residual", l.Residual())
	})
}

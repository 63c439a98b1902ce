package plant

import (
	"context"
	"errors"
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/vessel"
)

// sameByChannel asks the half hours of each channel to add up to what the months say
// of it: rounding of some thousand terms.
func sameByChannel(t *testing.T, l *Ledger) {
	t.Helper()
	for channel, of := range map[Channel]func(*Month) float64{
		HotWater:      func(m *Month) float64 { return m.Electricity() - m.ImmersionHeat - m.ElectricIdle },
		ImmersionHeat: func(m *Month) float64 { return m.ImmersionHeat },
		Standby:       func(m *Month) float64 { return m.ElectricIdle },
		Heating:       (*Month).HouseElectricity,
	} {
		for month := range l.Months {
			sum := 0.0
			for i := calendar.MonthStartDay(month) * calendar.HalfHoursADay; i < calendar.MonthStartDay(month+1)*calendar.HalfHoursADay; i++ {
				sum += l.HalfHourKWh[channel][i]
			}
			if want := of(&l.Months[month]) / joulesPerKWh; math.Abs(sum-want) > 1e-9*max(want, 1) {
				t.Errorf("channel %d, month %d: half hours %.12f kWh, month %.12f", channel, month+1, sum, want)
			}
		}
	}
}

// The residual is the largest share of a month's heat that is missing, of hot water or
// of the house; a month without heat has none.
func TestResidualIsTheWorstShare(t *testing.T) {
	for _, c := range []struct {
		name string
		m    Month
		want float64
	}{
		{"nothing", Month{}, 0},
		{"all there", Month{HeatPumpHeat: 8, Delivered: 5, VesselLoss: 2, StoreGain: 1}, 0},
		{"hot water short", Month{HeatPumpHeat: 8, Delivered: 4}, 0.5},
		{"hot water too much", Month{HeatPumpHeat: 8, Delivered: 10}, 0.25},
		{"house short", Month{HeatingHeat: 6, HouseGain: 2, HouseHeat: 6, HouseLoss: 4}, 0.5},
		{"circuit short", Month{HeatingHeat: 8, HouseHeat: 4, HouseLoss: 4}, 0.5},
		{"both, the house more", Month{HeatPumpHeat: 8, Delivered: 6, HeatingHeat: 8, HouseHeat: 8, HouseLoss: 2}, 0.75},
		{"both, hot water more", Month{HeatPumpHeat: 8, HeatingHeat: 8, HouseHeat: 8, HouseLoss: 6}, 1},
	} {
		l := &Ledger{}
		l.Months[3] = Month{HeatPumpHeat: 10, Delivered: 9} // a tenth, in another month
		l.Months[5] = c.m
		near(t, c.name, l.Residual(), max(c.want, 0.1), 1e-15)
	}
}

// lossless is the test home's compact store without standing loss: it never calls.
func lossless(t *testing.T) Params {
	t.Helper()
	v := compactStore()
	v.LossWPerK = 0
	p := compactParams(t)
	p.Vessel = vessel.NewCompact(v)
	return p
}

// The pipes outdoors lose UA times the difference of heating flow and outdoor air for
// as long as the house is heated.
func TestHouseLoopLosesOutdoors(t *testing.T) {
	const outdoorC, flowC = -10, 45 // the design flow, held beyond its design day
	p := lossless(t)
	p.House = testHouse()
	pl, l := New(p), NewLedger()
	in := Inputs{Weather: steady(outdoorC, 8)}
	if err := pl.Run(t.Context(), 0, calendar.DayS, in, Override{}, Recorder{}); err != nil {
		t.Fatal(err)
	}
	steps := 0
	rec := Recorder{Ledger: l, Trace: func(*Sample) { steps++ }}
	if err := pl.Run(t.Context(), calendar.DayS, 2*calendar.DayS, in, Override{}, rec); err != nil {
		t.Fatal(err)
	}
	m := &l.Months[0]
	if steps > 2*calendar.HalfHoursADay {
		t.Errorf("%d steps in a day of steady heating", steps)
	}
	if m.HeatingRunS != calendar.DayS || m.RunS != 0 {
		t.Fatalf("heating for %g s, hot water for %g s of the day", m.HeatingRunS, m.RunS)
	}
	near(t, "lost outdoors", m.HeatingLoopLoss, p.Loop.OutdoorLossWPerK*(flowC-outdoorC)*calendar.DayS, rounding)
	if pl.LoopHeldJ() != 0 || pl.RoomSetC() != p.House.RoomC {
		t.Errorf("hot water holds %g J in a loop of the house; rooms are kept at %g C", pl.LoopHeldJ(), pl.RoomSetC())
	}
}

// A start of heating saves the electricity of its lag: the same heat comes, and of the
// power that it would have drawn at once the lag's worth is missing.
func TestHeatingStartHasItsLag(t *testing.T) {
	const lagS = 30
	in := Inputs{Weather: steady(-10, 8)}
	var electricJ, heatJ [2]float64
	firstW := 0.0
	for i, tauS := range []float64{0, lagS} {
		p := lossless(t)
		p.House, p.Start.ElectricityTauS = testHouse(), tauS
		l := NewLedger()
		watch := func(s *Sample) {
			if firstW == 0 {
				firstW = s.HouseElectricW
			}
		}
		if err := New(p).Run(t.Context(), 0, calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: watch}); err != nil {
			t.Fatal(err)
		}
		if l.Months[0].HeatingStarts != 1 {
			t.Fatalf("%d starts, want one", l.Months[0].HeatingStarts)
		}
		electricJ[i], heatJ[i] = l.Months[0].ElectricHeating, l.Months[0].HeatingHeat
	}
	near(t, "heat", heatJ[1], heatJ[0], 0)
	near(t, "electricity of the lag", electricJ[0]-electricJ[1], firstW*lagS, 0.02) // the need falls a little in that time
}

// A plant at rest is followed by a step in each half hour.
func TestRestTakesFewSteps(t *testing.T) {
	pl, steps := New(lossless(t)), 0
	in := Inputs{Weather: steady(7, 10)}
	for _, rec := range []Recorder{{}, {Trace: func(*Sample) { steps++ }}} {
		if err := pl.Run(t.Context(), 0, calendar.DayS, in, Override{}, rec); err != nil {
			t.Fatal(err)
		}
	}
	if steps != calendar.HalfHoursADay {
		t.Errorf("%d steps in a day of rest, want %d", steps, calendar.HalfHoursADay)
	}
	near(t, "heat in the loop", pl.LoopHeldJ(), pl.loop.jPerK*pl.loop.tempC, 0)
}

// What happens before the year is booked in its last half hours and its last month.
func TestBeforeTheYearIsItsEnd(t *testing.T) {
	p := compactParams(t)
	l := marched(t, New(p), -calendar.HourS, 0, Inputs{Weather: steady(7, 10)}, Override{})
	const lastHour = calendar.HalfHours - 2
	for i := range l.HalfHourKWh[Standby] {
		want := 0.0
		if i >= lastHour {
			want = p.Power.StandbyW * calendar.HalfHourS / joulesPerKWh
		}
		if got := l.HalfHourKWh[Standby][i]; math.Abs(got-want) > 1e-12 {
			t.Fatalf("half hour %d: %g kWh of standby, want %g", i, got, want)
		}
	}
	near(t, "December", l.Months[11].ElectricIdle, p.Power.StandbyW*calendar.HourS, 1e-12)
}

// A run ends at the next half hour once nobody waits for it.
func TestRunEndsWithItsContext(t *testing.T) {
	gone := errors.New("nobody waits")
	ctx, cancel := context.WithCancelCause(t.Context())
	steps := 0
	watch := func(s *Sample) {
		if steps++; s.T >= calendar.HourS {
			cancel(gone)
		}
		if s.T >= calendar.HourS+calendar.HalfHourS {
			t.Fatalf("still running at %g s", s.T)
		}
	}
	err := New(lossless(t)).Run(ctx, 0, calendar.DayS, Inputs{Weather: steady(7, 10)}, Override{}, Recorder{Trace: watch})
	if !errors.Is(err, context.Canceled) || steps == 0 {
		t.Errorf("error %v after %d steps", err, steps)
	}
}

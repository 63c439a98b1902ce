package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// audit keeps books of its own from what the trace shows, month by month.
type audit struct {
	books  [calendar.MonthsInAYear]map[string]float64
	houseC float64
	before Sample
	inUse  bool // whether there was a step before
}

func (a *audit) add(s *Sample, name string, x float64) {
	month := calendar.MonthOfDay(calendar.DayOf(s.T))
	if a.books[month] == nil {
		a.books[month] = map[string]float64{}
	}
	a.books[month][name] += x
}

// begins reports a step in which something holds that did not in the step before.
func (a *audit) begins(s *Sample, holds func(*Sample) bool) bool {
	return a.inUse && holds(s) && !holds(&a.before)
}

func (a *audit) count(s *Sample, name string, is bool) {
	if is {
		a.add(s, name, 1)
	}
}

func (a *audit) note(s *Sample) {
	water := func(s *Sample) bool { return s.Running }
	house := func(s *Sample) bool { return s.HouseElectricW > 0 }
	a.water(s)
	a.house(s)
	a.count(s, "starts", a.begins(s, water) && !house(&a.before))
	a.count(s, "changeovers", a.begins(s, water) && house(&a.before))
	a.count(s, "heating starts", a.begins(s, house) && !water(&a.before))
	a.count(s, "defrosts", a.begins(s, func(s *Sample) bool { return s.HeatW < 0 && s.Running }))
	a.count(s, "heating defrosts", a.begins(s, func(s *Sample) bool { return s.HouseW < 0 || s.HeatW < 0 && !s.Running }))
	a.before, a.inUse = *s, true
}

// water books what a step shows of hot water.
func (a *audit) water(s *Sample) {
	a.add(s, "heat", max(s.HeatW, 0)*s.Dt)
	a.add(s, "defrost heat", max(-s.HeatW, 0)*s.Dt)
	a.add(s, "compressor", s.ElectricW*s.Dt)
	a.add(s, "pump", s.PumpW*s.Dt)
	a.add(s, "heater", s.ImmersionW*s.Dt)
	if s.ElectricW > 0 {
		a.add(s, "run", s.Dt)
	}
	if s.HeatW < 0 {
		a.add(s, "compressor in defrosts", s.ElectricW*s.Dt)
	}
	if s.OutletC < 50 {
		a.add(s, "tepid", s.Dt)
	}
	for _, d := range s.Draws {
		if d.Waiting {
			a.add(s, "waiting", s.Dt)
		} else {
			a.add(s, "litres", d.FlowLPerMin/60*s.Dt)
		}
	}
}

// house books what it shows of the house, which waits while hot water is made, valve
// travel included.
func (a *audit) house(s *Sample) {
	a.add(s, "heating", max(s.HouseW, 0)*s.Dt)
	a.add(s, "heating defrost heat", max(-s.HouseW, 0)*s.Dt)
	a.add(s, "heating compressor", s.HouseElectricW*s.Dt)
	if s.HouseElectricW > 0 {
		a.add(s, "heating run", s.Dt)
	}
	a.add(s, "worst dip", max(0, a.houseC-s.RoomTempC-a.books[calendar.MonthOfDay(calendar.DayOf(s.T))]["worst dip"]))
}

// ofMonth gives the same figures as the ledger has them.
func ofMonth(m *Month, pumpW float64) map[string]float64 {
	litres, waiting := 0.0, 0.0
	for _, d := range m.Draws {
		litres, waiting = litres+d.Litres, waiting+d.WaitS
	}
	return map[string]float64{
		"heat": m.HeatPumpHeat, "defrost heat": m.DefrostHeat, "heater": m.ImmersionHeat, "pump": m.ElectricPump,
		"compressor": m.ElectricRun + m.ElectricGone + m.ElectricDefrost, "compressor in defrosts": m.ElectricDefrost,
		"run": m.RunS, "tepid": m.TepidS, "litres": litres, "waiting": waiting,
		"heating": m.HeatingHeat, "heating defrost heat": m.HeatingDefrost, "heating compressor": m.ElectricHeating,
		"heating run": m.HeatingRunS, "worst dip": m.WorstDipK, "starts": float64(m.Starts), "changeovers": float64(m.Changeovers),
		"heating starts": float64(m.HeatingStarts), "defrosts": float64(m.Defrosts), "heating defrosts": float64(m.HeatingDefrosts),
		"heating run by its pump": m.ElectricHousePump / pumpW,
	}
}

// What the ledger books is what the trace shows, with everything on: books kept apart
// from the same steps, to rounding.
func TestLedgerIsWhatTheTraceShows(t *testing.T) {
	in := twoPeople()
	in.Draws = quietAtMonthEnds(in.Draws)
	fromStore := everything(t, "compact")
	fromStore.Frost.FromStore = true
	for name, p := range map[string]Params{
		"compact": everything(t, "compact"), "cylinder": everything(t, "cylinder"), "defrosts from the store": fromStore,
	} {
		a := &audit{houseC: p.House.RoomC}
		l := NewLedger()
		if err := New(p).Run(t.Context(), 0, 90*calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: a.note}); err != nil {
			t.Fatal(err)
		}
		if now := [3]float64{p.Vessel.AtC(0), p.Vessel.AtC(0.5), p.Vessel.AtC(1)}; now != [3]float64{a.before.BottomC, a.before.MiddleC, a.before.TopC} {
			t.Errorf("%s: the vessel has %v C at the end: %+v", name, now, a.before)
		}
		for month := range 3 {
			books := a.books[month]
			books["heating run by its pump"] = books["heating run"]
			for figure, want := range ofMonth(&l.Months[month], p.Power.PumpW) {
				if got := books[figure]; math.Abs(got-want) > 1e-9*max(want, 1) {
					t.Errorf("%s, month %d: %s is %.9g by the trace, %.9g in the ledger", name, month+1, figure, got, want)
				}
				if month == 0 && want == 0 && !(p.Frost.FromStore && figure == "heating defrost heat") {
					t.Errorf("%s: no %s, which says nothing", name, figure)
				}
			}
		}
	}
}

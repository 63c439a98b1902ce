package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/vessel"
)

// glycolShare is the heat content of heating water with a third of glycol over that
// of water (from memory).
const glycolShare = 0.93

// testHouse is a semi-detached house in the British climate: common practice, no
// source.
func testHouse() House {
	return House{
		LossWPerK: 180, CapacityJPerK: 10 * joulesPerKWh, RoomC: 20, BaseC: 15.5, DesignC: -3,
		FlowDesignC: 45, FlowBaseC: 28, MinRunS: 1200, HeatedShare: 1,
	}
}

// testFrost is one defrost of five minutes and 0.3 kWh in 50 minutes of the most
// humid running; a full load melts off in half an hour.
func testFrost() Frost {
	return Frost{IntervalS: 3000, DurationS: 300, HeatJ: 0.3 * joulesPerKWh, MeltS: 1800}
}

// weekly is a hot spell of half an hour at 60 C on the first of each seven days.
func weekly() Hygiene {
	return Hygiene{
		EveryS: 7 * calendar.DayS, FirstS: 13 * calendar.HourS, TargetC: 60, HoldS: 1800, HeadroomK: 8, GiveUpS: 8 * calendar.HourS,
	}
}

// everything is a plant of the test home with all effects that the engine knows
// switched on at once: frost, house, immersion heater, hot spells, valve travel,
// over-run, glycol, setpoints by month and by window, an erring sensor, priority.
func everything(t testing.TB, name string) Params {
	t.Helper()
	p, loss := compactParams(t), 0.0
	if name == "cylinder" {
		p = cylinderParams(t)
		loss = tallCylinder().LossWPerK
	} else {
		loss = compactStore().LossWPerK
	}
	p.Vessel = withGlycol(name, loss)
	p.Loop.CapacityShare, p.Loop.ValveS, p.Loop.OverrunS = glycolShare, 15, 120
	p.Frost, p.House, p.Hygiene = testFrost(), testHouse(), weekly()
	p.Immersion = Immersion{PowerW: 3000, Height: 0.3, BoostBelowC: 38, BoostK: 5}
	p.Power.HouseW = 11
	p.Control.SensorErrorK, p.Control.LongestRunS = 0.5, 2*calendar.HourS
	months := [12]float64{}
	for m := range months {
		months[m] = p.Control.SetpointC
		if m < 2 || m > 10 {
			months[m] += 3
		}
	}
	p.Control.MonthC = &months
	p.Control.Raised = []Raised{{When: windows(t, Window{clock(13, 30), clock(15, 0)}), SetpointC: p.Control.SetpointC + 5}}
	return p
}

// withGlycol is an option's vessel behind heating water with glycol.
func withGlycol(name string, lossWPerK float64) vessel.Vessel {
	if name == "cylinder" {
		v := tallCylinder()
		v.PrimaryShare, v.LossWPerK = glycolShare, lossWPerK
		return vessel.NewCylinder(v)
	}
	v := compactStore()
	v.PrimaryShare, v.LossWPerK = glycolShare, lossWPerK
	return vessel.NewCompact(v)
}

// The first law with everything on, each month of a year, hot water and house
// together. 1e-6 is asked for; what is left is rounding.
func TestFirstLawWithEverythingOn(t *testing.T) {
	in := twoPeople()
	for _, o := range options() {
		l := marched(t, New(everything(t, o.name)), 0, calendar.YearS, in, Override{})
		band{0, rounding}.check(t, o.name+", residual", l.Residual())
		sameByChannel(t, l)
		for what, of := range map[string]func(*Month) float64{
			"immersion heat": func(m *Month) float64 { return m.ImmersionHeat },
			"defrost heat":   func(m *Month) float64 { return m.DefrostHeat },
			"heating":        func(m *Month) float64 { return m.HeatingHeat },
			"loop to house":  func(m *Month) float64 { return m.LoopToHouse },
			"hot spells":     func(m *Month) float64 { return float64(m.HygieneHeld) },
		} {
			if total(l, of) <= 0 {
				t.Errorf("%s: no %s, so the residual says too little", o.name, what)
			}
		}
	}
}

// Each effect can be taken away: its line in the ledger is then exactly nothing,
// and what that changes in the year's electricity is told.
func TestEachEffectHasItsLine(t *testing.T) {
	if testing.Short() {
		t.Skip("twenty years")
	}
	in := twoPeople()
	for _, o := range options() {
		all := marched(t, New(everything(t, o.name)), 0, calendar.YearS, in, Override{})
		for _, effect := range effectsOff(o.name) {
			p := everything(t, o.name)
			effect.off(&p)
			l := marched(t, New(p), 0, calendar.YearS, in, Override{})
			was, is := total(all, effect.line), total(l, effect.line)
			if was <= 0 || is != 0 {
				t.Errorf("%s, %s: line %g, switched off %g", o.name, effect.name, was, is)
			}
			before, after := electricityKWh(all), electricityKWh(l)
			t.Logf("%s without %s: %.1f kWh of %.1f (%+.1f)", o.name, effect.name, after, before, after-before)
			if after == before {
				t.Errorf("%s: nothing changes without %s", o.name, effect.name)
			}
			if r := l.Residual(); !(r <= rounding) {
				t.Errorf("%s without %s: residual %g", o.name, effect.name, r)
			}
		}
	}
}

// electricityKWh is all electricity of a ledger, hot water and house.
func electricityKWh(l *Ledger) float64 {
	return total(l, func(m *Month) float64 { return m.Electricity() + m.HouseElectricity() }) / joulesPerKWh
}

// effectOff is an effect with the line that it fills and how to take it away.
type effectOff struct {
	name string
	off  func(*Params)
	line func(*Month) float64
}

func effectsOff(name string) []effectOff {
	return []effectOff{
		{"lags of a start", func(p *Params) { p.Start.HeatTauS, p.Start.ElectricityTauS = 0, 0 },
			func(m *Month) float64 { return m.ElectricGone }},
		{"loop loss", func(p *Params) { p.Loop.IndoorLossWPerK, p.Loop.OutdoorLossWPerK = 0, 0 },
			func(m *Month) float64 { return m.LoopLoss }},
		{"vessel loss", func(p *Params) { p.Vessel = withGlycol(name, 0) },
			func(m *Month) float64 { return m.VesselLoss }},
		{"frost", func(p *Params) { p.Frost = Frost{} },
			func(m *Month) float64 {
				return float64(m.Defrosts+m.HeatingDefrosts) + m.DefrostHeat + m.HeatingDefrost + m.ElectricDefrost
			}},
		{"pump", func(p *Params) { p.Power.PumpW = 0 },
			func(m *Month) float64 { return m.ElectricPump + m.ElectricHousePump }},
		{"standby", func(p *Params) { p.Power.StandbyW, p.Power.HouseW = 0, 0 },
			func(m *Month) float64 { return m.ElectricIdle + m.ElectricHouseIdle }},
		{"immersion heater", func(p *Params) { p.Immersion = Immersion{} },
			func(m *Month) float64 { return m.ImmersionHeat }},
		{"dead legs", func(p *Params) { p.Supply.DeadLegsL = make([]float64, len(p.Supply.DeadLegsL)) },
			func(m *Month) float64 { return m.DeadLegLoss }},
		{"hot spells", func(p *Params) { p.Hygiene = Hygiene{} },
			func(m *Month) float64 { return float64(m.HygieneHeld + m.HygieneMissed) }},
		{"useful losses", func(p *Params) { p.House.HeatedShare = 0 },
			func(m *Month) float64 { return m.Credited }},
		{"house", func(p *Params) { p.House, p.Power.HouseW = House{}, 0 },
			func(m *Month) float64 { return m.HouseElectricity() + m.LoopToHouse + float64(m.Changeovers) }},
	}
}

// With everything on, too, no day's loop loss exceeds UA dT 24 h, at the hottest water
// that passed the loop that day or stood in it at midnight.
func TestLoopLossIsBoundedWithEverythingOn(t *testing.T) {
	in := twoPeople()
	for _, o := range options() {
		p := everything(t, o.name)
		pl, l := New(p), NewLedger()
		for day := range calendar.Days {
			hottest, coldestAir := pl.loop.tempC, 40.0
			watch := func(s *Sample) {
				hottest, coldestAir = max(hottest, pl.loop.tempC, s.FlowC), min(coldestAir, s.OutdoorC)
			}
			l.Reset()
			from := float64(day) * calendar.DayS
			if err := pl.Run(t.Context(), from, from+calendar.DayS, in, Override{}, Recorder{Ledger: l, Trace: watch}); err != nil {
				t.Fatal(err)
			}
			most := (p.Loop.IndoorLossWPerK*(hottest-p.RoomC) + p.Loop.OutdoorLossWPerK*(hottest-coldestAir)) * calendar.DayS
			if got := total(l, func(m *Month) float64 { return m.LoopLoss }); !(got <= most) {
				t.Fatalf("%s, day %d: loop lost %.0f J, at most %.0f J", o.name, day, got, most)
			}
		}
	}
}

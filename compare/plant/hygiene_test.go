package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/heatpump"
)

// upTo is a small unit whose water gets no hotter than stated.
func upTo(t *testing.T, highestFlowC float64) *heatpump.Unit {
	t.Helper()
	d := heatpump.Defaults()
	d.HighestFlowC = highestFlowC
	unit, err := heatpump.New(d)
	if err != nil {
		t.Fatal(err)
	}
	return unit
}

// hotMinutes adds up, week by week, the longest stretch at which the water at the
// control sensor held a temperature.
type hotMinutes struct {
	pl      *Plant
	atC     float64
	nowS    float64
	longest [54]float64
}

func (h *hotMinutes) note(s *Sample) {
	if h.pl.vessel.AtC(h.pl.params.Control.SensorHeight) < h.atC {
		h.nowS = 0
		return
	}
	h.nowS += s.Dt
	week := int(s.T / (7 * calendar.DayS))
	h.longest[week] = math.Max(h.longest[week], h.nowS)
}

// A weekly hot spell of half an hour at 60 C holds in each of the year's 53 weeks
// that have their first day in it, whatever the windows; the vessel is really that
// hot. The last begins on the last day.
func TestHotSpellsHoldEveryWeek(t *testing.T) {
	in := twoPeople()
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := params(t)
		p.Hygiene = weekly()
		pl, l := New(p), NewLedger()
		h := hotMinutes{pl: pl, atC: p.Hygiene.TargetC - 0.5} // the sensor lags
		if err := pl.Run(t.Context(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l, Trace: h.note}); err != nil {
			t.Fatal(err)
		}
		held, missed := 0, 0
		for i := range l.Months {
			held, missed = held+l.Months[i].HygieneHeld, missed+l.Months[i].HygieneMissed
		}
		if held != 53 || missed != 0 {
			t.Errorf("%d spells held, %d missed", held, missed)
		}
		for week, s := range h.longest[:52] {
			if s < p.Hygiene.HoldS-ownPace.runningS {
				t.Errorf("week %d: %.0f s at %g C", week, s, h.atC)
			}
		}
		if heat := total(l, func(m *Month) float64 { return m.ImmersionHeat }); heat != 0 {
			t.Errorf("%g J from an immersion heater that is not there", heat)
		}
	})
}

// The immersion heater does what the heat pump cannot, and nothing where it can. A
// unit whose water reaches 60 C makes a vessel of 52 C (8 K less); the rest up to 62 C
// is the heater's, and without it no spell holds.
func TestImmersionDoesWhatTheHeatPumpCannot(t *testing.T) {
	in := twoPeople()
	const to = 90 * calendar.DayS
	for _, c := range []struct {
		highestC, powerW float64
		holds, immersion bool
	}{{70, 3000, true, false}, {60, 3000, true, true}, {60, 0, false, false}} {
		p := cylinderParams(t)
		p.HeatPump, p.Hygiene = upTo(t, c.highestC), weekly()
		p.Immersion = Immersion{PowerW: c.powerW, Height: 0.1}
		p.Control.OutputCap = 1 // no spell runs so late that the heater has to help
		l := marched(t, New(p), 0, to, in, Override{})
		held, missed := 0, 0
		for i := range l.Months {
			held, missed = held+l.Months[i].HygieneHeld, missed+l.Months[i].HygieneMissed
		}
		heat := total(l, func(m *Month) float64 { return m.ImmersionHeat }) / joulesPerKWh
		t.Logf("up to %g C, heater %g W: %d held, %d missed, %.1f kWh by the heater", c.highestC, c.powerW, held, missed, heat)
		if (held == 13) != c.holds || (missed == 13) == c.holds || (heat > 0) != c.immersion {
			t.Errorf("up to %g C, heater %g W: %d held, %d missed, %.1f kWh by the heater", c.highestC, c.powerW, held, missed, heat)
		}
		if c.immersion {
			// At most the whole cylinder from 52 to 62 C and an hour's losses in each.
			band{20, 13 * 220 * 4.2 * 10 / 3600 * 1.3}.check(t, "kWh by the heater", heat)
		}
	}
}

// Where the heat pump cannot reach the target of a hot spell the immersion heater
// takes over as soon as the heat pump has done its part, and not only when the spell
// is late.
func TestImmersionTakesOverAtOnce(t *testing.T) {
	p := cylinderParams(t)
	p.HeatPump, p.Hygiene = upTo(t, 60), weekly()
	p.Control.OutputCap = 1
	p.Immersion = Immersion{PowerW: 3000, Height: 0.1}
	ended, began := math.Inf(1), math.Inf(1) // last moment of the heat pump, first of the heater
	watch := func(s *Sample) {
		switch {
		case s.T < p.Hygiene.FirstS:
		case s.ImmersionW > 0:
			began = min(began, s.T)
		case s.Running && math.IsInf(began, 1):
			ended = s.T + s.Dt
		}
	}
	to := p.Hygiene.FirstS + p.Hygiene.GiveUpS
	if err := New(p).Run(t.Context(), 0, to, Inputs{Weather: steady(7, 10)}, Override{}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	band{0, ownPace.runningS}.check(t, "from heat pump to heater, s", began-ended)
	band{0, p.Hygiene.GiveUpS / 4}.check(t, "from the start of the spell, s", began-p.Hygiene.FirstS)
}

// Below its boost temperature the immersion heater helps and stops its hysteresis
// above: with the heat pump off it keeps the water there.
func TestImmersionBoost(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		p := params(t)
		p.Immersion = Immersion{PowerW: 2000, Height: 0.3, BoostBelowC: 42, BoostK: 5}
		pl := New(p)
		pl.Charge(30)
		low, high := math.Inf(1), math.Inf(-1)
		watch := func(s *Sample) {
			if s.T < noon+8*calendar.HourS {
				return
			}
			at := pl.vessel.NearC(p.Immersion.Height)
			low, high = math.Min(low, at), math.Max(high, at)
		}
		l := NewLedger()
		in := Inputs{Weather: steady(7, 10)}
		if err := pl.Run(t.Context(), noon, noon+10*calendar.DayS, in, Override{Mode: Off}, Recorder{Ledger: l, Trace: watch}); err != nil {
			t.Fatal(err)
		}
		band{41.5, 42.1}.check(t, "coldest, C", low)
		band{46.9, 48.5}.check(t, "hottest, C", high) // a step of the heater beyond
		m := &l.Months[calendar.MonthOfDay(200)]
		near(t, "immersion heat against losses and what is kept", m.ImmersionHeat, m.VesselLoss+m.LoopLoss+m.StoreGain, 1e-9)
	})
}

// Water that has the boost temperature is not colder than it.
func TestNoBoostAtItsTemperature(t *testing.T) {
	for tempC, on := range map[float64]bool{42: false, 41.9: true} {
		p := lossless(t)
		p.Immersion = Immersion{PowerW: 2000, Height: 0.3, BoostBelowC: 42, BoostK: 5}
		pl := New(p)
		pl.Charge(tempC)
		l := marched(t, pl, noon, noon+calendar.HourS, Inputs{Weather: steady(7, 10)}, Override{Mode: Off})
		if heat := total(l, func(m *Month) float64 { return m.ImmersionHeat }); (heat > 0) != on {
			t.Errorf("at %g C the heater gave %g J", tempC, heat)
		}
	}
}

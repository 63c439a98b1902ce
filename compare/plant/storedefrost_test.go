package plant

import (
	"context"
	"reflect"
	"testing"

	"dhwcompare/compare/calendar"
)

// frosty is a housed compact store whose heating defrosts may take heat from it.
func frosty(t testing.TB, fromStore bool) Params {
	p := housed(t, compactParams)
	p.Frost = testFrost()
	p.Frost.FromStore = fromStore
	return p
}

// A store in the defrost circuit gives the heat of every defrost of heating, the
// house none, and the first law holds for both sides.
func TestHeatingDefrostsFromTheStore(t *testing.T) {
	in := twoPeople()
	from := marched(t, New(frosty(t, true)), 0, calendar.YearS, in, Override{})
	beside := marched(t, New(frosty(t, false)), 0, calendar.YearS, in, Override{})
	band{0, rounding}.check(t, "residual", from.Residual())
	defrosts, heating := 0, 0
	for i := range from.Months {
		defrosts += from.Months[i].Defrosts + from.Months[i].HeatingDefrosts
		heating += from.Months[i].HeatingDefrosts
	}
	if heating < 300 {
		t.Fatalf("%d heating defrosts say nothing", heating)
	}
	near(t, "heat from the house", total(from, func(m *Month) float64 { return m.HeatingDefrost }), 0, exact)
	near(t, "heat from the store, of each defrost", total(from, func(m *Month) float64 { return m.DefrostHeat })/float64(defrosts), testFrost().HeatJ, 1/float64(defrosts)) // one may be cut off
	for _, of := range []struct {
		name string
		heat func(m *Month) float64
	}{
		{"heat for hot water", func(m *Month) float64 { return m.HeatPumpHeat }},
		{"loop heat to the house, on balance", func(m *Month) float64 { return m.LoopToHouse - m.LoopFromHouse }},
		{"electricity for hot water", (*Month).Electricity},
	} {
		if with, without := total(from, of.heat), total(beside, of.heat); with <= without {
			t.Errorf("%s: %.3g J from the store, %.3g J from the heating circuit", of.name, with, without)
		}
	}
}

// A store colder than the heating water has nothing to give, so the heating circuit
// gives the heat.
func TestColdStoreGivesNoDefrostHeat(t *testing.T) {
	p := frosty(t, true)
	p.Control.Allowed = Never()
	pl := New(p)
	pl.Charge(20)
	in := Inputs{Weather: steady(0, 8)}
	l := marched(t, pl, 0, 10*calendar.DayS, in, Override{})
	m := &l.Months[0]
	if m.HeatingDefrosts < 100 {
		t.Fatalf("%d defrosts say nothing", m.HeatingDefrosts)
	}
	near(t, "heat from the store", m.DefrostHeat, 0, exact)
	near(t, "heat from the house, of each defrost", m.HeatingDefrost/float64(m.HeatingDefrosts), testFrost().HeatJ, 1/float64(m.HeatingDefrosts)) // one may be cut off
	band{0, rounding}.check(t, "residual", l.Residual())
}

// Stretches of any length in any mode, one after the other, some of which begin in
// the middle of a defrost: every figure stays a number and both balances close.
func TestStretchesCutDefrosts(t *testing.T) {
	in := Inputs{Weather: steady(0, 8), Draws: twoPeople().Draws}
	for _, fromStore := range []bool{false, true} {
		pl, l := New(frosty(t, fromStore)), NewLedger()
		at, cut := 2*float64(calendar.DayS), 0
		for i := range 400 {
			if pl.frost.defrostLeft > 0 {
				cut++
			}
			to := at + 173*float64(1+i%7)
			mode := []Mode{Normal, Normal, Normal, Off, Normal, On}[i%6]
			if err := pl.Run(context.Background(), at, to, in, Override{Mode: mode}, Recorder{Ledger: l}); err != nil {
				t.Fatal(err)
			}
			at = to
		}
		m := &l.Months[0]
		allNumbers(t, reflect.ValueOf(*m))
		if cut < 5 {
			t.Errorf("%d stretches began in a defrost, which says nothing", cut)
		}
		band{0, rounding}.check(t, "residual", l.Residual())
	}
}

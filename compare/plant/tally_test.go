package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

// What the months tell of draws is what their outcomes tell, kind by kind.
func TestMonthsTallyTheOutcomes(t *testing.T) {
	in := twoPeople()
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		l := marched(t, New(params(t)), 0, 60*calendar.DayS, in, Override{})
		var want, got [drawKinds]Tally
		for i := range l.Outcomes {
			o := &l.Outcomes[i]
			w := &want[o.Draw.Kind]
			w.Count++
			w.ColdS, w.WaitS, w.Litres = w.ColdS+o.ColdS, w.WaitS+o.WaitS, w.Litres+o.Litres
			if o.Failed {
				w.Failed++
			}
		}
		for i := range l.Months {
			for kind, d := range l.Months[i].Draws {
				g := &got[kind]
				g.Count, g.Failed = g.Count+d.Count, g.Failed+d.Failed
				g.ColdS, g.WaitS, g.Litres = g.ColdS+d.ColdS, g.WaitS+d.WaitS, g.Litres+d.Litres
			}
		}
		for kind, w := range want {
			g, name := got[kind], household.Kind(kind).String()
			if g.Count != w.Count || g.Failed != w.Failed || w.Count == 0 {
				t.Errorf("%s: %d draws, %d failed; outcomes %d, %d", name, g.Count, g.Failed, w.Count, w.Failed)
			}
			near(t, name+", cold", g.ColdS, w.ColdS, rounding)
			near(t, name+", waiting", g.WaitS, w.WaitS, rounding)
			near(t, name+", litres", g.Litres, w.Litres, rounding)
		}
	})
}

// Runs within the range of the performance map are not counted as outside it, but for their
// cold first minutes; hotter
// ones are.
func TestRunsOutsideTheMapAreCounted(t *testing.T) {
	in := Inputs{Weather: steady(7, 10), Draws: twoPeople().Draws}
	for name, setpointC := range map[string]float64{"within": 42, "beyond": 62} {
		p := alwaysAllowed(cylinderParams(t))
		p.Control.SetpointC = setpointC
		l := marched(t, New(p), 0, 20*calendar.DayS, in, Override{})
		outside, runs := l.Months[0].ExtrapolatedS, l.Months[0].RunS
		if name == "within" && outside > runs/20 || name == "beyond" && outside < runs/2 || runs == 0 {
			t.Errorf("%s: %g of %g s are counted", name, outside, runs)
		}
	}
}

// Books without entries have no residual.
func TestNothingIsMissingOfNothing(t *testing.T) {
	if r := NewLedger().Residual(); r != 0 {
		t.Errorf("residual %g", r)
	}
}

package plant

import (
	"testing"

	"dhwcompare/compare/calendar"
)

// endures gives the minutes of a long shower until it is too cold for good, the
// vessel charged, in unchanging weather.
func endures(t *testing.T, p Params, mode Mode, flowLPerMin, mainsC float64) float64 {
	t.Helper()
	const longMin = 60
	l := &Ledger{}
	pl := New(p)
	pl.WarmLoop(p.Control.SetpointC)
	in := Inputs{Weather: steady(7, mainsC), Draws: nil}
	in.Draws = append(in.Draws, shower(flowLPerMin, longMin))
	if err := pl.Run(t.Context(), noon, noon+2*calendar.HourS, in, Override{Mode: mode}, Recorder{Ledger: l}); err != nil {
		t.Fatal(err)
	}
	o := &l.Outcomes[0]
	return (o.FlowingS - o.ColdS) / secondsPerMinute
}

// A higher setpoint never shortens the shower with the heat pump off.
func TestHigherSetpointNeverShortensTheShower(t *testing.T) {
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		for _, flow := range []float64{5, 7, 12} {
			for _, mainsC := range []float64{5, 18} {
				before, first := 0.0, -1.0
				for setpointC := 42.0; setpointC <= 68; setpointC++ {
					p := params(t)
					p.Control.SetpointC = setpointC
					lasts := endures(t, p, Off, flow, mainsC)
					if lasts < before-stepMin {
						t.Errorf("%g l/min, mains %g C: %.3f min at %g C, %.3f min a kelvin lower", flow, mainsC, lasts, setpointC, before)
					}
					if before = lasts; first < 0 {
						first = lasts
					}
				}
				t.Logf("%g l/min, mains %g C: %.2f min at 42 C, %.2f min at 68 C", flow, mainsC, first, before)
				if first >= before {
					t.Errorf("%g l/min, mains %g C: the setpoint does nothing", flow, mainsC)
				}
			}
		}
	})
}

// stepMin is how exactly a shower's end is known while the heat pump runs, in minutes:
// a part of the longest step of a draw. With the heat pump off it is exact, but for the
// portions of a layer that a cylinder gives at one temperature.
var stepMin = 0.1 * 20.0 / secondsPerMinute

// More flow never lengthens a shower, with the heat pump off, on, and on its
// controls; colder mains never does either.
func TestFlowAndMainsShortenTheShower(t *testing.T) {
	modes := map[Mode]string{Off: "off", On: "on", Normal: "normal", InDefrost: "in defrost"}
	eachOption(t, func(t *testing.T, params func(testing.TB) Params) {
		frosty := func() Params {
			p := params(t)
			p.Frost = testFrost()
			return p
		}
		for mode, name := range modes {
			slack := stepMin
			if mode == Off {
				slack = exact
			}
			for _, mainsC := range []float64{4, 18} {
				before := 1e9
				for flow := 4.0; flow <= 15; flow++ {
					lasts := endures(t, frosty(), mode, flow, mainsC)
					if lasts > before+slack {
						t.Errorf("heat pump %s, mains %g C: %.3f min at %g l/min, %.3f min at a litre less", name, mainsC, lasts, flow, before)
					}
					before = lasts
				}
			}
			for _, flow := range []float64{5, 8} {
				before := 0.0
				for mainsC := 3.0; mainsC <= 24; mainsC += 3 {
					lasts := endures(t, frosty(), mode, flow, mainsC)
					if lasts < before-slack {
						t.Errorf("heat pump %s, %g l/min: %.3f min at mains of %g C, %.3f min three kelvin colder", name, flow, lasts, mainsC, before)
					}
					before = lasts
				}
			}
		}
	})
}

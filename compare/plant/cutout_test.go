package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/vessel"
)

// hottestTop gives the hottest water at the top of a vessel in two days of steady
// weather, and the heat of the immersion heater, kWh.
func hottestTop(t *testing.T, p Params) (hottestC, heatKWh float64) {
	t.Helper()
	hottestC = math.Inf(-1)
	l := NewLedger()
	rec := Recorder{Ledger: l, Trace: func(s *Sample) { hottestC = max(hottestC, s.TopC) }}
	if err := New(p).Run(t.Context(), 0, 2*calendar.DayS, Inputs{Weather: steady(7, 10)}, Override{}, rec); err != nil {
		t.Fatal(err)
	}
	return hottestC, total(l, func(m *Month) float64 { return m.ImmersionHeat }) / joulesPerKWh
}

// A hot spell whose sensor lies below the heater would go on heating for hours: the
// heater's own cut-out ends that, a step beyond its temperature at most.
func TestCutOutEndsWhatTheSensorDoesNotSee(t *testing.T) {
	for height, want := range map[float64]band{0.0: {85, 87}, 0.9: {62, 67}} {
		p := cylinderParams(t)
		p.HeatPump, p.Hygiene = upTo(t, 55), weekly()
		p.Immersion = Immersion{PowerW: 3000, Height: 0.5}
		p.Control.SensorHeight = height
		hottestC, heatKWh := hottestTop(t, p)
		want.check(t, "hottest water, C", hottestC)
		if heatKWh <= 0 {
			t.Error("the heater never ran, so this says nothing")
		}
	}
}

// A strong heater in a thin layer at the very top takes steps that are short enough
// for its thermostat.
func TestHeaterInAThinLayer(t *testing.T) {
	v := compactStore()
	v.VolumeL, v.Layers = 40, 200
	p := compactParams(t)
	p.Vessel = vessel.NewCompact(v)
	p.Immersion = Immersion{PowerW: 6000, Height: 1, BoostBelowC: 60, BoostK: 3}
	hottestC, heatKWh := hottestTop(t, p)
	band{60, 65}.check(t, "hottest water, C", hottestC)
	if heatKWh <= 0 {
		t.Error("the heater never ran, so this says nothing")
	}
}

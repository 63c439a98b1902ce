package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/vessel"
)

// levelled takes from both options what makes them differ in principle: volume,
// coils (conductance beyond any that matters: 17 transfer units and more), losses,
// loop, starts, and the COP's dependence on leaving water and output. What is left
// is where each keeps its heat and when it heats.
func levelled(t *testing.T, name string) Params {
	t.Helper()
	const (
		litres, heightM, layers = 220, 1.35, 48
		setpointC               = 55
		indirectWPerK           = 2e4
		immersedWPerK           = 1e5
	)
	p := testParams(t)
	p.Control = Control{SetpointC: setpointC, HysteresisK: 4, SensorHeight: 0.5, OutputCap: 1, FlowAboveK: 5, OvershootK: 5, MinRunS: 180}
	p.Start.HeatTauS, p.Start.ElectricityTauS = 0, 0
	p.Loop = Loop{WaterL: 0.2, FlowLPerMin: 17}
	p.Level = Level{WaterC: 55, Share: 1}
	p.Power = Power{PumpW: 0, StandbyW: 4}
	if name == "cylinder" {
		v := tallCylinder()
		v.VolumeL, v.HeightM, v.Layers, v.LossWPerK, v.CoilUAWPerK, v.CoilBottom, v.CoilTop = litres, heightM, layers, 0, indirectWPerK, 0, 1
		p.Vessel = vessel.NewCylinder(v)
		return p
	}
	v := compactStore()
	v.VolumeL, v.HeightM, v.Layers, v.LossWPerK = litres, heightM, layers, 0
	v.CoilLaw = coil.Stated(immersedWPerK, 10, 0.4)
	p.Vessel = vessel.NewCompact(v)
	return p
}

// Equal in all that may matter, both options have the same efficiency within 3 %.
func TestLevelledOptionsAgree(t *testing.T) {
	in := twoPeople()
	var got [2]float64
	for i, o := range options() {
		l := marched(t, New(levelled(t, o.name)), 0, calendar.YearS, in, Override{})
		got[i] = efficiency(l)
		wanted, delivered := total(l, func(m *Month) float64 { return m.Wanted }), total(l, func(m *Month) float64 { return m.Delivered })
		t.Logf("%s: efficiency %.4f, %.4f of the wanted heat delivered, %.0f starts", o.name, got[i], delivered/wanted, starts(l))
		if lost := total(l, func(m *Month) float64 { return m.VesselLoss + m.LoopLoss + m.ElectricGone }); lost != 0 {
			t.Errorf("%s: %g J lost without losses", o.name, lost)
		}
	}
	band{0, 0.03}.check(t, "difference in efficiency", math.Abs(got[0]/got[1]-1))
}

package plant

import (
	"testing"
	"time"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
)

// testYear is the calendar of every test.
func testYear() calendar.Year { return calendar.European(time.Thursday) }

// twoPeople is a home of two people with a small heat pump in the average
// British climate (SAP 10.2, Tables U1 and J1); bands for what its options do
// are common practice, no source.
func twoPeople() Inputs { return twoPeopleIn(0) }

// twoPeopleIn is the same home in any year of an ensemble.
func twoPeopleIn(year int) Inputs {
	p := climate.Defaults()
	p.OutdoorC = climate.Monthly{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	p.MainsC = climate.Monthly{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	return Inputs{
		Weather: climate.Synthesize(p, 1, year),
		Draws:   household.Draws(household.Defaults(2, true), testYear(), p.MainsC, 1, year),
	}
}

// steady is weather that never changes.
func steady(outdoorC, mainsC float64) *climate.Series {
	s := &climate.Series{
		OutdoorC: make([]float64, calendar.Hours), RHPercent: make([]float64, calendar.Hours), MainsC: make([]float64, calendar.Hours),
	}
	for i := range s.OutdoorC {
		s.OutdoorC[i], s.RHPercent[i], s.MainsC[i] = outdoorC, 80, mainsC
	}
	return s
}

func testParams(t testing.TB) Params {
	t.Helper()
	unit, err := heatpump.New(heatpump.Defaults())
	if err != nil {
		t.Fatal(err)
	}
	return Params{
		HeatPump: unit,
		Start:    heatpump.Defaults().Start,
		Loop:     Loop{WaterL: 11, MetalJPerK: 12e3, IndoorLossWPerK: 1.5, OutdoorLossWPerK: 1.5, FlowLPerMin: 17},
		Supply: Supply{
			LargestFlowLPerMin: 15, DeadLegsL: []float64{1, 1, 0.8, 0.5}, DeadLegCoolS: 1500,
			MixerMarginK: []float64{5, 0, 0, 0},
		},
		Service: Service{ColdSeconds: 30, BathPatienceS: 1500},
		Power:   Power{PumpW: 45, StandbyW: 4},
		RoomC:   20,
	}
}

// compactStore is a store of 60 litres, energy class B, with a coil of 25 m of
// corrugated tube.
func compactStore() vessel.CompactParams {
	g := coil.Corrugated25(25)
	return vessel.CompactParams{
		VolumeL: 60, HeightM: 0.5, Layers: 10, LossWPerK: 42.5 / 45, ConductivityWPerMK: 1.2, InletMixingShare: 0.2,
		CoilWaterL: g.ContentLitres(), CoilDisplacedL: g.DisplacedLitres(), CoilLaw: coil.Fit(g),
	}
}

// compactParams is a store of 60 litres at 55 C: 3 K, full output.
func compactParams(t testing.TB) Params {
	t.Helper()
	p := testParams(t)
	p.Vessel = vessel.NewCompact(compactStore())
	p.Control = Control{
		SetpointC: 55, HysteresisK: 3, SensorHeight: 0.5, SensorLagS: 45, AntiCycleS: 300, MinRunS: 180,
		OutputCap: 1, FlowAboveK: 5, OvershootK: 3,
	}
	return p
}

// tallCylinder is a cylinder of 220 litres, energy class B, with an indirect
// coil of 3 m2 in its lower part.
func tallCylinder() vessel.CylinderParams {
	return vessel.CylinderParams{
		VolumeL: 220, HeightM: 1.35, Layers: 40, LossWPerK: 63.0 / 45, ConductivityWPerMK: 1.2, InletMixingShare: 0.15,
		CoilUAWPerK: coil.IndirectUA(coil.IndirectAreaM2, coil.IndirectCleanWPerM2K, coil.FoulingM2KPerW), CoilBottom: 0.05, CoilTop: 0.6,
	}
}

// cylinderParams is a cylinder of 220 litres at 47 C: half output, reheated in
// the afternoon.
func cylinderParams(t testing.TB) Params {
	t.Helper()
	p := testParams(t)
	p.Vessel = vessel.NewCylinder(tallCylinder())
	allowed, err := DailyWindows([]Window{{FromS: 13 * calendar.HourS, ToS: 16 * calendar.HourS}}, testYear())
	if err != nil {
		t.Fatal(err)
	}
	p.Control = Control{
		SetpointC: 47, HysteresisK: 4, SensorHeight: 0.4, SensorLagS: 45, Allowed: allowed, AntiCycleS: 600, MinRunS: 180,
		OutputCap: 0.5, FlowAboveK: 5, OvershootK: 5,
	}
	return p
}

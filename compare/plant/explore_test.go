package plant

import (
	"context"
	"fmt"
	"testing"
	"time"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/coil"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/vessel"
)

func exploreParams(compact bool) Params {
	hp, err := heatpump.New(heatpump.Defaults())
	if err != nil {
		panic(err)
	}
	p := Params{
		HeatPump: hp, Start: heatpump.Defaults().Start,
		Loop:    Loop{WaterL: 11, MetalJPerK: 12e3, IndoorLossWPerK: 1.5, OutdoorLossWPerK: 1.5, FlowLPerMin: 17},
		Supply:  Supply{LargestFlowLPerMin: 15, DeadLegsL: []float64{1, 1, 1, 1}, DeadLegCoolS: 1500, MixerMarginK: []float64{5, 0, 0, 0}},
		Service: Service{ColdSeconds: 30, BathPatienceS: 1500},
		Power:   Power{PumpW: 45, StandbyW: 4}, RoomC: 20,
	}
	if compact {
		g := coil.Corrugated25(25)
		p.Vessel = vessel.NewCompact(vessel.CompactParams{VolumeL: 60, HeightM: 0.6, Layers: 20, LossWPerK: 42.5 / 45, ConductivityWPerMK: 1.2, InletMixingShare: 0.2,
			CoilWaterL: g.ContentLitres(), CoilDisplacedL: g.DisplacedLitres(), CoilLaw: coil.Fit(g)})
		p.Control = Control{SetpointC: 55, HysteresisK: 3, SensorHeight: 0.5, SensorLagS: 45, AntiCycleS: 300, MinRunS: 180, OutputCap: 1, FlowAboveK: 5, OvershootK: 3}
		return p
	}
	p.Vessel = vessel.NewCylinder(vessel.CylinderParams{VolumeL: 210, HeightM: 1.3, Layers: 32, LossWPerK: 62.0 / 45, ConductivityWPerMK: 1.2, InletMixingShare: 0.15,
		CoilUAWPerK: coil.IndirectUA(3, 400, 1.5e-4), CoilBottom: 0.05, CoilTop: 0.6})
	allowed, err := DailyWindows([]Window{{13 * 3600, 16 * 3600}}, calendar.European(time.Thursday))
	if err != nil {
		panic(err)
	}
	p.Control = Control{SetpointC: 47, HysteresisK: 4, SensorHeight: 0.4, SensorLagS: 45, Allowed: allowed, AntiCycleS: 600, MinRunS: 180, OutputCap: 0.5, FlowAboveK: 5, OvershootK: 5}
	return p
}

func exploreInputs() Inputs {
	cp := climate.Defaults()
	cp.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	cp.MainsC = [12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	w := climate.Synthesize(cp, 1, 0)
	h := household.Defaults(2, true)
	return Inputs{Weather: w, Draws: household.Draws(h, calendar.European(time.Thursday), cp.MainsC, 1, 0)}
}

func TestExplore(t *testing.T) {
	in := exploreInputs()
	for _, compact := range []bool{true, false} {
		p := New(exploreParams(compact))
		l := NewLedger()
		steps := 0
		start := time.Now()
		if err := p.Run(context.Background(), 0, calendar.YearS, in, Override{}, Recorder{Ledger: l, Trace: func(*Sample) { steps++ }}); err != nil {
			t.Fatal(err)
		}
		fmt.Println("compact", compact, time.Since(start), "steps", steps, "residual", l.Residual())
		for i := range l.Months {
			m := &l.Months[i]
			k := 3.6e6
			fmt.Printf("%2d heat %6.1f want %6.1f taps %6.1f leg %5.1f vessel %5.1f loop %5.1f gain %6.2f el run %5.1f start %5.1f pump %4.1f idle %4.1f  cop %.2f eff %.2f starts/d %.1f run h %.0f showers %d fail %d baths %d fail %d taps %d fail %d\n", i+1, m.HeatPumpHeat/k, m.Wanted/k, m.Delivered/k, m.DeadLegLoss/k, m.VesselLoss/k, m.LoopLoss/k, m.StoreGain/k, m.ElectricRun/k, m.ElectricGone/k, m.ElectricPump/k, m.ElectricIdle/k,
				m.HeatPumpHeat/(m.ElectricRun+m.ElectricGone), m.Delivered/m.Electricity(), float64(m.Starts)/float64(calendar.DaysIn(i)), m.RunS/3600, m.Draws[0].Count, m.Draws[0].Failed, m.Draws[1].Count, m.Draws[1].Failed, m.Draws[2].Count, m.Draws[2].Failed)
		}
	}
}

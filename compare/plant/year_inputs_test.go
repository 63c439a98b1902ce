package plant

import (
	"bufio"
	"bytes"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/water"
)

var yearInputs = flag.String("year-inputs", "", "write here what testdata/speed/year.c reads")

// figure is a number that travels to the program in C under its name.
type figure struct {
	name  string
	value float64
}

// storeFigures describe the compact store of the test home.
func storeFigures() []figure {
	v := compactStore()
	law := v.CoilLaw
	return []figure{
		{"volume_l", v.VolumeL}, {"height_m", v.HeightM}, {"layers", float64(v.Layers)}, {"loss_w_per_k", v.LossWPerK},
		{"conductivity_w_per_mk", v.ConductivityWPerMK}, {"inlet_mixing_share", v.InletMixingShare},
		{"coil_water_l", v.CoilWaterL}, {"coil_displaced_l", v.CoilDisplacedL},
		{"ua10_w_per_k", law.UA10WPerK}, {"ua_exponent", law.Exponent}, {"ua_curvature", law.Curvature},
		{"ua_reference_c", law.ReferenceStoreC}, {"ua_per_k", law.PerK}, {"ua_per_k_per_log_flow", law.PerKPerLogFlow},
		{"ua_still_w_per_k", law.StillWPerK},
	}
}

// plantFigures describe the plant around it.
func plantFigures(p *Params) []figure {
	list := []figure{
		{"loop_l", p.Loop.WaterL}, {"loop_metal_j_per_k", p.Loop.MetalJPerK}, {"loop_indoor_w_per_k", p.Loop.IndoorLossWPerK},
		{"loop_outdoor_w_per_k", p.Loop.OutdoorLossWPerK}, {"loop_flow_l_per_min", p.Loop.FlowLPerMin},
		{"setpoint_c", p.Control.SetpointC}, {"hysteresis_k", p.Control.HysteresisK}, {"sensor_height", p.Control.SensorHeight},
		{"sensor_lag_s", p.Control.SensorLagS}, {"anti_cycle_s", p.Control.AntiCycleS}, {"min_run_s", p.Control.MinRunS},
		{"output_cap", p.Control.OutputCap}, {"flow_above_k", p.Control.FlowAboveK}, {"overshoot_k", p.Control.OvershootK},
		{"highest_flow_c", p.HeatPump.HighestFlowC()},
		{"heat_tau_s", p.Start.HeatTauS}, {"electricity_tau_s", p.Start.ElectricityTauS},
		{"largest_flow_l_per_min", p.Supply.LargestFlowLPerMin}, {"leg_cool_s", p.Supply.DeadLegCoolS},
		{"cold_s", p.Service.ColdSeconds}, {"pump_w", p.Power.PumpW}, {"standby_w", p.Power.StandbyW}, {"room_c", p.RoomC},
	}
	for i, litres := range p.Supply.DeadLegsL {
		list = append(list, figure{fmt.Sprintf("leg%d_l", i), litres}, figure{fmt.Sprintf("margin%d_k", i), p.Supply.MixerMarginK[i]})
	}
	return list
}

// writeYearInputs writes the year of the test home for the program in C: "k NAME VALUE"
// for each figure, "h OUTDOOR MAINS" for each hour, "d START OUTLET KIND FLOW WANT LEAST
// KG_PER_L SECONDS LITRES" for each draw-off, which ends by the one of the last two that
// is not zero.
func writeYearInputs(to io.Writer, figures []figure, in Inputs) error {
	w := bufio.NewWriter(to)
	for _, f := range figures {
		fmt.Fprintf(w, "k %s %.17g\n", f.name, f.value)
	}
	for i, outdoorC := range in.Weather.OutdoorC {
		fmt.Fprintf(w, "h %.17g %.17g\n", outdoorC, in.Weather.MainsC[i])
	}
	for i := range in.Draws {
		d := &in.Draws[i]
		ends := map[household.EndBy]float64{d.End.By: d.End.Amount}
		if ends[household.ByJoules] > 0 {
			return fmt.Errorf("the draw-off at %g s ends by heat, which the program in C does not know", d.StartS)
		}
		fmt.Fprintf(w, "d %.17g %d %d %.17g %.17g %.17g %.17g %.17g %.17g\n", d.StartS, d.Outlet, d.Kind, d.FlowLPerMin,
			d.WantC, d.MinC, water.KgPerLitre(d.WantC), ends[household.BySeconds], ends[household.ByLitres])
	}
	return w.Flush()
}

// What is written for the program in C says the same draw-offs, bit for bit. With
// -year-inputs it is also stored.
func TestYearInputsSayTheSameDraws(t *testing.T) {
	in, p := twoPeople(), compactParams(t)
	var written bytes.Buffer
	if err := writeYearInputs(&written, append(storeFigures(), plantFigures(&p)...), in); err != nil {
		t.Fatal(err)
	}
	if *yearInputs != "" {
		if err := os.WriteFile(*yearInputs, written.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	draws, hours := 0, 0
	for line := range strings.Lines(written.String()) {
		switch line[0] {
		case 'h':
			hours++
		case 'd':
			var d household.Draw
			var kgPerL, seconds, litres float64
			if _, err := fmt.Sscanf(line, "d %g %d %d %g %g %g %g %g %g", &d.StartS, &d.Outlet, &d.Kind, &d.FlowLPerMin,
				&d.WantC, &d.MinC, &kgPerL, &seconds, &litres); err != nil {
				t.Fatalf("%q: %v", line, err)
			}
			want := in.Draws[draws]
			if want.End.By == household.ByLitres {
				d.End = household.End{By: household.ByLitres, Amount: litres}
			} else {
				d.End = household.End{By: household.BySeconds, Amount: seconds}
			}
			d.Person, d.QueuePos = want.Person, want.QueuePos // not written
			if d != want {
				t.Fatalf("draw-off %d: %+v, want %+v", draws, d, want)
			}
			draws++
		}
	}
	if draws != len(in.Draws) || hours != calendar.Hours {
		t.Errorf("%d draw-offs of %d, %d hours of %d", draws, len(in.Draws), hours, calendar.Hours)
	}
}

package casefile

import (
	"errors"
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// checkClimate looks at mains temperatures that are estimated.
func checkClimate(r *reader, c *compare.Case) {
	mains, estimated := c.Climate.Mains()
	if !estimated || r.bad["climate.outdoor_c"] {
		return
	}
	k := keyNamed("climate.mains_c")
	for month, t := range mains {
		if t < k.Min || t > k.Max {
			r.clash(fmt.Sprintf("follows from climate.outdoor_c as %s °C in month %d, allowed %s: state climate.mains_c", rounded(t), month+1, span(k.Min, k.Max, k.Unit)),
				"climate.mains_c", "climate.outdoor_c")
			return
		}
	}
}

func keyNamed(path string) Key {
	for _, k := range Keys() {
		if k.Path == path {
			return k
		}
	}
	return Key{}
}

// checkHeatPump lets the performance map judge what it is given.
func checkHeatPump(r *reader, c *compare.Case) {
	for _, p := range c.HeatPump.Params().Validate() {
		key := "heat_pump." + mapKey(p.Field)
		if key == "heat_pump.electricity_lag_s" {
			r.clash(p.Text, key, "heat_pump.heat_lag_s")
			continue
		}
		r.clash(p.Text, key)
	}
}

// mapKey names the key of a field of the performance map.
func mapKey(field string) string {
	switch field {
	case "Start.ElectricityTauS":
		return "electricity_lag_s"
	case "Start.HeatTauS":
		return "heat_lag_s"
	case "LoadPenalty":
		return "load_penalty"
	case "FieldDerate":
		return "field_derate"
	case "HighestFlowC":
		return "highest_flow_c"
	case "MinimumShare":
		return "minimum_output_share"
	case "NominalKW":
		return "nominal_kw"
	case "Size":
		return "size"
	default: // a row, or the table as a whole
		return "table"
	}
}

// controlled is one option as its controls see it.
type controlled struct {
	prefix string // of its keys, with the final point
	c      *compare.Case
	body   *compare.Body
	*compare.Control
}

// checkControl looks for controls that cannot work.
func (r *reader) checkControl(o controlled) {
	setpoint, above, hysteresis := o.prefix+"control.setpoint_c", o.prefix+"control.flow_above_k", o.prefix+"control.hysteresis_k"
	if flowC := o.SetpointC + o.FlowAboveK; flowC > o.c.HeatPump.HighestFlowC {
		r.clash(fmt.Sprintf("is %s °C and with flow_above_k %s asks for a flow of %s °C, above heat_pump.highest_flow_c, which is %s °C: lower the setpoint",
			plain(o.SetpointC), plain(o.FlowAboveK), plain(flowC), plain(o.c.HeatPump.HighestFlowC)), setpoint, above, "heat_pump.highest_flow_c")
	}
	if coldC, leastC := o.SetpointC-o.HysteresisK, leastUseful(&o.c.Household); coldC < leastC {
		r.clash(fmt.Sprintf("is %s K and lets the sensor fall to %s °C below %ssetpoint_c %s, under the %s °C that somebody still finds warm enough: make it smaller, or raise the setpoint",
			plain(o.HysteresisK), plain(coldC), o.prefix+"control.", plain(o.SetpointC), plain(leastC)), hysteresis, setpoint)
	}
	r.checkWindows(o)
}

// leastUseful is the lowest temperature that any use accepts.
func leastUseful(h *compare.Household) float64 { return min(h.ShowerMinC, h.BathMinC, h.TapMinC) }

func (r *reader) checkWindows(o controlled) {
	for i, w := range o.Windows {
		length := w.ToMin - w.FromMin
		if length <= 0 {
			length += minutesADay
		}
		if float64(length) >= o.c.HeatPump.MinRunMin {
			continue
		}
		r.clash(fmt.Sprintf("is %s, %d minutes, shorter than heat_pump.min_run_min, which is %s: make it longer",
			clockSpan(w.FromMin, w.ToMin), length, plain(o.c.HeatPump.MinRunMin)),
			fmt.Sprintf("%scontrol.windows[%d]", o.prefix, i+1), "heat_pump.min_run_min")
	}
}

// checkSize looks for dimensions that contradict the volume.
func (r *reader) checkSize(o controlled, side compare.Side) {
	b := o.body
	volume, width, depth, height := o.prefix+"volume_l", o.prefix+"width_mm", o.prefix+"depth_mm", o.prefix+"outside_height_mm"
	things, err := o.c.Things(side)
	if err != nil {
		r.clash(fmt.Sprintf("is %s l, for which there are no usual dimensions: state %s, depth_mm and outside_height_mm (%s)",
			plain(b.VolumeL), width, strings.TrimPrefix(errors.Unwrap(fmt.Errorf("%w", err)).Error(), side.String()+" of ")), volume, width, depth, height)
		return
	}
	const mm3PerL = 1e6
	t := things[0]
	if boxL := t.WidthMM * t.DepthMM * t.HeightMM / mm3PerL; boxL < b.VolumeL {
		r.clash(fmt.Sprintf("is %s l, more than width_mm, depth_mm and outside_height_mm enclose, %s l: check the dimensions",
			plain(b.VolumeL), rounded(boxL)), volume, width, depth, height)
	}
	const mmPerM = 1000
	if b.HeightM != nil && b.OutsideHeightMM != nil && *b.HeightM*mmPerM >= *b.OutsideHeightMM {
		r.clash(fmt.Sprintf("is %s m inside, not below %s, which is %s mm: check both", plain(*b.HeightM), height, plain(*b.OutsideHeightMM)),
			o.prefix+"height_m", height)
	}
}

func checkStore(r *reader, c *compare.Case) {
	s := &c.Compact
	o := controlled{"compact_store.", c, &s.Body, &s.Control}
	r.checkControl(o)
	r.checkSize(o, compare.SideCompact)
	const largestShare = 0.7 // a coil that leaves less heating water is a slip
	displaced, water := "compact_store.coil_displaced_l", "compact_store.coil_water_l"
	if s.CoilDisplacedL() > largestShare*s.VolumeL {
		r.clash(fmt.Sprintf("is %s l of compact_store.volume_l %s, allowed up to %s of it: make the coil shorter (compact_store.coil_length_m) or the store larger",
			rounded(s.CoilDisplacedL()), plain(s.VolumeL), plain(largestShare)), displaced, "compact_store.coil_length_m", "compact_store.volume_l")
	}
	if s.CoilContentL() > s.CoilDisplacedL() {
		r.clash(fmt.Sprintf("is %s l, more than the whole coil takes by %s, %s l: check both", rounded(s.CoilContentL()), displaced, rounded(s.CoilDisplacedL())),
			water, displaced)
	}
}

func checkCylinder(r *reader, c *compare.Case) {
	s := &c.Cylinder
	o := controlled{"cylinder.", c, &s.Body, &s.Control}
	r.checkControl(o)
	r.checkSize(o, compare.SideCylinder)
	if s.CoilTop <= s.CoilBottom {
		r.clash(fmt.Sprintf("is %s, not above cylinder.coil_bottom_share, which is %s: swap them", plain(s.CoilTop), plain(s.CoilBottom)),
			"cylinder.coil_top_share", "cylinder.coil_bottom_share")
	}
}

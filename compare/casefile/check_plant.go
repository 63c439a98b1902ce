package casefile

import (
	"fmt"

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

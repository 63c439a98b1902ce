package casefile

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// The mains temperatures that both the weather and the draw-offs take.
const leastMainsC, mostMainsC = 2, 30

// checkClimate looks at mains temperatures that are estimated.
func checkClimate(r *reader, c *compare.Case) {
	mains, estimated := c.Climate.Mains()
	if !estimated {
		return
	}
	for month, t := range mains {
		if t < leastMainsC || t > mostMainsC {
			r.clash(fmt.Sprintf("follows from climate.outdoor_c as %s °C in month %d, allowed %s: state climate.mains_c",
				rounded(t), month+1, span(leastMainsC, mostMainsC, "°C")), "climate.mains_c", "climate.outdoor_c")
			return
		}
	}
}

// checkHeatPump lets the performance map judge what it is given.
func checkHeatPump(r *reader, c *compare.Case) {
	for _, p := range c.HeatPump.Params().Validate() {
		switch p.Field {
		case "Start.ElectricityTauS":
			r.clash(p.Text, "heat_pump.electricity_lag_s", "heat_pump.heat_lag_s")
		case "Table":
			r.clash(p.Text, "heat_pump.table")
		default: // a value that no file can state; see Check
			r.clash("holds "+p.Field+", which "+p.Text, "heat_pump")
		}
	}
}

// checkParts asks the parts that will use the case, once all else is sound. Their
// ranges are those of the keys, so only a case that was changed by other means
// than Set can fail here.
func checkParts(r *reader, c *compare.Case) {
	if len(r.problems) > 0 {
		return
	}
	mains, _ := c.Climate.Mains()
	habits, tube := c.Household.Params(), c.Compact.Coil()
	for _, part := range []struct {
		section string
		err     error
	}{
		{"household", habits.Check(mains)},
		{"climate", c.Climate.Params().Validate()},
		{"compact_store", tube.Check()},
	} {
		if part.err != nil {
			r.clash("holds a value that cannot be: "+strings.ReplaceAll(part.err.Error(), "\n", "; "), part.section)
		}
	}
}

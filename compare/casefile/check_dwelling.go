package casefile

import (
	"fmt"

	"dhwcompare/compare"
)

// checkDwelling looks for a heating curve that contradicts itself.
func checkDwelling(r *reader, c *compare.Case) {
	d := &c.Dwelling
	if d.HeatLossWPerK == 0 {
		return
	}
	for _, pair := range []struct {
		lower, upper   string
		lowerC, upperC float64
		strict         bool
	}{
		{"dwelling.design_c", "dwelling.base_c", d.DesignC, d.BaseC, true},
		{"dwelling.base_c", "dwelling.room_c", d.BaseC, d.RoomC, false},
		{"dwelling.flow_base_c", "dwelling.flow_design_c", d.FlowBaseC, d.FlowDesignC, false},
		{"dwelling.flow_design_c", "heat_pump.highest_flow_c", d.FlowDesignC, c.HeatPump.HighestFlowC, false},
	} {
		if pair.lowerC < pair.upperC || !pair.strict && pair.lowerC == pair.upperC {
			continue
		}
		r.clash(fmt.Sprintf("is %s °C with %s %s °C: it must be the lower of the two", plain(pair.lowerC), pair.upper, plain(pair.upperC)),
			pair.lower, pair.upper)
	}
}

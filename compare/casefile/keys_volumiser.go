package casefile

import "dhwcompare/compare"

// volumiserKeys are those of the tank that heating may need beside a vessel. How
// much water it is short of hangs on the whole case.
func volumiserKeys(section string, side compare.Side) []field[compare.Case] {
	from := []string{"heat_pump.system_minimum_water_l", "dwelling.open_water_l", "pipes.loop_length_m", "pipes.loop_bore_mm", "pipes.unit_water_l"}
	at := func(c *compare.Case) *compare.Auto { return &c.Cylinder.VolumiserL }
	if side == compare.SideCompact {
		from = append(from, "compact_store.in_defrost_circuit")
		at = func(c *compare.Case) *compare.Auto { return &c.Compact.VolumiserL }
	}
	return []field[compare.Case]{
		auto(section+".volumiser_l", "l", 10, 100, at, func(c *compare.Case) float64 { return c.VolumiserL(side) }, from,
			"what the heating water falls short of the unit's least, in steps of 5 l, "+practice,
			"tank for heating water beside the vessel").orZero("none"),
	}
}

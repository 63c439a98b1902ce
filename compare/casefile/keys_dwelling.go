package casefile

import "dhwcompare/compare"

type dwelling = compare.Dwelling

func dwellingKeys() []field[compare.Case] {
	room := number("room_c", "°C", 5, 35, func(d *dwelling) *float64 { return &d.RoomC }, practice,
		"kept by heating; also the air around the vessel and the indoor pipes").common()
	loss := number("heat_loss_w_per_k", "W/K", 20, 1000, func(d *dwelling) *float64 { return &d.HeatLossWPerK }, memory,
		"heat loss of the house, 100 to 150 for a new one, 200 to 300 for an older one; 0: the unit makes hot water only").
		orZero("a unit that makes hot water only").common()
	fields := []field[dwelling]{room, loss}
	for _, f := range heatingKeys() {
		fields = append(fields, f.idleIf(noHouse))
	}
	return within("dwelling", func(c *compare.Case) *dwelling { return &c.Dwelling }, fields...)
}

func noHouse(d *dwelling) string {
	if d.HeatLossWPerK > 0 {
		return ""
	}
	return "dwelling.heat_loss_w_per_k is 0"
}

func heatingKeys() []field[dwelling] {
	return []field[dwelling]{
		number("base_c", "°C", 5, 20, func(d *dwelling) *float64 { return &d.BaseC }, "base of British degree-days",
			"outdoor temperature below which heating is needed"),
		number("design_c", "°C", -30, 10, func(d *dwelling) *float64 { return &d.DesignC }, practice+", southern Britain",
			"outdoor temperature for which heating is laid out").common(),
		number("capacity_kwh_per_k", "kWh/K", 1, 50, func(d *dwelling) *float64 { return &d.CapacityKWhPerK }, practice,
			"heat capacity of the house that takes part in a day"),
		number("flow_design_c", "°C", 25, 65, func(d *dwelling) *float64 { return &d.FlowDesignC }, practice,
			"heating flow at the design temperature").common(),
		number("flow_base_c", "°C", 20, 50, func(d *dwelling) *float64 { return &d.FlowBaseC }, practice, "heating flow at the base temperature"),
		number("heating_run_min", "min", 3, 120, func(d *dwelling) *float64 { return &d.HeatingRunMin }, practice,
			"least run for heating that the thermostat aims at"),
		auto("open_water_l", "l", 0, 1000, func(d *dwelling) *compare.Auto { return &d.OpenWaterL }, (*dwelling).OpenHeatingL,
			[]string{"heat_loss_w_per_k", "base_c", "design_c"}, "half of 10 l for each kW at the design temperature, "+practice,
			"water in the heating that no valve can shut off").common(),
		number("heated_share", shareUnit, 0, 1, func(d *dwelling) *float64 { return &d.HeatedShare }, "vessel and pipes stand in the heated space",
			"share of hot water's indoor losses that lands in heated rooms").common(),
	}
}

package casefile

import "dhwcompare/compare"

func pipesKeys() []field[compare.Case] {
	return within("pipes", func(c *compare.Case) *compare.Pipes { return &c.Pipes }, append(loopKeys(), legKeys()...)...)
}

func loopKeys() []field[compare.Pipes] {
	type pipes = compare.Pipes
	return []field[pipes]{
		number("unit_water_l", "l", 0.2, 20, func(p *pipes) *float64 { return &p.UnitWaterL }, practice, "heating water in the unit and its exchanger"),
		number("loop_length_m", "m", 1, 200, func(p *pipes) *float64 { return &p.LoopLengthM }, practice,
			"pipe between unit and vessel, flow and return together").common(),
		number("loop_bore_mm", "mm", 8, 80, func(p *pipes) *float64 { return &p.LoopBoreMM }, "28 mm copper tube, EN 1057, 0.9 mm wall", "inside diameter of that pipe"),
		number("loop_metal_kj_per_k", "kJ/K", 0, 200, func(p *pipes) *float64 { return &p.LoopMetalKJPerK }, practice, "heat capacity of pipes and exchanger"),
		number("indoor_loss_w_per_k", "W/K", 0, 20, func(p *pipes) *float64 { return &p.IndoorLossWPerK }, practice, "heat loss of the pipe indoors"),
		number("outdoor_loss_w_per_k", "W/K", 0, 20, func(p *pipes) *float64 { return &p.OutdoorLossWPerK }, practice, "heat loss of the pipe outdoors"),
		number("primary_flow_l_per_min", "l/min", 3, 60, func(p *pipes) *float64 { return &p.PrimaryLPerMin }, practice,
			"flow while the unit heats water, usually 10 to 20"),
	}
}

func legKeys() []field[compare.Pipes] {
	type pipes = compare.Pipes
	const copper15 = "7 m of 15 mm copper tube, EN 1057"
	leg := func(path string, at func(*pipes) *float64, source, help string) field[pipes] {
		return number(path, "l", 0.05, 20, at, source, help)
	}
	return []field[pipes]{
		leg("shower_leg_l", func(p *pipes) *float64 { return &p.ShowerLegL }, copper15, "water in the pipe to a shower"),
		leg("bath_leg_l", func(p *pipes) *float64 { return &p.BathLegL }, copper15, "water in the pipe to the bath"),
		leg("kitchen_leg_l", func(p *pipes) *float64 { return &p.KitchenLegL }, practice, "water in the pipe to the kitchen tap"),
		leg("basin_leg_l", func(p *pipes) *float64 { return &p.BasinLegL }, practice, "water in the pipe to a basin"),
		number("leg_cooling_min", "min", 1, 600, func(p *pipes) *float64 { return &p.LegCoolingMin }, practice,
			"time constant with which water in those pipes cools; 25 is an insulated pipe"),
	}
}

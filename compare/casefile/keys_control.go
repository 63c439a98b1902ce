package casefile

import "dhwcompare/compare"

func controlKeys() []field[compare.Control] {
	type control = compare.Control
	return []field[control]{
		number("setpoint_c", "°C", 35, 80, func(c *control) *float64 { return &c.SetpointC }, practice,
			"temperature at the sensor at which heating stops").common(),
		number("hysteresis_k", "K", 0.5, 30, func(c *control) *float64 { return &c.HysteresisK }, practice,
			"how far the sensor falls below the setpoint before heating starts").common(),
		number("sensor_height_share", shareUnit, 0, 1, func(c *control) *float64 { return &c.SensorHeight }, practice,
			"height of the sensor as a share of the vessel's, from the bottom").common(),
		number("sensor_lag_s", "s", 0, 300, func(c *control) *float64 { return &c.SensorLagS }, practice, "time constant of sensor and pocket, usually 20 to 120"),
		windows("windows", func(c *control) *[]compare.Window { return &c.Windows }, "at any time",
			"times on the wall clock at which heating may start and go on; none means always").common(),
		number("anti_cycle_min", "min", 0, 240, func(c *control) *float64 { return &c.AntiCycleMin }, practice, "least time from a stop to the next start"),
		number("output_cap_share", shareUnit, 0.1, 1, func(c *control) *float64 { return &c.OutputCap }, practice,
			"largest share of the heat pump's output that hot water may use").common(),
		number("flow_above_k", "K", 1, 30, func(c *control) *float64 { return &c.FlowAboveK }, practice,
			"how far above the setpoint the flow may be when output turns down"),
		number("overshoot_k", "K", 0, 20, func(c *control) *float64 { return &c.OvershootK }, practice,
			"how far above that flow, at least output, heating stops"),
	}
}

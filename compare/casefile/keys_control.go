package casefile

import (
	"slices"

	"dhwcompare/compare"
)

type control = compare.Control

// A setpoint lies above every temperature that is merely wanted at a basin, and
// below what a vessel is made for.
const lowestSetpointC, highestSetpointC = 35, 75

func controlKeys() []field[control] {
	return slices.Concat(settingKeys(), changeKeys(),
		within("cheapest", func(c *control) *compare.Cheapest { return &c.Cheapest }, cheapestKeys()...))
}

func settingKeys() []field[control] {
	return []field[control]{
		number("setpoint_c", "°C", lowestSetpointC, highestSetpointC, func(c *control) *float64 { return &c.SetpointC }, practice,
			"temperature at the sensor at which heating stops").idleIf(setByMonth).common(),
		number("hysteresis_k", "K", 0.5, 30, func(c *control) *float64 { return &c.HysteresisK }, practice,
			"how far the sensor falls below the setpoint before heating starts").common(),
		number("sensor_height_share", shareUnit, 0, 1, func(c *control) *float64 { return &c.SensorHeight }, practice,
			"height of the sensor as a share of the vessel's, from the bottom").common(),
		number("sensor_lag_s", "s", 0, 300, func(c *control) *float64 { return &c.SensorLagS }, practice, "time constant of sensor and pocket, usually 20 to 120"),
		windows("windows", func(c *control) *[]compare.Window { return &c.Windows }, "at any time",
			"times on the wall clock at which heating may start and go on; none means always").
			idleIf(cheapestHours).atMost(24).common(),
		number("anti_cycle_min", "min", 0, 240, func(c *control) *float64 { return &c.AntiCycleMin }, practice, "least time from a stop to the next start"),
		number("output_cap_share", shareUnit, 0.1, 1, func(c *control) *float64 { return &c.OutputCap }, practice,
			"largest share of the heat pump's output that hot water may use").common(),
		number("flow_above_k", "K", 1, 30, func(c *control) *float64 { return &c.FlowAboveK }, practice,
			"how far above the setpoint the flow may be when output turns down"),
		number("overshoot_k", "K", 0, 20, func(c *control) *float64 { return &c.OvershootK }, practice,
			"how far above that flow, at least output, heating stops"),
		number("shower_limit_l_per_min", "l/min", 3, 20, func(c *control) *float64 { return &c.ShowerLimit }, practice,
			"flow limiter fitted to the showers with this option").orZero("none"),
	}
}

func setByMonth(c *control) string {
	if c.MonthSetpointC == nil {
		return ""
	}
	return "control.month_setpoint_c stands in its place"
}

// changeKeys are what changes with the time of the year or of the day.
func changeKeys() []field[control] {
	return []field[control]{
		autoMonths("month_setpoint_c", "°C", lowestSetpointC, highestSetpointC, func(c *control) **monthly { return &c.MonthSetpointC },
			sameSetpoint, []string{"setpoint_c"}, practice, "setpoint of each month in place of setpoint_c"),
		list("raised", "setpoints that hold at certain hours, such as cheap ones", func(c *control) []compare.Raised { return c.Raised },
			func(c *control, raised []compare.Raised) { c.Raised = raised }, compare.Raised{}, raisedKeys(), "the same at all hours").atMost(24),
		number("sensor_error_k", "K", -3, 3, func(c *control) *float64 { return &c.SensorErrorK }, practice, "how much too high the sensor reads"),
		flag("off_when_away", func(c *control) *bool { return &c.OffWhenAway }, practice, "whether there is no hot water on days away"),
	}
}

func cheapestHours(c *control) string {
	if c.Cheapest.Hours == 0 {
		return ""
	}
	return "control.cheapest.hours_per_day stands in its place"
}

// cheapestKeys let the hours of heating follow the first tariff.
func cheapestKeys() []field[compare.Cheapest] {
	type cheapest = compare.Cheapest
	asStated := func(c *cheapest) string {
		if c.Hours > 0 {
			return ""
		}
		return "control.cheapest.hours_per_day is 0"
	}
	return []field[cheapest]{
		number("hours_per_day", "h/day", 0.5, 24, func(c *cheapest) *float64 { return &c.Hours }, "windows as stated",
			"cheapest hours of the first tariff in which to heat").orZero("the windows as stated"),
		number("raised_c", "°C", lowestSetpointC, highestSetpointC, func(c *cheapest) *float64 { return &c.RaisedC }, practice,
			"setpoint in those hours if heating may run at all hours").orZero("heating in those hours only").idleIf(asStated),
	}
}

func sameSetpoint(c *control) monthly {
	var m monthly
	for i := range m {
		m[i] = c.SetpointC
	}
	return m
}

func raisedKeys() []field[compare.Raised] {
	type raised = compare.Raised
	return []field[raised]{
		hours("hours", func(r *raised) *int { return &r.Window.FromMin }, func(r *raised) *int { return &r.Window.ToMin }, "",
			"the hours on the wall clock").required(),
		number("setpoint_c", "°C", lowestSetpointC, highestSetpointC, func(r *raised) *float64 { return &r.SetpointC }, "", "the setpoint at those hours").required(),
	}
}

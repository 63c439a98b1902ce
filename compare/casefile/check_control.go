package casefile

import (
	"fmt"
	"slices"

	"dhwcompare/compare"
)

// option is one of the two as its checks see it.
type option struct {
	prefix string // of its keys, with the final point
	side   compare.Side
	c      *compare.Case
	body   *compare.Body
	*control
}

// key gives the full path of a key of the option.
func (o *option) key(name string) string { return o.prefix + name }

// target is a setpoint together with the key that states it.
type target struct {
	key   string
	tempC float64
}

// targets lists every setpoint that the option ever has, the usual one first.
func (o *option) targets() []target {
	list := []target{{o.key("control.setpoint_c"), o.SetpointC}}
	if o.MonthSetpointC != nil {
		list = []target{{o.key("control.month_setpoint_c"), slices.Max(o.MonthSetpointC[:])}}
	}
	if o.Cheapest.Hours > 0 && o.Cheapest.RaisedC > 0 {
		list = append(list, target{o.key("control.cheapest.raised_c"), o.Cheapest.RaisedC})
	}
	for i, r := range o.Raised {
		list = append(list, target{fmt.Sprintf("%s[%d].setpoint_c", o.key("control.raised"), i+1), r.SetpointC})
	}
	return list
}

// lowest is the lowest of the setpoints that hold at ordinary hours.
func (o *option) lowest() target {
	if o.MonthSetpointC != nil {
		return target{o.key("control.month_setpoint_c"), slices.Min(o.MonthSetpointC[:])}
	}
	return target{o.key("control.setpoint_c"), o.SetpointC}
}

// checkControl looks for controls that cannot work.
func (r *reader) checkControl(o *option) {
	for _, t := range o.targets() {
		r.checkReach(o, t)
	}
	r.checkHysteresis(o)
	r.checkLimits(o)
	r.checkHours(o)
}

// checkReach asks whether the heat pump can heat to a setpoint.
func (r *reader) checkReach(o *option, t target) {
	u := &o.c.HeatPump
	if flowC := t.tempC + o.FlowAboveK; flowC > u.HighestFlowC {
		r.clash(fmt.Sprintf("is %s °C and with %s %s asks for a flow of %s °C, above heat_pump.highest_flow_c, which is %s °C: lower the setpoint",
			plain(t.tempC), o.key("control.flow_above_k"), plain(o.FlowAboveK), plain(flowC), plain(u.HighestFlowC)),
			t.key, o.key("control.flow_above_k"), "heat_pump.highest_flow_c")
	}
	if t.tempC > u.Limits.LargestSetpointC {
		r.clash(fmt.Sprintf("is %s °C, above heat_pump.limits.largest_setpoint_c, which is %s °C: lower it", plain(t.tempC), plain(u.Limits.LargestSetpointC)),
			t.key, "heat_pump.limits.largest_setpoint_c")
	}
}

// checkHysteresis asks whether heating starts while the water is still of use.
func (r *reader) checkHysteresis(o *option) {
	t := o.lowest()
	startC := t.tempC - o.HysteresisK
	h := &o.c.Household
	if leastC := min(h.ShowerMinC, h.BathMinC, h.TapMinC); startC < leastC {
		r.clash(fmt.Sprintf("is %s K: from %s %s °C the sensor falls to %s °C before heating starts, below the %s °C that is the least of household.shower_min_c, bath_min_c and tap_min_c: make it smaller, or raise the setpoint",
			plain(o.HysteresisK), t.key, plain(t.tempC), plain(startC), plain(leastC)), o.key("control.hysteresis_k"), t.key)
	}
}

// checkLimits asks whether the unit's controller takes the settings.
func (r *reader) checkLimits(o *option) {
	l := &o.c.HeatPump.Limits
	least := func(name, unitName, limitName, advice string, value, limit float64) {
		if value < limit {
			key := "heat_pump.limits." + limitName
			r.clash(fmt.Sprintf("is %s %s, below %s, which is %s %s: %s, or state what the controller takes",
				plain(value), unitName, key, plain(limit), unitName, advice), o.key("control."+name), key)
		}
	}
	least("hysteresis_k", "K", "least_hysteresis_k", "make it larger", o.HysteresisK, l.LeastHysteresisK)
	least("anti_cycle_min", "min", "least_anti_cycle_min", "make it longer", o.AntiCycleMin, l.LeastAntiCycleMin)
}

// checkHours asks whether every window is long enough for a run.
func (r *reader) checkHours(o *option) {
	for i, w := range o.Windows {
		r.longEnough(fmt.Sprintf("%s[%d]", o.key("control.windows"), i+1), w, o.c.HeatPump.MinRunMin)
	}
	for i, raised := range o.Raised {
		r.longEnough(fmt.Sprintf("%s[%d].hours", o.key("control.raised"), i+1), raised.Window, o.c.HeatPump.MinRunMin)
	}
}

func (r *reader) longEnough(key string, w compare.Window, leastMin float64) {
	length := w.ToMin - w.FromMin
	if length <= 0 {
		length += minutesADay
	}
	if float64(length) >= leastMin {
		return
	}
	r.clash(fmt.Sprintf("is %s, %d minutes long, shorter than heat_pump.min_run_min, which is %s: make it longer",
		clockSpan(w.FromMin, w.ToMin), length, plain(leastMin)), key, "heat_pump.min_run_min")
}

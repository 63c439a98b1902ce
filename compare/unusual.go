package compare

import (
	"fmt"
	"strconv"

	"dhwcompare/compare/wording"
)

// UsualRange says between which values a key of a case usually lies. A value outside
// is allowed, and a warning goes with the results.
type UsualRange struct {
	Key       string // as a case file calls it
	Low, High float64
	Unit      string
	// Below and Above say what speaks against values outside; empty where they are
	// just rare, and often a slip.
	Below, Above string

	of func(*Case) (value float64, counts bool)
}

// always makes a value one that counts in every case.
func always(of func(*Case) float64) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) { return of(c), true }
}

// unlessZero leaves out zero, which stands for none.
func unlessZero(of func(*Case) float64) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) { return of(c), of(c) != 0 }
}

// unlessByMonth leaves out a setpoint in whose place others stand.
func unlessByMonth(of func(*Case) *Control) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) { return of(c).SetpointC, of(c).MonthSetpointC == nil }
}

// ifGeneric leaves out what bears on the heat pump where a table of its own is stated.
func ifGeneric(of func(*Case) float64) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) { return of(c), len(c.HeatPump.Table) == 0 }
}

// ifStated leaves out a value that follows from others.
func ifStated(of func(*Case) Auto) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) {
		if v := of(c); v != nil {
			return *v, true
		}
		return 0, false
	}
}

// UsualRanges lists them in the order of a case. Where nothing else is said they are
// common practice, no source.
func UsualRanges() []UsualRange {
	list := usualHome()
	list = append(list, usualUnit()...)
	return append(list, usualVessels()...)
}

func usualHome() []UsualRange {
	const coilLaw = "the law of the coil's heat transfer is held against the full calculation from 2 to 20 l/min"
	const genericCold = "the generic heat pump is held at its output of -25 °C in colder air"
	return []UsualRange{
		{"household.shower_minutes", 3, 15, "min", "", "", always(func(c *Case) float64 { return c.Household.ShowerMinutes })},
		{"household.shower_flow_l_per_min", 4, 15, "l/min", "", "", always(func(c *Case) float64 { return c.Household.ShowerFlowLPerMin })},
		{"household.shower_c", 37, 43, "°C", "", "", always(func(c *Case) float64 { return c.Household.ShowerC })},
		{"mains.largest_flow_l_per_min", 8, 20, "l/min", "", coilLaw, always(func(c *Case) float64 { return c.Mains.LargestFlowLPerMin })},
		{"mains.dynamic_pressure_bar", 1, 6, "bar", "", "", always(func(c *Case) float64 { return c.Mains.DynamicBar })},
		{"mains.coil_drop_kpa", 15, 80, "kPa", "", "", always(func(c *Case) float64 { return c.Mains.CompactCoilKPa })},
		{"dwelling.room_c", 15, 25, "°C", "", "", always(func(c *Case) float64 { return c.Dwelling.RoomC })},
		{"dwelling.design_c", -25, 10, "°C", genericCold, "", ifGeneric(func(c *Case) float64 { return c.Dwelling.DesignC })},
		{"dwelling.heat_loss_w_per_k", 50, 500, "W/K", "", "", unlessZero(func(c *Case) float64 { return c.Dwelling.HeatLossWPerK })},
	}
}

func usualUnit() []UsualRange {
	return []UsualRange{
		{"heat_pump.min_run_min", 2, 10, "min", "", "", always(func(c *Case) float64 { return c.HeatPump.MinRunMin })},
		{"heat_pump.pump_w", 30, 60, "W", "", "", always(func(c *Case) float64 { return c.HeatPump.PumpW })},
		{"heat_pump.standby_w", 5, 40, "W", "", "", always(func(c *Case) float64 { return c.HeatPump.StandbyW })},
		{"heat_pump.defrost_min", 3, 8, "min", "", "", always(func(c *Case) float64 { return c.HeatPump.DefrostMin })},
		{"pipes.loop_length_m", 4, 60, "m", "", "", always(func(c *Case) float64 { return c.Pipes.LoopLengthM })},
		{"pipes.primary_flow_l_per_min", 10, 20, "l/min", "", "", always(func(c *Case) float64 { return c.Pipes.PrimaryLPerMin })},
		{"pipes.shower_leg_l", 0.1, 4, "l", "", "", always(func(c *Case) float64 { return c.Pipes.ShowerLegL })},
	}
}

func usualVessels() []UsualRange {
	const lawOfStore = "the law of the coil's heat transfer is held against the full calculation up to 65 °C"
	const layers = "from so many layers up the calculation is held against exact answers and a finer one"
	return []UsualRange{
		{"compact_store.volume_l", 50, 150, "l", "", "", always(func(c *Case) float64 { return c.Compact.VolumeL })},
		{"compact_store.standing_loss_w", 20, 120, "W", "", "", ifStated(func(c *Case) Auto { return c.Compact.LossW })},
		{"compact_store.layers", 10, 200, "", layers, "", always(func(c *Case) float64 { return float64(c.Compact.Layers) })},
		{"compact_store.control.setpoint_c", 52, 65, "°C", "", lawOfStore, unlessByMonth(func(c *Case) *Control { return &c.Compact.Control })},
		{"compact_store.control.hysteresis_k", 2, 10, "K", "", "", always(func(c *Case) float64 { return c.Compact.Control.HysteresisK })},
		{"compact_store.control.sensor_lag_s", 20, 120, "s", "", "", always(func(c *Case) float64 { return c.Compact.Control.SensorLagS })},
		{"cylinder.volume_l", 100, 300, "l", "", "", always(func(c *Case) float64 { return c.Cylinder.VolumeL })},
		{"cylinder.standing_loss_w", 30, 150, "W", "", "", ifStated(func(c *Case) Auto { return c.Cylinder.LossW })},
		{"cylinder.layers", 20, 200, "", layers, "", always(func(c *Case) float64 { return float64(c.Cylinder.Layers) })},
		{"cylinder.coil_u_w_per_m2k", 350, 450, "W/m²K", "", "", always(func(c *Case) float64 { return c.Cylinder.CoilUWPerM2 })},
		{"cylinder.control.setpoint_c", 43, 58, "°C", "", "", unlessByMonth(func(c *Case) *Control { return &c.Cylinder.Control })},
		{"cylinder.control.hysteresis_k", 3, 12, "K", "", "", always(func(c *Case) float64 { return c.Cylinder.Control.HysteresisK })},
		{"cylinder.control.sensor_lag_s", 20, 120, "s", "", "", always(func(c *Case) float64 { return c.Cylinder.Control.SensorLagS })},
	}
}

// Unusual warns of every value of a case that is allowed, and rare.
func Unusual(c *Case) []Warning {
	var list []Warning
	for _, u := range UsualRanges() {
		value, counts := u.of(c)
		if !counts || value >= u.Low && value <= u.High {
			continue
		}
		list = append(list, Warning{u.Key, fmt.Sprintf("unusual value: %s is %s, and %s to %s is usual%s; check it",
			u.Key, withUnit(value, u.Unit), inShort(u.Low), withUnit(u.High, u.Unit), u.why(value))})
	}
	return list
}

func (u *UsualRange) why(value float64) string {
	why := u.Above
	if value < u.Low {
		why = u.Below
	}
	if why == "" {
		return ""
	}
	return "; " + why
}

func withUnit(v float64, unit string) string {
	if unit == "" {
		return inShort(v)
	}
	return inShort(v) + " " + unit
}

func inShort(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// placeWarnings tell where a place is unlike the one that defaults of its weather are
// measured at. That inland winters vary more from day to day is common knowledge, no
// source.
func placeWarnings(c *Case) []Warning {
	at := &c.Climate
	coldest := at.OutdoorC[0]
	for _, t := range at.OutdoorC {
		coldest = min(coldest, t)
	}
	if at.Outdoor != nil || coldest >= 0 || at.SDDailyMeanK != Default().Climate.SDDailyMeanK {
		return nil
	}
	return []Warning{{"climate.sd_daily_mean_k", wording.Sprintf("the swing of outdoor air from day to day is the default, that of mild British sites; where a month's mean is %.0f °C it is larger as a rule: state it, or a weather file", coldest)}}
}

package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

const (
	wattsPerKW  = 1000
	joulesPerKJ = 1000
)

func (c *Case) loop() plant.Loop {
	return plant.Loop{
		WaterL: c.Pipes.LoopWaterL(), MetalJPerK: c.Pipes.LoopMetalKJPerK * joulesPerKJ,
		IndoorLossWPerK: c.Pipes.IndoorLossWPerK, OutdoorLossWPerK: c.Pipes.OutdoorLossWPerK,
		FlowLPerMin: c.Pipes.PrimaryLPerMin, CapacityShare: c.HeatPump.capacityShare(),
		ValveS: c.HeatPump.ValveTravelS, OverrunS: c.HeatPump.PumpOverrunS,
	}
}

// capacityShare is the heat content of a litre of heating water over that of
// water: propylene glycol takes away about 0.23 % for each per cent (30 % by
// volume: 7 % less; from memory).
func (h *HeatPump) capacityShare() float64 {
	const perPercent = 0.0023
	return 1 - perPercent*h.GlycolPercent
}

func (c *Case) plantControl(k Control, allowed plant.Schedule, raised []plant.Raised) plant.Control {
	return plant.Control{
		SetpointC: k.SetpointC, MonthC: k.MonthSetpointC, Raised: raised, HysteresisK: k.HysteresisK,
		SensorHeight: k.SensorHeight, SensorLagS: k.SensorLagS, SensorErrorK: k.SensorErrorK, Allowed: allowed,
		AntiCycleS: k.AntiCycleMin * secondsPerMinute, MinRunS: c.HeatPump.MinRunMin * secondsPerMinute,
		OutputCap: k.OutputCap, FlowAboveK: k.FlowAboveK, OvershootK: k.OvershootK,
		LongestRunS: c.HeatPump.PriorityMin * secondsPerMinute,
	}
}

func (c *Case) power() plant.Power {
	h := &c.HeatPump
	p := plant.Power{PumpW: h.PumpW, StandbyW: h.StandbyW * h.StandbyShare}
	if c.Dwelling.HeatLossWPerK > 0 {
		p.HouseW = h.StandbyW * (1 - h.StandbyShare)
	}
	return p
}

// meltS is the time in which a full load of frost runs off above 1 C with the
// compressor off: practice, no source.
const meltS = 1800

func (c *Case) frost(side Side) plant.Frost {
	h := &c.HeatPump
	return plant.Frost{
		IntervalS: h.DefrostIntervalMin * secondsPerMinute, DurationS: h.DefrostMin * secondsPerMinute,
		HeatJ: h.DefrostHeatKWh * joulesPerKWh, MeltS: meltS, FromStore: c.defrostsFromStore(side),
	}
}

func (i *Immersion) params() plant.Immersion {
	return plant.Immersion{PowerW: i.PowerKW * wattsPerKW, Height: i.Height, BoostBelowC: i.BoostBelowC, BoostK: i.BoostK}
}

// How close the heat pump's water brings the vessel to its highest flow
// temperature, and how long a hot spell is tried: practice, no source.
const (
	hygieneHeadroomK = 8
	hygieneGiveUpS   = 8 * calendar.HourS
)

func (h *Hygiene) params(y calendar.Year) plant.Hygiene {
	return plant.Hygiene{
		EveryS: h.EveryDays * calendar.DayS, FirstS: y.Standard(float64(h.StartMin) * secondsPerMinute),
		TargetC: h.TargetC, HoldS: h.HoldMin * secondsPerMinute, HeadroomK: hygieneHeadroomK, GiveUpS: hygieneGiveUpS,
	}
}

// house is the dwelling with one option. What a volumiser loses warms rooms as the
// emitters do, but for the share that lands outside heated rooms.
func (c *Case) house(side Side) plant.House {
	h := c.Dwelling.params()
	if litres := c.VolumiserL(side); litres > 0 {
		h.TankWasteWPerK = (1 - h.HeatedShare) * classBLossW(litres) / lossTestK
	}
	return h
}

func (d *Dwelling) params() plant.House {
	return plant.House{
		LossWPerK: d.HeatLossWPerK, CapacityJPerK: d.CapacityKWhPerK * joulesPerKWh, RoomC: d.RoomC, BaseC: d.BaseC,
		DesignC: d.DesignC, FlowDesignC: d.FlowDesignC, FlowBaseC: d.FlowBaseC,
		MinRunS: d.HeatingRunMin * secondsPerMinute, HeatedShare: d.HeatedShare,
	}
}

func raisedSchedules(list []Raised, y calendar.Year) ([]plant.Raised, error) {
	out := make([]plant.Raised, len(list))
	for i, r := range list {
		when, err := schedule([]Window{r.Window}, y)
		if err != nil {
			return nil, err
		}
		out[i] = plant.Raised{When: when, SetpointC: r.SetpointC}
	}
	return out, nil
}

// awaySpans gives the days away as stretches of standard time. Hot water comes
// back on at noon of the last day.
func awaySpans(away []household.DayRange, y calendar.Year) [][2]float64 {
	spans := make([][2]float64, len(away))
	for i, a := range away {
		from, to := float64(a.FirstDay*calendar.DayS), float64(a.LastDay)*calendar.DayS+calendar.DayS/2
		spans[i] = [2]float64{y.Standard(from), y.Standard(to)}
	}
	return spans
}

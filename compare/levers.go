package compare

import (
	"math"
	"slices"

	"dhwcompare/tariffs"
)

// lever is an uncertain input that can be set, with its range: base lies in it.
type lever struct {
	name, label, unit string
	base, low, high   float64
	set               func(c *Case, value float64)
}

// within narrows a lever to what a case may state. The base, which is stated,
// stays in.
func (l lever) within(least, most float64) lever {
	l.low = math.Min(l.base, math.Max(l.low, least))
	l.high = math.Max(l.base, math.Min(l.high, most))
	return l
}

// levers lists the uncertain inputs with their ranges, those left out that have
// none. The ranges are judgements (practice, no source) unless another source
// stands beside them; what bounds them is what a case file may state.
func (c *Case) levers() []lever {
	list := slices.Concat(c.habitLevers(), c.placeLevers(), c.moneyLevers(), c.unitLevers(), c.vesselLevers())
	return slices.DeleteFunc(list, func(l lever) bool { return l.low >= l.high })
}

// Ranges of habits.
const (
	mostPeople               = 12
	leastShowerS, mostShower = 0.5, 60 // min
	leastFlow, mostFlow      = 2, 30   // l/min
)

// habitLevers are those of the household. A published load profile has none.
func (c *Case) habitLevers() []lever {
	h := &c.Household
	if h.LoadProfile != "" {
		return nil
	}
	return []lever{
		lever{"household.people", "people", "", h.People, h.People - 1, h.People + 1,
			func(c *Case, v float64) { c.Household.People = v }}.within(h.leastPeople(), mostPeople),
		lever{"household.shower_minutes", "length of a shower", "min", h.ShowerMinutes, 0.7 * h.ShowerMinutes, 1.4 * h.ShowerMinutes,
			func(c *Case, v float64) { c.Household.ShowerMinutes = v }}.within(leastShowerS, mostShower),
		lever{"household.shower_flow_l_per_min", "flow of a shower", "l/min", h.ShowerFlowLPerMin, h.ShowerFlowLPerMin - 1.5, h.ShowerFlowLPerMin + 2,
			func(c *Case, v float64) { c.Household.ShowerFlowLPerMin = v }}.within(leastFlow, mostFlow),
	}
}

// leastPeople are those whom draw-offs that are stated leave possible: a case file
// allows each no more than so many a day.
func (h *Household) leastPeople() float64 {
	least := 1.0
	for _, draws := range []struct {
		perDay Auto
		each   float64
	}{{h.ShowersPerDay, 3}, {h.BathsPerDay, 2}, {h.TapsPerDay, 25}} {
		if draws.perDay != nil {
			least = math.Max(least, *draws.perDay/draws.each)
		}
	}
	return least
}

// Temperatures of the place, deg C.
const (
	leastMainsC, mostMainsC = 2, 30
	leastAirC, mostAirC     = -50, 45
)

func (c *Case) placeLevers() []lever {
	return []lever{
		{"climate.mains_c", "mains water warmer by", "K", 0, -2, 2, func(c *Case, v float64) {
			mains, _ := c.Climate.Mains()
			c.Climate.MainsC = shifted(&mains, v, leastMainsC, mostMainsC)
		}},
		{"climate.outdoor_c", "outdoor air warmer by", "K", 0, -2, 2, func(c *Case, v float64) {
			mains, _ := c.Climate.Mains() // stays as it is: one input at a time
			c.Climate.MainsC = &mains
			c.Climate.OutdoorC = *shifted(&c.Climate.OutdoorC, v, leastAirC, mostAirC)
			if c.Climate.Outdoor != nil {
				c.Climate.Outdoor = c.Climate.Outdoor.Warmer(v)
			}
		}},
	}
}

func shifted(months *[12]float64, by, least, most float64) *[12]float64 {
	out := *months
	for m := range out {
		out[m] = math.Min(math.Max(out[m]+by, least), most)
	}
	return &out
}

func (c *Case) moneyLevers() []lever {
	return []lever{{"tariffs", "unit rates times", "", 1, 0.75, 1.25, func(c *Case, by float64) {
		scaled := make([]tariffs.Tariff, len(c.Tariffs))
		for i := range c.Tariffs {
			scaled[i] = c.Tariffs[i].Scaled(by)
		}
		c.Tariffs = scaled
	}}}
}

// Ranges of the heat pump, which are those of its performance map, and of the
// pipes, W/K.
const (
	leastDerate, mostDerate   = 0.80, 1
	leastPenalty, mostPenalty = 0.02, 0.12
	mostPipeLoss              = 20
)

func (c *Case) unitLevers() []lever {
	return []lever{
		lever{"heat_pump.field_derate", "efficiency, field over bench", "", c.HeatPump.FieldDerate, leastDerate, mostDerate,
			func(c *Case, v float64) { c.HeatPump.FieldDerate = v }}.within(leastDerate, mostDerate),
		lever{"heat_pump.load_penalty", "efficiency lost at full output", "", c.HeatPump.LoadPenalty, leastPenalty, mostPenalty,
			func(c *Case, v float64) { c.HeatPump.LoadPenalty = v }}.within(leastPenalty, mostPenalty),
		{"pipes", "heat losses of the pipes times", "", 1, 0.5, 2, func(c *Case, by float64) {
			p := &c.Pipes
			p.IndoorLossWPerK, p.OutdoorLossWPerK = math.Min(p.IndoorLossWPerK*by, mostPipeLoss), math.Min(p.OutdoorLossWPerK*by, mostPipeLoss)
		}},
	}
}

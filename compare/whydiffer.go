package compare

import "dhwcompare/compare/plant"

// CauseOfDifference is what one effect contributes to the difference in
// electricity, compact store less cylinder.
type CauseOfDifference struct {
	Name  string  `json:"name"`
	Label string  `json:"label"`
	KWh   float64 `json:"kwh"`
}

// DifferenceByCause divides the difference in whole-house electricity by what
// makes it. The effects are taken away one after the other, in this order, from
// both options together; each is given the difference that goes with it. What is
// left when all are gone, and what they do to each other, is the interaction. The
// parts add up to the difference exactly.
type DifferenceByCause struct {
	Years int                 `json:"years"` // lived through to find the parts
	KWh   float64             `json:"kwh"`   // the difference that is divided
	Parts []CauseOfDifference `json:"parts"`
}

// effect is something that can be taken away from both options.
type effect struct {
	name, label string
	fromCase    func(*Case)
	fromPlant   func(*plant.Params)
	fromBooks   func(*plant.Month)     // of what is counted and changes nothing else
	absent      func(*Case, Side) bool // from an option; nil: from none
}

// Working conditions that stand in for each option's own, and what is left of a
// loop that holds next to nothing: for the comparison of causes only.
const (
	levelWaterC = 50.0
	levelShare  = 0.5
	traceLoopL  = 0.2
)

// effects lists what is taken away, in order: first what the heat pump feels, then
// where heat goes, then what runs beside.
func effects() []effect {
	none := 0.0
	return []effect{
		{name: "water_temperature", label: "hotter water from the heat pump", fromPlant: func(p *plant.Params) { p.Level.WaterC = levelWaterC }},
		{name: "output_share", label: "running at higher output", fromPlant: func(p *plant.Params) { p.Level.Share = levelShare }},
		{name: "starts", label: "starting up", fromPlant: func(p *plant.Params) { p.Start.HeatTauS, p.Start.ElectricityTauS = 0, 0 }},
		{name: "defrost", label: "frost and defrosting", fromPlant: func(p *plant.Params) { p.Frost = plant.Frost{} }},
		{name: "disinfection", label: "disinfection and immersion heater", absent: neverDisinfects, fromPlant: func(p *plant.Params) { p.Hygiene, p.Immersion = plant.Hygiene{}, plant.Immersion{} }},
		{name: "useful_losses", label: "losses that heat the house (a credit)", fromPlant: func(p *plant.Params) { p.House.HeatedShare = 0 }},
		{name: "loop", label: "heat in and lost from the loop", fromPlant: func(p *plant.Params) {
			p.Loop.WaterL, p.Loop.MetalJPerK, p.Loop.IndoorLossWPerK, p.Loop.OutdoorLossWPerK = traceLoopL, 0, 0, 0
		}},
		{name: "vessel_loss", label: "heat lost from the vessel", fromCase: func(c *Case) { c.Compact.LossW, c.Cylinder.LossW = &none, &none }},
		{name: "dead_legs", label: "pipes to the taps", fromPlant: func(p *plant.Params) {
			p.Supply.DeadLegsL = make([]float64, len(p.Supply.DeadLegsL))
		}},
		{name: "pump", label: "circulation pump", fromBooks: func(m *plant.Month) { m.ElectricPump, m.ElectricHousePump = 0, 0 }},
	}
}

// neverDisinfects reports whether an option has no disinfection and no immersion heater.
func neverDisinfects(c *Case, side Side) bool {
	b := c.body(side)
	return b.Hygiene.EveryDays == 0 && b.Immersion.PowerKW == 0
}

// causeYears are lived through for each effect: the difference between paired
// years settles fast (its standard error is below one per cent of it).
const causeYears = 1

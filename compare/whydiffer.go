package compare

import (
	"context"

	"dhwcompare/compare/plant"
)

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
		{name: "disinfection", label: "disinfection and immersion heater", fromPlant: func(p *plant.Params) { p.Hygiene, p.Immersion = plant.Hygiene{}, plant.Immersion{} }},
		{name: "useful_losses", label: "losses that heat the house (a credit)", fromPlant: func(p *plant.Params) { p.House.HeatedShare = 0 }},
		{name: "loop", label: "heat in and lost from the loop", fromPlant: func(p *plant.Params) {
			p.Loop.WaterL, p.Loop.MetalJPerK, p.Loop.IndoorLossWPerK, p.Loop.OutdoorLossWPerK = traceLoopL, 0, 0, 0
		}},
		{name: "vessel_loss", label: "heat lost from the vessel", fromCase: func(c *Case) { c.Compact.LossW, c.Cylinder.LossW = &none, &none }},
		{name: "dead_legs", label: "pipes to the taps", fromPlant: func(p *plant.Params) {
			p.Supply.DeadLegsL = make([]float64, len(p.Supply.DeadLegsL))
		}},
		{name: "pump", label: "circulation pump", fromPlant: func(p *plant.Params) { p.Power.PumpW = 0 }},
	}
}

// causeYears are lived through for each effect: the difference between paired
// years settles fast (its standard error is below one per cent of it).
const causeYears = 1

// causeSearch divides the difference.
func (cmp *Comparison) causeSearch(ctx context.Context, c *Case, s *scout) search {
	d := DifferenceByCause{Years: min(c.Years, causeYears), KWh: cmp.Difference.WholeHouseKWh}
	list := effects()
	kWh := make([][sides]float64, len(list)+1) // with ever more taken away
	var parts []func() error
	for side := range sides {
		asStated := make([]Totals, d.Years)
		for year := range asStated {
			asStated[year] = cmp.EachYear[side][year].Totals
		}
		kWh[0][side] = meanWholeHouse(asStated)
		for i := range list {
			parts = append(parts, func() (err error) {
				kWh[i+1][side], err = c.kWhWithout(ctx, s, side, list[:i+1], d.Years)
				return err
			})
		}
	}
	return search{parts: parts, whole: func() {
		d.divide(list, kWh)
		cmp.ByCause = d
	}}
}

// divide gives each effect what the difference falls by when it goes.
func (d *DifferenceByCause) divide(list []effect, kWh [][sides]float64) {
	gap := func(i int) float64 { return kWh[i][SideCompact] - kWh[i][SideCylinder] }
	rest := d.KWh
	for i, e := range list {
		part := gap(i) - gap(i+1)
		rest -= part
		d.Parts = append(d.Parts, CauseOfDifference{Name: e.name, Label: e.label, KWh: part})
	}
	d.Parts = append(d.Parts, CauseOfDifference{Name: "interaction", Label: "all else, and what these do to each other", KWh: rest})
}

// kWhWithout gives the electricity of one option with some effects taken away.
func (c *Case) kWhWithout(ctx context.Context, s *scout, side Side, taken []effect, n int) (float64, error) {
	years, err := s.years(ctx, c, c.without(taken, side), n)
	return meanWholeHouse(years), err
}

// without makes an option with some effects taken away.
func (c *Case) without(taken []effect, side Side) maker {
	return func() (plant.Params, error) {
		changed := *c
		for _, e := range taken {
			if e.fromCase != nil {
				e.fromCase(&changed)
			}
		}
		p, err := changed.plantParams(side)
		for _, e := range taken {
			if e.fromPlant != nil {
				e.fromPlant(&p)
			}
		}
		return p, err
	}
}

func meanWholeHouse(years []Totals) float64 {
	mean := 0.0
	for i := range years {
		mean += years[i].WholeHouseKWh / float64(len(years))
	}
	return mean
}

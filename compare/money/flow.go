package money

import "math"

// Flow is what is paid at the end of one year, undiscounted.
type Flow struct {
	Year        int // 0 is today
	Discount    float64
	Capital     float64
	Replacement float64
	Service     float64
	Energy      float64
	Residual    float64 // worth of what is left at the horizon: it is taken off
}

// Flows lists the payments of a plan from today to the horizon. Discounted, they
// add up to PresentCost.
func (p Plan) Flows(t Terms) ([]Flow, error) {
	if err := p.usable(t); err != nil {
		return nil, err
	}
	flows := make([]Flow, t.Years+1)
	flows[0].Capital = p.Capital
	for year := range flows {
		f := &flows[year]
		f.Year, f.Discount = year, DiscountFactor(t.Rate, year)
		if year > 0 {
			f.Service = p.ServicePerYear
			f.Energy = p.EnergyPerYear * math.Pow(1+t.EnergyGrowth, float64(year))
		}
	}
	for k := range p.replacements(t.Years) {
		flows[(k+1)*p.LifeYears].Replacement = p.Capital
	}
	flows[t.Years].Residual = p.residual(t.Years)
	return flows, nil
}

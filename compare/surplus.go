package compare

import (
	"fmt"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
	"dhwcompare/tariffs"
)

// Surplus is electricity of the home's own, such as solar, that would otherwise be
// exported. Behind one meter it is used first; what it serves costs the payment
// that is lost.
type Surplus struct {
	File         datafile.File // that the series comes from; no name: none
	HalfHourKWh  []float64     // kWh left over in each half hour of the year; none: there is no surplus
	ExportPerKWh float64       // payment for exported electricity, -1,000 to 1,000 a kWh
}

// surplusLabel names the band of own surplus in every bill.
const surplusLabel = "own surplus"

// rates lays the tariffs over the year, own surplus in front of each.
func (c *Case) rates() ([]*tariffs.Rates, error) {
	list := make([]*tariffs.Rates, len(c.Tariffs))
	for i := range c.Tariffs {
		r, err := c.Tariffs[i].Compile(c.Climate.Year())
		if err != nil {
			return nil, err
		}
		if len(c.Surplus.HalfHourKWh) > 0 {
			if r, err = r.WithSurplus(surplusLabel, c.Surplus.HalfHourKWh, c.Surplus.ExportPerKWh); err != nil {
				return nil, fmt.Errorf("tariff %q: %w", c.Tariffs[i].Name, err)
			}
		}
		list[i] = r
	}
	return list, nil
}

// marginalPrices gives what another kilowatt-hour costs a heat pump in each half
// hour of the year.
func (c *Case) marginalPrices(r *tariffs.Rates) []float64 {
	prices := make([]float64, calendar.HalfHours)
	for i := range prices {
		own := 0.0
		if len(c.Surplus.HalfHourKWh) > 0 {
			own = min(1, c.Surplus.HalfHourKWh[i]/runKWh)
		}
		prices[i] = own*c.Surplus.ExportPerKWh + (1-own)*r.PerKWh(i)
	}
	return prices
}

// runKWh is what a heat pump that makes hot water takes in half an hour: about
// 2 kW, practice.
const runKWh = 1.0

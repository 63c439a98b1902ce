package money

import (
	"fmt"
	"math"
)

// Terms are what all options share: how long costs are counted, and how payments
// of different years compare.
type Terms struct {
	Years        int     // horizon, 1 or more
	Rate         float64 // real discount rate, a share above -1
	EnergyGrowth float64 // growth of energy prices a year beyond inflation, a share above -1
}

// Check refuses terms for which the formulas do not hold.
func (t Terms) Check() error {
	switch {
	case t.Years < 1:
		return fmt.Errorf("a horizon of %d years: must be at least 1", t.Years)
	case !(t.Rate > -1) || math.IsInf(t.Rate, 0):
		return fmt.Errorf("a real discount rate of %g: must be above -1", t.Rate)
	case !(t.EnergyGrowth > -1) || math.IsInf(t.EnergyGrowth, 0):
		return fmt.Errorf("a growth of energy prices of %g: must be above -1", t.EnergyGrowth)
	}
	return nil
}

// EnergyFactor is what a yearly energy cost at today's prices is worth today over
// the horizon, for each 1 of it.
func (t Terms) EnergyFactor() float64 { return GrowingFactor(t.Rate, t.EnergyGrowth, t.Years) }

// PerYear turns a present cost into the even yearly payment over the horizon that
// is worth the same: the equivalent annual cost. It assumes that an option is
// replaced by its like.
func (t Terms) PerYear(present float64) float64 { return present * AnnuityFactor(t.Rate, t.Years) }

// Plan is the money of one option. Amounts are of today.
type Plan struct {
	Capital        float64 // bought and installed
	LifeYears      int     // after which the capital is spent again, 1 or more
	ServicePerYear float64
	EnergyPerYear  float64
}

// Check refuses a plan for which the formulas do not hold.
func (p Plan) Check() error {
	if p.LifeYears < 1 {
		return fmt.Errorf("a service life of %d years: must be at least 1", p.LifeYears)
	}
	for _, v := range []float64{p.Capital, p.ServicePerYear, p.EnergyPerYear} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return fmt.Errorf("a cost of %g: must be a finite number", v)
		}
	}
	return nil
}

// replacements counts how often the option is bought again within the horizon.
// What reaches its end at the horizon itself is not replaced.
func (p Plan) replacements(years int) int { return (years - 1) / p.LifeYears }

// residual is the worth of what is left at the horizon: the share of its life that
// the last one bought has still before it, straight line.
func (p Plan) residual(years int) float64 {
	age := years - p.replacements(years)*p.LifeYears
	return p.Capital * float64(p.LifeYears-age) / float64(p.LifeYears)
}

// Cost is money worth today, by what it is for.
type Cost struct {
	Capital     float64
	Replacement float64
	Service     float64
	Energy      float64
	Residual    float64 // worth of what is left at the horizon: it is taken off
}

// Net is the net present cost, called global cost in EN 15459-1.
func (c Cost) Net() float64 { return c.Fixed() + c.Energy }

// Fixed is the part that does not depend on the price of energy.
func (c Cost) Fixed() float64 { return c.Capital + c.Replacement + c.Service - c.Residual }

// PresentCost gives what a plan costs over the horizon,
//
//	C = capital (1 + sum D(k life)) + service f(T) + energy g(T) - residual D(T)
//
// with a replacement at the end of each life before the horizon T and the
// straight-line residual value of the last. EN 15459-1:2017, calculation of
// global cost (in a public summary; the straight line from memory).
func (p Plan) PresentCost(t Terms) (Cost, error) {
	if err := p.usable(t); err != nil {
		return Cost{}, err
	}
	c := Cost{
		Capital:  p.Capital,
		Service:  p.ServicePerYear * PresentValueFactor(t.Rate, t.Years),
		Energy:   p.EnergyPerYear * t.EnergyFactor(),
		Residual: p.residual(t.Years) * DiscountFactor(t.Rate, t.Years),
	}
	for k := range p.replacements(t.Years) {
		c.Replacement += p.Capital * DiscountFactor(t.Rate, (k+1)*p.LifeYears)
	}
	return c, nil
}

func (p Plan) usable(t Terms) error {
	if err := t.Check(); err != nil {
		return err
	}
	return p.Check()
}

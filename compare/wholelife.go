package compare

import "dhwcompare/compare/money"

// LifeCost is a cost over the case's horizon, of the same boundary as the running
// cost.
type LifeCost struct {
	NetPresentCost       float64 `json:"net_present_cost"`       // worth today
	EquivalentAnnualCost float64 `json:"equivalent_annual_cost"` // even yearly payment that is worth as much
}

// WholeLife is where an option's money goes over the horizon.
type WholeLife struct {
	Present CostParts  `json:"present_value"` // adds up to the net present cost
	Flows   []CashFlow `json:"cash_flows"`    // discounted, they add up to it too
}

// CostParts divides a cost by what it is for. The parts add up to the whole.
type CostParts struct {
	Purchase     float64 `json:"purchase"`
	Installation float64 `json:"installation"`
	Volumiser    float64 `json:"volumiser"`   // of the heating, where the option needs one
	Replacement  float64 `json:"replacement"` // all of these again, at the end of each life
	SafetyCheck  float64 `json:"safety_check"`
	Upkeep       float64 `json:"upkeep"`
	Descaling    float64 `json:"descaling"`
	Energy       float64 `json:"energy"`
	Residual     float64 `json:"residual"` // worth of what is left at the horizon; zero or less
}

// Sum adds up the parts.
func (p *CostParts) Sum() float64 {
	return p.Purchase + p.Installation + p.Volumiser + p.Replacement + p.SafetyCheck + p.Upkeep + p.Descaling + p.Energy + p.Residual
}

// CashFlow is what an option costs at the end of one year, in today's money.
type CashFlow struct {
	Year     int     `json:"year"` // 0 is today
	Discount float64 `json:"discount_factor"`
	CostParts
	Total   float64 `json:"total"`
	Present float64 `json:"present_value"` // of the total
}

const percent = 100

// Terms gives the horizon and the rates of the case.
func (m *Money) Terms() money.Terms {
	return money.Terms{Years: m.HorizonYears, Rate: m.DiscountPercent / percent, EnergyGrowth: m.EnergyGrowthPercent / percent}
}

// outlay gives what one option costs besides electricity: of a volumiser nothing
// where none is needed.
func (c *Case) outlay(side Side) Outlay {
	o := *c.Money.OutlayOf(side)
	if c.VolumiserL(side) == 0 {
		o.Volumiser = 0
	}
	return o
}

// plan gives one option's money with a yearly cost of electricity.
func (c *Case) plan(side Side, energyPerYear float64) money.Plan {
	o := c.outlay(side)
	return money.Plan{
		Capital: o.Capital(), LifeYears: o.LifeYears,
		ServicePerYear: o.ServicePerYear(), EnergyPerYear: energyPerYear,
	}
}

// lifeCost gives what one option costs over the horizon.
func (c *Case) lifeCost(side Side, energyPerYear float64) (LifeCost, error) {
	terms := c.Money.Terms()
	cost, err := c.plan(side, energyPerYear).PresentCost(terms)
	if err != nil {
		return LifeCost{}, err
	}
	return LifeCost{NetPresentCost: cost.Net(), EquivalentAnnualCost: terms.PerYear(cost.Net())}, nil
}

func (l LifeCost) less(o LifeCost) LifeCost {
	return LifeCost{l.NetPresentCost - o.NetPresentCost, l.EquivalentAnnualCost - o.EquivalentAnnualCost}
}

// wholeLife gives where one option's money goes.
func (c *Case) wholeLife(side Side, energyPerYear float64) (WholeLife, error) {
	plan, terms, o := c.plan(side, energyPerYear), c.Money.Terms(), c.outlay(side)
	cost, err := plan.PresentCost(terms)
	if err != nil {
		return WholeLife{}, err
	}
	flows, err := plan.Flows(terms)
	if err != nil {
		return WholeLife{}, err
	}
	life := WholeLife{Present: o.parts(money.PresentValueFactor(terms.Rate, terms.Years))}
	life.Present.Purchase, life.Present.Installation, life.Present.Volumiser = o.Purchase, o.Installation, o.Volumiser
	life.Present.Replacement, life.Present.Energy, life.Present.Residual = cost.Replacement, cost.Energy, -cost.Residual
	for i := range flows {
		life.Flows = append(life.Flows, o.cashFlow(&flows[i]))
	}
	return life, nil
}

// parts gives the yearly services, each times a factor.
func (o *Outlay) parts(factor float64) CostParts {
	return CostParts{SafetyCheck: factor * o.SafetyCheckPerYear, Upkeep: factor * o.UpkeepPerYear, Descaling: factor * o.DescalingPerYear}
}

func (o *Outlay) cashFlow(f *money.Flow) CashFlow {
	c := CashFlow{Year: f.Year, Discount: f.Discount}
	if f.Year == 0 {
		c.Purchase, c.Installation, c.Volumiser = o.Purchase, o.Installation, o.Volumiser
	} else {
		c.CostParts = o.parts(1)
	}
	c.Replacement, c.Energy, c.Residual = f.Replacement, f.Energy, 0-f.Residual
	c.Total = c.Sum()
	c.Present = c.Total * c.Discount
	return c
}

package compare

// Worth is what the difference between the options is worth.
type Worth struct {
	BreakEven                 // on the first tariff
	PriceOfSpace PriceOfSpace `json:"price_of_space"`
	// PricePerM2 is the price of the space for each square metre, null if it has none.
	PricePerM2 *float64 `json:"price_of_space_per_m2_year"`
}

// Ownership is what it means to own one option.
type Ownership struct {
	LifeCost
	WholeLife       WholeLife     `json:"whole_life"`
	StartBudget     *StartBudget  `json:"start_budget"` // null if no design start count is stated
	WeightFullKg    float64       `json:"weight_full_kg"`
	NeedsFloorCheck bool          `json:"needs_floor_check"` // heavier on one place than floors of homes are usually designed for
	Fit             *Fit          `json:"fit"`               // null if no room is stated
	CheapestWindows *WindowChoice `json:"cheapest_windows"`  // null if its windows do not follow the tariff
}

// Names of the spreads of costs over the whole life.
const (
	presentCostName = "net_present_cost"
	annualCostName  = "equivalent_annual_cost"
)

// weigh adds costs over the whole life, on every tariff, the break-evens and the
// price of the space.
func (cmp *Comparison) weigh(c *Case, k *collector) error {
	for side := range sides {
		if err := cmp.Options.Of(side).own(c, side); err != nil {
			return err
		}
	}
	cmp.Difference.LifeCost = cmp.Options.Compact.LifeCost.less(cmp.Options.Cylinder.LifeCost)
	if err := cmp.spreadLifeCosts(c, k); err != nil {
		return err
	}
	for i := range cmp.Tariffs {
		if err := cmp.Tariffs[i].weigh(c); err != nil {
			return err
		}
	}
	if len(cmp.Tariffs) > 0 {
		cmp.BreakEven = cmp.Tariffs[0].BreakEven
	}
	cmp.PriceOfSpace = priceOfSpace(&c.Money, cmp)
	cmp.PricePerM2 = cmp.PriceOfSpace.PerM2
	return nil
}

// own adds what an option costs over its life and how it wears.
func (o *Option) own(c *Case, side Side) (err error) {
	if o.LifeCost, err = c.lifeCost(side, o.CostPerYear); err != nil {
		return err
	}
	o.StartBudget = startBudget(c, &o.Totals)
	o.WholeLife, err = c.wholeLife(side, o.CostPerYear)
	return err
}

// weigh adds costs over the whole life on one tariff.
func (t *TariffCost) weigh(c *Case) (err error) {
	for side := range sides {
		bill := t.Of(side)
		if bill.LifeCost, err = c.lifeCost(side, bill.Cost); err != nil {
			return err
		}
	}
	t.AnnualDifference = t.Compact.EquivalentAnnualCost - t.Cylinder.EquivalentAnnualCost
	t.BreakEven, err = c.breakEven(t.Compact.Cost, t.Cylinder.Cost)
	return err
}

// spreadLifeCosts carries the spread of the yearly bills over to the whole life.
func (cmp *Comparison) spreadLifeCosts(c *Case, k *collector) error {
	var costs [sides][]LifeCost
	for side := range sides {
		for i := range k.years[side] {
			l, err := c.lifeCost(side, k.years[side][i].totals.CostPerYear)
			if err != nil {
				return err
			}
			costs[side] = append(costs[side], l)
		}
		o := cmp.Options.Of(side)
		o.Spread[presentCostName], o.Spread[annualCostName] = spreadsOf(costs[side])
	}
	for i := range costs[SideCompact] {
		costs[SideCompact][i] = costs[SideCompact][i].less(costs[SideCylinder][i])
	}
	present, annual := spreadsOf(costs[SideCompact])
	better := shareBetter(annualCosts(costs[SideCompact]), Less)
	cmp.Difference.Spread[presentCostName] = DifferenceSpread{Spread: present, ShareBetter: better}
	cmp.Difference.Spread[annualCostName] = DifferenceSpread{Spread: annual, ShareBetter: better}
	return nil
}

func spreadsOf(costs []LifeCost) (present, annual Spread) {
	values := make([]float64, len(costs))
	for i := range costs {
		values[i] = costs[i].NetPresentCost
	}
	return SpreadOf(values), SpreadOf(annualCosts(costs))
}

func annualCosts(costs []LifeCost) []float64 {
	values := make([]float64, len(costs))
	for i := range costs {
		values[i] = costs[i].EquivalentAnnualCost
	}
	return values
}

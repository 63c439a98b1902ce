package compare

// PriceOfSpace is what the space that the compact store frees costs a year, beside
// what the space is worth to the household.
type PriceOfSpace struct {
	FreedM2 float64 `json:"freed_m2"` // floor with clearances; negative if the compact store takes more
	FreedL  float64 `json:"freed_l"`  // of cupboard
	// Prices are the extra equivalent annual cost for each square metre and litre
	// freed. They are null, with the reason in Note, if there is nothing to pay for.
	PerM2     *float64 `json:"per_m2_year"`
	PerM2Low  *float64 `json:"per_m2_year_ci90_low"` // from the 90 % interval of the mean cost
	PerM2High *float64 `json:"per_m2_year_ci90_high"`
	PerL      *float64 `json:"per_l_year"`
	Note      string   `json:"note"`
	// ValuePerM2 is what the case says a square metre of cupboard is worth a year;
	// 0 if it says nothing.
	ValuePerM2 float64 `json:"value_per_m2_year"`
	// TurnsAtPerM2 is the value of a square metre a year at which the options are
	// worth the same; null if no value of space turns the decision.
	TurnsAtPerM2 *float64 `json:"turns_at_per_m2_year"`
	TurnsNote    string   `json:"turns_note"`
	// DifferenceWithSpace is the difference in equivalent annual cost less the value
	// of the floor freed: below zero the compact store is worth more.
	DifferenceWithSpace float64 `json:"difference_with_space_per_year"`
}

func priceOfSpace(m *Money, cmp *Comparison) PriceOfSpace {
	extra := cmp.Difference.Spread[annualCostName]
	extra.Mean = cmp.Difference.EquivalentAnnualCost
	p := PriceOfSpace{
		FreedM2: -cmp.Difference.FloorAreaM2, FreedL: -cmp.Difference.SpaceL,
		ValuePerM2: m.FloorValuePerM2Year * m.FloorValueShare,
	}
	p.DifferenceWithSpace = extra.Mean - p.ValuePerM2*p.FreedM2
	if !cmp.comparable() {
		p.Note = "an option leaves too much heat unmet: one that runs cold only looks cheap"
		p.TurnsNote = p.Note
		return p
	}
	p.price(&extra.Spread)
	p.turn(extra.Mean)
	return p
}

// comparable reports whether both options deliver enough of the wanted heat for
// their costs to be compared.
func (cmp *Comparison) comparable() bool {
	for side := range sides {
		if cmp.Options.Of(side).unmetShare() > LargestUnmetShare {
			return false
		}
	}
	return true
}

// price divides the extra cost by what is freed.
func (p *PriceOfSpace) price(extra *Spread) {
	switch {
	case p.FreedM2 <= 0 && p.FreedL <= 0:
		p.Note = "the compact store frees no space"
		return
	case extra.Mean <= 0:
		p.Note = "the compact store costs no more over its life: the space is free"
		return
	}
	if p.FreedM2 > 0 {
		p.PerM2, p.PerM2Low, p.PerM2High = per(extra.Mean, p.FreedM2), per(extra.CILow, p.FreedM2), per(extra.CIHigh, p.FreedM2)
	} else {
		p.Note = "the compact store frees no floor, only height"
	}
	if p.FreedL > 0 {
		p.PerL = per(extra.Mean, p.FreedL)
	} else {
		p.Note = "the compact store frees floor, but no cupboard volume"
	}
}

func per(cost, amount float64) *float64 {
	price := cost / amount
	return &price
}

// turn finds the value of floor at which the decision turns.
func (p *PriceOfSpace) turn(extra float64) {
	saves, frees := extra <= 0, p.FreedM2 >= 0
	switch {
	case saves && frees:
		p.TurnsNote = "the compact store costs no more and takes no more floor: no value of floor turns that"
	case !saves && p.FreedM2 <= 0:
		p.TurnsNote = "the cylinder costs less and takes no more floor: no value of floor turns that"
	default:
		p.TurnsAtPerM2 = per(extra, p.FreedM2)
		p.TurnsNote = "where floor is worth more a year, the compact store is the better buy"
		if saves {
			p.TurnsNote = "where floor is worth more a year, the cylinder is the better buy"
		}
	}
}

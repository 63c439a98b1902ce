package compare

import "dhwcompare/compare/money"

// BreakEven is the price of electricity at which the options cost the same over
// their whole lives.
type BreakEven struct {
	// Ratio is the factor on all unit rates, a payment for export included; null if
	// there is none. Below it the one option costs less, above it the other.
	Ratio *float64 `json:"break_even_unit_rate_ratio"`
	Note  string   `json:"break_even_note"`
}

// breakEven finds the factor from what each option's electricity costs a year.
func (c *Case) breakEven(compactEnergy, cylinderEnergy float64) (BreakEven, error) {
	terms := c.Money.Terms()
	compact, err := c.plan(SideCompact, compactEnergy).PresentCost(terms)
	if err != nil {
		return BreakEven{}, err
	}
	cylinder, err := c.plan(SideCylinder, cylinderEnergy).PresentCost(terms)
	if err != nil {
		return BreakEven{}, err
	}
	if ratio, ok := money.BreakEven(compact, cylinder); ok {
		return BreakEven{&ratio, meetingNote(compact, cylinder)}, nil
	}
	return BreakEven{Note: neverNote(compact, cylinder)}, nil
}

// meetingNote says who costs less on which side of the break-even.
func meetingNote(compact, cylinder money.Cost) string {
	if compact.Energy > cylinder.Energy {
		return "at lower unit rates the compact store costs less over its life, at higher ones the cylinder"
	}
	return "at lower unit rates the cylinder costs less over its life, at higher ones the compact store"
}

func neverNote(compact, cylinder money.Cost) string {
	switch gap := compact.Net() - cylinder.Net(); {
	case gap > 0:
		return "the cylinder costs less over its life whatever the unit rates"
	case gap < 0:
		return "the compact store costs less over its life whatever the unit rates"
	default:
		return "both cost the same over their lives whatever the unit rates"
	}
}

package compare

import (
	"fmt"
	"reflect"

	"dhwcompare/compare/wording"
)

// moneyWarnings says which amounts nobody has stated yet.
func moneyWarnings(c *Case) []Warning {
	standard, m := defaultMoney(), &c.Money
	var list []Warning
	if reflect.DeepEqual(c.Tariffs, defaultTariffs()) {
		taken := ""
		if c.Currency != defaultCurrency {
			taken = ", taken as " + c.Currency + " without conversion"
		}
		list = append(list, Warning{"cost_per_year", "the tariffs are those of the defaults, British rates of 2025 and 2026" + taken + "; state your own"})
	}
	if c.Currency != defaultCurrency && m.CarbonYearKgPerKWh == 0 && m.CarbonKgPerKWh == standard.CarbonKgPerKWh {
		list = append(list, Warning{"carbon_kg_per_year",
			"the carbon of a kilowatt-hour is that of British electricity; state your own"})
	}
	if m.Compact == standard.Compact || m.Cylinder == standard.Cylinder {
		list = append(list, Warning{presentCostName,
			"purchase, installation and service are placeholders until quotes replace them; costs over the whole life, the break-even and the price of space rest on them"})
	}
	if m.FloorValuePerM2Year == standard.FloorValuePerM2Year {
		list = append(list, Warning{"price_of_space",
			"the value of floor space is a placeholder, a British mean rent; state your own beside the price of the space"})
	}
	return list
}

// lifeClause is what the verdict says on costs over the whole life: the price of
// the space and the break-even. Costs that cannot be compared have neither.
func lifeClause(c *Case, cmp *Comparison) string {
	if !cmp.comparable() {
		return ""
	}
	over := " Over"
	if cmp.Options.Compact.Remedy() != nil || cmp.Options.Cylinder.Remedy() != nil {
		over = " As set up, over"
	}
	return fmt.Sprintf("%s %d years, with purchase, service and replacement, %s%s; %s.",
		over, c.Money.HorizonYears, lifeWords(c, cmp), spaceWords(c.Currency, &cmp.PriceOfSpace), meetWords(&cmp.BreakEven))
}

// lifeWords says which option costs less over its life.
func lifeWords(c *Case, cmp *Comparison) string {
	extra, finding := cmp.Difference.EquivalentAnnualCost, findingOn(annualCostName, c, cmp)
	words := wording.Sprintf("the compact store costs %s %.0f a year more", c.Currency, extra)
	if extra < 0 {
		words = wording.Sprintf("the compact store costs %s %.0f a year less", c.Currency, -extra)
	}
	switch finding {
	case CostNoDifference:
		return words + " (no real difference)"
	case CostUndecided:
		return words + " (undecided on the years simulated)"
	default:
		return words
	}
}

func spaceWords(currency string, p *PriceOfSpace) string {
	switch {
	case p.PerM2 == nil && p.PerL == nil && p.FreedM2 > 0:
		return wording.Sprintf(", and the %.2f m2 of floor that it frees cost nothing", p.FreedM2)
	case p.PerM2 == nil:
		return ""
	}
	words := wording.Sprintf(", which is %s %.0f a year for each m2 of floor, of which it frees %.2f", currency, *p.PerM2, p.FreedM2)
	if p.ValuePerM2 > 0 {
		words += wording.Sprintf(" (valued at %.0f)", p.ValuePerM2)
	}
	if p.PerL != nil {
		words += wording.Sprintf(", or %.2f for each of %.0f litres of cupboard", *p.PerL, p.FreedL)
	}
	return words
}

func meetWords(b *BreakEven) string {
	if b.Ratio == nil {
		return b.Note
	}
	return wording.Sprintf("both would cost the same with all unit rates at %.2f times these", *b.Ratio)
}

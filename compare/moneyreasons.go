package compare

import (
	"fmt"
	"math"
	"strings"

	"dhwcompare/compare/wording"
)

// lifeReasons say what the whole life costs, what a safety check outweighs, where
// costs meet and what the space costs.
func lifeReasons(c *Case, cmp *Comparison) []string {
	a, b, m := &cmp.Options.Compact, &cmp.Options.Cylinder, &c.Money
	first, second := c.outlay(SideCompact), c.outlay(SideCylinder)
	reasons := []string{wording.Sprintf("Whole life: over %d years at %.3g %% real, %s %.0f against %.0f in today's money, or %.0f against %.0f a year: purchase and installation %.0f against %.0f, service %.0f against %.0f a year, electricity %.0f against %.0f a year.",
		m.HorizonYears, m.DiscountPercent, c.Currency, a.NetPresentCost, b.NetPresentCost, a.EquivalentAnnualCost, b.EquivalentAnnualCost,
		first.Capital(), second.Capital(), first.ServicePerYear(), second.ServicePerYear(), a.CostPerYear, b.CostPerYear)}
	reasons = append(reasons, checkReasons(c, cmp)...)
	if !cmp.comparable() {
		return reasons
	}
	return append(reasons, breakEvenReason(cmp), priceReason(c.Currency, &cmp.PriceOfSpace))
}

// checkReasons point out a safety check that outweighs electricity.
func checkReasons(c *Case, cmp *Comparison) []string {
	check := c.Money.Cylinder.SafetyCheckPerYear - c.Money.Compact.SafetyCheckPerYear
	energy := math.Abs(cmp.Difference.CostPerYear)
	if math.Abs(check) <= energy {
		return nil
	}
	name := SideCylinder
	if check < 0 {
		name = SideCompact
	}
	return []string{wording.Sprintf("Safety check: that of the %s, %s %.0f a year more than the other's, outweighs the difference in electricity of %.0f a year.",
		name, c.Currency, math.Abs(check), energy)}
}

// breakEvenReason goes through the tariffs. What lies on which side is said once,
// for the first that has a break-even.
func breakEvenReason(cmp *Comparison) string {
	var parts []string
	which := ""
	for i := range cmp.Tariffs {
		t := &cmp.Tariffs[i]
		switch {
		case t.Ratio == nil:
			parts = append(parts, fmt.Sprintf("none on %q, %s", t.Name, t.BreakEven.Note))
		case which == "":
			which = t.BreakEven.Note
			fallthrough
		default:
			parts = append(parts, wording.Sprintf("on %q at %.2f times its unit rates", t.Name, *t.Ratio))
		}
	}
	if which != "" {
		parts = append(parts, which)
	}
	return fmt.Sprintf("Break-even of whole-life costs: %s.", strings.Join(parts, "; "))
}

func priceReason(currency string, p *PriceOfSpace) string {
	var parts []string
	if p.PerM2 != nil {
		parts = append(parts, wording.Sprintf("%s %.0f a year for each m2 of floor freed (90 %% interval %.0f to %.0f)", currency, *p.PerM2, *p.PerM2Low, *p.PerM2High))
	}
	if p.PerL != nil {
		parts = append(parts, wording.Sprintf("%s %.2f a year for each litre of cupboard freed", currency, *p.PerL))
	}
	if p.Note != "" {
		parts = append(parts, p.Note)
	}
	if p.ValuePerM2 > 0 {
		parts = append(parts, wording.Sprintf("the case values a square metre of cupboard at %s %.0f a year", currency, p.ValuePerM2))
	}
	if p.TurnsAtPerM2 != nil {
		parts = append(parts, wording.Sprintf("the decision turns at %s %.0f (%s)", currency, *p.TurnsAtPerM2, p.TurnsNote))
	} else {
		parts = append(parts, p.TurnsNote)
	}
	return fmt.Sprintf("Price of space: %s.", strings.Join(parts, "; "))
}

func carbonReason(cmp *Comparison) string {
	return wording.Sprintf("Carbon: %.0f against %.0f kg of CO2 equivalent a year, at the factors of the case for all years.",
		cmp.Options.Compact.CarbonKg, cmp.Options.Cylinder.CarbonKg)
}

// budgetReasons set starts against the design count, if one is stated.
func budgetReasons(cmp *Comparison) []string {
	a, b := cmp.Options.Compact.StartBudget, cmp.Options.Cylinder.StartBudget
	if a == nil || b == nil {
		return nil
	}
	return []string{wording.Sprintf("Starts against the %.0f that the case states for the compressor: %.0f against %.0f a year, heating included; %.0f %% against %.0f %% of them in %d years.",
		a.DesignStarts, a.StartsPerYear, b.StartsPerYear, a.ShareOverHorizon*percent, b.ShareOverHorizon*percent, a.HorizonYears)}
}

// windowReasons say what windows that follow the tariff save and risk.
func windowReasons(c *Case, cmp *Comparison) []string {
	var reasons []string
	for side := range sides {
		w := cmp.Options.Of(side).CheapestWindows
		if w == nil {
			continue
		}
		reasons = append(reasons, wording.Sprintf("Cheapest windows of the %s on %q: %s, %s %.0f a year saved and %+.1f failing showers a year, over %d years tried.",
			side, w.Tariff, w.hours(), c.Currency, w.SavedPerYear, w.ExtraFailing, w.Years))
	}
	return reasons
}

// hours puts the chosen windows into words.
func (w *WindowChoice) hours() string {
	switch {
	case len(w.Windows) == 0:
		return "at any time, as nothing shorter that serves costs less"
	case w.RaisedC > 0:
		return wording.Sprintf("%.0f C from %s", w.RaisedC, strings.Join(w.Windows, " and "))
	default:
		return strings.Join(w.Windows, " and ")
	}
}

// fitReasons say whether the options fit the room, if one is stated.
func fitReasons(cmp *Comparison) []string {
	a, b := cmp.Options.Compact.Fit, cmp.Options.Cylinder.Fit
	if a == nil || b == nil {
		return nil
	}
	return []string{fmt.Sprintf("Room: the compact store %s; the cylinder %s.", a.Text, b.Text)}
}

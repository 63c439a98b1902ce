package compare

import (
	"fmt"
	"strings"

	"dhwcompare/compare/wording"
)

func serviceReason(c *Case, cmp *Comparison) string {
	s := func(o *Option) string {
		spread := o.Spread["failing_showers_per_year"]
		meets := "meets"
		if !o.MeetsServiceRule {
			meets = "does not meet"
		}
		return wording.Sprintf("the %s %s it with %.1f (90 %% interval %.1f to %.1f)", o.Name, meets, spread.Mean, spread.LowCount(), spread.CIHigh)
	}
	return wording.Sprintf("Service: the rule is at most %.3g failing showers a year at %.3g %% confidence; %s, %s.",
		c.Service.FailuresPerYear, c.Service.ConfidencePercent, s(&cmp.Options.Compact), s(&cmp.Options.Cylinder))
}

func costReason(c *Case, cmp *Comparison, finding CostFinding) string {
	s := cmp.Difference.Spread["cost_per_year"]
	return wording.Sprintf("Running cost on the tariff %q: %s. As simulated the compact store differs by %s %+.0f a year (90 %% interval of the mean %+.0f to %+.0f); a difference below %.0f is not material.",
		cmp.Tariffs[0].Name, finding, c.Currency, s.Mean, s.CILow, s.CIHigh, c.Money.MaterialityPerYear)
}

func energyReason(cmp *Comparison) string {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	return wording.Sprintf("Energy: %.0f against %.0f kWh of electricity a year; each kWh delivers %.2f against %.2f kWh of hot water; COP %.2f against %.2f.",
		a.ElectricityKWh, b.ElectricityKWh, a.SystemEfficiency, b.SystemEfficiency, a.HeatPumpCOP, b.HeatPumpCOP)
}

func startsReason(cmp *Comparison) string {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	return wording.Sprintf("Starts: the compressor starts %.1f against %.1f times a day and runs %.0f against %.0f minutes each time.",
		a.StartsPerDay, b.StartsPerDay, a.MinutesPerRun, b.MinutesPerRun)
}

func spaceReason(cmp *Comparison) string {
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	return wording.Sprintf("Space: %.2f against %.2f m2 of floor with clearances, %.0f against %.0f litres of cupboard.",
		a.FloorAreaM2, b.FloorAreaM2, a.SpaceL, b.SpaceL)
}

// equalReasons say what it would take for each option to keep the service rule.
// Before that has been looked for there is nothing to say.
func equalReasons(c *Case, cmp *Comparison) []string {
	var parts []string
	for side := range sides {
		o := cmp.Options.Of(side)
		e := &o.EqualService
		switch {
		case e.Meets && e.ShowerLimit > 0:
			parts = append(parts, wording.Sprintf("the %s at %.0f C with a %.0f l/min limiter (%s %.0f a year)", o.Name, e.SetpointC, e.ShowerLimit, c.Currency, e.Trial.Cost))
		case e.Meets:
			parts = append(parts, wording.Sprintf("the %s at %.0f C (%s %.0f a year)", o.Name, e.SetpointC, c.Currency, e.Trial.Cost))
		case e.Note != "":
			parts = append(parts, fmt.Sprintf("the %s at no setting that its heat pump allows", o.Name))
		}
	}
	if len(parts) == 0 {
		return nil
	}
	return []string{"Equal service: the cheapest setting that keeps the rule is " + strings.Join(parts, ", and ") + "."}
}

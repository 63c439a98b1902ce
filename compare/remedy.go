package compare

import (
	"fmt"

	"dhwcompare/compare/wording"
)

// Remedied is what an option costs at the setting at which it keeps the service rule,
// on the first tariff.
type Remedied struct {
	AboveStated  float64 `json:"cost_above_stated"`       // a year, beyond the option as stated
	AboveOther   float64 `json:"cost_above_other_option"` // a year, beyond the other option as stated
	LifeCost             // of the whole life at that setting
	OtherPerYear float64 `json:"other_equivalent_annual_cost"` // of the other option, as stated
}

// AllInAboveOther is the difference in equivalent annual cost from the other option,
// as stated.
func (r *Remedied) AllInAboveOther() float64 { return r.EquivalentAnnualCost - r.OtherPerYear }

// priceRemedies adds what equal service costs, where it can be had.
func (cmp *Comparison) priceRemedies(c *Case) error {
	for side := range sides {
		o, other := cmp.Options.Of(side), cmp.Options.Of(1-side)
		if !o.EqualService.Meets {
			continue
		}
		cost := o.EqualService.Trial.Cost
		life, err := c.lifeCost(side, cost)
		if err != nil {
			return err
		}
		o.EqualService.Remedied = &Remedied{
			AboveStated: cost - o.CostPerYear, AboveOther: cost - other.CostPerYear,
			LifeCost: life, OtherPerYear: other.EquivalentAnnualCost,
		}
	}
	return nil
}

// Remedy gives the setting that would let the option keep a service rule that it
// misses as stated, nil if it misses none, or none would, or nobody has looked. A
// colder setting that keeps it in few years does so by chance.
func (o *Option) Remedy() *EqualService {
	e := &o.EqualService
	byChance := e.ShowerLimit == 0 && e.SetpointC < o.SetpointC
	if o.MeetsServiceRule || !o.fits() || e.Remedied == nil || byChance {
		return nil
	}
	return e
}

// Hopeless reports whether the option keeps the service rule at no setting that was
// looked for.
func (o *Option) Hopeless() bool { return !o.EqualService.Meets && o.EqualService.Note != "" }

// remedyClause says what it would take for an option that runs cold to serve, and
// what it would then cost against the other.
func (v *Verdict) remedyClause(c *Case, cmp *Comparison) string {
	if v.Recommend == RecommendNeither {
		return neitherRemedies(c, cmp)
	}
	for side := range sides {
		o, other := cmp.Options.Of(side), cmp.Options.Of(1-side)
		switch e := o.Remedy(); {
		case e != nil:
			return fmt.Sprintf(" %s the %s would serve too: %s a year to run than the %s, and %s with purchase, service and replacement.",
				e.setting(), o.Name, costGap(c, e.Remedied.AboveOther), other.Name, costGap(c, e.Remedied.AllInAboveOther()))
		case !o.MeetsServiceRule && o.fits() && o.Hopeless():
			return fmt.Sprintf(" The %s would serve at no setting that its heat pump allows.", o.Name)
		}
	}
	return ""
}

// neitherRemedies is for two options that both run cold.
func neitherRemedies(c *Case, cmp *Comparison) string {
	text := ""
	for side := range sides {
		o := cmp.Options.Of(side)
		if e := o.Remedy(); e != nil {
			text += wording.Sprintf(" %s the %s would serve, at %s %.0f a year.", e.setting(), o.Name, c.Currency, e.Trial.Cost)
		} else if !o.MeetsServiceRule && o.fits() && o.Hopeless() {
			text += fmt.Sprintf(" The %s would serve at no setting that its heat pump allows.", o.Name)
		}
	}
	return text
}

// setting begins a sentence with the setting.
func (e *EqualService) setting() string {
	if e.ShowerLimit > 0 {
		return wording.Sprintf("Kept at %.0f C, with a %.0f l/min limiter on the showers,", e.SetpointC, e.ShowerLimit)
	}
	return wording.Sprintf("Kept at %.0f C", e.SetpointC)
}

// costGap writes a difference in yearly cost.
func costGap(c *Case, gap float64) string {
	if gap < 0 {
		return wording.Sprintf("%s %.0f less", c.Currency, -gap)
	}
	return wording.Sprintf("%s %.0f more", c.Currency, gap)
}

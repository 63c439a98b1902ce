package charts

import (
	"fmt"
	"math"

	"dhwcompare/compare"
)

// checkFinite refuses figures that are not numbers.
func checkFinite(cmp *compare.Comparison) error {
	for _, side := range bothSides() {
		if err := optionFinite(cmp.Options.Of(side)); err != nil {
			return fmt.Errorf("%v: %w", side, err)
		}
	}
	if err := totalsFinite(&cmp.Difference.Totals); err != nil {
		return fmt.Errorf("difference: %w", err)
	}
	for name, s := range cmp.Difference.Spread {
		if !spreadFinite(&s.Spread) {
			return fmt.Errorf("difference: the spread of %s is not a number", name)
		}
	}
	for _, part := range cmp.ByCause.Parts {
		if !finite(part.KWh) {
			return fmt.Errorf("difference: the part of %s is not a number", part.Name)
		}
	}
	for side, profile := range cmp.Profiles {
		if !finite(profile...) {
			return fmt.Errorf("%v: the electricity of a half hour is not a number", compare.Side(side))
		}
	}
	return tariffsFinite(cmp.Tariffs)
}

func optionFinite(o *compare.Option) error {
	if err := totalsFinite(&o.Totals); err != nil {
		return err
	}
	for m := range o.Months {
		if err := totalsFinite(&o.Months[m].Totals); err != nil {
			return fmt.Errorf("month %d: %w", m+1, err)
		}
		if !spreadFinite(&o.FailuresByMonth[m]) {
			return fmt.Errorf("month %d: the spread of failing showers is not a number", m+1)
		}
	}
	for _, cause := range compare.CauseList() {
		if !finite(*cause.Of(&o.ElectricityByCause)) {
			return fmt.Errorf("electricity for %s is not a number", cause.Label)
		}
	}
	if !showersFinite(&o.ShowerTime) {
		return fmt.Errorf("temperatures of showers: a figure is not a number")
	}
	for _, item := range o.SpaceItems {
		if !finite(item.WidthMM, item.DepthMM, item.HeightMM) {
			return fmt.Errorf("space: a dimension of %s is not a number", item.Name)
		}
	}
	return nil
}

func showersFinite(t *compare.ShowerTime) bool {
	for _, c := range t.Colder {
		if !finite(c.C, c.Minutes, c.Share) {
			return false
		}
	}
	return finite(t.WantC, t.LeastC, t.Minutes)
}

func totalsFinite(t *compare.Totals) error {
	for _, f := range compare.Figures() {
		if !finite(*f.Of(t)) {
			return fmt.Errorf("%s is not a number", f.Name)
		}
	}
	return nil
}

func tariffsFinite(list []compare.TariffCost) error {
	for i := range list {
		t := &list[i]
		if !finite(t.Compact.Cost, t.Cylinder.Cost, t.Difference) || !spreadFinite(&t.DifferenceOver.Spread) {
			return fmt.Errorf("tariff %q: a cost is not a number", t.Name)
		}
	}
	return nil
}

// drawoffFinite also refuses a table that does not have a place for each state and
// flow.
func drawoffFinite(d *compare.Drawoff) error {
	if len(d.States) == 0 || len(d.FlowsLPerMin) == 0 || !(d.LongestMin > 0) || !finite(d.LongestMin) || !finite(d.FlowsLPerMin...) {
		return fmt.Errorf("draw-off tests: no states, flows or length")
	}
	for _, side := range bothSides() {
		for month, states := range d.Of(side).ShowerMin {
			if len(states) != len(d.States) {
				return fmt.Errorf("draw-off tests of the %v, month %d: %d states, want %d", side, month+1, len(states), len(d.States))
			}
			for _, minutes := range states {
				if len(minutes) != len(d.FlowsLPerMin) || !finite(minutes...) {
					return fmt.Errorf("draw-off tests of the %v, month %d: the minutes are not a number for each flow", side, month+1)
				}
			}
		}
	}
	return nil
}

func spreadFinite(s *compare.Spread) bool {
	return finite(s.Mean, s.SE, s.CILow, s.CIHigh, s.P05, s.P95)
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

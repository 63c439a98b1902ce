package report

import (
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// row is a line of the table: what it is, each option, the difference.
type row struct{ label, compact, cylinder, difference string }

// noRealDifference stands for a difference that the simulated years do not tell
// from none.
const noRealDifference = "~"

// notJudged stands for a difference in cost that would mislead.
const notJudged = "not judged"

// deciding names the figures of the table that come before and after the costs,
// in order. Where the heat pump heats the house too, the whole house counts.
func deciding(heats bool) (before, after []string) {
	before = []string{"electricity_kwh"}
	if heats {
		before = append(before, "whole_house_electricity_kwh")
	}
	before = append(before, "system_efficiency", "heat_pump_cop", "starts_per_day")
	if heats {
		before = append(before, "changeovers_per_year", "credited_heat_kwh", "heating_interrupted_hours", "longest_heating_gap_minutes", "worst_room_dip_k")
	}
	return append(before, "failing_showers_per_year", "unmet_heat_kwh"), []string{"floor_area_m2", "space_l"}
}

// rows makes the table of the figures that decide.
func rows(doc *compare.Document) []row {
	before, after := deciding(doc.Case.Dwelling.HeatLossWPerK > 0)
	var list []row
	for _, name := range before {
		list = append(list, figureRow(doc.Comparison, name))
		if name == "failing_showers_per_year" {
			list = append(list, serviceRows(doc)...)
		}
	}
	for i := range doc.Comparison.Tariffs {
		list = append(list, costRow(doc, &doc.Comparison.Tariffs[i]))
	}
	for _, name := range after {
		list = append(list, figureRow(doc.Comparison, name))
	}
	o := &doc.Comparison.Options
	return append(list, row{doc.Comparison.Marked("first-law residual", "first_law_residual"), residual(o.Compact.FirstLawResidual), residual(o.Cylinder.FirstLawResidual), ""})
}

func figureRow(cmp *compare.Comparison, name string) row {
	f := figure(name)
	label := f.Label
	if f.Unit != "" {
		label += ", " + f.Unit
	}
	value := func(t *compare.Totals) string { return wording.Fixed(*f.Of(t), f.Decimals) }
	difference := signed(*f.Of(&cmp.Difference.Totals), f.Decimals)
	if s, varies := cmp.Difference.Spread[name]; varies && !tells(s) {
		difference = noRealDifference
	}
	return row{cmp.Marked(label, name), value(&cmp.Options.Compact.Totals), value(&cmp.Options.Cylinder.Totals), difference}
}

// figure finds a figure by its name, which must exist.
func figure(name string) compare.Figure {
	for _, f := range compare.Figures() {
		if f.Name == name {
			return f
		}
	}
	return compare.Figure{Name: name, Label: name, Of: func(*compare.Totals) *float64 { return new(float64) }}
}

// tells reports whether the years tell a difference from none.
func tells(s compare.DifferenceSpread) bool { return s.CILow > 0 || s.CIHigh < 0 }

// signed writes a difference with its sign, and none for what rounds to zero.
func signed(v float64, decimals int) string {
	text := wording.Fixed(v, decimals)
	digits := strings.TrimPrefix(text, "-")
	switch {
	case strings.Trim(digits, "0.") == "":
		return digits
	case v > 0:
		return "+" + text
	default:
		return text
	}
}

// residual is only of interest by its size.
func residual(v float64) string { return wording.Sprintf("%.0e", v) }

// serviceRows says how sure the failing showers are, and what the rule makes of
// them.
func serviceRows(doc *compare.Document) []row {
	o := &doc.Comparison.Options
	interval := func(option *compare.Option) string {
		s := option.Spread["failing_showers_per_year"]
		if doc.Comparison.Years < 2 {
			return "1 year only"
		}
		decimals := 1
		if s.CIHigh >= 100 {
			decimals = 0 // no room, and no need
		}
		return wording.Sprintf("%.*f to %.*f", decimals, s.LowCount(), decimals, s.CIHigh)
	}
	met := func(option *compare.Option) string {
		if option.MeetsServiceRule {
			return "met"
		}
		return "not met"
	}
	rule := wording.Sprintf("  rule: at most %.3g a year", doc.Case.Service.FailuresPerYear)
	return []row{
		{"  90 % interval of that mean", interval(&o.Compact), interval(&o.Cylinder), ""},
		{rule, met(&o.Compact), met(&o.Cylinder), ""},
	}
}

// costRow sets the two bills on a tariff side by side. No difference is shown
// while an option looks cheap because it runs cold.
func costRow(doc *compare.Document, t *compare.TariffCost) row {
	difference := signed(t.Difference, 0)
	switch {
	case doc.Comparison.Verdict.Cost == compare.CostNotCompared:
		difference = notJudged
	case !tells(t.DifferenceOver) || immaterial(t.DifferenceOver, doc.Case.Money.MaterialityPerYear):
		difference = noRealDifference
	}
	currency := ", " + Plain(doc.Comparison.Currency)
	label := cut("cost on "+Plain(t.Name), labelColumns-width(currency)) + currency
	cost := func(b *compare.TariffBill) string { return wording.Fixed(b.Cost, 0) }
	return row{label, cost(&t.Compact), cost(&t.Cylinder), difference}
}

// immaterial reports whether the whole interval lies in the band that does not
// matter.
func immaterial(s compare.DifferenceSpread, band float64) bool {
	return s.CILow >= -band && s.CIHigh <= band
}

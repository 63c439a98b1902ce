package batch

import (
	"slices"
	"strconv"
	"strings"

	"dhwcompare/compare"
)

// column is a column of results beside those of the table.
type column struct {
	name string
	of   func(*compare.Comparison) any // text, number or nil
}

// columns lists what is kept of each home, in order.
func columns() []column {
	list := []column{
		{"recommend", func(c *compare.Comparison) any { return string(c.Verdict.Recommend) }},
		{"cost_finding", func(c *compare.Comparison) any { return string(c.Verdict.Cost) }},
		{"currency", func(c *compare.Comparison) any { return c.Currency }},
		{"cost_difference_per_year", func(c *compare.Comparison) any { return c.Difference.CostPerYear }},
		{"cost_difference_ci90_low", func(c *compare.Comparison) any { return c.Difference.Spread["cost_per_year"].CILow }},
		{"cost_difference_ci90_high", func(c *compare.Comparison) any { return c.Difference.Spread["cost_per_year"].CIHigh }},
		{"floor_area_freed_m2", func(c *compare.Comparison) any { return -c.Difference.FloorAreaM2 }},
		{"space_freed_l", func(c *compare.Comparison) any { return -c.Difference.SpaceL }},
	}
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		list = append(list, optionColumns(side)...)
	}
	return append(list,
		column{"verdict", func(c *compare.Comparison) any { return c.Verdict.Text }},
		column{"warnings", func(c *compare.Comparison) any { return warningTexts(c) }},
		column{"case_digest", func(c *compare.Comparison) any { return c.CaseDigest }})
}

// warningTexts joins what there is to beware of in the figures of a home.
func warningTexts(c *compare.Comparison) string {
	texts := make([]string, len(c.Warnings))
	for i, w := range c.Warnings {
		texts[i] = w.Text
	}
	return strings.Join(texts, "; ")
}

// figureNames are the figures of an option that are kept.
func figureNames() []string {
	return []string{
		"cost_per_year", "electricity_kwh", "whole_house_electricity_kwh", "wanted_heat_kwh", "unmet_heat_kwh", "system_efficiency",
		"failing_showers_per_year", "starts_per_day", "carbon_kg_per_year", "floor_area_m2", "space_l",
	}
}

func optionColumns(side compare.Side) []column {
	prefix := "cylinder_"
	if side == compare.SideCompact {
		prefix = "compact_"
	}
	list := []column{
		{prefix + "volume_l", func(c *compare.Comparison) any { return c.Options.Of(side).VolumeL }},
		{prefix + "setpoint_c", func(c *compare.Comparison) any { return c.Options.Of(side).SetpointC }},
		{prefix + "meets_service_rule", func(c *compare.Comparison) any { return yesNo(c.Options.Of(side).MeetsServiceRule) }},
		{prefix + "fits", func(c *compare.Comparison) any {
			fit := c.Options.Of(side).Fit
			if fit == nil {
				return nil // no room is stated
			}
			return yesNo(fit.Fits)
		}},
	}
	for _, f := range compare.Figures() {
		if slices.Contains(figureNames(), f.Name) {
			list = append(list, column{prefix + f.Name, func(c *compare.Comparison) any { return *f.Of(&c.Options.Of(side).Totals) }})
		}
	}
	return list
}

func yesNo(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}

// columnNames gives the names of the columns of results.
func columnNames() []string {
	var names []string
	for _, c := range columns() {
		names = append(names, c.name)
	}
	return names
}

// valuesOf gives the values of a home, one for each column.
func valuesOf(c *compare.Comparison) []any {
	var values []any
	for _, column := range columns() {
		v := column.of(c)
		if x, is := v.(float64); is {
			v = rounded(x)
		}
		values = append(values, v)
	}
	return values
}

// rounded keeps six digits: more than any figure is good for, and a table stays
// readable.
func rounded(x float64) float64 {
	const digits, bits = 6, 64
	v, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', digits, bits), bits)
	if err != nil {
		return x
	}
	return v + 0 // no negative zero
}

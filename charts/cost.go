package charts

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
)

// mostTariffs fit a page.
const mostTariffs = 10

// costs is the picture of what each option costs: bars on the left, and on the
// right their difference with its interval, which is far narrower than that of
// either bar, since both options meet the same years.
type costs struct {
	bars     pairs
	list     []compare.TariffCost
	interval bool
}

func costChart(cmp *compare.Comparison) Chart {
	k := costs{bars: pairs{unit: currencyName(cmp) + " a year"}, list: cmp.Tariffs, interval: cmp.Years > 1}
	k.list = k.list[:min(len(k.list), mostTariffs)]
	for i := range k.list {
		t := &k.list[i]
		row := pair{label: plain(t.Name)}
		for _, side := range bothSides() {
			row.values[side], row.texts[side] = t.Of(side).Cost, money(cmp, t.Of(side).Cost)
		}
		k.bars.rows = append(k.bars.rows, row)
	}
	return Chart{
		Name:     "cost-by-tariff",
		Title:    costTitle(cmp),
		Alt:      k.inWords(cmp),
		subtitle: k.subtitle(cmp),
		caption:  meanYears(cmp),
		room:     k.room(),
		body:     k.draw,
	}
}

func (k *costs) room() vg.Length {
	if len(k.list) == 0 {
		return emptyHeight
	}
	return k.bars.room() + step(textSize)
}

func currencyName(cmp *compare.Comparison) string { return strings.TrimSpace(currency(cmp)) }

// costTitle follows the verdict's finding on the first tariff.
func costTitle(cmp *compare.Comparison) string {
	gap := money(cmp, math.Abs(cmp.Difference.CostPerYear))
	switch cmp.Verdict.Cost {
	case compare.CostNotCompared:
		return "Running costs cannot be compared: an option that runs cold only looks cheap"
	case compare.CostNoDifference:
		return "No real difference in running cost"
	case compare.CostCompactLess:
		return fmt.Sprintf("Running costs are %s a year lower with the compact store", gap)
	case compare.CostCylinderLess:
		return fmt.Sprintf("Running costs are %s a year lower with the cylinder", gap)
	default:
		return "The simulated years do not settle which option costs less to run"
	}
}

func (k *costs) subtitle(cmp *compare.Comparison) string {
	text := "Electricity for hot water on each tariff, without the standing charge."
	if cmp.Options.Compact.HeatingHeatKWh+cmp.Options.Cylinder.HeatingHeatKWh > 0 {
		text = "Electricity for hot water and heating on each tariff, without the standing charge."
	}
	if k.interval {
		text += " Right: the difference, with the 90 % interval of its mean."
	}
	if hidden := len(cmp.Tariffs) - len(k.list); hidden > 0 {
		text += fmt.Sprintf(" %d more tariffs are not drawn.", hidden)
	}
	return text
}

func (k *costs) inWords(cmp *compare.Comparison) string {
	list := []string{"Paired bars, cost a year. " + k.bars.inWords()}
	for i := range k.list {
		t := &k.list[i]
		text := fmt.Sprintf("Difference on %s: %s", plain(t.Name), signed(t.Difference, 0))
		if k.interval {
			text += fmt.Sprintf(" (90 %% interval %s to %s)", signed(t.DifferenceOver.CILow, 0), signed(t.DifferenceOver.CIHigh, 0))
		}
		list = append(list, text+".")
	}
	return strings.Join(list, " ")
}

package workbook

import (
	"fmt"
	"slices"

	"dhwcompare/compare"
	"dhwcompare/tariffs"
)

// tariffRefs are the assumptions about one tariff.
type tariffRefs struct {
	standing  term
	taxFactor term // what stated prices are multiplied by; empty where they hold the tax
	lines     []lineRefs
}

// lineRefs are the assumptions about one line of a bill.
type lineRefs struct {
	label string
	// rate is the unit rate. A line of several prices (a price for each half
	// hour, say) has a level instead, by which all of them are multiplied.
	rate, level term
	mixed       bool
}

// taxed multiplies by the tax where prices are stated without it.
func (t *tariffRefs) taxed(price term) term {
	if t.taxFactor.text == "" {
		return price
	}
	return times(price, t.taxFactor)
}

// tariff writes the prices of one tariff.
func (w *assumptionsWriter) tariff(i int) tariffRefs {
	t, currency := &w.book.doc.Case.Tariffs[i], w.book.doc.Case.Currency
	id := fmt.Sprintf("Tariff%d_", i+1)
	key := func(what string) string { return fmt.Sprintf("tariffs.%d.%s", i+1, what) }
	var refs tariffRefs
	for n, line := range billLines(t, w.book.comparison().Tariffs[i].Compact.Bands) {
		r := row{foreign: true, meaning: fmt.Sprintf("%s: unit rate, %s", t.Name, line.label), unit: currency + " per kWh", format: formatRate,
			key: key(fmt.Sprintf("rate_%d", n+1)), name: fmt.Sprintf("%srate_%d", id, n+1), value: line.perKWh, least: -mostMoney, most: mostMoney}
		out := lineRefs{label: line.label, mixed: line.mixed}
		if line.mixed {
			r.meaning, r.unit, r.value = fmt.Sprintf("%s: level of the prices of %s (1: as stated)", t.Name, line.label), "", 1
			r.key, r.name, r.least = key(fmt.Sprintf("level_%d", n+1)), fmt.Sprintf("%slevel_%d", id, n+1), 0
			out.level = w.put(r)
		} else {
			out.rate = w.put(r)
		}
		refs.lines = append(refs.lines, out)
	}
	refs.standing = w.put(row{foreign: true, meaning: t.Name + ": standing charge", unit: currency + " a day", format: formatRate,
		key: key("standing_charge_per_day"), name: id + "standing_per_day", value: t.StandingPerDay, most: mostMoney})
	if !t.PricesIncludeTax {
		w.tax(t, &refs, key("tax_percent"), id)
	}
	return refs
}

// tax writes the tax of a tariff whose prices are stated without it.
func (w *assumptionsWriter) tax(t *tariffs.Tariff, refs *tariffRefs, key, id string) {
	percent := w.put(row{foreign: true, meaning: t.Name + ": tax on all of its prices", unit: "%", format: formatAny,
		key: key, name: id + "tax_percent", value: t.TaxPercent, most: 100})
	p := w.at
	w.foreign(p.right(meaningCol-1), t.Name+": what prices are multiplied by for tax")
	hundred := term{text: "Percent", value: 100.0}
	factor := plus(term{text: "1", value: 1.0}, quotient(percent, hundred))
	refs.taxFactor = w.named(id+"tax_factor", p.right(valueCol-1), w.live(p.right(valueCol-1), style{derived, formatRate}, factor))
	w.at.row++
}

// billLine is one line of a bill and the price that belongs to it.
type billLine struct {
	label  string
	perKWh float64
	mixed  bool // no one price
}

// billLines finds the price of each line of a bill. Bands that share a label are
// one line; with more than one price between them it is mixed, as is a price
// series.
func billLines(t *tariffs.Tariff, bands []compare.BandBill) []billLine {
	out := make([]billLine, len(bands))
	for i, b := range bands {
		prices := pricesOf(t, b.Name)
		out[i] = billLine{label: b.Name, mixed: len(prices) != 1}
		if !out[i].mixed {
			out[i].perKWh = prices[0]
		}
	}
	return out
}

// pricesOf lists the distinct prices under a label.
func pricesOf(t *tariffs.Tariff, label string) []float64 {
	var prices []float64
	add := func(perKWh float64) {
		if !slices.Contains(prices, perKWh) {
			prices = append(prices, perKWh)
		}
	}
	if t.SeriesPerKWh != nil {
		return nil
	}
	for _, b := range t.Bands {
		if b.Label == label {
			add(b.PerKWh)
		}
	}
	if t.Remaining != nil && t.Remaining.Label == label {
		add(t.Remaining.PerKWh)
	}
	return prices
}

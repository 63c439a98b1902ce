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
	untaxed     bool // carries no tax
}

// surplus writes what electricity of the home's own costs: the payment that is
// lost.
func (w *assumptionsWriter) surplus(refs *inputRefs) {
	s := &w.book.doc.Case.Surplus
	if len(s.HalfHourKWh) == 0 {
		return
	}
	refs.surplus = w.put(row{key: "surplus.export_per_kwh", name: "Surplus_export_per_kwh", meaning: "own surplus: payment that is lost when it heats water",
		unit: w.book.currency() + " per kWh", value: s.ExportPerKWh, format: formatRate, least: -mostMoney, most: mostMoney})
}

// hasSurplus reports whether own surplus stands as the last line of every bill.
func (refs *inputRefs) hasSurplus() bool { return refs.surplus.text != "" }

// price is what a line costs, for a kilowatt-hour or for what was stated.
func (t *tariffRefs) price(line *lineRefs, stated term) term {
	if line.untaxed {
		return stated
	}
	return t.taxed(stated)
}

// taxed multiplies by the tax where prices are stated without it.
func (t *tariffRefs) taxed(price term) term {
	if t.taxFactor.text == "" {
		return price
	}
	return times(price, t.taxFactor)
}

// tariff writes the prices of one tariff.
func (w *assumptionsWriter) tariff(i int, all *inputRefs) tariffRefs {
	t := &w.book.doc.Case.Tariffs[i]
	id, key := fmt.Sprintf("Tariff%d_", i+1), fmt.Sprintf("tariffs[%d].", i+1)
	var refs tariffRefs
	bands := w.book.comparison().Tariffs[i].Compact.Bands
	if all.hasSurplus() {
		bands = bands[:len(bands)-1]
	}
	for n, line := range billLines(t, bands) {
		refs.lines = append(refs.lines, w.line(t, &line, key, fmt.Sprintf("%s%%s_%d", id, n+1)))
	}
	if all.hasSurplus() {
		refs.lines = append(refs.lines, lineRefs{label: w.book.comparison().Tariffs[i].Compact.Bands[len(bands)].Name, rate: all.surplus, untaxed: true})
	}
	refs.standing = w.put(row{foreign: true, meaning: t.Name + ": standing charge", unit: w.book.currency() + " a day", format: formatRate,
		key: key + "standing_per_day", name: id + "standing_per_day", value: t.StandingPerDay, most: mostMoney})
	if !t.PricesIncludeTax {
		w.tax(t, &refs, key+"tax_percent", id)
	}
	return refs
}

// line writes the rate of one line of a bill, or the level of its prices.
func (w *assumptionsWriter) line(t *tariffs.Tariff, line *billLine, key, name string) lineRefs {
	out := lineRefs{label: line.label, mixed: line.mixed}
	if line.mixed {
		out.level = w.put(row{foreign: true, meaning: fmt.Sprintf("%s: level of the prices of %s (1: as stated)", t.Name, line.label),
			unit: "factor", value: 1, format: formatTwo, most: mostMoney, key: key + "level", name: fmt.Sprintf(name, "level")})
		return out
	}
	for _, k := range line.keys {
		w.used[key+k] = true
	}
	out.rate = w.put(row{foreign: true, meaning: fmt.Sprintf("%s: unit rate, %s", t.Name, line.label), unit: w.book.currency() + " per kWh",
		value: line.perKWh, format: formatRate, least: -mostMoney, most: mostMoney, key: key + line.keys[0], name: fmt.Sprintf(name, "rate")})
	return out
}

// tax writes the tax of a tariff whose prices are stated without it.
func (w *assumptionsWriter) tax(t *tariffs.Tariff, refs *tariffRefs, key, id string) {
	percent := w.put(row{foreign: true, meaning: t.Name + ": tax on all of its prices", unit: "%", format: formatAny,
		key: key, name: id + "tax_percent", value: t.TaxPercent, most: 100})
	p := w.at
	w.foreign(p.right(meaningCol-1), t.Name+": what prices are multiplied by for tax")
	factor := plus(one(), quotient(percent, hundred()))
	refs.taxFactor = w.named(id+"tax_factor", p.right(valueCol-1), w.live(p.right(valueCol-1), style{derived, formatRate}, factor))
	w.at.row++
}

// billLine is one line of a bill and the price that belongs to it.
type billLine struct {
	label  string
	perKWh float64
	mixed  bool     // no one price
	keys   []string // of the case file, for the price
}

// billLines finds the price of each line of a bill. Bands that share a label are
// one line; with more than one price between them it is mixed, as is a price
// series.
func billLines(t *tariffs.Tariff, bands []compare.BandBill) []billLine {
	out := make([]billLine, len(bands))
	for i, b := range bands {
		prices, keys := pricesOf(t, b.Name)
		out[i] = billLine{label: b.Name, mixed: len(prices) != 1, keys: keys}
		if !out[i].mixed {
			out[i].perKWh = prices[0]
		}
	}
	return out
}

// pricesOf lists the distinct prices under a label, and the keys that state them.
func pricesOf(t *tariffs.Tariff, label string) (prices []float64, keys []string) {
	if t.SeriesPerKWh != nil {
		return nil, nil
	}
	add := func(perKWh float64, key string) {
		keys = append(keys, key)
		if !slices.Contains(prices, perKWh) {
			prices = append(prices, perKWh)
		}
	}
	for i, b := range t.Bands {
		if b.Label == label {
			add(b.PerKWh, fmt.Sprintf("bands[%d].rate_per_kwh", i+1))
		}
	}
	if t.Remaining != nil && t.Remaining.Label == label {
		add(t.Remaining.PerKWh, "rate_per_kwh")
	}
	return prices, keys
}

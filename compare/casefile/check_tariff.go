package casefile

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/tariffs"
)

// checkTariffs looks for tariffs that cannot be told apart or have no rate at some
// hour.
func checkTariffs(r *reader, c *compare.Case) {
	if len(c.Tariffs) == 0 {
		r.clash("is an empty list, allowed one tariff or more: state one, or leave the key out", "tariffs")
	}
	names := map[string]int{}
	for i := range c.Tariffs {
		t := &c.Tariffs[i]
		item := fmt.Sprintf("tariffs[%d]", i+1)
		if first, again := names[t.Name]; again {
			r.clash(fmt.Sprintf("is %s, the name of tariffs[%d] too: name them apart", shown(t.Name), first), item+".name")
		}
		names[t.Name] = i + 1
		if len(t.Bands) == 0 && t.Remaining == nil {
			r.clash("has no rate: state rate_per_kwh, or bands that cover all hours", item, "tariffs")
		}
		r.checkMinorUnits(item, t, c.Currency)
		r.compile(item, t, c)
	}
}

// compile lays a tariff over the year, which finds overlaps and gaps.
func (r *reader) compile(item string, t *tariffs.Tariff, c *compare.Case) {
	if r.bad["tariffs"] || r.bad[item] {
		return
	}
	_, err := t.Compile(c.Climate.Year())
	var invalid *tariffs.InvalidError
	if !errors.As(err, &invalid) {
		return
	}
	for _, p := range invalid.Problems {
		key, text := item, strings.Replace(p.Text, "a remaining rate", "state rate_per_kwh for the remaining hours", 1)
		if p.Band != tariffs.WholeTariff {
			key = fmt.Sprintf("%s.bands[%d]", item, p.Band+1)
		}
		r.clash(fmt.Sprintf("(%s): %s", shown(t.Name), text), key, item)
	}
}

// checkMinorUnits guesses rates in pence or cents, where a unit of the currency
// buys some kilowatt-hours.
func (r *reader) checkMinorUnits(item string, t *tariffs.Tariff, currency string) {
	if !slices.Contains([]string{"GBP", "EUR", "USD", "CHF", "AUD", "CAD", "NZD"}, currency) {
		return
	}
	const most = 3 // a kilowatt-hour costs a tenth of this in these currencies
	check := func(key string, perKWh float64) {
		if math.Abs(perKWh) > most {
			r.clash(fmt.Sprintf("is %s with currency %s, allowed up to %d: it looks like pence or cents, give %s",
				plain(perKWh), currency, most, plain(perKWh/100)), key, "currency")
		}
	}
	if t.Remaining != nil {
		check(item+".rate_per_kwh", t.Remaining.PerKWh)
	}
	for i, b := range t.Bands {
		check(fmt.Sprintf("%s.bands[%d].rate_per_kwh", item, i+1), b.PerKWh)
	}
}

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
		r.checkRates(item, t)
		r.checkMinorUnits(item, t, c.Currency)
		r.compile(item, t, c)
	}
}

// checkRates looks for a tariff with no rates, or with two files of them.
func (r *reader) checkRates(item string, t *tariffs.Tariff) {
	prices, schedule := t.PriceFile.Stated(), t.ScheduleFile.Stated()
	switch {
	case prices && schedule:
		r.clash("is stated, and price_file gives the rates too: leave one of the two out", item+".schedule_file", item)
		r.bad[item] = true
	case !prices && !schedule && len(t.Bands) == 0 && t.Remaining == nil:
		r.clash("has no rate: state rate_per_kwh, bands that cover all hours, or price_file", item, "tariffs")
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

// mostPerKWh is what no kilowatt-hour costs in the currencies of which a unit buys
// some; a tenth of it is usual.
const mostPerKWh = 3

// checkMinorUnits guesses rates in pence or cents.
func (r *reader) checkMinorUnits(item string, t *tariffs.Tariff, currency string) {
	if !slices.Contains([]string{"GBP", "EUR", "USD", "CHF", "AUD", "CAD", "NZD"}, currency) {
		return
	}
	check := func(key string, perKWh float64) {
		if math.Abs(perKWh) > mostPerKWh {
			r.clash(fmt.Sprintf("is %s with currency %s, allowed up to %d: it looks like pence or cents, give %s",
				plain(perKWh), currency, mostPerKWh, plain(perKWh/100)), key, "currency")
		}
	}
	switch {
	case t.ScheduleFile.Stated():
		r.checkFileUnits(item+".schedule_file", largestRate(t.Bands), currency)
		return
	case t.PriceFile.Stated():
		r.checkFileUnits(item+".price_file", meanSize(t.SeriesPerKWh), currency)
		return
	}
	if t.Remaining != nil {
		check(item+".rate_per_kwh", t.Remaining.PerKWh)
	}
	for i, b := range t.Bands {
		check(fmt.Sprintf("%s.bands[%d].rate_per_kwh", item, i+1), b.PerKWh)
	}
}

func (r *reader) checkFileUnits(key string, perKWh float64, currency string) {
	if perKWh > mostPerKWh {
		r.clash(fmt.Sprintf("holds rates of %s with currency %s, allowed up to %d: it looks like pence or cents, or like rates per MWh: convert them",
			rounded(perKWh), currency, mostPerKWh), key, "currency")
	}
}

func largestRate(bands []tariffs.Band) float64 {
	largest := 0.0
	for _, b := range bands {
		largest = max(largest, math.Abs(b.PerKWh))
	}
	return largest
}

// meanSize is the mean of prices that may be negative, each as a positive number.
// Single steps of a series may well be high.
func meanSize(perKWh []float64) float64 {
	sum := 0.0
	for _, p := range perKWh {
		sum += math.Abs(p)
	}
	return sum / math.Max(1, float64(len(perKWh)))
}

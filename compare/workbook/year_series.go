package workbook

import (
	"fmt"
	"slices"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"
)

// Keys of figures that the comparison does not name.
func bandKey(tariff, band int) string  { return fmt.Sprintf("band.%d.%d", tariff, band) }
func givenKey(tariff, band int) string { return fmt.Sprintf("given.%d.%d", tariff, band) }
func costKey(tariff int) string        { return fmt.Sprintf("cost.%d", tariff) }
func houseKey(month int) string        { return fmt.Sprintf("house.%d", month) }
func failKey(month int) string         { return fmt.Sprintf("failing.%d", month) }

// yearSeries lists what the sheet of single years shows.
func (b *book) yearSeries() []yearSeries {
	return slices.Concat(b.bandSeries(), wholeHouseSeries(), b.figureSeries(), failingSeries())
}

// bandSeries are energy by band, and the cost that follows, on each tariff.
func (b *book) bandSeries() []yearSeries {
	var out []yearSeries
	money := b.comparison().Currency
	for t := range b.inputs.tariffs {
		in, name := &b.inputs.tariffs[t], b.comparison().Tariffs[t].Name
		for n := range in.lines {
			words := fmt.Sprintf("Tariff %d (%s): energy, %s", t+1, name, in.lines[n].label)
			out = append(out, yearSeries{key: bandKey(t, n), words: words, foreign: true, unit: "kWh", format: formatOne,
				get: func(y *compare.YearRecord) float64 { return y.Bands[t][n].KWh }})
			if in.lines[n].mixed {
				words := fmt.Sprintf("Tariff %d (%s): cost at the stated prices, %s", t+1, name, in.lines[n].label)
				out = append(out, yearSeries{key: givenKey(t, n), words: words, foreign: true, unit: money, format: formatTwo,
					get: func(y *compare.YearRecord) float64 { return y.Bands[t][n].Cost / in.taxValue() }})
			}
		}
		out = append(out, yearSeries{key: costKey(t), words: fmt.Sprintf("Tariff %d (%s): cost", t+1, name), foreign: true, unit: money, format: formatTwo,
			work: func(at func(string) term) term { return in.costOf(t, at) }})
	}
	return out
}

// costOf prices the bands of a year or of a month.
func (t *tariffRefs) costOf(tariff int, at func(string) term) term {
	parts := make([]term, 0, len(t.lines))
	for n, line := range t.lines {
		if line.mixed {
			parts = append(parts, t.taxed(times(at(givenKey(tariff, n)), line.level)))
		} else {
			parts = append(parts, times(at(bandKey(tariff, n)), t.price(&line, line.rate)))
		}
	}
	return plus(parts[0], parts[1:]...)
}

// figureSeries are the figures that vary from year to year.
func (b *book) figureSeries() []yearSeries {
	out := []yearSeries{{key: "compressor_kwh", words: "Electricity of the compressor for hot water", unit: "kWh", format: formatOne, get: compressorOf}}
	for _, f := range compare.Figures() {
		if !f.Varies {
			continue
		}
		one := yearSeries{key: f.Name, words: labelOf(f), unit: b.unitOf(f), format: decimals(max(f.Decimals, 1)),
			get: func(y *compare.YearRecord) float64 { return *f.Of(&y.Totals) }}
		one.work, _ = workOf(f.Name)
		switch f.Name {
		case "cost_per_year":
			one.work = func(at func(string) term) term { return at(costKey(0)) }
		case carbonFigure:
			one.work = b.yearCarbon
		}
		out = append(out, one)
	}
	return out
}

// unitOf is the unit of a figure, money in the case's currency.
func (b *book) unitOf(f compare.Figure) string {
	if f.Unit == "money" {
		return b.comparison().Currency
	}
	return wording.Unit(f.Unit)
}

// compressorOf is the electricity of the compressor alone.
func compressorOf(y *compare.YearRecord) float64 {
	kWh := y.Totals.ElectricityKWh
	for m := range y.Months {
		c := &y.Months[m].ElectricityByCause
		kWh -= c.Pump + c.Standby + c.Immersion
	}
	return kWh
}

// wholeHouseSeries is the electricity of each month, whose carbon differs.
func wholeHouseSeries() []yearSeries {
	var out []yearSeries
	for m := range calendar.MonthsInAYear {
		out = append(out, yearSeries{key: houseKey(m), words: "Electricity for hot water and heating in " + calendar.ShortMonth(m), unit: "kWh", format: formatOne,
			get: func(y *compare.YearRecord) float64 { return y.Months[m].WholeHouseKWh }})
	}
	return out
}

// yearCarbon weighs each month's electricity with its carbon.
func (b *book) yearCarbon(at func(string) term) term {
	parts := make([]term, calendar.MonthsInAYear)
	for m := range parts {
		parts[m] = at(houseKey(m))
	}
	first, last := parts[0].text, parts[len(parts)-1].text
	_, cell, _ := strings.Cut(last, "!")
	v := 0.0
	for m, p := range parts {
		v += p.num() * b.inputs.carbonMonths.values[m]
	}
	return call("SUMPRODUCT", v, first+":"+cell, b.inputs.carbonMonths.text)
}

// failingSeries are the failing showers of each month.
func failingSeries() []yearSeries {
	var out []yearSeries
	for m := range calendar.MonthsInAYear {
		out = append(out, yearSeries{key: failKey(m), words: "Failing showers in " + calendar.ShortMonth(m), format: formatWhole,
			get: func(y *compare.YearRecord) float64 { return y.Months[m].FailingShowers }})
	}
	return out
}

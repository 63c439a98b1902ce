package workbook

import (
	"fmt"
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// yearRefs are the columns of single years that other sheets refer to.
type yearRefs struct {
	columns []yearColumn
}

// yearColumn is one figure of every year for each option and for the difference.
type yearColumn struct {
	key, top string
	format   string
	get      func(*compare.YearRecord) float64   // simulated, or else
	work     func(at func(key string) term) term // worked out from others of the row
	spans    [3]span                             // options in order, then the difference
	first    [3]place                            // cell of the first year
}

// Keys of columns.
func bandKey(tariff, band int) string  { return fmt.Sprintf("band.%d.%d", tariff, band) }
func givenKey(tariff, band int) string { return fmt.Sprintf("given.%d.%d", tariff, band) }
func costKey(tariff int) string        { return fmt.Sprintf("cost.%d", tariff) }
func failKey(month int) string         { return fmt.Sprintf("failing.%d", month) }

func (b *book) writeYears() {
	s := b.sheet(yearsName)
	b.years = &yearRefs{}
	b.years.columns = append(b.years.columns, b.bandColumns()...)
	b.years.columns = append(b.years.columns, b.figureColumns()...)
	b.years.columns = append(b.years.columns, failingColumns()...)
	s.text(place{1, 1}, title, "Each simulated year")
	s.text(place{1, 2}, label, "Both options live through the same years. Italic figures are simulated; upright ones are formulas.")
	at := place{1, 4}
	for side := range 3 {
		at = s.yearBlock(side, at)
	}
	s.widths(8)
	last := len(b.years.columns) + 1
	s.columnWidth(2, last, 11)
	s.lay(page{freeze: place{2, 4}, titleRows: 2, last: place{last, at.row - 2}})
}

// bandColumns are energy by band, and the cost that follows, on each tariff.
func (b *book) bandColumns() []yearColumn {
	var out []yearColumn
	money := b.comparison().Currency
	for t := range b.inputs.tariffs {
		in := &b.inputs.tariffs[t]
		for n := range in.lines {
			out = append(out, yearColumn{key: bandKey(t, n), top: fmt.Sprintf("Tariff %d, band %d, kWh", t+1, n+1), format: formatOne,
				get: func(y *compare.YearRecord) float64 { return y.Bands[t][n].KWh }})
			if in.lines[n].mixed {
				out = append(out, yearColumn{key: givenKey(t, n), top: fmt.Sprintf("Tariff %d, band %d, %s as stated", t+1, n+1, money), format: formatTwo,
					get: func(y *compare.YearRecord) float64 { return y.Bands[t][n].Cost / in.taxValue() }})
			}
		}
		out = append(out, yearColumn{key: costKey(t), top: fmt.Sprintf("Tariff %d, cost, %s", t+1, money), format: formatTwo,
			work: func(at func(string) term) term { return in.yearCost(t, at) }})
	}
	return out
}

// yearCost prices a year's bands.
func (t *tariffRefs) yearCost(tariff int, at func(string) term) term {
	var parts []term
	for n, line := range t.lines {
		if line.mixed {
			parts = append(parts, t.taxed(times(at(givenKey(tariff, n)), line.level)))
		} else {
			parts = append(parts, times(at(bandKey(tariff, n)), t.taxed(line.rate)))
		}
	}
	return plus(parts[0], parts[1:]...)
}

// figureColumns are the figures that vary from year to year.
func (b *book) figureColumns() []yearColumn {
	var out []yearColumn
	for _, f := range compare.Figures() {
		if !f.Varies {
			continue
		}
		c := yearColumn{key: f.Name, top: capital(f.Label), format: decimals(max(f.Decimals, 1)),
			get: func(y *compare.YearRecord) float64 { return *f.Of(&y.Totals) }}
		if f.Unit != "" && f.Unit != "money" {
			c.top += ", " + f.Unit
		}
		if work, ok := b.yearWork(f.Name); ok {
			c.get, c.work = nil, work
		}
		if f.Name == "heat_pump_cop" { // divides by the compressor's electricity, which no figure gives
			out = append(out, yearColumn{key: "compressor_kwh", top: "Electricity of the compressor, kWh", format: formatOne, get: compressorOf})
		}
		out = append(out, c)
	}
	return out
}

func compressorOf(y *compare.YearRecord) float64 {
	kWh := y.Totals.ElectricityKWh
	for m := range y.Months {
		kWh -= y.Months[m].ElectricityByCause.Pump + y.Months[m].ElectricityByCause.Standby
	}
	return kWh
}

// yearWork is the formula of a figure that follows from others.
func (b *book) yearWork(name string) (func(at func(string) term) term, bool) {
	switch name {
	case "unmet_heat_kwh":
		return func(at func(string) term) term { return minus(at("wanted_heat_kwh"), at("heat_to_taps_kwh")) }, true
	case "system_efficiency":
		return func(at func(string) term) term { return ratio(at("heat_to_taps_kwh"), at("electricity_kwh")) }, true
	case "heat_pump_cop":
		return func(at func(string) term) term { return ratio(at("heat_pump_heat_kwh"), at("compressor_kwh")) }, true
	case "starts_per_day":
		return func(at func(string) term) term { return quotient(at("starts_per_year"), b.inputs.days) }, true
	case "minutes_per_run":
		return func(at func(string) term) term {
			return ratio(times(at("run_hours"), minutesAnHour()), at("starts_per_year"))
		}, true
	case "cost_per_year":
		return func(at func(string) term) term { return at(costKey(0)) }, true
	}
	return nil, false
}

// failingColumns are the failing showers of each month.
func failingColumns() []yearColumn {
	var out []yearColumn
	for m := range calendar.MonthsInAYear {
		out = append(out, yearColumn{key: failKey(m), top: "Failing showers, " + time.Month(m+1).String(), format: formatWhole,
			get: func(y *compare.YearRecord) float64 { return y.Months[m].FailingShowers }})
	}
	return out
}

// yearBlock writes every year of an option, or of the difference.
func (s *sheet) yearBlock(side int, at place) place {
	count := len(s.book.comparison().EachYear[0])
	s.text(at, heading, capital(blockName(side)))
	heads := []string{"Year"}
	for _, c := range s.book.years.columns {
		heads = append(heads, c.top)
	}
	s.tops(at.down(1), 66, heads...)
	first := at.down(2)
	for i := range s.book.years.columns {
		s.book.years.columns[i].first[side] = first.right(1 + i)
	}
	for y := range count {
		s.number(first.down(y), style{label, formatWhole}, float64(y+1))
		for i := range s.book.years.columns {
			s.yearCell(side, y, i)
		}
	}
	for i := range s.book.years.columns {
		c := &s.book.years.columns[i]
		c.spans[side] = s.span(c.first[side], c.first[side].down(count-1))
	}
	return first.down(count + 1)
}

func (s *sheet) yearCell(side, y, i int) {
	c := &s.book.years.columns[i]
	p := c.first[side].down(y)
	switch {
	case side == differenceBlock:
		s.live(p, style{derived, signed(c.format)}, minus(s.yearRef(c, 0, y), s.yearRef(c, 1, y)))
	case c.work != nil:
		s.live(p, style{derived, c.format}, c.work(func(key string) term { return s.yearRef(s.book.yearColumn(key), side, y) }))
	default:
		s.number(p, style{simulated, c.format}, c.get(&s.book.comparison().EachYear[side][y]))
	}
}

func (s *sheet) yearRef(c *yearColumn, side, y int) term {
	p := c.first[side].down(y)
	return s.ref(p, s.numbers[p])
}

// yearColumn finds a column of the single years.
func (b *book) yearColumn(key string) *yearColumn {
	for i := range b.years.columns {
		if b.years.columns[i].key == key {
			return &b.years.columns[i]
		}
	}
	b.keep(fmt.Errorf("no column %q among the years", key))
	return &yearColumn{}
}

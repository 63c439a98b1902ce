package casefile

import (
	"slices"

	"dhwcompare/compare"
	"dhwcompare/compare/datafile"
	"dhwcompare/tariffs"
)

// supply is a tariff as a case file states it: the rate of the hours outside all
// bands stands beside them.
type supply struct {
	tariffs.Tariff
	restPerKWh compare.Auto // nil: the bands cover all hours
	restLabel  string
}

// Labels of the hours outside all bands, unless stated.
const (
	allHours   = "all hours"
	otherHours = "other hours"
)

func supplyOf(t tariffs.Tariff) supply {
	s := supply{Tariff: t}
	if t.Remaining != nil {
		s.restPerKWh, s.restLabel = &t.Remaining.PerKWh, t.Remaining.Label
	}
	return s
}

func (s *supply) tariff() tariffs.Tariff {
	t := s.Tariff
	t.Remaining = nil
	if s.restPerKWh != nil {
		t.Remaining = &tariffs.Remaining{Label: s.label(), PerKWh: *s.restPerKWh}
	}
	return t
}

// label names the hours outside all bands.
func (s *supply) label() string {
	switch {
	case s.restLabel != "":
		return s.restLabel
	case len(s.Bands) == 0:
		return allHours
	default:
		return otherHours
	}
}

func tariffKeys() []field[compare.Case] {
	tariffsOf := func(c *compare.Case) []supply {
		list := make([]supply, len(c.Tariffs))
		for i, t := range c.Tariffs {
			list[i] = supplyOf(t)
		}
		return list
	}
	set := func(c *compare.Case, list []supply) {
		c.Tariffs = nil
		for i := range list {
			c.Tariffs = append(c.Tariffs, list[i].tariff())
		}
	}
	return []field[compare.Case]{
		list("tariffs", "tariffs to compare; the first decides", tariffsOf, set, supply{Tariff: tariffs.Tariff{PricesIncludeTax: true}}, supplyKeys(),
			"British price cap of July to September 2026, and two rates as of April 2025 with invented hours").
			atMost(20).common(),
	}
}

// Rates are in major units of any currency, of which some are small; see also
// the check of rates against the currency.
const (
	highestRate     = 1000
	highestStanding = 1000
	longestName     = 60
)

func supplyKeys() []field[supply] {
	prices := fileKeys("price_file", "price_sha256", func(s *supply) *datafile.File { return &s.PriceFile },
		func(s *supply) { s.dropRates(&s.ScheduleFile) },
		"a price for each step of a year, in place of rates: CSV with the columns start_utc and price, in units of the currency per kWh")
	schedule := fileKeys("schedule_file", "schedule_sha256", func(s *supply) *datafile.File { return &s.ScheduleFile },
		func(s *supply) { s.dropRates(&s.PriceFile) },
		"rates by month and hour, in place of bands: JSON with energyratestructure, energyweekdayschedule and energyweekendschedule")
	fields := []field[supply]{
		line("name", longestName, func(s *supply) *string { return &s.Name }, "", "the name of the tariff, unlike any other").required(),
		number("standing_per_day", "currency/day", 0, highestStanding, func(s *supply) *float64 { return &s.StandingPerDay }, "", "standing charge"),
		number("tax_percent", "%", 0, 100, func(s *supply) *float64 { return &s.TaxPercent }, "", "tax, added unless the prices include it"),
		flag("prices_include_tax", func(s *supply) *bool { return &s.PricesIncludeTax }, "", "whether the prices include the tax"),
		rateKey(),
		line("rate_label", longestName, func(s *supply) *string { return &s.restLabel }, "", "name of those hours").idleIf(noRest),
		list("bands", "rates at certain hours", (*supply).statedBands,
			func(s *supply, bands []tariffs.Band) { s.Bands = bands }, tariffs.Band{}, bandKeys(), "").atMost(50).idleIf((*supply).ratesFromFile),
	}
	return slices.Concat(fields, prices, schedule)
}

// ratesFromFile is why keys of rates play no part.
func (s *supply) ratesFromFile() string {
	switch {
	case s.PriceFile.Stated():
		return "price_file gives the rates"
	case s.ScheduleFile.Stated():
		return "schedule_file gives the rates"
	default:
		return ""
	}
}

// statedBands leaves out those of a file.
func (s *supply) statedBands() []tariffs.Band {
	if s.ratesFromFile() != "" {
		return nil
	}
	return s.Bands
}

// dropRates forgets rates that another file takes the place of. A second file that
// has not been read is stated beside it, which is a contradiction to report.
func (s *supply) dropRates(other *datafile.File) {
	s.Bands, s.SeriesPerKWh, s.restPerKWh, s.restLabel = nil, nil, nil, ""
	if other.Read() {
		*other = datafile.File{}
	}
}

func rateKey() field[supply] {
	f := number[supply]("rate_per_kwh", "currency/kWh", -highestRate, highestRate, nil, "", "rate of all hours that no band covers")
	f.bind = func(s *supply) value { return autoValue{at: &s.restPerKWh} }
	return f.idleIf(noRest)
}

func noRest(s *supply) string {
	switch file := s.ratesFromFile(); {
	case file != "":
		return file
	case s.restPerKWh != nil:
		return ""
	default:
		return "the bands cover all hours"
	}
}

func bandKeys() []field[tariffs.Band] {
	type band = tariffs.Band
	return []field[band]{
		line("label", longestName, func(b *band) *string { return &b.Label }, "", "the name of the band; bands of one name share a line of the bill").required(),
		number("rate_per_kwh", "currency/kWh", -highestRate, highestRate, func(b *band) *float64 { return &b.PerKWh }, "", "the rate in the band").required(),
		hours("hours", func(b *band) *int { return &b.StartMin }, func(b *band) *int { return &b.EndMin }, "", "the hours of the band").required(),
		choice("clock", clockNames(), func(b *band) string { return at(clockNames(), int(b.Clock)) },
			func(b *band, s string) { b.Clock = tariffs.Clock(indexOf(clockNames(), s)) }, "",
			"clock of the meter: local has summer time, standard has not"),
		choice("days", dayNames(), func(b *band) string { return at(dayNames(), int(b.Days)) },
			func(b *band, s string) { b.Days = tariffs.Days(indexOf(dayNames(), s)) }, "", "days of the week"),
		bandMonths(),
	}
}

// clockNames are the words for tariffs.Clock, by its number.
func clockNames() []string { return []string{"local", "standard"} }

// dayNames are the words for tariffs.Days, by its number.
func dayNames() []string { return []string{"all", "weekdays", "weekends"} }

// at gives an item of a list; none for an index that no file can lead to.
func at(list []string, i int) string {
	if i < 0 || i >= len(list) {
		return ""
	}
	return list[i]
}

func indexOf(list []string, s string) int { return max(0, slices.Index(list, s)) }

// Package tariffs says what a kilowatt-hour costs at a moment, and turns a
// half-hourly profile of a year into a bill.
//
// Money is neutral of currency: every price is in major units of the case's
// currency per kilowatt-hour (pounds or euros per kWh, never pence or cents) and
// every standing charge in major units per day. Whoever reads a price in minor
// units converts it once, before it comes here.
//
// A Tariff is what a person states; Compile lays it over a calendar.Year and
// gives Rates; Rates.Bill prices a profile.
package tariffs

import "dhwcompare/compare/datafile"

// Tariff is a supply contract as a person would state it: either bands with a
// rate each, or a price for every half hour of the year.
type Tariff struct {
	// Name identifies the tariff in tables and messages.
	Name string
	// StandingPerDay is the standing charge, money per day.
	StandingPerDay float64
	// TaxPercent is the tax on rates and standing charge, percent. It is added
	// unless PricesIncludeTax says that the stated prices hold it already.
	TaxPercent       float64
	PricesIncludeTax bool
	// Bands are the stated bands; none may overlap another.
	Bands []Band
	// Remaining is the rate of every minute that no band covers. Nil means that
	// the bands have to cover the whole year.
	Remaining *Remaining
	// SeriesPerKWh, if not nil, holds the price of each half hour of the year and
	// replaces bands and remaining rate.
	SeriesPerKWh []float64
	// PriceFile is the file that SeriesPerKWh comes from, ScheduleFile the one that
	// all bands come from; no name: they are stated.
	PriceFile, ScheduleFile datafile.File
}

// Remaining is the default band: the rate where no other band holds.
type Remaining struct {
	Label  string
	PerKWh float64
}

// Window is a stretch of every day on one clock, in minutes since midnight. An
// end at or before the start lies on the next day.
type Window struct {
	StartMin, EndMin int
	Clock            Clock
}

// Labels of the bands that the constructors of this package make.
const (
	flatLabel   = "all hours"
	nightLabel  = "night"
	dayLabel    = "day"
	seriesLabel = "series"
)

// Flat gives a tariff with one rate at all hours, tax included.
func Flat(name string, perKWh, standingPerDay float64) *Tariff {
	return &Tariff{
		Name:             name,
		StandingPerDay:   standingPerDay,
		PricesIncludeTax: true,
		Remaining:        &Remaining{Label: flatLabel, PerKWh: perKWh},
	}
}

// TwoRate gives a tariff with a night rate in one window of every day and a day
// rate in the rest, tax included. The window carries the clock that the meter
// keeps: a meter without summer time shifts its cheap hours by one hour on the
// wall clock from spring to autumn.
func TwoRate(name string, nightPerKWh, dayPerKWh, standingPerDay float64, night Window) *Tariff {
	return &Tariff{
		Name:             name,
		StandingPerDay:   standingPerDay,
		PricesIncludeTax: true,
		Bands: []Band{{
			Label:    nightLabel,
			StartMin: night.StartMin,
			EndMin:   night.EndMin,
			Clock:    night.Clock,
			PerKWh:   nightPerKWh,
		}},
		Remaining: &Remaining{Label: dayLabel, PerKWh: dayPerKWh},
	}
}

// taxFactor is what stated prices are multiplied by.
func (t *Tariff) taxFactor() float64 {
	if t.PricesIncludeTax {
		return 1
	}
	return 1 + t.TaxPercent/percent
}

const percent = 100

// Scaled gives the tariff with every unit rate multiplied, the standing charge
// left alone.
func (t Tariff) Scaled(by float64) Tariff {
	bands := append([]Band(nil), t.Bands...)
	for i := range bands {
		bands[i].PerKWh *= by
	}
	t.Bands = bands
	if t.Remaining != nil {
		rest := *t.Remaining
		rest.PerKWh *= by
		t.Remaining = &rest
	}
	if t.SeriesPerKWh != nil {
		series := append([]float64(nil), t.SeriesPerKWh...)
		for i := range series {
			series[i] *= by
		}
		t.SeriesPerKWh = series
	}
	return t
}

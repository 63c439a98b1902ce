package climate

import (
	"errors"
	"fmt"

	"dhwcompare/compare/calendar"
)

// Monthly holds one value for each month, January first.
type Monthly = [calendar.MonthsInAYear]float64

// Params is everything a synthetic year needs. Start from Defaults and set
// OutdoorC and MainsC, which have no default; Outdoor may stand in for the former.
type Params struct {
	// OutdoorC and MainsC are the monthly means of outdoor air and of the mains
	// water that enters the home, deg C. The year keeps them exactly.
	OutdoorC, MainsC Monthly

	// SDDailyMeanK is the standard deviation of the daily mean outdoor
	// temperature about the month's course, K: root mean square over the days
	// of a month and over many years.
	SDDailyMeanK Monthly

	// DailyRangeK is the mean over the month of the day's highest minus its
	// lowest outdoor temperature, K. Every day of the month has this range.
	DailyRangeK Monthly

	// RHPercent is the month's mean relative humidity of outdoor air, percent.
	RHPercent Monthly

	// Persistence is the lag-1 correlation of daily mean outdoor temperatures
	// about the month's course, 0 (each day anew) to 0.95.
	Persistence float64

	// MainsSwingK is the depth of the daily dip of the mains temperature, K.
	MainsSwingK float64

	// Outdoor is the outdoor air of every year, from a weather file, or nil. The
	// monthly means of air then count for nothing, those of humidity only if the
	// file holds none.
	Outdoor *Outdoor
}

// limit is the range in which a parameter is accepted. The bounds are wide
// enough for any inhabited place and narrow enough to catch a wrong unit.
type limit struct {
	name, unit string
	low, high  float64
	remedy     string
}

// outdoorLimit is that of monthly means of outdoor air.
func outdoorLimit() limit {
	return limit{"outdoor temperature", "deg C", -50, 45, "give monthly means in deg C"}
}

// humidityLimit is that of monthly means of humidity.
func humidityLimit() limit {
	return limit{"relative humidity", "percent", 5, 100, "give percent, such as 80"}
}

// Validate reports every value that Synthesize cannot use, one to a line, or nil.
func (p Params) Validate() error {
	return errors.Join(
		checkMonths(outdoorLimit(), p.OutdoorC),
		checkMonths(limit{"mains temperature", "deg C", 2, 35, "give monthly means in deg C"}, p.MainsC),
		checkMonths(limit{"standard deviation of the daily mean", "K", 0, 15, "leave it out to use the default"}, p.SDDailyMeanK),
		checkMonths(limit{"mean daily range", "K", 0, 30, "leave it out to use the default"}, p.DailyRangeK),
		checkMonths(humidityLimit(), p.RHPercent),
		limit{"persistence", "", 0, maxPersistence, "leave it out to use the default"}.check("", p.Persistence),
		limit{"mains swing", "K", 0, 10, "leave it out to use the default"}.check("", p.MainsSwingK),
	)
}

func checkMonths(l limit, values Monthly) error {
	var all error
	for m, v := range values {
		all = errors.Join(all, l.check(fmt.Sprintf(" of month %d", m+1), v))
	}
	return all
}

// check is written so that NaN, which no comparison holds for, is refused too.
func (l limit) check(place string, v float64) error {
	if v >= l.low && v <= l.high {
		return nil
	}
	unit := l.unit
	if unit != "" {
		unit = " " + unit
	}
	return fmt.Errorf("climate: %s%s is %g%s, allowed %g to %g: %s", l.name, place, v, unit, l.low, l.high, l.remedy)
}

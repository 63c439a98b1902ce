package climate

import (
	"slices"

	"dhwcompare/compare/calendar"
)

// Outdoor is a year of outdoor air from a weather file, by the hour of standard
// time: value i holds from hour i to hour i+1. It never changes once made, so it
// may be shared.
type Outdoor struct {
	AirC      []float64 // outdoor air, deg C
	RHPercent []float64 // relative humidity, percent; nil: the file holds none

	Place        string // as the file names it, one line; may be empty
	HasOffset    bool   // the file says how far its clock is ahead of UTC
	UTCOffsetMin int    // by that much

	Warnings []string `json:"-"` // what a reader of the result should know
}

// MeansC gives the mean air temperature of each month, deg C.
func (o *Outdoor) MeansC() Monthly { return monthMeans(o.AirC) }

// MeanRHPercent gives the mean relative humidity of each month, percent, and
// whether the file holds any.
func (o *Outdoor) MeanRHPercent() (Monthly, bool) {
	if o.RHPercent == nil {
		return Monthly{}, false
	}
	return monthMeans(o.RHPercent), true
}

// Warmer gives the same year with warmer air, by so many K, of the same relative
// humidity.
func (o *Outdoor) Warmer(byK float64) *Outdoor {
	warmer := *o
	warmer.AirC = slices.Clone(o.AirC)
	for i := range warmer.AirC {
		warmer.AirC[i] += byK
	}
	return &warmer
}

func monthMeans(hours []float64) Monthly {
	var means Monthly
	for m := range means {
		from, to := calendar.MonthStartDay(m)*hoursADay, calendar.MonthStartDay(m+1)*hoursADay
		means[m] = average(hours[from:to])
	}
	return means
}

// Package climate turns twelve monthly means of outdoor air and mains water, or a
// weather file in place of the former, into a year of hours.
package climate

import "dhwcompare/compare/calendar"

// Series is a year of weather by the hour of standard time: value i holds from
// hour i to hour i+1. All three slices have calendar.Hours values.
type Series struct {
	OutdoorC  []float64 // outdoor air, deg C
	RHPercent []float64 // relative humidity of outdoor air, percent
	MainsC    []float64 // mains water, deg C
}

// At gives outdoor air, relative humidity and mains water at a time of the
// year; times outside the year wrap round.
func (s *Series) At(t float64) (outdoorC, rhPercent, mainsC float64) {
	i := calendar.HourOf(t)
	return s.OutdoorC[i], s.RHPercent[i], s.MainsC[i]
}

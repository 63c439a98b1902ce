package charts

import "dhwcompare/compare/calendar"

// busiest is the half hour of the day in which most is used over the year.
func busiest(profile []float64) int {
	var day [calendar.HalfHoursADay]float64
	best := 0
	for i, kWh := range profile {
		day[i%calendar.HalfHoursADay] += kWh
	}
	for h, kWh := range day {
		if kWh > day[best] {
			best = h
		}
	}
	return best
}

const (
	daysAWeek  = 7
	weeksShown = 52 // the last has eight days
	wattsPer   = 2000.0
)

// week is the mean power of each half hour of the day, W.
type week [calendar.HalfHoursADay]float64

// weekly averages a year of half hours, kWh; nil without a whole year.
func weekly(profile []float64) []week {
	if len(profile) != calendar.HalfHours {
		return nil
	}
	out := make([]week, weeksShown)
	var days [weeksShown]float64
	for day := range calendar.Days {
		w := min(day/daysAWeek, weeksShown-1)
		days[w]++
		for h := range calendar.HalfHoursADay {
			out[w][h] += wattsPer * profile[day*calendar.HalfHoursADay+h]
		}
	}
	for w := range out {
		for h := range out[w] {
			out[w][h] /= days[w]
		}
	}
	return out
}

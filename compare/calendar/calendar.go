// Package calendar is the simulated year: 365 days of standard time that begin
// on 1 January at midnight, with the weekday of the first day and the days on
// which the clocks change.
//
// Times are seconds of standard time since the start of the year. Wall-clock
// time differs from it only while summer time holds.
package calendar

import (
	"math"
	"time"
)

// Lengths of the simulated year. There is no leap day: twelve monthly means in,
// 365 days out.
const (
	HourS          = 3600
	DayS           = 24 * HourS
	HalfHourS      = 1800
	Days           = 365
	Hours          = Days * 24
	HalfHours      = Days * 48
	YearS          = Days * DayS
	HalfHoursADay  = 48
	MonthsInAYear  = 12
	secondsPerHour = 3600.0
)

// DaysInMonth holds the days of each month, January first.
var daysInMonth = [MonthsInAYear]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// DaysIn gives the number of days of a month (0 is January).
func DaysIn(month int) int { return daysInMonth[month] }

// MonthStartDay gives the day of the year (0 is 1 January) on which a month
// begins; month 12 gives 365, the end of the year.
func MonthStartDay(month int) int {
	day := 0
	for m := range month {
		day += daysInMonth[m]
	}
	return day
}

// MonthOfDay gives the month (0 is January) of a day of the year. Days outside
// 0..364 wrap round, so that spin-up days before 1 January fall in December.
func MonthOfDay(day int) int {
	day = WrapDay(day)
	for m, n := range daysInMonth {
		if day < n {
			return m
		}
		day -= n
	}
	return MonthsInAYear - 1
}

// WrapDay maps any day number to 0..364.
func WrapDay(day int) int {
	day %= Days
	if day < 0 {
		day += Days
	}
	return day
}

// DayOf gives the day of the year that holds a time, which may be negative or
// beyond the year.
func DayOf(t float64) int { return int(math.Floor(t / DayS)) }

// WrapHalfHour maps any half hour, counted from the start of the year, to 0..17519.
func WrapHalfHour(i int) int {
	i %= HalfHours
	if i < 0 {
		i += HalfHours
	}
	return i
}

// HourOf gives the hour (0..8759) that holds a time of the year; times outside
// the year wrap round.
func HourOf(t float64) int {
	i := int(math.Floor(t/HourS)) % Hours
	if i < 0 {
		i += Hours
	}
	return i
}

// Year says how wall clocks and weekdays lie over the 365 simulated days.
type Year struct {
	// FirstWeekday is the weekday of 1 January.
	FirstWeekday time.Weekday
	// DSTStart and DSTEnd are the seconds of standard time at which summer time
	// begins and ends; both zero means that clocks never change.
	DSTStart, DSTEnd int
}

// European gives a year that begins on the stated weekday, with summer time from
// 01:00 standard time on the last Sunday of March to 01:00 on the last Sunday of
// October (the rule of Directive 2000/84/EC, from memory; for a zone other than
// Greenwich the change is taken at the same standard time).
func European(first time.Weekday) Year {
	y := Year{FirstWeekday: first}
	y.DSTStart = y.lastSunday(2)*DayS + HourS
	y.DSTEnd = y.lastSunday(9)*DayS + HourS
	return y
}

// WithoutSummerTime gives a year whose clocks never change.
func WithoutSummerTime(first time.Weekday) Year { return Year{FirstWeekday: first} }

func (y Year) lastSunday(month int) int {
	day := MonthStartDay(month+1) - 1
	for y.Weekday(day) != time.Sunday {
		day--
	}
	return day
}

// Weekday gives the weekday of a day of the year; days outside the year go on
// counting.
func (y Year) Weekday(day int) time.Weekday {
	w := (int(y.FirstWeekday) + day) % 7
	if w < 0 {
		w += 7
	}
	return time.Weekday(w)
}

// IsWeekend reports whether a day is a Saturday or a Sunday.
func (y Year) IsWeekend(day int) bool {
	w := y.Weekday(day)
	return w == time.Saturday || w == time.Sunday
}

// SummerOffsetS gives the seconds by which the wall clock is ahead of standard
// time: 3600 in summer time, else 0.
func (y Year) SummerOffsetS(t float64) float64 {
	if t >= float64(y.DSTStart) && t < float64(y.DSTEnd) {
		return secondsPerHour
	}
	return 0
}

// Local gives the wall-clock time, in seconds since local midnight of 1 January.
func (y Year) Local(t float64) float64 { return t + y.SummerOffsetS(t) }

// Standard gives the standard time at which the wall clock first shows the
// stated local time. A local time that is skipped in spring gives the moment of
// the change.
func (y Year) Standard(local float64) float64 {
	if y.DSTEnd == 0 {
		return local
	}
	start, end := float64(y.DSTStart), float64(y.DSTEnd)
	switch {
	case local < start:
		return local
	case local < start+secondsPerHour:
		return start
	case local < end+secondsPerHour:
		return local - secondsPerHour
	default:
		return local
	}
}

package tariffs

import (
	"fmt"
	"io"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

// SeriesOptions says what a reader of a series needs to know beside the file.
type SeriesOptions struct {
	// File names the file in messages.
	File string
	// Year is the simulated year, compared with the weekdays of the file.
	Year calendar.Year
	// UTCOffsetMinutes is how far standard time is ahead of UTC at the home: 0 in
	// Britain, 60 in central Europe. The file has to hold 1 January to 31 December
	// of standard time.
	UTCOffsetMinutes int
}

// Series is one year of half hours as a file gave it, in standard time.
type Series struct {
	HalfHours    []float64 // 17,520 values
	CalendarYear int       // the year that the file holds
	StepMinutes  int       // the step of the file: 15, 30 or 60
	Warnings     []string  // what a reader of the result should know
}

// quantity says how a column behaves when its step changes.
type quantity struct {
	column   string
	extends  bool // an amount, shared out over a step; else a rate that holds throughout
	negative bool // may be below zero
}

// ReadPrices reads a price series: comma-separated, a header with the columns
// start_utc and price (others are passed over), one row per quarter hour, half
// hour or hour, each stamped with its start in UTC (2026-01-01T00:30Z), one
// calendar year. Prices are in major money units per kWh and may be negative.
// Lines that begin with # are comments.
//
// An hourly price holds for both half hours; two quarter-hour prices are
// averaged. In a leap year 29 February is checked like any other day and then
// left out, and a warning says so. Wrong rows give a *datafile.Error that lists
// them, at most datafile.MaxProblems, by line.
func ReadPrices(r io.Reader, o SeriesOptions) (*Series, error) {
	return readSeries(r, o, quantity{column: "price", negative: true})
}

// ReadSurplus reads a series of own surplus electricity: as ReadPrices, with a
// column surplus_kwh that holds the energy of each step, zero or more. An hour's
// energy is shared evenly between its half hours; two quarter hours are added.
func ReadSurplus(r io.Reader, o SeriesOptions) (*Series, error) {
	return readSeries(r, o, quantity{column: "surplus_kwh", extends: true})
}

func readSeries(r io.Reader, o SeriesOptions, q quantity) (*Series, error) {
	p := &datafile.Problems{File: o.File}
	t := readTable(r, q, o.UTCOffsetMinutes, p)
	t.chooseGrid(p)
	if t.stepS == 0 {
		return nil, p.Err()
	}
	values := t.place(p)
	if err := p.Err(); err != nil {
		return nil, err
	}
	return t.series(values, o, q), nil
}

// series turns the values of a whole calendar year into 365 days of half hours.
func (t *table) series(values []float64, o SeriesOptions, q quantity) *Series {
	s := &Series{CalendarYear: t.year, StepMinutes: t.stepS / secondsAMinute}
	if isLeap(t.year) {
		perDay := calendar.DayS / t.stepS
		leapDay := calendar.MonthStartDay(int(time.March)-1) * perDay
		values = append(values[:leapDay:leapDay], values[leapDay+perDay:]...)
		s.Warnings = append(s.Warnings, fmt.Sprintf(
			"%s: 29 February %d is left out, as the simulated year has 365 days; from 1 March on, the weekdays of the file run one day ahead",
			o.File, t.year))
	}
	if first := yearStart(t.year).Weekday(); first != o.Year.FirstWeekday {
		s.Warnings = append(s.Warnings, fmt.Sprintf(
			"%s: %d begins on a %s, the simulated year on a %s: weekday prices meet other days; let the simulated year begin on a %s to align them",
			o.File, t.year, first, o.Year.FirstWeekday, first))
	}
	s.HalfHours = resample(values, t.stepS, q)
	return s
}

// resample brings steps of 15, 30 or 60 minutes to half hours.
func resample(values []float64, stepS int, q quantity) []float64 {
	switch stepS {
	case calendar.HourS:
		factor := 1.0
		if q.extends {
			factor = 1.0 / halfHoursPerHour
		}
		return expandHours(values, factor)
	case secondsAQuarter:
		factor := 1.0 / quartersPerHalf
		if q.extends {
			factor = 1
		}
		half := make([]float64, len(values)/quartersPerHalf)
		for i := range half {
			half[i] = (values[2*i] + values[2*i+1]) * factor
		}
		return half
	default:
		return values
	}
}

func yearStart(year int) time.Time { return time.Date(year, time.January, 1, 0, 0, 0, 0, time.UTC) }

func isLeap(year int) bool { return yearStart(year).AddDate(0, 0, calendar.Days).Year() == year }

// expandHours gives both half hours of each hour its value times a factor.
func expandHours(hourly []float64, factor float64) []float64 {
	half := make([]float64, 0, len(hourly)*halfHoursPerHour)
	for _, v := range hourly {
		half = append(half, v*factor, v*factor)
	}
	return half
}

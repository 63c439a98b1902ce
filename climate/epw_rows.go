package climate

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
)

// Columns of a row, from 0.
const (
	monthColumn    = 1
	dayColumn      = 2
	hourColumn     = 3
	dryBulbColumn  = 6
	dewPointColumn = 7
	humidityColumn = 8
	leastColumns   = 9
	mostColumns    = 35
)

// quantity is what a column may hold.
type quantity struct {
	name, unit string
	missing    float64 // code for no value
	low, high  float64
	open       bool // the limits themselves are out of range
}

var (
	dryBulb  = quantity{"dry bulb", "°C", 99.9, -70, 70, true}
	dewPoint = quantity{"dew point", "°C", 99.9, -70, 70, true}
	humidity = quantity{"relative humidity", "%", 999, 0, 110, false}
)

func (e *epw) rows(lines []string, from int) {
	n := 0
	for i := from; i < len(lines); i++ {
		if strings.TrimSpace(lines[i]) != "" {
			e.row(i+1, fields(lines[i]))
			n++
		}
	}
	if n == 0 {
		e.p.Add(len(lines), "there are no rows after the header, a year has %d: give a complete file", calendar.Hours)
		e.unplaced = calendar.Hours // which says why they are missing
	}
}

func (e *epw) row(line int, f []string) {
	hour, ok := -1, e.hasColumns(line, f)
	if ok {
		hour, ok = e.hourOf(line, f)
	}
	switch {
	case !ok:
		e.unplaced++
		return
	case hour < 0: // 29 February
		e.leapRows++
		return
	case e.lines[hour] != 0:
		e.p.Add(line, "%s was given on line %d already: keep one", hourText(hour), e.lines[hour])
		return
	}
	e.lines[hour] = line
	air := e.value(line, f[dryBulbColumn], dryBulb)
	e.out.AirC[hour] = air
	e.rh[hour] = e.rhOf(line, f, air)
}

// hasColumns looks for the signs of another separator and of decimal commas.
func (e *epw) hasColumns(line int, f []string) bool {
	last := len(f)
	for last > mostColumns && f[last-1] == "" {
		last--
	}
	switch {
	case last > mostColumns:
		e.p.Add(line, "%d fields, a row has up to %d: write decimals with a point", last, mostColumns)
	case e.columns > 0 && len(f) > e.columns:
		e.p.Add(line, "%d fields, the first row has %d: write decimals with a point, and give each row as many fields", len(f), e.columns)
	case last < leastColumns && strings.ContainsAny(f[0], ";\t"):
		e.p.Add(line, "%d fields, a row has %d: separate them by commas", last, mostColumns)
	case last < leastColumns:
		e.p.Add(line, "%d fields, a row has %d, of which the first %d are needed: complete the row", last, mostColumns, leastColumns)
	default:
		if e.columns == 0 {
			e.columns = len(f)
		}
		return true
	}
	return false
}

// hourOf finds the hour of the year; negative for one of 29 February.
func (e *epw) hourOf(line int, f []string) (int, bool) {
	month, ok := e.whole(line, "month", f[monthColumn], int(time.January), int(time.December))
	if !ok {
		return 0, false
	}
	days := calendar.DaysIn(month - 1)
	if month == int(time.February) {
		days++
	}
	day, ok := e.whole(line, "day", f[dayColumn], 1, days)
	if !ok {
		return 0, false
	}
	hour, ok := e.whole(line, "hour", f[hourColumn], 1, hoursADay)
	switch {
	case !ok:
		return 0, false
	case month == int(time.February) && day == days:
		return -1, true
	}
	return (calendar.MonthStartDay(month-1)+day-1)*hoursADay + hour - 1, true
}

func (e *epw) whole(line int, name, text string, low, high int) (int, bool) {
	n, err := strconv.Atoi(text)
	if err == nil && n >= low && n <= high {
		return n, true
	}
	advice := "put it right"
	if name == "hour" {
		advice = "hour 1 ends at 01:00"
	}
	e.p.Add(line, "%s is %s, allowed %d to %d: %s", name, excerpt(text), low, high, advice)
	return 0, false
}

// value reads a number; NaN if there is none. A wrong one is noted and gives 0, so
// that it does not count as a gap as well.
func (e *epw) value(line int, text string, q quantity) float64 {
	if text == "" {
		return math.NaN()
	}
	x, err := strconv.ParseFloat(text, 64)
	switch {
	case err != nil || math.IsNaN(x) || math.IsInf(x, 0):
		e.p.Add(line, "%s is %s, which is no number: give a number, or leave it blank", q.name, excerpt(text))
	case x == q.missing:
		return math.NaN()
	case !q.holds(x):
		e.p.Add(line, "%s is %s, allowed %s %s: %s", q.name, shortened(text), q.span(), q.unit, q.remedy(x))
	default:
		return x
	}
	return 0
}

func (q quantity) holds(x float64) bool {
	if q.open {
		return x > q.low && x < q.high
	}
	return x >= q.low && x <= q.high
}

func (q quantity) span() string {
	if q.open {
		return fmt.Sprintf("above %g and below %g", q.low, q.high)
	}
	return fmt.Sprintf("%g to %g", q.low, q.high)
}

// meanRemedy says what to do about a month's mean of the air in deg C.
func meanRemedy(meanC, high float64) string {
	if meanC > high {
		return "it looks like degrees Fahrenheit, give °C"
	}
	return "give °C"
}

func (q quantity) remedy(x float64) string {
	const highestF, kelvin = 158, 200
	switch {
	case q.unit != "°C":
	case x >= q.high && x < highestF:
		return "it looks like degrees Fahrenheit, give °C"
	case x >= kelvin && x < kelvin+highestF:
		return "it looks like kelvin, give °C"
	}
	return "put it right, or leave it blank if it is not known"
}

// rhOf gives the relative humidity of a row, percent: as stated, else from the dew
// point, else NaN.
func (e *epw) rhOf(line int, f []string, airC float64) float64 {
	const mist = 100.0
	if rh := e.value(line, f[humidityColumn], humidity); !math.IsNaN(rh) {
		return min(rh, mist)
	}
	dew := e.value(line, f[dewPointColumn], dewPoint)
	return min(100*saturationPa(dew)/saturationPa(airC), mist) // NaN unless both are known
}

// hourText names an hour by its beginning, such as 3 Mar 05:00.
func hourText(hour int) string {
	day := hour / hoursADay
	at := time.Date(2001, time.January, 1+day, hour%hoursADay, 0, 0, 0, time.UTC) // no leap year
	return at.Format("2 Jan 15:04")
}

package climate

import (
	"math"
	"slices"

	"dhwcompare/compare/calendar"
)

// gap is a run of hours without a value. The year is a ring, so a gap may run over
// its end.
type gap struct{ from, hours int }

// gaps lists the runs of NaN; one of all hours if there is nothing else.
func gaps(values []float64) []gap {
	known := slices.IndexFunc(values, func(v float64) bool { return !math.IsNaN(v) })
	if known < 0 {
		return []gap{{0, len(values)}}
	}
	var list []gap
	for k := 0; k < len(values); k++ {
		g := gap{from: (known + k) % len(values)}
		for math.IsNaN(values[(g.from+g.hours)%len(values)]) {
			g.hours++
		}
		if g.hours > 0 {
			list = append(list, g)
			k += g.hours
		}
	}
	return list
}

// bridge fills a gap by a straight line.
func (g gap) bridge(values []float64) {
	n := len(values)
	before, after := values[(g.from+n-1)%n], values[(g.from+g.hours)%n]
	for i := range g.hours {
		values[(g.from+i)%n] = before + (after-before)*float64(i+1)/float64(g.hours+1)
	}
}

// missingRows notes hours that have no row, unless rows whose hour cannot be read
// explain it.
func (e *epw) missingRows(lastLine int) {
	missing := 0
	for _, line := range e.lines {
		if line == 0 {
			missing++
		}
	}
	if missing <= e.unplaced {
		return
	}
	for i := 0; i < len(e.lines); i++ {
		first := i
		for i < len(e.lines) && e.lines[i] == 0 {
			i++
		}
		if i == first {
			continue
		}
		line := lastLine
		if i < len(e.lines) {
			line = e.lines[i]
		}
		e.p.Add(line, "%d of %d hours have no row near here, from %s: add the rows", i-first, len(e.lines), hourText(first))
	}
}

// fillAir bridges short gaps of the dry bulb and notes long ones. Hours without a
// row have been noted already.
func (e *epw) fillAir() {
	filled, longest := 0, 0
	for _, g := range gaps(e.out.AirC) {
		line := e.lines[g.from]
		switch {
		case line == 0:
		case g.hours > longestGapH:
			e.p.Add(line, "dry bulb is missing for %d hours from %s, allowed are %d on end: fill the gap, or take another file", g.hours, hourText(g.from), longestGapH)
		default:
			g.bridge(e.out.AirC)
			filled, longest = filled+g.hours, max(longest, g.hours)
		}
	}
	if filled > mostFilledH {
		e.p.Add(e.firstData, "dry bulb is missing in %d of %d hours, allowed are %d: take another file", filled, calendar.Hours, mostFilledH)
	}
	if filled > 0 {
		e.warn("dry bulb is missing in %d of %d hours and taken from a straight line between its neighbours (longest gap %d h)", filled, calendar.Hours, longest)
	}
}

// judgeAir refuses temperatures that no place has.
func (e *epw) judgeAir() {
	if spread := slices.Max(e.out.AirC) - slices.Min(e.out.AirC); spread < leastSpreadK {
		e.p.Add(e.firstData, "dry bulb varies by %.2g K over the year: column %d must hold the air temperature", spread, dryBulbColumn+1)
	}
	for m, mean := range e.out.MeansC() {
		if l := outdoorLimit(); mean < l.low || mean > l.high {
			e.p.Add(e.firstData, "the mean dry bulb of month %d is %.1f °C, allowed %g to %g: %s", m+1, mean, l.low, l.high, meanRemedy(mean, l.high))
		}
	}
}

// fillHumidity bridges short gaps and gives longer ones a constant dew point.
func (e *epw) fillHumidity() {
	known := slices.DeleteFunc(slices.Clone(e.rh), math.IsNaN)
	switch {
	case len(known) == 0:
		e.warn("holds neither humidity nor dew point: monthly means of humidity stand in, with a dew point that is constant through each day")
		return
	case slices.Max(known) <= 1.5:
		e.p.Add(e.firstData, "relative humidity is never above %g %%: it looks like a share of 1, give percent", slices.Max(known))
		return
	}
	e.out.RHPercent = e.rh
	if missing := len(e.rh) - len(known); missing > 0 {
		e.warn("humidity is missing in %d of %d hours: up to %d hours on end are taken from a straight line, longer gaps from the month's mean with a constant dew point",
			missing, calendar.Hours, longestGapH)
	}
	means := knownMeans(e.rh, average(known))
	for _, g := range gaps(e.rh) {
		if g.hours <= longestGapH {
			g.bridge(e.rh)
		}
	}
	e.constantDewPoint(means)
	e.judgeHumidity()
}

// knownMeans gives each month's mean of the values that are there, or else a
// fallback.
func knownMeans(hours []float64, fallback float64) Monthly {
	var means Monthly
	for m := range means {
		from, to := calendar.MonthStartDay(m)*hoursADay, calendar.MonthStartDay(m+1)*hoursADay
		known := slices.DeleteFunc(slices.Clone(hours[from:to]), math.IsNaN)
		means[m] = fallback
		if len(known) > 0 {
			means[m] = average(known)
		}
	}
	return means
}

// constantDewPoint fills what is still missing of each day.
func (e *epw) constantDewPoint(means Monthly) {
	day := make([]float64, hoursADay)
	for d := range calendar.Days {
		hours := e.rh[d*hoursADay : (d+1)*hoursADay]
		if !slices.ContainsFunc(hours, math.IsNaN) {
			continue
		}
		fillDayHumidity(day, e.out.AirC[d*hoursADay:(d+1)*hoursADay], means[calendar.MonthOfDay(d)])
		for h := range hours {
			if math.IsNaN(hours[h]) {
				hours[h] = day[h]
			}
		}
	}
}

func (e *epw) judgeHumidity() {
	l := humidityLimit()
	for m, mean := range monthMeans(e.rh) {
		if mean < l.low {
			e.p.Add(e.firstData, "the mean relative humidity of month %d is %.1f %%, allowed %g to %g: give percent in column %d, or leave it blank", m+1, mean, l.low, l.high, humidityColumn+1)
		}
	}
}

package tariffs

import (
	"fmt"
	"math"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
)

// WholeTariff is the Band of a Problem that concerns no single band.
const WholeTariff = -1

// Problem is one thing that is wrong with a tariff.
type Problem struct {
	Band int // index into Tariff.Bands, or WholeTariff
	Text string
}

// InvalidError lists everything that is wrong with a tariff.
type InvalidError struct {
	Tariff   string
	Problems []Problem
}

// Error gives one line per problem.
func (e *InvalidError) Error() string {
	lines := make([]string, len(e.Problems))
	for i, p := range e.Problems {
		lines[i] = fmt.Sprintf("tariff %q: %s", e.Tariff, p.Text)
	}
	return strings.Join(lines, "\n")
}

// checker gathers problems of one tariff.
type checker struct{ problems []Problem }

func (c *checker) add(band int, format string, args ...any) {
	c.problems = append(c.problems, Problem{Band: band, Text: fmt.Sprintf(format, args...)})
}

func (c *checker) err(t *Tariff) error {
	if len(c.problems) == 0 {
		return nil
	}
	return &InvalidError{Tariff: t.Name, Problems: c.problems}
}

// check judges everything that can be judged without laying the bands over the
// year.
func (t *Tariff) check(y calendar.Year) error {
	var c checker
	c.charges(t)
	c.clockChanges(y)
	if t.SeriesPerKWh != nil {
		c.series(t)
		return c.err(t)
	}
	for i := range t.Bands {
		c.band(i, &t.Bands[i])
	}
	c.remaining(t)
	return c.err(t)
}

func (c *checker) charges(t *Tariff) {
	if !finite(t.StandingPerDay) || t.StandingPerDay < 0 {
		c.add(WholeTariff, "standing charge %g per day: must be zero or more", t.StandingPerDay)
	}
	if !finite(t.TaxPercent) || t.TaxPercent < 0 || t.TaxPercent > percent {
		c.add(WholeTariff, "tax %g percent: must be from 0 to 100", t.TaxPercent)
	}
}

// clockChanges holds the assumption of the half-hour grid that the wall clock
// never jumps inside a half hour.
func (c *checker) clockChanges(y calendar.Year) {
	if y.DSTStart%calendar.HalfHourS != 0 || y.DSTEnd%calendar.HalfHourS != 0 {
		c.add(WholeTariff, "summer time from %d s to %d s: both changes must fall on a half hour of standard time",
			y.DSTStart, y.DSTEnd)
	}
}

func (c *checker) series(t *Tariff) {
	if len(t.Bands) > 0 || t.Remaining != nil {
		c.add(WholeTariff, "has a price series and bands: keep one of the two")
	}
	if n := len(t.SeriesPerKWh); n != calendar.HalfHours {
		c.add(WholeTariff, "price series has %d values: must have %d, one for each half hour of 365 days", n, calendar.HalfHours)
	}
	for i, v := range t.SeriesPerKWh {
		if !finite(v) {
			c.add(WholeTariff, "price series, half hour %d: %g is not a price: give a finite number", i, v)
			return
		}
	}
}

func (c *checker) band(i int, b *Band) {
	name := bandName(i, b.Label)
	if strings.TrimSpace(b.Label) == "" {
		c.add(i, "%s has no label: give it one, for the lines of the bill", name)
	}
	if !finite(b.PerKWh) {
		c.add(i, "%s: rate %g: must be a finite number (it may be negative)", name, b.PerKWh)
	}
	c.choices(i, name, b)
	c.minutes(i, name, b)
	for _, m := range b.Months {
		if m < time.January || m > time.December {
			c.add(i, "%s: month %d: must be from 1 to 12", name, int(m))
		}
	}
}

func (c *checker) choices(i int, name string, b *Band) {
	if b.Days < AllDays || b.Days > Weekends {
		c.add(i, "%s: kind of day %d is not known: choose all days, weekdays or weekends", name, int(b.Days))
	}
	if b.Clock < LocalClock || b.Clock > StandardClock {
		c.add(i, "%s: clock %d is not known: choose the local or the standard clock", name, int(b.Clock))
	}
}

func (c *checker) minutes(i int, name string, b *Band) {
	switch {
	case b.StartMin < 0 || b.StartMin >= minutesADay:
		c.add(i, "%s: start at minute %d: must be from 00:00 to 23:59", name, b.StartMin)
	case b.EndMin <= 0 || b.EndMin > minutesADay:
		c.add(i, "%s: end at minute %d: must be from 00:01 to 24:00", name, b.EndMin)
	case b.StartMin == b.EndMin:
		c.add(i, "%s: starts and ends at %s: for the whole day give 00:00 to 24:00", name, hhmm(b.StartMin))
	}
}

func (c *checker) remaining(t *Tariff) {
	switch {
	case t.Remaining == nil && len(t.Bands) == 0:
		c.add(WholeTariff, "has no rate: give bands, a remaining rate or a price series")
	case t.Remaining == nil:
	case strings.TrimSpace(t.Remaining.Label) == "":
		c.add(WholeTariff, "the remaining rate has no label: give it one, for the lines of the bill")
	case !finite(t.Remaining.PerKWh):
		c.add(WholeTariff, "remaining rate %g: must be a finite number", t.Remaining.PerKWh)
	}
}

func bandName(i int, label string) string { return fmt.Sprintf("band %d (%q)", i+1, label) }

func hhmm(minute int) string {
	return fmt.Sprintf("%02d:%02d", minute/minutesAnHour, minute%minutesAnHour)
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

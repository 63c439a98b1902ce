package charts

import (
	"fmt"
	"math"

	"dhwcompare/compare"
)

// loadDuration is the picture of how warm showers run for how long: minutes of the
// year that are colder than each temperature. It shows the coldest end alone, as
// nearly all other water is as warm as it is wanted.
type loadDuration struct {
	times     [2]*compare.ShowerTime
	low, high float64 // C
	minutes   float64 // where the axis ends
}

// showerTimeCharts draws it where there are showers.
func showerTimeCharts(cmp *compare.Comparison) []Chart {
	d := loadDuration{times: [2]*compare.ShowerTime{&cmp.Options.Compact.ShowerTime, &cmp.Options.Cylinder.ShowerTime}}
	if len(d.times[0].Colder) == 0 || len(d.times[1].Colder) == 0 {
		return nil
	}
	d.minutes = d.span()
	d.low, d.high = d.reach()
	return []Chart{{
		Name:     "shower-temperature-duration",
		Title:    d.finding(),
		Alt:      d.inWords(),
		subtitle: d.subtitle(),
		caption:  meanYears(cmp),
		room:     durationHeight,
		body:     d.draw,
	}}
}

func (d *loadDuration) wantC() float64  { return max(d.times[0].WantC, d.times[1].WantC) }
func (d *loadDuration) leastC() float64 { return max(d.times[0].LeastC, d.times[1].LeastC) }
func (d *loadDuration) all() float64    { return max(d.times[0].Minutes, d.times[1].Minutes) }

// How far the axis reaches beyond the last minute that is not as warm as wanted, and
// the least share of all showers that it shows.
const (
	beyondLast = 1.3
	leastSpan  = 0.002
)

// span is where the axis of minutes ends: beyond what is colder than wanted with
// either option.
func (d *loadDuration) span() float64 {
	last := leastSpan * d.all()
	for _, t := range d.times {
		last = max(last, beyondLast*t.NotAsWanted())
	}
	return min(top(last), d.all())
}

// reach gives the ends of the axis of temperature.
func (d *loadDuration) reach() (low, high float64) {
	low = d.leastC()
	for _, t := range d.times {
		low = min(low, t.Colder[0].C)
	}
	return aroundK * math.Floor(low/aroundK), d.wantC() + 1
}

func (d *loadDuration) finding() string {
	a, b := minutesLong(d.times[compare.SideCompact].TooCold()), minutesLong(d.times[compare.SideCylinder].TooCold())
	least := sensible(d.leastC())
	for _, side := range bothSides() {
		if other := minutesLong(d.times[1-side].TooCold()); d.times[side].TooCold() == 0 && other != noMinutes {
			return fmt.Sprintf("Showers never run colder than %s °C with the %v, and for %s a year with the %v", least, side, other, 1-side)
		}
	}
	switch {
	case a == b && a == noMinutes:
		return fmt.Sprintf("No shower runs colder than %s °C with either option", least)
	case a == b:
		return fmt.Sprintf("Showers run colder than %s °C for %s a year with either option", least, a)
	default:
		return fmt.Sprintf("Showers run colder than %s °C for %s a year with the compact store, %s with the cylinder", least, a, b)
	}
}

const noMinutes = "no time"

// minutesLong writes a length of time of a year.
func minutesLong(minutes float64) string {
	const mostMinutes = 120
	switch {
	case minutes == 0:
		return noMinutes
	case minutes < 0.95:
		return "less than a minute"
	case number(minutes, 0) == "1":
		return "1 minute"
	case minutes < mostMinutes:
		return number(minutes, 0) + " minutes"
	default:
		return number(minutes/60, 0) + " hours"
	}
}

func (d *loadDuration) subtitle() string {
	return fmt.Sprintf("How many minutes of shower a year are colder than each temperature, once the cold water in the pipe is out. Drawn are the coldest %s minutes (%s %%) of %s.",
		number(d.minutes, 0), shareDigits(100*d.minutes/d.all()), minutesLong(d.all()))
}

// shareDigits writes a share with two digits at least.
func shareDigits(v float64) string {
	switch {
	case v < 0.995:
		return number(v, 2)
	case v < 9.95:
		return number(v, 1)
	default:
		return number(v, 0)
	}
}

func (d *loadDuration) inWords() string {
	text := fmt.Sprintf("Two lines that rise from the coldest water to the wanted %s °C, minutes of shower a year colder than each temperature, of %s in all.",
		sensible(d.wantC()), minutesLong(d.all()))
	for _, side := range bothSides() {
		t := d.times[side]
		text += fmt.Sprintf(" %s: the coldest at %s °C; colder than %s °C for %s, than %s °C for %s.", capital(side.String()), sensible(t.Colder[0].C),
			sensible(t.LeastC), minutesLong(t.TooCold()), sensible(t.WantC-compare.AsWantedWithinK), minutesLong(t.NotAsWanted()))
	}
	return text
}

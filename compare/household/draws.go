package household

import (
	"cmp"
	"slices"

	"dhwcompare/compare/calendar"
)

// Draws gives the draw-offs of one year in the order of their starts. mainsC are
// the monthly means of the cold water, deg C, from which the mixed litres of a tap
// draw follow. Both must have passed Params.Check.
//
// The means keep SAP 10.2, appendix J, when all keys have their defaults: its
// numbers a day and month factors (which act on how often, never on how long),
// minutes, flows and litres. Hours follow measured tables by the wall clock.
// Showers and baths wait for a free bathroom, and a turn that would come only
// after midnight is not taken.
//
// Same seed and year, same chances: each day and purpose has its own stream, and
// the place of a variate in it depends on whom it is for and never on a habit.
// Longer showers, say, leave each tap draw alone, and more people leave the wishes
// of the others alone.
func Draws(p Params, y calendar.Year, mainsC [calendar.MonthsInAYear]float64, seed uint64, year int) []Draw {
	g := newGenerator(p, y, mainsC, seed, year)
	for day := range calendar.Days {
		if !p.isAway(day) {
			g.day(day)
		}
	}
	return g.draws
}

// generator carries what one year of draw-offs needs from day to day.
type generator struct {
	p      Params
	y      calendar.Year
	seed   uint64
	year   int
	clocks clocks
	taps   tapLitres
	mainsC [calendar.MonthsInAYear]float64
	rooms  bathrooms
	queue  queue
	wishes []wish // of the day in hand
	draws  []Draw
}

func newGenerator(p Params, y calendar.Year, mainsC [calendar.MonthsInAYear]float64, seed uint64, year int) *generator {
	gapS := 60 * p.BackToBackGapMinutes
	return &generator{
		p: p, y: y, seed: seed, year: year, mainsC: mainsC,
		clocks: newClocks(p.Rhythm),
		taps:   newTapLitres(&p),
		rooms:  newBathrooms(p.Bathrooms, gapS),
		queue:  queue{gapS: gapS},
		draws:  make([]Draw, 0, expectedDraws(&p)),
	}
}

// expectedDraws is a little more than the mean number of draws of a year without
// guests, so that the list seldom has to grow.
func expectedDraws(p *Params) int {
	perDay := p.ShowersPerDay + p.BathsPerDay + p.TapsPerDay
	return int(1.05*perDay*calendar.Days) + 100
}

// clocks are the hours of each use, for weekdays and for weekends.
type clocks struct {
	shower, bath [2]clock
	tap          clock
}

func newClocks(r Rhythm) clocks {
	return clocks{
		shower: [2]clock{newClock(r.shape(showerWeekday)), newClock(r.shape(showerWeekend))},
		bath:   [2]clock{newClock(r.shape(bathWeekday)), newClock(r.shape(bathWeekend))},
		tap:    newClock(tapAnyDay),
	}
}

// today is what a day of the year means for habits.
type today struct {
	day, month int
	weekend    int // 0 from Monday to Friday, 1 at the weekend
	guests     int
	endS       float64 // standard time of the next midnight by the wall clock
}

func (g *generator) day(day int) {
	t := today{
		day:    day,
		month:  calendar.MonthOfDay(day),
		guests: g.p.guestsOn(day),
		endS:   g.y.Standard(float64(day+1) * calendar.DayS),
	}
	if g.y.IsWeekend(day) {
		t.weekend = 1
	}
	first := len(g.draws)
	g.bathe(t)
	g.runTaps(t)
	todays := g.draws[first:]
	slices.SortStableFunc(todays, func(a, b Draw) int { return cmp.Compare(a.StartS, b.StartS) })
	g.queue.number(todays)
}

// at gives the standard time of a moment of the day by the wall clock.
func (g *generator) at(t today, secondsAfterMidnight float64) float64 {
	return g.y.Standard(float64(t.day)*calendar.DayS + secondsAfterMidnight)
}

package household

import (
	"math/rand/v2"

	"dhwcompare/compare/random"
)

// Slots a person and day: every person uses up the variates of all slots, so that
// nobody's habits move anybody else's variates. They hold the largest legal rates.
const (
	showerSlots = 4
	bathSlots   = 3
)

// bathe adds the showers and baths of a day.
func (g *generator) bathe(t today) {
	g.wishes = g.wishes[:0]
	g.wishShowers(t)
	g.wishBaths(t)
	g.takeTurns(t)
}

// wishShowers draws the wishes of residents and guests from streams of their own,
// so that a visit leaves the residents' wishes alone.
func (g *generator) wishShowers(t today) {
	rate := g.p.ShowersPerDay / g.p.People * bathingByMonth[t.month]
	latest := -1
	r := random.Stream(g.seed, g.year, t.day, "household showers")
	for person := range g.p.residents() {
		latest = g.showersOf(r, t, person, rate*g.p.presence(person), latest)
	}
	if t.guests == 0 {
		return
	}
	r = random.Stream(g.seed, g.year, t.day, "household guest showers")
	for guest := range t.guests {
		latest = g.showersOf(r, t, g.p.residents()+guest, rate, latest)
	}
}

// showersOf adds a person's showers of the day. latest is the wish of the person
// before who showers that day (-1: nobody yet), behind whom this one may go; it
// returns the same for the next person. Looking only at people before this one
// keeps the others where they were when somebody is added.
func (g *generator) showersOf(r *rand.Rand, t today, person int, rate float64, latest int) int {
	wanted := wholeNumber(rate, r.Float64())
	ahead := latest
	for slot := range showerSlots {
		hour, join, minutes, flow := r.Float64(), r.Float64(), r.NormFloat64(), r.NormFloat64()
		if slot >= wanted {
			continue
		}
		w := g.shower(person, minutes, flow)
		w.headS = g.at(t, g.clocks.shower[t.weekend].timeS(hour))
		if slot == 0 {
			if ahead >= 0 && join < g.p.BackToBackShare {
				w.headS = g.wishes[ahead].headS
				w.behind = g.wishes[ahead].behind + 1
			}
			latest = len(g.wishes)
		}
		g.wishes = append(g.wishes, w)
	}
	return latest
}

func (g *generator) shower(person int, minutes, flow float64) wish {
	seconds := 60 * logNormal(g.p.ShowerMinutes, g.p.ShowerMinutesSpread, minutes)
	return wish{
		busyS: seconds,
		draw: Draw{
			Kind:        Shower,
			Person:      person,
			FlowLPerMin: logNormal(g.p.ShowerFlowLPerMin, g.p.ShowerFlowSpread, flow),
			WantC:       g.p.ShowerC,
			MinC:        g.p.ShowerMinC,
			End:         End{BySeconds, seconds},
		},
	}
}

// wishBaths draws the baths in the manner of wishShowers; nobody queues for a bath
// on purpose.
func (g *generator) wishBaths(t today) {
	rate := g.p.BathsPerDay / g.p.People * bathingByMonth[t.month]
	if rate == 0 {
		return
	}
	r := random.Stream(g.seed, g.year, t.day, "household baths")
	for person := range g.p.residents() {
		g.bathsOf(r, t, person, rate*g.p.presence(person))
	}
	if t.guests == 0 {
		return
	}
	r = random.Stream(g.seed, g.year, t.day, "household guest baths")
	for guest := range t.guests {
		g.bathsOf(r, t, g.p.residents()+guest, rate)
	}
}

func (g *generator) bathsOf(r *rand.Rand, t today, person int, rate float64) {
	wanted := wholeNumber(rate, r.Float64())
	for slot := range bathSlots {
		hour, litres, flow := r.Float64(), r.NormFloat64(), r.NormFloat64()
		if slot >= wanted {
			continue
		}
		w := g.bath(person, litres, flow)
		w.headS = g.at(t, g.clocks.bath[t.weekend].timeS(hour))
		g.wishes = append(g.wishes, w)
	}
}

func (g *generator) bath(person int, litres, flow float64) wish {
	amount := logNormal(g.p.BathLitres, g.p.BathLitresSpread, litres)
	lPerMin := logNormal(g.p.BathFlowLPerMin, bathFlowSpread, flow)
	return wish{
		busyS: 60 * (amount/lPerMin + bathSoakMinutes),
		draw: Draw{
			Outlet:      outletAt(AtBath, g.p.Bathrooms),
			Kind:        Bath,
			Person:      person,
			FlowLPerMin: lPerMin,
			WantC:       g.p.BathC,
			MinC:        g.p.BathMinC,
			End:         End{ByLitres, amount},
		},
	}
}

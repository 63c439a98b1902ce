package household

import "dhwcompare/compare/random"

// tapLitres are the mean hot litres, at HotSupplyC, of one small and of one long
// tap draw.
type tapLitres struct{ small, long float64 }

// newTapLitres splits the day's litres over the day's draws; a long draw takes as
// many times the litres of a small one as was measured.
func newTapLitres(p *Params) tapLitres {
	if p.TapsPerDay == 0 {
		return tapLitres{}
	}
	const ratio = measuredLongTapLitres / measuredSmallTapLitres
	small := p.TapLitresPerDay / p.TapsPerDay / (1 + p.LongTapShare*(ratio-1))
	return tapLitres{small: small, long: ratio * small}
}

// mixedShare gives mixed litres at wantC from hot litres at HotSupplyC, mains at
// coldC: equal heat above the cold water.
func mixedShare(wantC, coldC float64) float64 {
	return (HotSupplyC - coldC) / (wantC - coldC)
}

// runTaps adds the tap draws of a day.
func (g *generator) runTaps(t today) {
	present := g.p.People + float64(t.guests)
	mean := g.p.TapsPerDay * tapsByMonth[t.month] * present / g.p.People
	if mean == 0 {
		return
	}
	mixed := mixedShare(g.p.TapC, g.mainsC[t.month])
	r := random.Stream(g.seed, g.year, t.day, "household taps")
	for range poisson(mean, r.Float64()) {
		v := tapVariates{r.Float64(), r.Float64(), r.Float64(), r.Float64(), r.NormFloat64(), r.NormFloat64()}
		d := g.tap(v, present, mixed)
		d.StartS = g.at(t, g.clocks.tap.timeS(v.hour))
		g.draws = append(g.draws, d)
	}
}

// tapVariates decide one tap draw: four uniform, two standard normal.
type tapVariates struct{ hour, long, place, person, litres, flow float64 }

func (g *generator) tap(v tapVariates, present, mixed float64) Draw {
	place, mean, spread := AtBasin, g.taps.small, smallTapSpread
	switch {
	case v.long < g.p.LongTapShare:
		place, mean, spread = AtKitchen, g.taps.long, longTapSpread
	case v.place < kitchenShare:
		place = AtKitchen
	}
	return Draw{
		Outlet:      outletAt(place, g.p.Bathrooms),
		Kind:        Tap,
		Person:      g.personAt(v.person * present),
		FlowLPerMin: logNormal(g.p.TapFlowLPerMin, tapFlowSpread, v.flow),
		WantC:       g.p.TapC,
		MinC:        g.p.TapMinC,
		End:         End{ByLitres, mixed * logNormal(mean, spread, v.litres)},
	}
}

// personAt finds who stands at a point of the line on which residents, the last
// perhaps with less than a full share, and then guests are set out.
func (g *generator) personAt(x float64) int {
	if x < g.p.People {
		return int(x)
	}
	return g.p.residents() + int(x-g.p.People)
}

package compare

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// The spell lies over its days and no others, with its mains and humidity, its mean
// temperature, and no more than a dull winter day's swing.
func TestSpellLiesOverItsDays(t *testing.T) {
	c := british(1)
	w, err := c.World(0)
	if err != nil {
		t.Fatal(err)
	}
	s := Spell{Days: 3, OutdoorC: -5, MainsC: 4, RHPercent: 92}
	out := s.over(w.Weather)
	const hours = 24
	for h := range out.OutdoorC {
		day := h / hours
		if day < spellFirstDay || day >= spellFirstDay+s.Days {
			if out.OutdoorC[h] != w.Weather.OutdoorC[h] || out.MainsC[h] != w.Weather.MainsC[h] || out.RHPercent[h] != w.Weather.RHPercent[h] {
				t.Fatalf("hour %d outside the spell was changed", h)
			}
			continue
		}
		if out.MainsC[h] != 4 || out.RHPercent[h] != 92 || math.Abs(out.OutdoorC[h]+5) > humidDaySwingK/2 {
			t.Errorf("hour %d: %g C outdoors, mains %g C, %g %%", h, out.OutdoorC[h], out.MainsC[h], out.RHPercent[h])
		}
	}
	for day := spellFirstDay; day < spellFirstDay+s.Days; day++ {
		mean := 0.0
		for h := range hours {
			mean += out.OutdoorC[day*hours+h] / hours
		}
		closeTo(t, "mean of a day of the spell", mean, s.OutdoorC, 0.25) // the swing is cut at both ends, not evenly
	}
}

// Both options catch up after a cold humid day and after the design cold spell, and no
// sample falls behind; how long it takes is told.
func TestBothOptionsCatchUp(t *testing.T) {
	c := british(1)
	var cmp Comparison
	found(t, cmp.spellSearch(t.Context(), &c, newWorlds(&c)))
	list := cmp.Spells
	mains, _ := c.Climate.Mains()
	for i := range list {
		s := &list[i]
		for side := range sides {
			r := s.Of(side)
			t.Logf("%s, %s: caught up after %.0f min, %.1f defrosts, worst dip %.2f K, longest gap %.0f min, %.1f of %.1f showers fail, %.1f kWh",
				s.Name, side, r.CatchUpMin, r.Defrosts, r.WorstDipK, r.LongestGapMin, r.FailingShowers, r.Showers, r.WholeHouseKWh)
			if r.CatchUpMin < 0 || r.CatchUpMin > 12*minutesPerHour || r.FellBehind != 0 {
				t.Errorf("%s, %s: %.0f min to catch up, %d samples fell behind", s.Name, side, r.CatchUpMin, r.FellBehind)
			}
			if r.Defrosts < float64(4*s.Days) || r.WholeHouseKWh <= 0 || r.Showers <= 0 || r.LongestGapMin > float64(s.Days)*calendar.DayS {
				t.Errorf("%s, %s: %+v", s.Name, side, *r)
			}
		}
	}
	if list[0].OutdoorC != c.Dwelling.DesignC || list[0].MainsC != mains[c.coldestMains()] || list[1].MainsC != humidDayMainsC {
		t.Errorf("%+v", list)
	}
}

// A heavy house that needs more than the unit can give at its design temperature falls
// behind in two cold days, and the result says so.
func TestAnOversizedHouseFallsBehind(t *testing.T) {
	c := british(1)
	c.Dwelling.HeatLossWPerK, c.Dwelling.CapacityKWhPerK = 450, 40
	s := Spell{Days: 2, OutdoorC: -8, MainsC: 5, RHPercent: coldSpellRH, Samples: 3}
	for side := range sides {
		if err := c.liveSpell(t.Context(), nil, &s, side); err != nil {
			t.Fatal(err)
		}
		if r := s.Of(side); r.FellBehind != 3 || r.WorstDipK < 1 {
			t.Errorf("%s: %d of 3 samples fell behind, worst dip %.2f K", side, r.FellBehind, r.WorstDipK)
		}
	}
}

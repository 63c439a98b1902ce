package household

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"dhwcompare/compare/calendar"
)

// anyParams draws any set of habits that Check allows.
func anyParams(t *rapid.T) Params {
	number := func(name string, lowest, most float64) float64 { return rapid.Float64Range(lowest, most).Draw(t, name) }
	p := Params{People: number("people", minPeople, maxPeople)}
	p.ShowersPerDay = number("showers", 0, maxShowersAPerson*p.People)
	p.ShowerMinutes, p.ShowerMinutesSpread = number("minutes", 0.5, 60), number("minutes spread", 0, 0.8)
	p.ShowerFlowLPerMin, p.ShowerFlowSpread = number("shower flow", 2, 30), number("flow spread", 0, 0.5)
	p.ShowerC = number("shower C", 35, 48)
	p.ShowerMinC = number("shower min C", 30, p.ShowerC)
	p.BathsPerDay = number("baths", 0, maxBathsAPerson*p.People)
	p.BathLitres, p.BathLitresSpread = number("bath litres", 20, 400), number("bath spread", 0, 0.5)
	p.BathFlowLPerMin = number("bath flow", 3, 40)
	p.BathC = number("bath C", 35, 48)
	p.BathMinC = number("bath min C", 30, p.BathC)
	p.TapLitresPerDay, p.TapsPerDay = number("tap litres", 0.1, 500), number("taps", 0.1, maxTapsAPerson*p.People)
	p.LongTapShare, p.TapFlowLPerMin = number("long share", 0, 1), number("tap flow", 1, 20)
	p.TapC = number("tap C", 35, 60)
	p.TapMinC = number("tap min C", 30, p.TapC)
	p.Bathrooms = rapid.IntRange(1, int(maxBathrooms)).Draw(t, "bathrooms")
	p.BackToBackShare, p.BackToBackGapMinutes = number("share", 0, 1), number("gap", 1, 60)
	p.Rhythm = Rhythm(rapid.IntRange(0, len(rhythmNames)-1).Draw(t, "rhythm"))
	p.Away = []DayRange{anyDays(t, "away")}
	p.Guests = []Stay{{anyDays(t, "guests"), rapid.IntRange(1, maxGuests).Draw(t, "guests")}}
	return p
}

func anyDays(t *rapid.T, name string) DayRange {
	first := rapid.IntRange(0, calendar.Days-1).Draw(t, name+" from")
	return DayRange{first, rapid.IntRange(first, calendar.Days-1).Draw(t, name+" to")}
}

func anyMains(t *rapid.T) [calendar.MonthsInAYear]float64 {
	var mainsC [calendar.MonthsInAYear]float64
	for month := range mainsC {
		mainsC[month] = rapid.Float64Range(0, maxMainsC).Draw(t, "mains")
	}
	return mainsC
}

func TestAnyLegalHabitsGiveSoundDraws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, mainsC := anyParams(t), anyMains(t)
		if err := p.Check(mainsC); err != nil {
			t.Fatalf("the habits should be legal: %v", err)
		}
		y := calendar.European(time.Weekday(rapid.IntRange(0, 6).Draw(t, "weekday")))
		outlets := Outlets(p.Bathrooms)
		before := 0.0
		freeS := make([]float64, p.Bathrooms)
		for i, d := range Draws(p, y, mainsC, rapid.Uint64().Draw(t, "seed"), 0) {
			if d.StartS < before || d.StartS >= calendar.YearS {
				t.Fatalf("draw %d is out of order: %+v", i, d)
			}
			before = d.StartS
			sound(t, d, p, outlets)
			if d.Kind == Tap {
				continue
			}
			room := d.Outlet
			if d.Kind == Bath {
				room = 0
			}
			if d.StartS < freeS[room] {
				t.Fatalf("draw %d starts while the bathroom is in use until %g: %+v", i, freeS[room], d)
			}
			freeS[room] = d.StartS + holdS(d)
		}
	})
}

// sound checks one draw on its own.
func sound(t *rapid.T, d Draw, p Params, outlets []Outlet) {
	for _, x := range []float64{d.FlowLPerMin, d.WantC, d.MinC, d.End.Amount} {
		if !(x > 0) || math.IsInf(x, 1) {
			t.Fatalf("a value is not positive and finite: %+v", d)
		}
	}
	place := outlets[d.Outlet].Place
	fits := map[Kind]bool{Shower: place == AtShower, Bath: place == AtBath, Tap: place == AtKitchen || place == AtBasin}
	if !fits[d.Kind] {
		t.Fatalf("a %s at the %s", d.Kind, place)
	}
	if d.MinC > d.WantC || d.QueuePos < 0 || d.Person < 0 || d.Person >= p.residents()+maxGuests {
		t.Fatalf("draw out of bounds: %+v", d)
	}
	if (d.Kind == Shower) != (d.End.By == BySeconds) {
		t.Fatalf("a %s ends by %d", d.Kind, d.End.By)
	}
}

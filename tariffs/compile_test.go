package tariffs

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"dhwcompare/compare/calendar"
)

func TestEdgeInsideAHalfHourIsWeightedByMinutes(t *testing.T) {
	tariff := &Tariff{
		Name:      "odd edges",
		Bands:     []Band{{Label: "cheap", StartMin: 10, EndMin: 45, PerKWh: 0.1}},
		Remaining: &Remaining{Label: "rest", PerKWh: 0.4},
	}
	r := compile(t, tariff)
	// 00:00-00:30 holds 20 cheap minutes, 00:30-01:00 holds 15.
	near(t, "first half hour", r.PerKWh(0), (20*0.1+10*0.4)/30, 1e-15)
	near(t, "second half hour", r.PerKWh(1), (15*0.1+15*0.4)/30, 1e-15)
	profile := make([]float64, calendar.HalfHours)
	profile[0] = 3
	b := billOf(t, r, profile)
	near(t, "cheap energy", b.Year.Bands[0].KWh, 2, 1e-15)
	near(t, "cost", b.Year.EnergyCost, 2*0.1+1*0.4, 1e-15)
}

// randomTariff cuts the day into stretches and gives each to a band with its own
// rate; a seasonal or weekend condition leaves gaps to the remaining rate.
func randomTariff(seed uint64) *Tariff {
	rng := rand.New(rand.NewPCG(seed, 2))
	tariff := &Tariff{Name: "random", StandingPerDay: rng.Float64(), Remaining: &Remaining{Label: "rest", PerKWh: rng.Float64()}}
	clock := Clock(rng.IntN(2))
	for start := rng.IntN(60); start < 1300; {
		end := start + 1 + rng.IntN(400)
		if end > 1440 {
			end = 1440
		}
		band := Band{Label: string(rune('a' + rng.IntN(4))), Days: Days(rng.IntN(3)), StartMin: start, EndMin: end, Clock: clock, PerKWh: rng.Float64() - 0.2}
		if rng.IntN(2) == 0 {
			from := rng.IntN(12)
			for m := range 1 + rng.IntN(12) {
				band.Months = append(band.Months, time.Month(1+(from+m)%12)) // past December too
			}
		}
		tariff.Bands = append(tariff.Bands, band)
		start = end + rng.IntN(100)
	}
	return tariff
}

// slowRate prices one minute by reading clock and calendar directly.
func slowRate(tariff *Tariff, y calendar.Year, standardMin int) float64 {
	for _, b := range tariff.Bands {
		at := float64(standardMin * 60)
		if b.Clock == LocalClock {
			at = y.Local(at)
		}
		day := calendar.DayOf(at)
		minute := int(at)/60 - day*1440
		inMonth := len(b.Months) == 0
		for _, m := range b.Months {
			inMonth = inMonth || int(m)-1 == calendar.MonthOfDay(day)
		}
		onDay := b.Days == AllDays || (b.Days == Weekends) == y.IsWeekend(day)
		inside := minute >= b.StartMin && minute < b.EndMin
		if b.EndMin <= b.StartMin {
			inside = minute >= b.StartMin || minute < b.EndMin
		}
		if inMonth && onDay && inside {
			return b.PerKWh
		}
	}
	return tariff.Remaining.PerKWh
}

func TestRatesEqualAMinuteByMinuteCount(t *testing.T) {
	y := british()
	for seed := range uint64(6) {
		tariff := randomTariff(seed)
		r := compile(t, tariff)
		for i := range calendar.HalfHours {
			want := 0.0
			for m := range 30 {
				want += slowRate(tariff, y, i*30+m) / 30
			}
			// Thirty additions of rates below 1: rounding stays under 1e-14.
			if math.Abs(r.PerKWh(i)-want) > 1e-14 {
				t.Fatalf("seed %d, half hour %d: %.16g, want %.16g", seed, i, r.PerKWh(i), want)
			}
		}
	}
}

// Twice the rates is twice the energy cost, whatever states them; the standing charge
// and the tariff itself stay as they are.
func TestScaledRates(t *testing.T) {
	profile := random(3)
	for _, tariff := range []*Tariff{multiBand(), halfHourly(random(4)), {Name: "bands only", Bands: []Band{{Label: "all", EndMin: 1440, PerKWh: 0.2}}}} {
		before := billOf(t, compile(t, tariff), profile)
		double := tariff.Scaled(2)
		scaled := billOf(t, compile(t, &double), profile)
		if scaled.Year.EnergyCost != 2*before.Year.EnergyCost || scaled.Year.StandingCost != before.Year.StandingCost {
			t.Errorf("%s: %+v is not twice %+v", tariff.Name, scaled.Year, before.Year)
		}
		if after := billOf(t, compile(t, tariff), profile); after.Year.EnergyCost != before.Year.EnergyCost {
			t.Errorf("%s: scaling changed the tariff itself", tariff.Name)
		}
	}
}

// Half hours outside the year wrap round, and rates know whose they are.
func TestRatesWrapRound(t *testing.T) {
	r := compile(t, multiBand())
	const peak = 33 // 16:30
	for _, years := range []int{-2, -1, 1, 2} {
		if i := peak + years*calendar.HalfHours; r.PerKWh(i) != 0.39 {
			t.Errorf("%d years on: %g", years, r.PerKWh(i))
		}
	}
	if r.PerKWh(-1) != r.PerKWh(calendar.HalfHours-1) || r.Name() != "multi-band, invented" {
		t.Errorf("%q, last half hour %g", r.Name(), r.PerKWh(-1))
	}
}

func TestTaxIsAddedOnce(t *testing.T) {
	tariff := Flat("flat", 0.20, 0.50)
	tariff.TaxPercent = 5
	with := billOf(t, compile(t, tariff), even(1000))
	near(t, "prices include tax", with.Year.Total(), 1000*0.20+365*0.50, 1e-12)
	tariff.PricesIncludeTax = false
	without := billOf(t, compile(t, tariff), even(1000))
	near(t, "tax added", without.Year.Total(), 1.05*(1000*0.20+365*0.50), 1e-12)
}

func TestRaisingOneBandNeverLowersABill(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tariff := randomTariff(rapid.Uint64().Draw(t, "tariff"))
		profile := random(rapid.Uint64().Draw(t, "profile"))
		before := mustBill(t, tariff, profile)
		i := rapid.IntRange(0, len(tariff.Bands)-1).Draw(t, "band")
		tariff.Bands[i].PerKWh += rapid.Float64Range(0, 2).Draw(t, "rise")
		after := mustBill(t, tariff, profile)
		// Rounding of two sums of the same order of magnitude.
		if after.Year.EnergyCost < before.Year.EnergyCost-1e-12*before.Year.KWh {
			t.Fatalf("bill falls from %g to %g", before.Year.EnergyCost, after.Year.EnergyCost)
		}
	})
}

func mustBill(t *rapid.T, tariff *Tariff, profile []float64) Bill {
	r, err := tariff.Compile(british())
	if err != nil {
		t.Fatal(err)
	}
	b, err := r.Bill(profile)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestBadTariffsAreRefused(t *testing.T) {
	rest := &Remaining{Label: "rest", PerKWh: 0.2}
	band := func(change func(*Band)) []Band {
		b := Band{Label: "cheap", StartMin: 60, EndMin: 120, PerKWh: 0.1}
		change(&b)
		return []Band{b}
	}
	tests := []struct {
		name   string
		tariff Tariff
		band   int
		want   string
	}{
		{"nothing", Tariff{}, WholeTariff, "has no rate"},
		{"uncovered", Tariff{Bands: band(func(b *Band) { b.StartMin = 0; b.EndMin = 1439 })}, WholeTariff, "365 of 525600 minutes of the year have no rate, first on 1 January 23:59"},
		{"overlap", Tariff{Remaining: rest, Bands: append(band(func(*Band) {}), Band{Label: "dear", StartMin: 119, EndMin: 180, PerKWh: 0.4})}, 1, `band 2 ("dear") overlaps band 1 ("cheap"), first on 1 January 01:59`},
		{"overlap in summer only", Tariff{Remaining: rest, Bands: append(band(func(*Band) {}), Band{Label: "dear", StartMin: 0, EndMin: 60, PerKWh: 0.4, Clock: StandardClock})}, 1, "first on 30 March 00:00"},
		{"no label", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.Label = " " })}, 0, "has no label"},
		{"rate", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.PerKWh = math.NaN() })}, 0, "must be a finite number"},
		{"start", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.StartMin = 1440 })}, 0, "00:00 to 23:59"},
		{"end", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.EndMin = 0 })}, 0, "00:01 to 24:00"},
		{"empty window", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.EndMin = b.StartMin })}, 0, "starts and ends at 01:00"},
		{"month", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.Months = []time.Month{13} })}, 0, "month 13"},
		{"days", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.Days = 9 })}, 0, "kind of day 9"},
		{"clock", Tariff{Remaining: rest, Bands: band(func(b *Band) { b.Clock = 2 })}, 0, "clock 2"},
		{"remaining label", Tariff{Remaining: &Remaining{PerKWh: 1}}, WholeTariff, "remaining rate has no label"},
		{"remaining rate", Tariff{Remaining: &Remaining{Label: "x", PerKWh: math.Inf(1)}}, WholeTariff, "remaining rate +Inf"},
		{"standing", Tariff{Remaining: rest, StandingPerDay: -1}, WholeTariff, "standing charge -1"},
		{"tax", Tariff{Remaining: rest, TaxPercent: 101}, WholeTariff, "tax 101"},
		{"short series", Tariff{SeriesPerKWh: make([]float64, 17519)}, WholeTariff, "17519 values: must have 17520"},
		{"series and bands", Tariff{SeriesPerKWh: make([]float64, 17520), Remaining: rest}, WholeTariff, "keep one of the two"},
		{"text in series", Tariff{SeriesPerKWh: append(make([]float64, 17519), math.NaN())}, WholeTariff, "half hour 17519"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := tt.tariff.Compile(british())
			var invalid *InvalidError
			if !errors.As(err, &invalid) {
				t.Fatalf("error %v, want an InvalidError", err)
			}
			if len(invalid.Problems) != 1 || invalid.Problems[0].Band != tt.band || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %+v, want band %d and %q", invalid.Problems, tt.band, tt.want)
			}
		})
	}
}

func TestAllProblemsOfATariffComeAtOnce(t *testing.T) {
	tariff := Tariff{Name: "bad", StandingPerDay: -1, Bands: []Band{{StartMin: -1, EndMin: 10, PerKWh: math.NaN()}}}
	_, err := tariff.Compile(calendar.Year{DSTStart: 900, DSTEnd: 1800})
	if got := strings.Count(err.Error(), "\n") + 1; got != 5 {
		t.Errorf("%d lines, want 5 (standing charge, clock change, label, rate, start):\n%v", got, err)
	}
}

package tariffs

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// british is a year with the weekdays and clock changes of 2026.
func british() calendar.Year { return calendar.European(time.Thursday) }

func compile(t testing.TB, tariff *Tariff) *Rates {
	t.Helper()
	r, err := tariff.Compile(british())
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func billOf(t testing.TB, r *Rates, profile []float64) Bill {
	t.Helper()
	b, err := r.Bill(profile)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// even spreads energy over all half hours alike.
func even(kWh float64) []float64 {
	p := make([]float64, calendar.HalfHours)
	for i := range p {
		p[i] = kWh / calendar.HalfHours
	}
	return p
}

// random draws a non-negative profile, most of it zero as for a vessel that is
// reheated now and then.
func random(seed uint64) []float64 {
	rng := rand.New(rand.NewPCG(seed, 1))
	p := make([]float64, calendar.HalfHours)
	for i := range p {
		if rng.Float64() < 0.2 {
			p[i] = rng.ExpFloat64()
		}
	}
	return p
}

func sum(p []float64) float64 {
	total := 0.0
	for _, v := range p {
		total += v
	}
	return total
}

// near fails unless two values agree within a relative tolerance.
func near(t testing.TB, what string, got, want, relative float64) {
	t.Helper()
	if math.Abs(got-want) > relative*math.Max(math.Abs(want), 1e-300) {
		t.Errorf("%s: got %.15g, want %.15g within %g", what, got, want, relative)
	}
}

// multiBand is an invented heat-pump tariff: two cheap windows, one peak.
func multiBand() *Tariff {
	return &Tariff{
		Name:             "multi-band, invented",
		StandingPerDay:   0.5719,
		PricesIncludeTax: true,
		Bands: []Band{
			{Label: "cheap", StartMin: 3 * 60, EndMin: 6 * 60, PerKWh: 0.15},
			{Label: "cheap", StartMin: 12*60 + 30, EndMin: 15*60 + 30, PerKWh: 0.15},
			{Label: "peak", StartMin: 16 * 60, EndMin: 19 * 60, PerKWh: 0.39},
		},
		Remaining: &Remaining{Label: "day", PerKWh: 0.2611},
	}
}

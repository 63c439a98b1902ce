package tariffs

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dhwcompare/compare/calendar"
)

func TestFlatBillDependsOnEnergyAlone(t *testing.T) {
	r := compile(t, Flat("flat", 0.2611, 0.5719))
	rapid.Check(t, func(t *rapid.T) {
		profile := random(rapid.Uint64().Draw(t, "seed"))
		b, err := r.Bill(profile)
		if err != nil {
			t.Fatal(err)
		}
		evenly, err := r.Bill(even(sum(profile)))
		if err != nil {
			t.Fatal(err)
		}
		// Both add up 17,520 terms in another order.
		if math.Abs(b.Year.Total()-evenly.Year.Total()) > 1e-12*b.Year.Total() {
			t.Fatalf("bills %.15g and %.15g for the same energy", b.Year.Total(), evenly.Year.Total())
		}
	})
}

func TestBillsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tariff := randomTariff(rapid.Uint64().Draw(t, "tariff"))
		profile := random(rapid.Uint64().Draw(t, "profile"))
		r, err := tariff.Compile(british())
		if err != nil {
			t.Fatal(err)
		}
		surplus := random(rapid.Uint64().Draw(t, "surplus"))
		if r, err = r.WithSurplus("own solar", surplus, 0.1); err != nil {
			t.Fatal(err)
		}
		b, err := r.Bill(profile)
		if err != nil {
			t.Fatal(err)
		}
		if gap := worstGap(&b, sum(profile)); gap > 1e-12 {
			t.Fatalf("sums differ by %g of the whole", gap)
		}
	})
}

// worstGap compares every way of adding up a bill, relative to the energy (rates
// are of the order of one).
func worstGap(b *Bill, kWh float64) float64 {
	var byMonth, byBand, table Month
	for m := range b.Months {
		byMonth.KWh += b.Months[m].KWh
		byMonth.EnergyCost += b.Months[m].EnergyCost
		byMonth.StandingCost += b.Months[m].Total() - b.Months[m].EnergyCost
		for _, l := range b.Months[m].Bands {
			table.KWh += l.KWh
			table.EnergyCost += l.Cost
		}
	}
	for _, l := range b.Year.Bands {
		byBand.KWh += l.KWh
		byBand.EnergyCost += l.Cost
	}
	worst := math.Abs(b.Year.KWh - kWh)
	for _, d := range []float64{
		b.Year.KWh - byMonth.KWh, b.Year.KWh - byBand.KWh, b.Year.KWh - table.KWh,
		b.Year.EnergyCost - byMonth.EnergyCost, b.Year.EnergyCost - byBand.EnergyCost, b.Year.EnergyCost - table.EnergyCost,
		b.Year.StandingCost - byMonth.StandingCost,
	} {
		worst = math.Max(worst, math.Abs(d))
	}
	return worst / kWh
}

func TestBillByHand(t *testing.T) {
	profile := make([]float64, calendar.HalfHours)
	january := 8   // 04:00, cheap
	february := 33 // 16:30, peak
	profile[january] = 2
	profile[calendar.MonthStartDay(1)*calendar.HalfHoursADay+february] = 3
	b := billOf(t, compile(t, multiBand()), profile)
	near(t, "January energy", b.Months[0].EnergyCost, 2*0.15, 1e-15)
	near(t, "January standing", b.Months[0].StandingCost, 31*0.5719, 1e-15)
	near(t, "February energy", b.Months[1].EnergyCost, 3*0.39, 1e-15)
	near(t, "year", b.Year.Total(), 2*0.15+3*0.39+365*0.5719, 1e-15)
	want := []Line{{"cheap", 2, 0.3}, {"peak", 3, 3 * 0.39}, {"day", 0, 0}}
	for i, l := range b.Year.Bands {
		if l.Label != want[i].Label || l.KWh != want[i].KWh || math.Abs(l.Cost-want[i].Cost) > 1e-15 {
			t.Errorf("line %d: %+v, want %+v", i, l, want[i])
		}
	}
}

func TestNegativePricesPayForUse(t *testing.T) {
	prices := make([]float64, calendar.HalfHours)
	prices[100] = -0.025
	profile := make([]float64, calendar.HalfHours)
	profile[100] = 4
	b := billOf(t, compile(t, halfHourly(prices)), profile)
	near(t, "bill", b.Year.Total(), -0.1, 1e-15)
	if b.Year.Bands[0].KWh != 4 {
		t.Errorf("energy %g, want 4", b.Year.Bands[0].KWh)
	}
}

func TestSurplusServesFirstAndNoMoreThanThere(t *testing.T) {
	profile, surplus := make([]float64, calendar.HalfHours), make([]float64, calendar.HalfHours)
	profile[0], surplus[0] = 2, 0.5 // short of surplus
	profile[1], surplus[1] = 1, 3   // more than enough
	profile[2], surplus[2] = -1, 1  // a difference of profiles: no negative use
	r, err := compile(t, Flat("flat", 0.3, 0)).WithSurplus("own solar", surplus, 0.1)
	if err != nil {
		t.Fatal(err)
	}
	surplus[0] = 99 // the rates keep their own copy
	b := billOf(t, r, profile)
	near(t, "bought", b.Year.Bands[0].KWh, 1.5-1, 1e-15)
	near(t, "own", b.Year.Bands[1].KWh, 1.5, 1e-15)
	near(t, "cost", b.Year.EnergyCost, 0.5*0.3+1.5*0.1, 1e-15)
	if got := b.Year.Bands; got[0].Label != "all hours" || got[1].Label != "own solar" {
		t.Errorf("bands %+v", got)
	}
}

func TestBadProfilesAndSurplusesAreRefused(t *testing.T) {
	r := compile(t, Flat("flat", 0.3, 0))
	nan := even(1)
	nan[7] = math.NaN()
	huge := even(1)
	for i := range huge {
		huge[i] = math.MaxFloat64
	}
	for want, profile := range map[string][]float64{"has 3 values": {1, 2, 3}, "half hour 7": nan, "too large": huge} {
		if _, err := r.Bill(profile); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("error %v, want %q", err, want)
		}
	}
	negative := even(1)
	negative[9] = -1
	for want, s := range map[string][]float64{"has 2 values": {1, 2}, "half hour 9": negative} {
		if _, err := r.WithSurplus("own", s, 0.1); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("error %v, want %q", err, want)
		}
	}
	if _, err := r.WithSurplus("own", even(1), math.Inf(1)); err == nil {
		t.Error("an infinite export rate is accepted")
	}
}

// halfHourly is a tariff with a price for each half hour.
func halfHourly(perKWh []float64) *Tariff {
	return &Tariff{Name: "half-hourly", PricesIncludeTax: true, SeriesPerKWh: perKWh}
}

// A bill makes one allocation: its own lines.
func TestBillAllocatesItsResultOnly(t *testing.T) {
	r, profile := compile(t, multiBand()), random(1)
	got := testing.AllocsPerRun(10, func() { _, _ = r.Bill(profile) })
	if got > 1 {
		t.Errorf("%g allocations, want 1", got)
	}
}

func BenchmarkBill(b *testing.B) {
	r, profile := compile(b, multiBand()), random(1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := r.Bill(profile); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCompile(b *testing.B) {
	tariff, y := multiBand(), british()
	for b.Loop() {
		if _, err := tariff.Compile(y); err != nil {
			b.Fatal(err)
		}
	}
}

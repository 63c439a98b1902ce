package water

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"dhwcompare/compare/checkvalues"
)

// noMarginK is the margin of a manual tap.
const noMarginK = 0

func TestMixAgainstPublished(t *testing.T) {
	for _, row := range checkvalues.Published(t, "mix_ratio.csv") {
		share, mixed := Mix(row.Number(t, "mixed_C"), row.Number(t, "store_C"), row.Number(t, "mains_C"), noMarginK)
		if math.Abs(share-row.Number(t, "hot_fraction")) > 0.000051 { // four decimals
			t.Errorf("%v: share %.5f", row, share)
		}
		if math.Abs(1/share-row.Number(t, "mixed_litres_per_store_litre")) > 0.000051 {
			t.Errorf("%v: ratio %.5f", row, 1/share)
		}
		if mixed != row.Number(t, "mixed_C") {
			t.Errorf("%v: a manual tap mixes to %g C", row, mixed)
		}
	}
}

func TestMix(t *testing.T) {
	for _, c := range []struct {
		name                    string
		want, hot, cold, margin float64
		share, mixed            float64
	}{
		{"plenty", 40, 50, 10, ShowerMarginK, 0.75, 40},
		{"just the margin", 40, 45, 10, ShowerMarginK, 30.0 / 35, 40},
		{"one kelvin less", 40, 44, 10, ShowerMarginK, 29.0 / 34, 39},
		{"tempering valve", 48, 55, 10, 10, 35.0 / 45, 45},
		{"manual, as it is", 40, 35, 10, noMarginK, 1, 35},
		{"manual, exactly", 40, 40, 10, noMarginK, 1, 40},
		{"nothing left to give", 40, 15, 10, ShowerMarginK, 0, 10},
		{"hot side colder than mains", 40, 8, 12, noMarginK, 0, 12},
		{"cold water wanted", 8, 50, 10, noMarginK, 0, 10},
		{"mains water wanted", 10, 50, 10, noMarginK, 0, 10},
		{"as hot as the hot water", 50, 50, 10, noMarginK, 1, 50},
		{"hot side no warmer than mains", 40, 10, 10, noMarginK, 0, 10},
	} {
		share, mixed := Mix(c.want, c.hot, c.cold, c.margin)
		if math.Abs(share-c.share) > 1e-15 || mixed != c.mixed {
			t.Errorf("%s: %g at %g C, want %g at %g C", c.name, share, mixed, c.share, c.mixed)
		}
	}
}

// Whatever comes in: a share within 0..1 that makes the temperature it claims,
// and water no colder than the cold and no warmer than wanted.
func TestMixIsConsistent(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		want := rapid.Float64Range(0, 70).Draw(r, "want")
		hot := rapid.Float64Range(0, 95).Draw(r, "hot")
		cold := rapid.Float64Range(0, 30).Draw(r, "cold")
		margin := rapid.Float64Range(0, 15).Draw(r, "margin")
		share, mixed := Mix(want, hot, cold, margin)
		if share < 0 || share > 1 || mixed < cold || mixed > max(want, cold) {
			r.Fatalf("share %g, mixed %g", share, mixed)
		}
		if made := cold + share*(hot-cold); math.Abs(made-mixed) > 1e-12 { // rounding at 100 C
			r.Fatalf("share %g makes %g C, claimed %g", share, made, mixed)
		}
	})
}

// Hotter water never mixes colder, and the mix moves no faster than the water.
func TestMixRisesWithoutJumps(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		want := rapid.Float64Range(0, 70).Draw(r, "want")
		hot := rapid.Float64Range(0, 95).Draw(r, "hot")
		step := rapid.Float64Range(0, 5).Draw(r, "step")
		margin := rapid.Float64Range(0, 15).Draw(r, "margin")
		_, before := Mix(want, hot, 10, margin)
		_, after := Mix(want, hot+step, 10, margin)
		if after < before || after-before > step+1e-12 { // rounding at 100 C
			r.Fatalf("from %g to %g C for %g K more", before, after, step)
		}
	})
}

func BenchmarkMix(b *testing.B) {
	hot, sum := 48.0, 0.0
	for b.Loop() {
		share, mixed := Mix(40, hot, 10, ShowerMarginK)
		sum += share + mixed
		hot -= 1e-9
	}
	_ = sum
}

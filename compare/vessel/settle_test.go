package vessel

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func settled(temps []float64) []float64 {
	out := slices.Clone(temps)
	settle(out)
	return out
}

func TestTwoInvertedLayersSettleToTheirMean(t *testing.T) {
	if got := settled([]float64{50, 10}); got[0] != 30 || got[1] != 30 {
		t.Errorf("50 under 10 settles to %v", got)
	}
	if got := settled([]float64{20, 40, 30, 30, 60}); !slices.Equal(got, []float64{20, 100.0 / 3, 100.0 / 3, 100.0 / 3, 60}) {
		t.Errorf("an inversion of three settles to %v", got)
	}
	if got := settled([]float64{10, 20, 30}); !slices.Equal(got, []float64{10, 20, 30}) {
		t.Errorf("a stable profile moved to %v", got)
	}
}

// run is a run of layers that have mixed.
type run struct {
	sum   float64
	count int
}

func (r run) mean() float64 { return r.sum / float64(r.count) }

// settleAtRandom mixes inverted neighbours in any order, pair of runs by pair of
// runs, until none is left: the plain way, and slow.
func settleAtRandom(temps []float64, r *rand.Rand) []float64 {
	runs := make([]run, len(temps))
	for i, t := range temps {
		runs[i] = run{sum: t, count: 1}
	}
	for {
		var inverted []int
		for i := 1; i < len(runs); i++ {
			if runs[i-1].mean() > runs[i].mean() {
				inverted = append(inverted, i)
			}
		}
		if len(inverted) == 0 {
			var out []float64
			for _, r := range runs {
				out = append(out, slices.Repeat([]float64{r.mean()}, r.count)...)
			}
			return out
		}
		i := inverted[r.IntN(len(inverted))]
		runs[i-1] = run{sum: runs[i-1].sum + runs[i].sum, count: runs[i-1].count + runs[i].count}
		runs = slices.Delete(runs, i, i+1)
	}
}

// Only rounding is left: 1e-12 of 100 K in at most 40 layers.
func TestSettle(t *testing.T) {
	const rounding = 1e-10
	rapid.Check(t, func(t *rapid.T) {
		temps := rapid.SliceOfN(rapid.Float64Range(0, 100), 1, 40).Draw(t, "temps")
		seed := rapid.Uint64().Draw(t, "order of mixing")
		got := settled(temps)
		for i := 1; i < len(got); i++ {
			if got[i-1] > got[i]+rounding {
				t.Fatalf("still inverted: %v", got)
			}
		}
		if lost := sum(got) - sum(temps); math.Abs(lost) > rounding {
			t.Fatalf("heat off by %g", lost)
		}
		differ := func(other []float64) bool {
			return !slices.EqualFunc(got, other, func(a, b float64) bool { return math.Abs(a-b) <= rounding })
		}
		if again := settled(got); differ(again) {
			t.Fatalf("settles further, from %v to %v", got, again)
		}
		if other := settleAtRandom(temps, rand.New(rand.NewPCG(seed, 0))); differ(other) {
			t.Fatalf("depends on the order: %v, %v", got, other)
		}
	})
}

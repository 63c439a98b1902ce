package random

import (
	"fmt"
	"math"
	"math/bits"
	"testing"
)

// The values were taken from the program itself when it was written: a change of
// keying or of generator, which would change every stored result, shows here.
func TestStreamsAreFixedForAllTime(t *testing.T) {
	cases := []struct {
		seed      uint64
		year, day int
		purpose   string
		want      [2]uint64
	}{
		{0, 0, 0, "", [2]uint64{0x761832f5fef8e07, 0x89a0d3b9faeeefde}},
		{1, 0, 0, "weather", [2]uint64{0x52bdfcddf3dc3cad, 0x6f29fbd398f3ef55}},
		{1, 19, -3, "draws", [2]uint64{0x4d00d8a570c20d27, 0x1245a99227dbbe4a}},
	}
	for _, c := range cases {
		s := Stream(c.seed, c.year, c.day, c.purpose)
		if got := [2]uint64{s.Uint64(), s.Uint64()}; got != c.want {
			t.Errorf("seed %d year %d day %d %q: %#x, want %#x", c.seed, c.year, c.day, c.purpose, got, c.want)
		}
	}
}

func TestNearKeysOpenDifferentStreams(t *testing.T) {
	seen := map[uint64]string{}
	for seed := range uint64(8) {
		for year := range 8 {
			for day := -7; day < 366; day++ {
				for _, purpose := range []string{"weather", "draws", "draws2"} {
					name := fmt.Sprint(seed, year, day, purpose)
					v := Stream(seed, year, day, purpose).Uint64()
					if other, clash := seen[v]; clash {
						t.Fatalf("%s and %s begin with the same value", name, other)
					}
					seen[v] = name
				}
			}
		}
	}
}

// The order of the parts counts: swapped numbers are another key.
func TestPartsOfTheKeyDoNotCommute(t *testing.T) {
	if Stream(1, 2, 3, "ab").Uint64() == Stream(1, 3, 2, "ab").Uint64() {
		t.Error("year and day commute")
	}
	if Stream(2, 1, 3, "ab").Uint64() == Stream(1, 2, 3, "ab").Uint64() {
		t.Error("seed and year commute")
	}
	if Stream(1, 2, 3, "ab").Uint64() == Stream(1, 2, 3, "ba").Uint64() {
		t.Error("letters of the purpose commute")
	}
}

// One flipped bit of the seed must flip half of the 64 bits of a word. Over
// 64 bits x 64 keys the mean count has a standard error of 4/64 = 0.0625, and
// 0.3 is nearly five of them.
func TestOneBitOfTheSeedFlipsHalfOfTheKey(t *testing.T) {
	flips := 0
	for seed := range uint64(64) {
		base := key(firstWord, seed, 0, 0, "weather")
		for b := range 64 {
			flips += bits.OnesCount64(base ^ key(firstWord, seed^1<<b, 0, 0, "weather"))
		}
	}
	if mean := float64(flips) / (64 * 64); math.Abs(mean-32) > 0.3 {
		t.Errorf("%.2f bits flip on average, want 32", mean)
	}
}

// First values of neighbouring days must look independent, since most users
// take few values from each stream. Over n = 20,000 days the mean of a standard
// normal has standard error 1/sqrt(n), its square sqrt(2/n), and the product of
// neighbours 1/sqrt(n); each tolerance is five standard errors.
func TestFirstValuesOfNeighbouringDaysAreIndependent(t *testing.T) {
	const n = 20_000
	var sum, squares, products, last float64
	for day := range n {
		v := Stream(42, 0, day, "weather").NormFloat64()
		sum, squares, products = sum+v, squares+v*v, products+v*last
		last = v
	}
	tol := 5 / math.Sqrt(n)
	if mean := sum / n; math.Abs(mean) > tol {
		t.Errorf("mean %.4f, want 0 +/- %.4f", mean, tol)
	}
	if variance := squares / n; math.Abs(variance-1) > tol*math.Sqrt2 {
		t.Errorf("variance %.4f, want 1 +/- %.4f", variance, tol*math.Sqrt2)
	}
	if lag1 := products / n; math.Abs(lag1) > tol {
		t.Errorf("lag-1 product %.4f, want 0 +/- %.4f", lag1, tol)
	}
}

func BenchmarkStream(b *testing.B) {
	for b.Loop() {
		Stream(1, 2, 3, "weather").NormFloat64()
	}
}

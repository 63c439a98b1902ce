package relax

import (
	"math"
	"testing"
)

// TestShare holds the series and the library function together across the seam:
// both are good to some units in the last place.
func TestShare(t *testing.T) {
	const tolerance = 4e-16
	for x := 1e-9; x < 50; x *= 1.07 {
		if got, want := Share(x), -math.Expm1(-x); math.Abs(got-want) > tolerance*want*4 {
			t.Errorf("Share(%g) = %.17g, want %.17g", x, got, want)
		}
	}
	if Share(0) != 0 {
		t.Error("Share(0) is not 0")
	}
}

// TestMeanOfShare compares with Simpson's rule over 2,000 intervals, whose error is
// below 1e-12 here.
func TestMeanOfShare(t *testing.T) {
	for _, x := range []float64{1e-6, 1e-3, 0.0199, 0.0201, 0.3, 2, 10} {
		const n = 2000
		sum := 0.0
		for i := 0; i <= n; i++ {
			w := 2.0
			switch {
			case i == 0 || i == n:
				w = 1
			case i%2 == 1:
				w = 4
			}
			sum += w * Share(x*float64(i)/n)
		}
		want := sum / (3 * n)
		if _, got := Shares(x); math.Abs(got-want) > 1e-10*want {
			t.Errorf("mean of Share(%g) = %.15g, want %.15g", x, got, want)
		}
	}
}

// TestShares holds the pair to its two halves.
func TestShares(t *testing.T) {
	for x := 1e-6; x < 60; x = x*1.3 + 1e-6 {
		share, mean := Shares(x)
		if want := 1 - Share(x)/x; math.Abs(share-Share(x)) > 4e-16 || math.Abs(mean-want) > 4e-16/min(x, 1) {
			t.Errorf("Shares(%g) = %g, %g, want %g, %g", x, share, mean, Share(x), want)
		}
	}
}

// TestDecay holds the table and the series to the library's exponential.
func TestDecay(t *testing.T) {
	for x := 0.0; x < 40; x += 0.00137 {
		if got, want := decay(x), math.Exp(-x); math.Abs(got-want) > 1e-15*want {
			t.Fatalf("decay(%g) = %.17g, want %.17g", x, got, want)
		}
	}
}

func BenchmarkShareShort(b *testing.B) {
	x := 0.0
	for b.Loop() {
		x = Share(x*1e-3 + 1e-3)
	}
}

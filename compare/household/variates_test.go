package household

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// The median of a log-normal variate comes from its definition, the mean from
// the midpoint rule over 200,000 equal chances: good to 1e-4.
func TestLogNormal(t *testing.T) {
	const n = 200000
	normal := distuv.UnitNormal
	for _, spread := range []float64{0, 0.3, 0.8} {
		sum := 0.0
		for i := range n {
			sum += logNormal(6, spread, normal.Quantile((float64(i)+0.5)/n))
		}
		if mean := sum / n; math.Abs(mean-6) > 6e-4 {
			t.Errorf("spread %g: mean %g, want 6", spread, mean)
		}
		if got, want := logNormal(6, spread, 0), 6*math.Exp(-spread*spread/2); math.Abs(got-want) > 1e-12 {
			t.Errorf("spread %g: median %g, want %g", spread, got, want)
		}
	}
}

// The inversion must agree with the distribution function of another library on
// both sides of each step.
func TestPoisson(t *testing.T) {
	for _, mean := range []float64{0.1, 3, 20, 660} {
		reference := distuv.Poisson{Lambda: mean}
		for _, u := range []float64{0, 1e-6, 0.1, 0.5, 0.9, 1 - 1e-6} {
			n := float64(poisson(mean, u))
			above := reference.CDF(n) >= u-1e-9
			below := n == 0 || reference.CDF(n-1) <= u+1e-9
			if !above || !below {
				t.Errorf("mean %g, u %g: %g is not the inverse", mean, u, n)
			}
		}
		if n := poisson(mean, math.Nextafter(1, 0)); float64(n) > mean+13*math.Sqrt(mean)+13 {
			t.Errorf("mean %g: the largest number is %d", mean, n)
		}
	}
}

func TestWholeNumber(t *testing.T) {
	for _, c := range []struct {
		rate, u float64
		want    int
	}{{0, 0.999, 0}, {0.8, 0.1, 0}, {0.8, 0.3, 1}, {1.1, 0.5, 1}, {1.1, 0.95, 2}, {3.105, 0.999, 4}} {
		if got := wholeNumber(c.rate, c.u); got != c.want {
			t.Errorf("rate %g, u %g: %d, want %d", c.rate, c.u, got, c.want)
		}
	}
}

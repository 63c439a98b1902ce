package vessel

import (
	"math"
	"testing"
)

// within fails unless got is within a tolerance of want.
func within(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// worst keeps the largest error of a check, for the record.
type worst float64

func (w *worst) see(got, want float64) { *w = worst(math.Max(float64(*w), math.Abs(got-want))) }

// filled gives n layers of one temperature.
func filled(n int, tempC float64) []float64 {
	temps := make([]float64, n)
	for i := range temps {
		temps[i] = tempC
	}
	return temps
}

func sum(temps []float64) float64 {
	s := 0.0
	for _, t := range temps {
		s += t
	}
	return s
}

package compare

import (
	"testing"

	"dhwcompare/compare/coil"
)

// TestLawCache gives the law of each coil, however many come in between, and keeps few.
func TestLawCache(t *testing.T) {
	k := lawCache{laws: map[coil.Geometry]coil.FastLaw{}}
	for i := range mostLaws + 10 {
		g := coil.Corrugated25(10 + float64(i%(mostLaws+5)))
		if got, want := k.of(g), coil.Fit(g); got != want {
			t.Fatalf("coil %d: %+v, want %+v", i, got, want)
		}
		if len(k.laws) > mostLaws {
			t.Fatalf("%d laws are kept", len(k.laws))
		}
	}
	g := coil.Corrugated25(20)
	for range 2 {
		if k.of(g) != coil.Fit(g) {
			t.Error("a law asked for twice is another")
		}
	}
}

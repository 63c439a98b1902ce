package coil

import "testing"

// C 696.7909 W/K (10 l/min), store 55 C, mains 10 C: the standard result, worked
// independently to eight figures.
func TestEffectiveness(t *testing.T) {
	const c = 696.7909
	for _, k := range []struct{ ua, eps, outC float64 }{
		{400, 0.43676611, 29.654475},
		{800, 0.68276759, 40.724542},
		{1200, 0.82132396, 46.959578},
		{1600, 0.8993636, 50.471362},
	} {
		if got := Effectiveness(k.ua, c); !near(got, k.eps, 1e-7) {
			t.Errorf("UA %g: effectiveness %.9f, want %.8f", k.ua, got, k.eps)
		}
		if got := Pass(10, 55, k.ua, c); !near(got, k.outC, 1e-7) {
			t.Errorf("UA %g: outlet %.7f, want %.6f", k.ua, got, k.outC)
		}
	}
}

// However a uniform vessel is cut, the passes multiply to the same exponential;
// only rounding is left.
func TestUniformVesselInSegments(t *testing.T) {
	const ua, c, inC, storeC = 1200.0, 696.7909, 10.0, 55.0
	want := Pass(inC, storeC, ua, c)
	for _, n := range []int{1, 2, 7, 40, 1000} {
		got := inC
		for range n {
			got = Pass(got, storeC, ua/float64(n), c)
		}
		if abs(got-want) > 1e-9 {
			t.Errorf("%d segments: %.12f, want %.12f", n, got, want)
		}
	}
}

// Three layers met from the bottom up, 300 W/K in each, C 697.1 W/K: worked
// independently to eight figures.
func TestThreeSegmentMarch(t *testing.T) {
	got := 10.0
	for _, layer := range []struct{ storeC, outC float64 }{{35, 18.743034}, {50, 29.674262}, {55, 38.531214}} {
		got = Pass(got, layer.storeC, 300, 697.1)
		if !near(got, layer.outC, 1e-7) {
			t.Errorf("after the layer at %g C: %.7f, want %.6f", layer.storeC, got, layer.outC)
		}
	}
}

func TestEffectivenessAtTheEnds(t *testing.T) {
	if got := Effectiveness(0, 0); got != 0 {
		t.Errorf("no surface, no flow: %g, want 0", got)
	}
	if got := Effectiveness(1000, 0); got != 1 {
		t.Errorf("no flow: %g, want 1", got)
	}
}

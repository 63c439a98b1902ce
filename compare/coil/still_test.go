package coil

import "testing"

// Engineering judgement puts a standing coil at 20 to 45 % of the coefficient at
// 10 l/min, for coils from 1.4 to 5.5 m2, clean or fouled.
func TestStillShareOfFlowing(t *testing.T) {
	for _, letter := range testLetters {
		g := testCoil(letter)
		for _, fouling := range []float64{0, hardWaterM2KPerW} {
			g.FoulingM2KPerW = fouling
			if share := StillUA(g) / UA(g, 50, 10, 10).UAWPerK; share < 0.20 || share > 0.45 {
				t.Errorf("coil %s, fouling %g: share %.2f", letter, fouling, share)
			}
		}
	}
}

// Every metre of standing tube does the same.
func TestStillGoesWithLength(t *testing.T) {
	if got, want := StillUA(Corrugated25(40)), StillUA(Corrugated25(20))*2; !near(got, want, 1e-12) {
		t.Errorf("40 m %g, twice 20 m %g", got, want)
	}
}

// In a bore so small that nothing stirs, conduction alone remains, and the whole
// chain can be worked by hand.
func TestStillNeverBelowConduction(t *testing.T) {
	g := smooth22(20)
	g.BoreMM, g.OutsideMM, g.WallMM = 1, 3, 1
	tb := g.perMetre()
	const k45 = 0.63478 // W/(m K) at 45 C, IAPWS
	inside := 1 / (conductionNusselt * k45 * 3.14159265)
	want := tb.solve(inside, stillStoreC-stillDiffK, stillStoreC).uaWPerMK * g.LengthM
	if got := StillUA(g); !near(got, want, 0.002) { // 0.1 % of the conductivity fit
		t.Errorf("%.2f, want %.2f", got, want)
	}
}

package vessel

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"dhwcompare/compare/checkvalues"
)

// A whole cell at a time is a plain shift: exact, both ways, either scheme.
func TestWholeCellIsAShift(t *testing.T) {
	for _, firstOrder := range []bool{false, true} {
		temps := []float64{12, 31, 30, 47, 55}
		if out := advect(temps, 1, 1, 10, firstOrder); out != 55 || !slices.Equal(temps, []float64{10, 12, 31, 30, 47}) {
			t.Errorf("up: %v leaves %v", out, temps)
		}
		if out := advect(temps, -1, 1, 60, firstOrder); out != 10 || !slices.Equal(temps, []float64{12, 31, 30, 47, 60}) {
			t.Errorf("down: %v leaves %v", out, temps)
		}
	}
}

// variation is the sum of the steps from the inlet to the last cell.
func variation(inC float64, temps []float64) float64 {
	total, last := 0.0, inC
	for _, t := range temps {
		total += math.Abs(t - last)
		last = t
	}
	return total
}

// Whatever the profile: heat is conserved, nothing leaves the range of what was
// there, steps do not grow in sum, and down is the mirror of up. Only rounding
// is left: 1e-12 of 100 K times as many as 40 cells.
func TestFlowBounds(t *testing.T) {
	const rounding = 1e-10
	temperature := rapid.Float64Range(0, 100)
	rapid.Check(t, func(t *rapid.T) {
		temps := rapid.SliceOfN(temperature, 1, 40).Draw(t, "temps")
		c := rapid.Float64Range(0, 1).Draw(t, "c")
		inC := temperature.Draw(t, "in")
		firstOrder := rapid.Bool().Draw(t, "first order")
		before, low, high := slices.Clone(temps), math.Min(inC, slices.Min(temps)), math.Max(inC, slices.Max(temps))

		outC := advect(temps, 1, c, inC, firstOrder)
		if lost := sum(temps) - sum(before) - c*(inC-outC); math.Abs(lost) > rounding {
			t.Errorf("heat off by %g", lost)
		}
		if slices.Min(temps) < low-rounding || slices.Max(temps) > high+rounding {
			t.Errorf("%v leaves %g to %g", temps, low, high)
		}
		if variation(inC, temps) > variation(inC, before)+rounding {
			t.Errorf("steps grew from %v to %v", before, temps)
		}
		slices.Reverse(before)
		mirrored := advect(before, -1, c, inC, firstOrder)
		slices.Reverse(before)
		if mirrored != outC || !slices.Equal(before, temps) {
			t.Errorf("down is not the mirror of up: %v, %v", before, temps)
		}
	})
}

// A step in temperature travels any distance within one cell, whatever the share
// of a cell that each step moves.
func TestStepStaysWithinOneCell(t *testing.T) {
	const cells = 200
	for _, c := range []float64{0.01, 0.1, 0.37, 0.5, 0.83, 1} {
		temps := filled(cells, 50)
		for range int(0.9 * cells / c) {
			advect(temps, 1, c, 10, false)
			between := 0
			for _, v := range temps {
				if v > 10+1e-9 && v < 50-1e-9 {
					between++
				}
			}
			if between > 1 {
				t.Fatalf("c %g: the front covers %d cells", c, between)
			}
		}
	}
}

// outletSpread passes a step through a vessel and gives the mean and the standard
// deviation, in vessel volumes, of the front as the outlet sees it. For N stirred
// tanks in series it is 1/sqrt(N).
func outletSpread(cells int, c float64) (mean, deviation float64) {
	body, step := newColumn(cells, 100, 1, 0, 0), c/float64(cells)
	outC, last, first, second := 0.0, 0.0, 0.0, 0.0
	for at := step / 2; last < 1-1e-9; at += step {
		outC = body.pass(c*body.layerKg, 1)
		first += (at - 1) * (outC - last)
		second += (at - 1) * (at - 1) * (outC - last)
		last = outC
	}
	return 1 + first, math.Sqrt(max(second-first*first, 0))
}

// The numerical spread of a front is below 3 % of the volume at the layers of
// the defaults, and halves as the layers double. The bound: the outlet turns
// within two steps of at most a cell, and a step to half way and then the rest has
// a standard deviation of half a cell.
func TestNumericalSpreadOfAFront(t *testing.T) {
	for _, cells := range []int{10, 20, 32, 40, 64, 128} {
		widest := 0.0
		for c := 0.01; c <= 1; c += 0.01 {
			mean, deviation := outletSpread(cells, c)
			within(t, "mean of the front", mean, 1, 0.5/float64(cells))
			widest = math.Max(widest, deviation)
		}
		t.Logf("%d layers: %.2f %% of the volume", cells, 100*widest)
		if widest > 0.5/float64(cells) {
			t.Errorf("%d layers: front spread %.3g of the volume", cells, widest)
		}
		if cells >= 20 && widest > 0.03 {
			t.Errorf("%d layers: front spread %.3g of the volume", cells, widest)
		}
	}
}

// First order, n cells are n stirred tanks in series. The steps of a thousandth of
// a volume, and of a thousandth of a cell at least, move F by no more than 3e-4.
func TestStirredTanksInSeries(t *testing.T) {
	var off worst
	for _, r := range checkvalues.Published(t, "stirred_tanks_in_series.csv") {
		cells := int(r.Number(t, "tanks"))
		temps, step := filled(cells, 0), 1e-4
		at := 0
		for i, theta := range []float64{0.5, 0.75, 0.9, 1, 1.1, 1.25, 1.5} {
			for ; at < int(math.Round(theta/step)); at++ {
				advect(temps, 1, step*float64(cells), 1, true)
			}
			want := r.Number(t, []string{"f_050", "f_075", "f_090", "f_100", "f_110", "f_125", "f_150"}[i])
			off.see(temps[cells-1], want)
			// Half a step of time times the steepest rise of F, sqrt(N/2 pi), and
			// the spread that a step takes off, c/2 of a cell.
			within(t, "cold share", temps[cells-1], want, 5e-4)
		}
	}
	t.Logf("worst %.1e", float64(off))
}

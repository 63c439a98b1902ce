package charts

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// named makes a comparison's chart of a name.
func named(t *testing.T, cmp *compare.Comparison, name string) *Chart {
	t.Helper()
	return findChart(t, all(t, cmp), name)
}

// TestFailedDrawsHaveTheirCross counts strokes in the colour of failure.
func TestFailedDrawsHaveTheirCross(t *testing.T) {
	for _, failures := range []int{0, 1, 3} {
		cmp := home(t)
		for _, side := range bothSides() {
			draws := cmp.Shown.WinterDay.Of(side).Draws
			for i := range draws {
				draws[i].Failed = side == compare.SideCylinder && i < failures
			}
		}
		c := named(t, cmp, "winter-day")
		svg := string(svgOf(t, c))
		const strokesACross = 2
		if got := strings.Count(svg, "stroke:#A0143C"); got != strokesACross*failures {
			t.Errorf("%d failures: %d strokes, want %d", failures, got, strokesACross*failures)
		}
		if says := strings.Contains(c.subtitle, "cross"); says != (failures > 0) {
			t.Errorf("%d failures: cross explained: %v", failures, says)
		}
	}
}

// TestOneYearHasNoRange counts the strokes of the width that only the spread has.
func TestOneYearHasNoRange(t *testing.T) {
	cmp := home(t)
	many := strings.Count(string(svgOf(t, named(t, cmp, "failing-showers-by-month"))), "stroke-width:1.2")
	cmp.Years = 1
	one := strings.Count(string(svgOf(t, named(t, cmp, "failing-showers-by-month"))), "stroke-width:1.2")
	if many == 0 || one != 0 {
		t.Errorf("%d strokes of spread over many years, %d over one", many, one)
	}
}

var outlined = regexp.MustCompile(`<path d="M([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L[0-9.,]+L[0-9.,]+" style="fill:none;stroke:#1B1B22;stroke-width:0.7"`)

// TestSpaceIsToScale measures the first thing drawn, the compact store, and the
// wall-hung ones after it, against their dimensions.
func TestSpaceIsToScale(t *testing.T) {
	cmp := home(t)
	cmp.Options.Compact.SpaceItems = []compare.SpaceItem{
		{Name: "store", WidthMM: 600, DepthMM: 500, HeightMM: 1200},
		{Name: "pump", WidthMM: 300, DepthMM: 300, HeightMM: 400},
	}
	found := outlined.FindAllStringSubmatch(string(svgOf(t, named(t, cmp, "space"))), -1)
	if len(found) < 2 {
		t.Fatalf("%d outlines", len(found))
	}
	size := func(i int) (w, h float64) {
		var v [7]float64
		for k := 1; k < len(v); k++ {
			var err error
			if v[k], err = strconv.ParseFloat(found[i][k], 64); err != nil {
				t.Fatal(err)
			}
		}
		return v[3] - v[1], v[6] - v[4]
	}
	w1, h1 := size(0)
	w2, h2 := size(1)
	// Coordinates are written with five digits.
	for name, r := range map[string][2]float64{
		"height to width": {h1 / w1, 2}, "widths": {w1 / w2, 2}, "heights": {h1 / h2, 3},
	} {
		if math.Abs(r[0]-r[1]) > 5e-3 {
			t.Errorf("%s: %.4f, want %v", name, r[0], r[1])
		}
	}
}

// TestChangeoversStandOnStarts holds that changeovers are drawn hollow on top of
// the starts, and said, and that without heating there is nothing of either.
func TestChangeoversStandOnStarts(t *testing.T) {
	const hollow = "fill:none;stroke:#D4752A"
	c := named(t, home(t), "starts-by-month")
	// July, at the middle of winter's wave, has none; eleven months have some.
	if got := strings.Count(string(svgOf(t, c)), hollow); got != 11 {
		t.Errorf("%d hollow bars of the compact store, want 11", got)
	}
	if !strings.Contains(c.subtitle, "Outlined") || !strings.Contains(c.Alt, "changes over") {
		t.Errorf("changeovers are not explained: %s", c.subtitle)
	}
	cmp := home(t)
	for _, side := range bothSides() {
		o := cmp.Options.Of(side)
		o.Changeovers = 0
		for m := range o.Months {
			o.Months[m].Changeovers = 0
		}
	}
	c = named(t, cmp, "starts-by-month")
	if strings.Contains(string(svgOf(t, c)), hollow) || strings.Contains(c.subtitle, "Outlined") {
		t.Error("changeovers are drawn where there are none")
	}
}

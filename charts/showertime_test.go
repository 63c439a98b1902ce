package charts

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

func warmth(t *testing.T, compactCold, cylinderCold float64) *Chart {
	t.Helper()
	cmp := home(t)
	cmp.Options.Compact.ShowerTime = showers(40, 38, 4000, compactCold)
	cmp.Options.Cylinder.ShowerTime = showers(40, 38, 4000, cylinderCold)
	return named(t, cmp, "shower-temperature-duration")
}

func TestShowerTimeTitle(t *testing.T) {
	for _, c := range []struct {
		compact, cylinder float64
		want              string
	}{
		{10, 5, "Showers run colder than 38 °C for 10 minutes a year with the compact store, 5 minutes with the cylinder"},
		{0, 0.4, "Showers never run colder than 38 °C with the compact store, and for less than a minute a year with the cylinder"},
		{0, 0, "No shower runs colder than 38 °C with either option"},
		{1.2, 1.4, "Showers run colder than 38 °C for 1 minute a year with either option"},
		{600, 130, "Showers run colder than 38 °C for 10 hours a year with the compact store, 2 hours with the cylinder"},
	} {
		if got := warmth(t, c.compact, c.cylinder).Title; got != c.want {
			t.Errorf("%v and %v minutes: %q, want %q", c.compact, c.cylinder, got, c.want)
		}
	}
}

// TestShowerTimeShowsTheColdEnd holds that the axis reaches over all that is not as
// warm as wanted, and over little else.
func TestShowerTimeShowsTheColdEnd(t *testing.T) {
	for _, cold := range []float64{5, 40, 300} {
		long, short := showers(40, 38, 4000, cold), showers(40, 38, 4000, cold/2)
		d := loadDuration{times: [2]*compare.ShowerTime{&long, &short}}
		last := d.times[0].NotAsWanted()
		// The end is 1.3 times as far, and then on a round value, at most 1.5 times that.
		if got := d.span(); got < 1.3*last || got > 2*last+leastSpan*4000 {
			t.Errorf("%v minutes too cold: the axis ends at %v, the last that is not as wanted at %v", cold, got, last)
		}
	}
}

// TestShowerTimeMarksTheRule holds that each option has a mark where it crosses into
// what is warm enough, unless it is never too cold.
func TestShowerTimeMarksTheRule(t *testing.T) {
	for cold, want := range map[float64]int{0: 0, 12: 1} {
		svg := svgOf(t, warmth(t, cold, 0))
		if got := bytes.Count(svg, []byte("A3,3")); (got > 0) != (want > 0) {
			t.Errorf("%v minutes too cold: %d arcs of marks", cold, got)
		}
		if !bytes.Contains(svg, []byte("too cold: below 38 °C")) || !bytes.Contains(svg, []byte("wanted: 40 °C")) {
			t.Error("a line has no name")
		}
	}
}

func TestShowerTimeOnlyWithShowers(t *testing.T) {
	cmp := home(t)
	cmp.Options.Cylinder.ShowerTime = compare.ShowerTime{}
	for _, c := range all(t, cmp) {
		if strings.HasPrefix(c.Name, "shower-temperature") {
			t.Error("drawn without showers")
		}
	}
	cmp.Options.Cylinder.ShowerTime = showers(40, 38, 4000, math.NaN())
	if _, err := All(cmp); err == nil || !strings.Contains(err.Error(), "temperatures of showers") {
		t.Errorf("error %v", err)
	}
}

// TestFootKeepsALongTitle holds that a foot takes a second line before it cuts words.
func TestFootKeepsALongTitle(t *testing.T) {
	cmp := home(t)
	cmp.Title = "Invented demo home: three people, one bathroom, one bath, British average weather, last word"
	c := named(t, cmp, "why-they-differ")
	if len(c.foot) != 2 || !strings.HasSuffix(c.foot[1], "last word") {
		t.Errorf("foot %q", c.foot)
	}
	checkPicture(t, c)
}

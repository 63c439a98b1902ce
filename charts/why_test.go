package charts

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// TestStairsLeadFromOneToTheOther holds that what is put together loses nothing,
// and that what belongs to no effect keeps its own name.
func TestStairsLeadFromOneToTheOther(t *testing.T) {
	cmp := home(t)
	s := stairs{compact: cmp.Options.Compact.WholeHouseKWh, cylinder: cmp.Options.Cylinder.WholeHouseKWh}
	s.take(cmp.ByCause.Parts)
	sum, labels := 0.0, []string{}
	for _, step := range s.steps {
		sum += step.kWh
		labels = append(labels, step.label)
	}
	// Five sums of tens of kWh: rounding alone.
	if math.Abs(sum-s.difference()) > 1e-9 {
		t.Errorf("the steps add up to %v, want %v", sum, s.difference())
	}
	want := "hotter water from the heat pump|starting up|losses that heat the house (a credit)|smaller effects|all else, and what these do to each other"
	if got := strings.Join(labels, "|"); got != want {
		t.Errorf("steps %s, want %s", got, want)
	}
	low, high := s.reach()
	if low != 0 || high < s.difference() {
		t.Errorf("from %v to %v, difference %v", low, high, s.difference())
	}
}

func TestWhyTitle(t *testing.T) {
	for _, c := range []struct {
		low, high, gap float64
		want           string
	}{
		{180, 220, 200, "The compact store uses 200 kWh more electricity a year; the largest part: hotter water from the heat pump (+210)"},
		{-22, -18, -20, "The compact store uses 20 kWh less electricity a year"},
		{-5, 5, 1, "No real difference in electricity: what adds to it and what saves it balance"},
		{-50, 250, 100, "The simulated years do not settle which option uses more electricity"},
	} {
		cmp := &compare.Comparison{ByCause: byCause(c.gap)}
		cmp.Difference.Spread = map[string]compare.DifferenceSpread{"whole_house_electricity_kwh": spread(c.low, c.high)}
		if got := whyTitle(cmp, &stairs{compact: 1000 + c.gap, cylinder: 1000}); got != c.want {
			t.Errorf("%v to %v: %q, want %q", c.low, c.high, got, c.want)
		}
	}
}

func TestWeightiest(t *testing.T) {
	parts := byCause(0).Parts[:4]
	for gap, want := range map[float64]string{100: "water_temperature", -100: "useful_losses"} {
		if got := weightiest(parts, gap); got == nil || got.Name != want {
			t.Errorf("%v kWh: %+v, want %s", gap, got, want)
		}
	}
	if got := weightiest(parts[:2], -1); got != nil {
		t.Errorf("%+v takes off", got)
	}
}

// TestWhyOnlyWithCauses holds that a comparison without the division has no such
// picture, and that the years of both are said where they differ.
func TestWhyOnlyWithCauses(t *testing.T) {
	cmp := home(t)
	if c := named(t, cmp, "why-they-differ"); !strings.HasPrefix(c.caption, "mean of 20 simulated years, divided as in one of them") {
		t.Errorf("caption %q", c.caption)
	}
	cmp.ByCause = compare.DifferenceByCause{}
	for _, c := range all(t, cmp) {
		if c.Name == "why-they-differ" {
			t.Error("drawn without causes")
		}
	}
}

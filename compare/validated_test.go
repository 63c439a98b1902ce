package compare

import (
	"slices"
	"strings"
	"testing"
)

// A result at the edge of what the calculation is held against has no warning; one
// beyond it has one, about the figure concerned.
func TestResultWarnings(t *testing.T) {
	at := func(cop, efficiency, residual float64) *Option {
		o := &Option{Name: "cylinder", FirstLawResidual: residual}
		o.HeatPumpCOP, o.SystemEfficiency = cop, efficiency
		return o
	}
	for name, tt := range map[string]struct {
		o    *Option
		want []string
	}{
		"nothing ran":    {at(0, 0, 0), nil},
		"lower edge":     {at(leastCertifiedCOP, 1, 0), nil},
		"upper edges":    {at(mostCertifiedCOP, mostCertifiedEfficiency, mostResidual), nil},
		"low COP":        {at(2.27, 1, 0), []string{"heat_pump_cop"}},
		"high COP":       {at(8.16, 1, 0), []string{"heat_pump_cop"}},
		"too efficient":  {at(4, 3.31, 0), []string{"system_efficiency"}},
		"heat is lost":   {at(4, 3, 2e-6), []string{"first_law_residual"}},
		"all at a time":  {at(9, 4, 1), []string{"heat_pump_cop", "system_efficiency", "first_law_residual"}},
		"as it ought be": {at(3, 2, 1e-13), nil},
	} {
		var got []string
		for _, w := range resultWarnings(tt.o) {
			got = append(got, w.About)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: warnings about %q, want %q", name, got, tt.want)
		}
	}
}

// A warning is marked beside its figure, and only there.
func TestMarkedLabels(t *testing.T) {
	c := Comparison{Warnings: []Warning{{"years", "too few"}, {"years", "again"}}}
	if got := c.Marked("years simulated", "years"); got != "years simulated (!)" {
		t.Errorf("got %q", got)
	}
	if got := c.Marked("starts", "starts_per_day"); got != "starts" {
		t.Errorf("got %q", got)
	}
	if got := c.About("years"); !slices.Equal(got, []string{"too few", "again"}) {
		t.Errorf("got %q", got)
	}
}

// The swing of British sites is said to be too small for a place with frost in the mean
// of a month, unless another is stated.
func TestASwingOfMilderPlacesIsTold(t *testing.T) {
	c := Default()
	if list := placeWarnings(&c); len(list) != 0 {
		t.Errorf("a mild place: %v", list)
	}
	c.Climate.OutdoorC[1] = -11
	if list := placeWarnings(&c); len(list) != 1 || !strings.Contains(list[0].Text, "a month's mean is -11 °C") {
		t.Errorf("a cold place: %v", list)
	}
	c.Climate.SDDailyMeanK[0] = 6
	if list := placeWarnings(&c); len(list) != 0 {
		t.Errorf("a cold place with its own swing: %v", list)
	}
}

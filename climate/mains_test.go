package climate

import (
	"math"
	"testing"
)

// The check values are rounded to 0.0001 K.
func TestMainsRelation(t *testing.T) {
	for _, r := range published(t, "mains_relation.csv", "mean_air_c", "range_of_monthly_means_k", "day_of_year", "mains_c") {
		got := mainsRelationC(r[0], r[1], r[2], northernPhaseDeg)
		if math.Abs(got-r[3]) > 0.00006 {
			t.Errorf("mean %g, range %g, day %g: %.4f, want %.4f", r[0], r[1], r[2], got, r[3])
		}
	}
}

// The documented bias for Britain: 2.9 K too warm in January (10.85 against 8.0)
// and 0.4 K over the year; both are stated to a tenth.
func TestEstimateMainsIsTooWarmForABritishWinter(t *testing.T) {
	p := british(t)
	got := EstimateMains(p.OutdoorC)
	if bias := got[0] - p.MainsC[0]; math.Abs(bias-2.9) > 0.06 {
		t.Errorf("January bias %.2f K, documented as 2.9", bias)
	}
	if bias := yearMean(got) - yearMean(p.MainsC); math.Abs(bias-0.4) > 0.05 {
		t.Errorf("yearly bias %.2f K, documented as 0.4", bias)
	}
}

// The same climate half a year later lies in the south, where the wave is turned
// over: north and south add up to twice the mean, (Ta + 6 deg F).
func TestEstimateMainsTurnsOverInTheSouth(t *testing.T) {
	north := british(t).OutdoorC
	var south Monthly
	for m := range south {
		south[m] = 2*10.0 - north[m] // warm where the north is cold
	}
	twice := yearMean(north) + yearMean(south) + 2*6/1.8
	n, s := EstimateMains(north), EstimateMains(south)
	if s[1] < s[7] {
		t.Fatalf("southern February %.1f is colder than August %.1f", s[1], s[7])
	}
	for m := range n {
		// The two annual means differ by 0.04 K, which moves ratio and lag by less
		// than 0.2 percent of a wave of 3 K.
		if math.Abs(n[m]+s[m]-twice) > 0.02 {
			t.Errorf("month %d: north %.3f and south %.3f add up to %.3f, want %.3f", m+1, n[m], s[m], n[m]+s[m], twice)
		}
	}
}

func TestEstimateMainsDoesNotFreeze(t *testing.T) {
	var arctic Monthly
	for m := range arctic {
		arctic[m] = -15
	}
	for m, got := range EstimateMains(arctic) {
		if got != 0 {
			t.Errorf("month %d: %g, want 0", m+1, got)
		}
	}
}

package climate

import (
	"math"
	"slices"
	"testing"
)

// The site means are rounded to 0.01 and lie within 0.08 of the profile at every
// hour, as stated beside it.
func TestAirShapeIsThePublishedProfile(t *testing.T) {
	for h, row := range published(t, "diurnal_range_fractions.csv", "ashrae", "five_british_sites") {
		if rangeBelowMax[h] != row[0] {
			t.Errorf("hour ending %d: %g, published %g", h+1, rangeBelowMax[h], row[0])
		}
		if math.Abs(rangeBelowMax[h]-row[1]) > 0.0801 {
			t.Errorf("hour ending %d: %g, British sites %g", h+1, rangeBelowMax[h], row[1])
		}
	}
}

func TestShapesHaveNoMeanAndUnitDepth(t *testing.T) {
	for name, shape := range map[string][hoursADay]float64{"air": airShape(), "mains": mainsShape()} {
		if mean := average(shape[:]); math.Abs(mean) > 1e-15 { // rounding of 24 values below 1
			t.Errorf("%s: mean %g, want 0", name, mean)
		}
		if depth := slices.Max(shape[:]) - slices.Min(shape[:]); math.Abs(depth-1) > 1e-15 {
			t.Errorf("%s: depth %g, want 1", name, depth)
		}
	}
}

// Hand values of the published dip of 1.5 K: 0.46875 K above the mean in the
// evening and at midnight, a third of 1.5 K lower by 02:00, 1.5 K lower at 06:00,
// and 2/9 of the dip left at 13:00.
func TestMainsShapeByHand(t *testing.T) {
	shape := mainsShape()
	for hour, want := range map[int]float64{
		0: 0.46875, 2: 0.46875 - 0.5, 6: 0.46875 - 1.5, 13: 0.46875 - 1.0/3, 15: 0.46875, 23: 0.46875,
	} {
		if got := 1.5 * shape[hour]; math.Abs(got-want) > 1e-15 {
			t.Errorf("hour %d: %g K, want %g K", hour, got, want)
		}
	}
}

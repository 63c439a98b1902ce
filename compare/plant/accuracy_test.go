package plant

import (
	"math"
	"testing"
)

// Failing showers at the plant's own steps and layers are within 1 % or one of the
// fine reference, in the sum of five years.
func TestFailingShowersAgainstOwnReference(t *testing.T) {
	if testing.Short() {
		t.Skip("ten years")
	}
	for _, o := range options() {
		var own, fine figures
		for year, y := range againstReference(t, o) {
			t.Logf("%s, year %d: %d of %d fail, fine %d", o.name, year, y.own.failing, y.own.showers, y.fine.failing)
			own.add(y.own)
			fine.add(y.fine)
		}
		off := math.Abs(float64(own.failing - fine.failing))
		band{0, max(1, 0.01*float64(fine.failing))}.check(t, o.name+", failing showers off", off)
	}
}

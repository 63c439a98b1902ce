package plant

import (
	"strings"
	"testing"

	"dhwcompare/compare/vessel"
)

// unending is a vessel that takes no step.
type unending struct{ vessel.Vessel }

func (unending) StepLimitS(float64, float64) float64 { return 0 }

// A calculation that does not get on says so, and does not go on for ever.
func TestRunThatDoesNotGetOnSaysSo(t *testing.T) {
	p := compactParams(t)
	p.Vessel = unending{p.Vessel}
	err := New(p).Run(t.Context(), noon, noon+60, Inputs{Weather: steady(7, 10)}, Override{}, Recorder{})
	if err == nil || !strings.Contains(err.Error(), "does not get on") {
		t.Errorf("got %v", err)
	}
}

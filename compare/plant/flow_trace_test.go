package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// While the heat pump heats the house the trace's leaving water is that of heating.
func TestTraceShowsTheHeatingFlow(t *testing.T) {
	p := housed(t, compactParams)
	p.Control.SetpointC = 20 // hot water never calls
	want, worst := p.House.flowC(0), 0.0
	watch := func(s *Sample) {
		if s.HouseW > 0 {
			worst = math.Max(worst, math.Abs(s.FlowC-want))
		}
	}
	if err := New(p).Run(t.Context(), 0, calendar.DayS, Inputs{Weather: steady(0, 8)}, Override{}, Recorder{Trace: watch}); err != nil {
		t.Fatal(err)
	}
	if worst > exact {
		t.Errorf("the trace's flow is up to %.1f K off the heating flow of %.1f C", worst, want)
	}
}

package compare

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"testing"
)

// fewLevers are enough to see all that can happen: some turn the verdict, one moves
// money alone.
func fewLevers(c *Case) []lever {
	names := []string{"household.people", "tariffs", "compact_store.control.setpoint_c", "standing_loss_w"}
	return slices.DeleteFunc(c.levers(), func(l lever) bool { return !slices.Contains(names, l.name) })
}

// moves is the sensitivity of a small home to a few inputs.
func moves(t *testing.T, c *Case, workers int) *Sensitivity {
	t.Helper()
	s, err := c.sensitivities(t.Context(), fewLevers(c), c.Years, workers, advancing(t))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestSensitivities looks at one year of a home that a little more use leaves
// without hot water.
func TestSensitivities(t *testing.T) {
	c := smallHome()
	c.Years, c.Service.FailuresPerYear = 1, 100
	s := moves(t, c, 2)
	if len(s.Inputs) != 4 {
		t.Errorf("%d inputs, want 4", len(s.Inputs))
	}
	if !slices.IsSortedFunc(s.Inputs, func(a, b SensitivityInput) int {
		return -int(math.Copysign(1, a.width(&s.Base)-b.width(&s.Base)))
	}) {
		t.Error("the inputs are not in order of width")
	}
	turns := 0
	for i := range s.Inputs {
		if in := &s.Inputs[i]; in.Turn != nil {
			turns++
			holdTurn(t, c, s, in)
		} else if in.Low.Recommend != s.Base.Recommend || in.High.Recommend != s.Base.Recommend {
			t.Errorf("%s: the verdict is another at an end, yet does not turn", in.Name)
		}
	}
	if turns == 0 {
		t.Error("nothing turns the verdict: the test holds nothing")
	}
}

func TestSensitivitiesDoNotDependOnWorkers(t *testing.T) {
	c := smallHome()
	c.Years, c.Household.LoadProfile = 1, "S"
	a, errA := json.Marshal(moves(t, c, 1))
	b, errB := json.Marshal(moves(t, c, 3))
	if errA != nil || errB != nil || string(a) != string(b) {
		t.Error("the result depends on the number of workers")
	}
}

// holdTurn evaluates both sides of a turn anew.
func holdTurn(t *testing.T, c *Case, s *Sensitivity, in *SensitivityInput) {
	t.Helper()
	at := func(v float64) Recommendation {
		changed := *c
		for _, l := range c.levers() {
			if l.name == in.Name {
				l.set(&changed, v)
			}
		}
		cmp, err := Compare(t.Context(), &changed, 2, nil)
		if err != nil {
			t.Fatal(err)
		}
		return cmp.Verdict.Recommend
	}
	if got := at(in.Turn.Kept); got != s.Base.Recommend {
		t.Errorf("%s: at %g, which is said to keep it, the verdict is %s", in.Name, in.Turn.Kept, got)
	}
	if got := at(in.Turn.Turned); got != in.Turn.To || got == s.Base.Recommend {
		t.Errorf("%s: at %g the verdict is %s, and %s is said", in.Name, in.Turn.Turned, got, in.Turn.To)
	}
	end := in.HighValue
	if in.Turn.Turned < in.Turn.Kept {
		end = in.LowValue
	}
	// Five halvings leave a thirty-second of the way to the end.
	closeTo(t, in.Name+": width of the turn", math.Abs(in.Turn.Turned-in.Turn.Kept), math.Abs(end-in.BaseValue)/32, 1e-9)
}

// TestTurning finds a threshold that is known.
func TestTurning(t *testing.T) {
	step := func(v float64) (SensitivityPoint, error) {
		if v >= 5.3 {
			return SensitivityPoint{Recommend: RecommendCylinder}, nil
		}
		return SensitivityPoint{Recommend: RecommendCompact}, nil
	}
	turn, err := turning(4, 8, RecommendCompact, RecommendCylinder, step)
	if err != nil || turn.Kept >= 5.3 || turn.Turned < 5.3 || turn.Turned-turn.Kept != 4./32 || turn.To != RecommendCylinder {
		t.Errorf("upwards: %+v (%v)", turn, err)
	}
	turn, err = turning(8, 4, RecommendCylinder, RecommendCompact, step)
	if err != nil || turn.Turned >= 5.3 || turn.Kept < 5.3 {
		t.Errorf("downwards: %+v (%v)", turn, err)
	}
	broken := errors.New("broken")
	if _, err := turning(4, 8, RecommendCompact, RecommendCylinder, func(float64) (SensitivityPoint, error) { return SensitivityPoint{}, broken }); !errors.Is(err, broken) {
		t.Errorf("an error was lost: %v", err)
	}
}

// TestWithin keeps the base in whatever the limits are.
func TestWithin(t *testing.T) {
	for _, test := range []struct{ base, low, high, least, most, wantLow, wantHigh float64 }{
		{5, 4, 6, 0, 10, 4, 6},
		{5, 4, 6, 4.5, 5.5, 4.5, 5.5},
		{5, 4, 6, 5, 5, 5, 5},   // at both limits
		{5, 4, 6, 7, 9, 5, 6},   // stated below what is usual
		{5, 6, 8, 0, 10, 5, 8},  // a range that lies above
		{5, 1, 4, 0, 10, 1, 5},  // and below
		{5, 4, 6, 0, 4.5, 4, 5}, // stated above
	} {
		l := lever{base: test.base, low: test.low, high: test.high}.within(test.least, test.most)
		if l.low != test.wantLow || l.high != test.wantHigh {
			t.Errorf("%+v: from %g to %g", test, l.low, l.high)
		}
	}
}

// TestInputsAtTheirLimitsAreLeftOut has no way to go for some inputs.
func TestInputsAtTheirLimitsAreLeftOut(t *testing.T) {
	has := func(c *Case, name string) bool {
		return slices.ContainsFunc(c.levers(), func(l lever) bool { return l.name == name })
	}
	c := Default()
	for _, name := range []string{"household.people", "cylinder.control.setpoint_c", "compact_store.coil_length_m"} {
		if !has(&c, name) {
			t.Errorf("%s is missing", name)
		}
	}
	c.Household.LoadProfile = "M"
	c.Cylinder.Control.SetpointC, c.HeatPump.Limits.LargestSetpointC = 44, 44
	litres := 10.0
	c.Compact.CoilWaterL = &litres
	for _, name := range []string{"household.people", "cylinder.control.setpoint_c", "compact_store.coil_length_m", ""} {
		if has(&c, name) {
			t.Errorf("%q has no range, and is looked at", name)
		}
	}
}

// TestSetpointLeverMovesEveryMonth keeps the shape of the year.
func TestSetpointLeverMovesEveryMonth(t *testing.T) {
	c := Default()
	c.Compact.Control.SetpointC = 60
	c.Compact.Control.MonthSetpointC = summerLower(60, 4)
	l := c.setpointLever(SideCompact, "compact_store", 4, 4)
	changed := c
	l.set(&changed, 62)
	if got := *changed.Compact.Control.MonthSetpointC; got != *summerLower(62, 4) {
		t.Errorf("setpoints by month %v", got)
	}
	if *c.Compact.Control.MonthSetpointC != *summerLower(60, 4) {
		t.Error("the case itself was changed")
	}
	// 60 may rise to 64, below the controller's 65; summer's 56 may fall to 52.
	closeTo(t, "low", l.low, 56, 1e-12)
	closeTo(t, "high", l.high, 64, 1e-12)
}

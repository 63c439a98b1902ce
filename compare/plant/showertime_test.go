package plant

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

// inClasses lists the classes that hold time, by the temperature of their foot.
func inClasses(t *ShowerTime) map[float64]float64 {
	out := map[float64]float64{}
	for i, s := range t {
		if s != 0 {
			out[ShowerClassC(i)] = s
		}
	}
	return out
}

// below gives the seconds below a temperature that is the foot of a class.
func (t *ShowerTime) below(c float64) float64 {
	sum := 0.0
	for i, s := range t {
		if ShowerClassC(i) < c {
			sum += s
		}
	}
	return sum
}

func TestShowerTimeIsBookedByClass(t *testing.T) {
	for _, c := range []struct {
		name           string
		seconds        float64
		fromC, toC     float64
		wantFoot, want []float64
	}{
		{"steady", 30, 40, 40, []float64{40}, []float64{30}},
		{"short of a round temperature by rounding", 30, 40 - 1e-12, 40 - 1e-12, []float64{40}, []float64{30}},
		{"falling through three classes", 10, 39.15, 38.95, []float64{38.9, 39, 39.1}, []float64{2.5, 5, 2.5}},
		{"rising through them takes as long", 10, 38.95, 39.15, []float64{38.9, 39, 39.1}, []float64{2.5, 5, 2.5}},
		{"from the foot of a class down", 4, 38.1, 38, []float64{38}, []float64{4}},
		{"colder than all classes", 6, -3, -3, []float64{15}, []float64{6}},
		{"down past the first class", 6, 15.2, 14.9, []float64{15, 15.1}, []float64{4, 2}},
		{"hotter than all classes", 6, 90, 95, []float64{49.9}, []float64{6}},
	} {
		var booked ShowerTime
		booked.add(c.seconds, c.fromC, c.toC)
		got := inClasses(&booked)
		for i, foot := range c.wantFoot {
			near(t, c.name, got[foot], c.want[i], exact)
			delete(got, foot)
		}
		for foot, s := range got {
			if s > exact { // what rounding leaves at the edge of a class
				t.Errorf("%s: %g s at %g C", c.name, s, foot)
			}
		}
	}
}

// The time of a shower that turns cold is all there, and as much of it is too cold as
// the judgement of the shower says. A bath leaves no trace.
func TestShowerTimeAgreesWithTheJudgement(t *testing.T) {
	for _, storeC := range []float64{55, 42, 39} {
		l := served(t, still(t), storeC, shower(14, 25), bath(10, 20))
		o := l.Outcomes[0]
		if o.Draw.Kind != household.Shower {
			o = l.Outcomes[1]
		}
		booked := &l.Months[calendar.MonthOfDay(200)].ShowerTime
		near(t, "seconds at the outlet", booked.below(math.Inf(1)), o.FlowingS, exact)
		near(t, "seconds too cold", booked.below(o.Draw.MinC), o.ColdS, exact)
		if storeC == 39 && o.ColdS == 0 {
			t.Error("no shower of the test turned cold")
		}
	}
}

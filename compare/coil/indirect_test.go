package coil

import (
	"testing"

	"dhwcompare/compare/checkvalues"
)

func TestIndirectUAAndApproachAgainstPublished(t *testing.T) {
	for _, row := range checkvalues.Published(t, "coil_reheat_approach.csv") {
		ua := IndirectUA(row.Number(t, "coil_area_m2"), row.Number(t, "U_W_m2K"), 0)
		if want := row.Number(t, "UA_W_K"); !near(ua, want, 1e-12) {
			t.Errorf("UA %g, want %g", ua, want)
		}
		dT := row.Number(t, "flow_return_difference_K")
		got := dT / Effectiveness(ua, 1000*row.Number(t, "heat_kW")/dT)
		if want := row.Number(t, "flow_minus_store_K"); abs(got-want) > 0.00051 { // three decimals
			t.Errorf("%v: flow over store %.4f, want %.3f", row, got, want)
		}
		if want := row.Number(t, "return_minus_store_K"); abs(got-dT-want) > 0.00051 {
			t.Errorf("%v: return over store %.4f, want %.3f", row, got-dT, want)
		}
	}
}

// 2 m2 at 700 W/(m2 K) with 1.5e-4 m2 K/W: 1400 falls to 1267 W/K.
func TestIndirectFouling(t *testing.T) {
	if got := IndirectUA(2, 700, 1.5e-4); abs(got-1267) > 0.5 { // four figures
		t.Errorf("%.1f, want 1267", got)
	}
}

func TestLargestFlow(t *testing.T) {
	for _, c := range []struct {
		name       string
		mains, bar float64
		drops      []float64
		want       float64
	}{
		{"no drops", 15, 2, nil, 15},
		{"mains binds", 15, 2, []float64{80, 30}, 15},
		{"all pressure at 15", 25, 1, []float64{100}, 15},
		{"four times the drop, half the flow", 25, 1, []float64{300, 100}, 7.5},
		{"a quarter of the drop, twice the flow", 40, 1, []float64{25}, 30},
		{"no pressure", 15, 0, []float64{50}, 0},
		{"suction", 15, -1, []float64{50}, 0},
	} {
		if got := LargestFlow(c.mains, c.bar, c.drops...); !near(got, c.want, 1e-14) {
			t.Errorf("%s: %g, want %g", c.name, got, c.want)
		}
	}
}

package vessel

import (
	"slices"
	"testing"
)

// Where a flow ends within a layer, as much of the layer is changed as has come, and
// heat is what went in and out.
func TestFlowThatEndsWithinALayer(t *testing.T) {
	c := newColumn(6, 60, 1, 0, 0)
	c.fill(50)
	before := c.heatJ()
	within(t, "outlet", c.pass(0.3*c.layerKg, 10), 50, 1e-12)
	c.land()
	for i, want := range []float64{0.3*10 + 0.7*50, 50, 50, 50, 50, 50} {
		within(t, "layer", c.temps[i], want, 1e-9)
	}
	within(t, "heat", c.heatJ()-before, 0.3*c.layerJPerK*(10-50), 1e-6)
	after := slices.Clone(c.temps)
	c.land()
	if !slices.Equal(c.temps, after) {
		t.Errorf("a column at rest moves from %v to %v", after, c.temps)
	}
}

// The same with a stirred inlet, from above: what its stirring reached is between what
// came in and what was there, the rest is untouched.
func TestStirredFlowThatEndsWithinALayer(t *testing.T) {
	c := newColumn(12, 60, 1, 0, 0)
	c.way, c.inlet = -1, c.stir(0.2) // 2.4 layers
	c.fill(40)
	before := c.heatJ()
	c.pass(2.3*c.layerKg, 60)
	c.land()
	within(t, "heat", c.heatJ()-before, 2.3*c.layerJPerK*(60-40), 1e-6)
	if top, low := c.temps[11], slices.Min(c.temps[6:]); !(top > 50 && top < 60 && low >= 40-1e-9) {
		t.Errorf("top %g C, lowest of what it reached %g C: %v", top, low, c.temps)
	}
	for i, below := range c.temps[:6] {
		within(t, "untouched", below, 40, 1e-9)
		if i > 0 && below < c.temps[i-1]-1e-9 {
			t.Errorf("inverted: %v", c.temps)
		}
	}
}

// Heat poured in at the inlet brings each layer the same share of the way to its limit,
// what is too much for that the next layers, and what is too much for all all alike.
func TestPour(t *testing.T) {
	for name, test := range map[string]struct {
		riseK float64
		want  []float64
	}{
		"half of the room":     {7.5, []float64{45, 47.5, 48, 50}},
		"to the limit":         {15, []float64{50, 50, 48, 50}},
		"and the next":         {16, []float64{50, 50, 49, 50}},
		"more than there is":   {21, []float64{51, 51, 51, 51}},
		"cold from below them": {-4, []float64{39, 44, 47, 49}}, // none is above the limit
	} {
		c := newColumn(4, 40, 1, 0, 0)
		copy(c.temps, []float64{40, 45, 48, 50})
		c.pour(test.riseK*c.layerKg, 2, 50)
		for i, want := range test.want {
			within(t, name, c.temps[i], want, 1e-9)
		}
	}
}

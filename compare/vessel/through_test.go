package vessel

import "testing"

// graded is a column whose layers rise evenly, bottom first.
func graded(n int) column {
	c := newColumn(n, 100, 1, 0, 0)
	for i := range c.temps {
		c.temps[i] = 10 + 5*float64(i)
	}
	return c
}

// A layer that leaves at one temperature does so however its water is taken, and the
// heat of the column is what went in and out.
func TestLayerLeavesInPieces(t *testing.T) {
	c := graded(6)
	for range 4 {
		before := c.heatJ()
		within(t, "outlet foreseen", c.leavesC(), 35, 1e-12)
		within(t, "outlet", c.pass(c.layerKg/4, 2), 35, 1e-12)
		within(t, "heat", c.heatJ()-before, c.layerJPerK/4*(2-35), 1e-6)
	}
	within(t, "next layer", c.leavesC(), 30, 1e-12)
	within(t, "two layers and a half", c.pass(2.5*c.layerKg, 2), (30+25+20*0.5)/2.5, 1e-12)
}

// A layer that is felt in halves falls by as much within as from layer to layer, once
// one has left before it: its halves are a quarter of that apart from its mean.
func TestLayerFallsWithin(t *testing.T) {
	c := graded(6)
	c.fill(35)
	for i := range c.temps {
		c.temps[i] = 10 + 5*float64(i)
	}
	c.portion = 0.5
	within(t, "first layer", c.pass(c.layerKg, 2), 35, 1e-12) // the one before it was as warm
	for _, want := range []float64{30 + 5.0/4, 30 - 5.0/4} {
		within(t, "half foreseen", c.leavesC(), want, 1e-12)
		within(t, "half", c.pass(c.layerKg/2, 2), want, 1e-12)
	}
}

// A step moves no more than completes what the vessel moves as a whole: half a layer of
// a cylinder, a cell of a coil, three layers of a store.
func TestStepLimits(t *testing.T) {
	const kgPerS, primary = 0.1, 0.3
	c := solverCases()[0].vessel.(*Cylinder)
	half := c.layerKg / 2 / kgPerS
	within(t, "cylinder drawn", c.StepLimitS(kgPerS, 0), half, 1e-9)
	c.Step(&Flows{DtS: 1.5 * half, DrawKgPerS: kgPerS, MainsC: 10, RoomC: 20})
	within(t, "cylinder, a quarter of a layer left", c.StepLimitS(kgPerS, 0), half/2, 1e-9)
	heating := c.layerJPerK * float64(len(c.overlap)) / c.coilUA / 7
	within(t, "cylinder heated", c.StepLimitS(0, primary), heating, 1e-9)
	within(t, "cylinder drawn and heated", c.StepLimitS(kgPerS, primary), min(half/2, heating), 1e-9)

	s := solverCases()[2].vessel.(*Compact)
	cell := s.coil.layerKg / kgPerS
	within(t, "coil", s.StepLimitS(kgPerS, 0), cell, 1e-9)
	within(t, "store", s.StepLimitS(0, primary), 3*s.layerKg/primary, 1e-9)
	s.Step(&Flows{DtS: cell / 4, DrawKgPerS: kgPerS, MainsC: 10, PrimaryKgPerS: primary, FlowInC: 60, RoomC: 20})
	within(t, "rest of a cell", s.StepLimitS(kgPerS, 0), 0.75*cell, 1e-9)
	within(t, "rest of three layers", s.StepLimitS(0, primary), 3*s.layerKg/primary-cell/4, 1e-9)
}

// While either water moves, loss is put off.
func TestEitherFlowPutsLossOff(t *testing.T) {
	for name, f := range map[string]Flows{
		"drawn": {DtS: 1, DrawKgPerS: 0.1, MainsC: 10, RoomC: 20}, "charged": {DtS: 1, PrimaryKgPerS: 0.3, FlowInC: 50, RoomC: 20},
	} {
		for _, c := range []Vessel{solverCases()[0].vessel, solverCases()[2].vessel} {
			if lost := c.Step(&f).LossJ; lost != 0 {
				t.Errorf("%s: %g J", name, lost)
			}
		}
	}
	if lost := solverCases()[0].vessel.Step(&Flows{DtS: 1, RoomC: 20}).LossJ; lost <= 0 {
		t.Errorf("at rest: %g J", lost)
	}
}

// Where the inlet stirs a body that ends within a layer, a layer of water that passes
// leaves it as one well-stirred body of that size would, and heat is kept.
func TestBodyEndsWithinALayer(t *testing.T) {
	c := newColumn(10, 100, 1, 0, 0)
	c.inlet = c.stir(0.25)
	c.fill(50)
	before, takenJ := c.heatJ(), 0.0
	for range 8 {
		takenJ += c.layerJPerK * (c.pass(c.layerKg, 10) - 10)
	}
	// What a body of 2.5 layers holds after eight have passed: 40 exp(-8/2.5) above 10.
	within(t, "body", c.temps[0], 10+40*0.04076220397836621, 1e-9)
	within(t, "body", c.temps[1], c.temps[0], 1e-12)
	within(t, "heat", before-c.heatJ(), takenJ, 1e-3)
}

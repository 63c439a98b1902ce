package vessel

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/water"
)

// jPerLK is the heat capacity of a litre in a vessel.
const jPerLK = water.VesselKgPerLitre * water.CpJPerKgK

// litres gives the volume of a column with the stated heat capacity, J/K: check
// values use other densities and specific heats.
func litres(jPerK float64) float64 { return jPerK / jPerLK }

// A vessel of one temperature cools exactly, in one step or many; only rounding
// of the published eight figures is left.
func TestCooling(t *testing.T) {
	want := checkvalues.Published(t, "mixed_vessel.csv")[4].Number(t, "t_C")
	for _, steps := range []int{1, 24, 8640} {
		c := newColumn(5, litres(200*4180), 1, 1.2, 1.5)
		c.fill(50)
		lost := 0.0
		for range steps {
			lost += c.lose(86400/float64(steps), 20)
		}
		within(t, "temperature", c.temps[2], want, 1e-6)
		within(t, "heat lost, kWh", lost/3.6e6, 1.0004503, 1e-7)
	}
}

// A step at mid-height spreads by conduction as the error function says. 100
// layers of a column 2 m high: the ends are not felt in 24 h, the layers and the
// explicit steps leave 0.03 K.
func TestConductionOfAStep(t *testing.T) {
	const heightM, layers, alpha = 2.0, 400, 1.559e-7
	conductivity := alpha * jPerLK * 1000
	var off worst
	for _, r := range checkvalues.Published(t, "diffusion_of_a_step.csv") {
		c := newColumn(layers, 200, heightM, conductivity, 0)
		for i := range c.temps {
			c.temps[i] = 10
			if i >= layers/2 {
				c.temps[i] = 50
			}
		}
		hours := r.Number(t, "hours")
		for range int(hours * 12) {
			c.stand(300, 0, false)
		}
		got := c.atC(0.5 + r.Number(t, "z_m")/heightM)
		off.see(got, r.Number(t, "t_C"))
		within(t, "temperature above the step", got, r.Number(t, "t_C"), 0.03)
	}
	t.Logf("worst %.1e K", float64(off))
}

// A front that moves through a conducting column follows Ogata and Banks. The
// boundary is a fixed temperature, so the lower face is held. Layers of 2 mm that
// move by one layer a step leave 0.5 % of the rise; moving by less,
// the scheme for fronts sharpens a smooth one by as much as a dispersion of half a
// layer times the speed takes away, which shrinks with the layers.
func TestMovingFront(t *testing.T) {
	for _, c := range []struct {
		layers           int
		share, tolerance float64
	}{{1000, 1, 5e-3}, {1000, 0.5, 5e-3}, {1000, 0.2, 5e-3}} {
		var off worst
		for _, r := range checkvalues.Published(t, "moving_front.csv") {
			got := movingFront(c.layers, c.share, r, t)
			off.see(got, r.Number(t, "share"))
			within(t, "front", got, r.Number(t, "share"), c.tolerance)
		}
		t.Logf("%d layers, %g of a layer a step: worst %.1e of the rise", c.layers, c.share, float64(off))
	}
}

func movingFront(layers int, share float64, r checkvalues.Row, t *testing.T) float64 {
	const heightM = 2.0
	speed, dispersion := r.Number(t, "speed_m_s"), r.Number(t, "dispersion_m2_s")
	c := newColumn(layers, 200, heightM, dispersion*jPerLK*1000, 0)
	dt := share * heightM / float64(layers) / speed
	for range int(math.Round(r.Number(t, "time_s") / dt)) {
		advect(c.temps, 1, share, 1, false)
		c.heldBelow(1, dt)
	}
	return c.atC(r.Number(t, "x_m") / heightM)
}

// heldBelow conducts with the lower face held at one temperature: half a layer
// away from the middle of the lowest.
func (c *column) heldBelow(tempC, dt float64) {
	const largest = 0.3 // share of a step, as in even
	substeps := math.Ceil(c.mixPerS * dt / largest)
	share := c.mixPerS * dt / substeps
	for range int(substeps) {
		in := 2 * share * (tempC - c.temps[0])
		c.conduct(share)
		c.temps[0] += in
	}
}

// exactLayers is the vessel of ten_layer_exact.csv.
func exactLayers() column {
	const cubicM, heightM, jPerM3K = 0.18, 1.2, 4.13e6
	l := litres(cubicM * jPerM3K)
	conductivity := 0.64 * cubicM * 1000 / l // the same conductivity times area
	c := newColumn(10, l, heightM, conductivity, 1.2)
	c.firstOrder = true
	return c
}

// compareLayers sets a column against a published row, top first.
func compareLayers(t *testing.T, c *column, r checkvalues.Row, tolerance float64, off *worst) {
	t.Helper()
	for i, key := range []string{"t10", "t09", "t08", "t07", "t06", "t05", "t04", "t03", "t02", "t01"} {
		off.see(c.temps[i], r.Number(t, key))
		within(t, r["case"]+" "+r["time_s"]+" s "+key, c.temps[i], r.Number(t, key), tolerance)
	}
}

// At rest the exact ten layers are met to 1 mK in steps of 1 s, and to 0.1 K in
// the longest steps that a plant at rest takes (explicit conduction is of first
// order in the step).
func TestTenLayersAtRest(t *testing.T) {
	for _, c := range []struct{ dt, tolerance float64 }{{1, 1e-3}, {900, 0.1}} {
		var off worst
		for _, r := range checkvalues.Published(t, "ten_layer_exact.csv") {
			if r["case"] != "standby" {
				continue
			}
			v := exactLayers()
			for i := range v.temps {
				v.temps[i] = 10 + 40*float64(i/5)
			}
			for range int(r.Number(t, "time_s") / c.dt) {
				v.stand(c.dt, 20, false)
			}
			compareLayers(t, &v, r, c.tolerance, &off)
		}
		t.Logf("steps of %g s: worst %.1e K", c.dt, float64(off))
	}
}

// Drawn off with every layer stirred, in steps of 10 ms: first order in the step.
func TestTenLayersDrawn(t *testing.T) {
	var off worst
	for _, r := range checkvalues.Published(t, "ten_layer_exact.csv") {
		if r["case"] != "draw" {
			continue
		}
		const dt, layersPerS = 0.01, 10.0 / 60 / 18
		v := exactLayers()
		v.fill(50)
		for range int(math.Round(r.Number(t, "time_s") / dt)) {
			advect(v.temps, 1, layersPerS*dt, 10, true)
			v.stand(dt, 20, false)
		}
		compareLayers(t, &v, r, 2e-3, &off)
	}
	t.Logf("worst %.1e K", float64(off))
}

// Of an even rise a temperature is read off exactly, but half a layer from the ends; of
// a bend it stays within its neighbours. Water that is owed has moved the layers. An
// element warms the layer that it stands in, and what
// it can warm is that layer with all above.
func TestHeightsInAColumn(t *testing.T) {
	c := newColumn(4, 100, 1, 0, 0)
	copy(c.temps, []float64{10, 20, 30, 40})
	for height, want := range map[float64]float64{-1: 10, 0: 10, 0.25: 15, 0.375: 20, 0.45: 23, 0.5: 25, 0.625: 30, 1: 40, 2: 40} {
		within(t, "temperature", c.atC(height), want, 1e-12)
	}
	c.owed.kg, c.way = c.layerKg/5, -1
	within(t, "temperature after a move too far", c.atC(0.5), 23, 1e-12)
	c.owed.kg = 0
	for height := 0.0; height <= 1; height += 0.01 {
		copy(c.temps, []float64{10, 11, 40, 41})
		if got, i := c.atC(height), min(int(height*4), 3); got < c.temps[max(i-1, 0)] || got > c.temps[min(i+1, 3)] {
			t.Errorf("%g of the height: %g C", height, got)
		}
	}
	for height, layer := range map[float64]int{-1: 0, 0: 0, 0.24: 0, 0.25: 1, 0.5: 2, 0.99: 3, 1: 3, 2: 3} {
		copy(c.temps, []float64{10, 20, 30, 40})
		c.warm(height, 5*c.layerJPerK)
		for i, was := range []float64{10, 20, 30, 40} {
			if i == layer {
				was += 5
			}
			within(t, "warmed", c.temps[i], was, 1e-12)
		}
		within(t, "capacity above", c.AboveJPerK(height), float64(4-layer)*c.layerJPerK, 1e-9)
	}
}

// While water moves, conduction and loss are taken for standEveryS at a time, from its
// middle; at rest they are never put off, and what was taken ahead is not taken twice.
func TestStandingIsTakenAFewTimes(t *testing.T) {
	fresh := func() column {
		c := newColumn(3, 60, 1, 1.2, 0)
		copy(c.temps, []float64{10, 40, 60})
		return c
	}
	const stepS = standEveryS / 4
	nearly := fresh()
	nearly.stand(0.49*standEveryS, 0, true)
	within(t, "put off as long as may be", nearly.temps[0], 10, 0)
	c, exact := fresh(), fresh()
	c.stand(stepS, 0, true)
	within(t, "put off", c.temps[0], 10, 0)
	c.stand(stepS, 0, true)
	exact.diffuse(standEveryS)
	within(t, "from the middle", c.temps[0], exact.temps[0], 1e-12)
	if !(exact.temps[0] > 10) {
		t.Error("nothing is conducted, so this says nothing")
	}
	c.stand(stepS, 0, false)
	within(t, "ahead still", c.temps[0], exact.temps[0], 0)
	c.stand(2*stepS, 0, false)
	exact.diffuse(stepS)
	within(t, "made up at rest", c.temps[0], exact.temps[0], 1e-12)
}

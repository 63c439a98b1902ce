package vessel

import (
	"math"
	"testing"

	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/water"
)

// testCylinder is a cylinder of 210 litres as the defaults have it, without loss.
func testCylinder(layers int, stirShare float64) *Cylinder {
	return NewCylinder(CylinderParams{
		VolumeL: 210, HeightM: 1.32, Layers: layers, ConductivityWPerMK: 1.2, InletMixingShare: stirShare,
		CoilUAWPerK: 1130, CoilBottom: 0.05, CoilTop: 0.6,
	})
}

// still is the same without conduction, for closed forms that have none.
func still(layers int, stirShare float64) *Cylinder {
	c := testCylinder(layers, stirShare)
	c.mixPerS = 0
	return c
}

// vesselKg is the water that a column holds.
func (c *column) vesselKg() float64 { return c.layerKg * float64(len(c.temps)) }

// One layer, or all of it stirred, is a vessel of one temperature: exact in one
// step of any length; only the rounding of eight figures is left. The check values
// are of 200 litres and 10 l/min: 1/20 of the volume a minute.
func TestFullMixing(t *testing.T) {
	for _, layers := range []int{1, 32} {
		for _, r := range checkvalues.Published(t, "mixed_vessel.csv")[:4] {
			for _, steps := range []int{1, 100} {
				c := still(layers, 1)
				c.Fill(50)
				kgPerS := c.vesselKg() / 20 / 60
				for range steps {
					c.Step(&Flows{DtS: r.Number(t, "minutes") * 60 / float64(steps), DrawKgPerS: kgPerS, MainsC: 10})
				}
				within(t, "temperature", c.AtC(0.7), r.Number(t, "t_C"), 1e-6)
			}
		}
	}
}

// Unstirred, the outlet holds its temperature until the whole volume is drawn and
// then falls to mains at once: within the one step in which it turns.
func TestPlugFlow(t *testing.T) {
	for _, share := range []float64{0.2, 0.25, 0.7, 1} {
		c := still(32, 0)
		c.Fill(50)
		f := Flows{DrawKgPerS: 0.15, MainsC: 10}
		f.DtS = share * c.StepLimitS(f.DrawKgPerS, 0)
		turn, step := c.vesselKg(), f.DrawKgPerS*f.DtS
		for drawn := 0.0; drawn < 1.2*turn; drawn += step {
			outC := c.Step(&f).DrawOutC
			if drawn+step < turn-step && math.Abs(outC-50) > 1e-9 || drawn > turn+step && math.Abs(outC-10) > 1e-9 {
				t.Fatalf("share %g: %.6f C after %.3f of the volume", share, outC, drawn/turn)
			}
		}
	}
}

// v40 draws a cylinder at 50 C, with mains at 10 C, until the outlet is below 40
// C, and gives the litres of 40 C water over the volume.
func v40(c *Cylinder, kgPerS, dt float64) float64 {
	c.Fill(50)
	f := Flows{DtS: dt, DrawKgPerS: kgPerS, MainsC: 10, RoomC: 20}
	sum, last := 0.0, 50.0
	for {
		outC := c.Step(&f).DrawOutC
		if !(outC >= 40) {
			part := (last-40)/(last-outC) - 0.5 // of a step, to where 40 C is crossed
			return (sum + part*kgPerS*dt) / c.vesselKg()
		}
		sum += kgPerS * dt * (outC - 10) / 30
		last = outC
	}
}

// Stirring the lowest share s of the volume, the outlet stays hot until 1-s of it
// is drawn and then falls as exp(-v/s). The march rounds the corner over a layer
// or two: within 0.5 K of what the closed form gives up to a layer sooner or
// later, and 0.6 K root mean square.
func TestInletMixingOutlet(t *testing.T) {
	const layers = 32
	for _, s := range []float64{0.1, 0.15, 0.3, 0.5, 0.77} {
		c := still(layers, s)
		c.Fill(50)
		f := Flows{DtS: 5, DrawKgPerS: 0.15, MainsC: 10}
		drawn, step := 0.0, f.DrawKgPerS*f.DtS/c.vesselKg()
		var off worst
		squares, count := 0.0, 0.0
		for ; drawn < 1.5; drawn += step {
			outC := c.Step(&f).DrawOutC
			v := drawn + step/2
			closed := func(v float64) float64 { return 10 + 40*math.Exp(-math.Max(v-(1-s), 0)/s) }
			if low, high := closed(v+1.0/layers), closed(v-1.0/layers); outC < low-0.5 || outC > high+0.5 {
				t.Errorf("s %g: %.3f C after %.3f of the volume, want %.3f to %.3f", s, outC, v, low, high)
			}
			off.see(outC, closed(v))
			squares += (outC - closed(v)) * (outC - closed(v))
			count++
		}
		rms := math.Sqrt(squares / count)
		t.Logf("s %g: worst %.2f K, rms %.2f K", s, float64(off), rms)
		within(t, "root mean square", rms, 0, 0.6)
	}
}

// V40/V = (4/3)(1 - 0.75 s), within 1 %: half a layer of 32 in the zone's edge.
func TestV40OfInletMixing(t *testing.T) {
	for _, s := range []float64{0, 0.05, 0.1, 0.15, 0.25, 0.4} {
		want := 4.0 / 3 * (1 - 0.75*s)
		got := v40(still(32, s), 0.1, 10)
		t.Logf("s %g: %+.2f %%", s, 100*(got/want-1))
		within(t, "V40/V", got, want, 0.012*want)
	}
}

// A declared V40 can be met by stirred tanks in series or by a stirred share; the
// share that meets it follows from the closed form. Within 2 %, conduction and all.
func TestV40OfTanksInSeries(t *testing.T) {
	for _, r := range checkvalues.Published(t, "stirred_tanks_in_series.csv") {
		declared := r.Number(t, "v40_over_volume")
		share := (1 - 0.75*declared) / 0.75
		got := v40(testCylinder(32, share), 10.0/60, 10)
		t.Logf("%s tanks, s %.3f: %+.2f %%", r["tanks"], share, 100*(got/declared-1))
		within(t, "V40/V", got, declared, 0.02*declared)
		tanks := testCylinder(int(r.Number(t, "tanks")), 0)
		tanks.mixPerS, tanks.firstOrder = 0, true
		within(t, "V40/V of the tanks", v40(tanks, 10.0/60, 0.05), declared, 1e-3)
	}
}

// Refining the layers fourfold moves V40 by less than 1.5 %: half a layer of 32.
func TestLayersMoveNoV40(t *testing.T) {
	for _, s := range []float64{0.05, 0.1, 0.15, 0.2, 0.3} {
		coarse, fine := v40(testCylinder(32, s), 0.15, 10), v40(testCylinder(128, s), 0.15, 2.5)
		t.Logf("s %g: %+.2f %%", s, 100*(coarse/fine-1))
		if math.Abs(coarse/fine-1) > 0.015 {
			t.Errorf("s %g: V40/V %.4f with 32 layers, %.4f with 128", s, coarse, fine)
		}
	}
}

// A constant power into a vessel without loss heats it by P t/(M cp): exact, for
// one layer and for the mean of many. Rounding only.
func TestConstantPowerCharge(t *testing.T) {
	for _, layers := range []int{1, 32} {
		c := testCylinder(layers, 0.15)
		c.Fill(15)
		const powerW, hours, kgPerS = 5000.0, 1, 17.0 / 60
		dt := 10.0
		for range int(hours * 3600 / dt) {
			slope, intercept := c.ReturnLine(kgPerS, dt)
			flowC := (powerW/(kgPerS*water.CpJPerKgK) + intercept) / (1 - slope)
			r := c.Step(&Flows{DtS: dt, PrimaryKgPerS: kgPerS, FlowInC: flowC, RoomC: 20})
			within(t, "heat of a step", r.PrimaryInJ, powerW*dt, 1e-9*powerW*dt)
		}
		mean := c.HeatJ() / c.vesselKg() / water.CpJPerKgK
		within(t, "mean temperature", mean, 15+powerW*hours*3600/(c.vesselKg()*water.CpJPerKgK), 1e-9)
	}
}

// In a vessel of one temperature the indirect coil has effectiveness 1-exp(-NTU)
// whatever the layers, and the line of the return says what a step then does.
func TestIndirectCoil(t *testing.T) {
	const kgPerS, storeC, flowC = 17.0 / 60, 40, 52
	capacity := kgPerS * water.CpJPerKgK
	want := -math.Expm1(-1130 / capacity)
	for _, layers := range []int{1, 10, 32, 33} {
		c := testCylinder(layers, 0.15)
		c.Fill(storeC)
		slope, intercept := c.ReturnLine(kgPerS, 0)
		returnC := slope*flowC + intercept
		within(t, "effectiveness", (flowC-returnC)/(flowC-storeC), want, 1e-12)
		slope, intercept = c.ReturnLine(kgPerS, 3)
		returnC = slope*flowC + intercept
		r := c.Step(&Flows{DtS: 3, PrimaryKgPerS: kgPerS, FlowInC: flowC, RoomC: 20})
		within(t, "heat of the step", r.PrimaryInJ, 3*capacity*(flowC-returnC), 1e-6)
	}
}

// The flow floats above the store as effectiveness says: coil_reheat_approach.csv,
// to its four figures.
func TestFlowOverStore(t *testing.T) {
	for _, r := range checkvalues.Published(t, "coil_reheat_approach.csv") {
		heatW, spreadK := 1000*r.Number(t, "heat_kW"), r.Number(t, "flow_return_difference_K")
		c := NewCylinder(CylinderParams{
			VolumeL: 210, HeightM: 1.32, Layers: 32, ConductivityWPerMK: 1.2,
			CoilUAWPerK: r.Number(t, "UA_W_K"), CoilBottom: 0.05, CoilTop: 0.6,
		})
		c.Fill(45)
		slope, intercept := c.ReturnLine(heatW/spreadK/water.CpJPerKgK, 0)
		flowC := (spreadK + intercept) / (1 - slope)
		within(t, "flow over store", flowC-45, r.Number(t, "flow_minus_store_K"), 6e-4)
	}
}

// Step after step, heat in less heat out is the change of heat held, to 1e-12 of
// the heat that the vessel holds.
func TestCylinderBalance(t *testing.T) {
	c := testCylinder(32, 0.15)
	c.lossPerS = 1.4 / 32 / c.layerJPerK
	c.Fill(48)
	for i := range 600 {
		f := Flows{DtS: 10, MainsC: 8, RoomC: 20}
		if i%100 < 30 {
			f.DrawKgPerS = 0.13
		}
		if i%170 > 90 {
			f.PrimaryKgPerS, f.FlowInC = 0.28, 52
		}
		if i%50 > 45 {
			f.ImmersionW, f.ImmersionHeight = 3000, 0.3
		}
		balance(t, c, f)
	}
}

// failer is what a test and a property have in common.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

// balance takes a step and holds it to the first law.
func balance(t failer, v Vessel, f Flows) Result {
	t.Helper()
	before := v.HeatJ()
	r := v.Step(&f)
	in := r.PrimaryInJ + f.ImmersionW*f.DtS + f.DrawKgPerS*f.DtS*water.CpJPerKgK*(f.MainsC-r.DrawOutC) - r.LossJ
	if residual := v.HeatJ() - before - in; !(math.Abs(residual) <= 1e-12*math.Max(before, 1e7)) {
		t.Fatalf("heat off by %g J of %g: %+v", residual, before, f)
	}
	return r
}

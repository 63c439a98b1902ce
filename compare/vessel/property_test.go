package vessel

import (
	"math"
	"slices"
	"testing"

	"dhwcompare/compare/coil"
	"pgregory.net/rapid"
)

// anyVessel draws legal parameters of either vessel.
func anyVessel(t *rapid.T) Vessel {
	layers := rapid.IntRange(3, 60).Draw(t, "layers")
	height := rapid.Float64Range(0.3, 2).Draw(t, "height m")
	conductivity := rapid.Float64Range(0, 4).Draw(t, "conductivity")
	loss := rapid.Float64Range(0, 4).Draw(t, "loss W/K")
	stir := rapid.Float64Range(0, 1).Draw(t, "stirred share")
	ua := rapid.Float64Range(200, 4000).Draw(t, "UA")
	if rapid.Bool().Draw(t, "cylinder") {
		bottom := rapid.Float64Range(0, 0.5).Draw(t, "coil bottom")
		return NewCylinder(CylinderParams{
			VolumeL: rapid.Float64Range(90, 400).Draw(t, "litres"), HeightM: height, Layers: layers, LossWPerK: loss,
			ConductivityWPerMK: conductivity, InletMixingShare: stir, CoilUAWPerK: ua,
			CoilBottom: bottom, CoilTop: bottom + rapid.Float64Range(0.05, 0.5).Draw(t, "coil height"),
		})
	}
	coilL := rapid.Float64Range(0.5, 15).Draw(t, "coil litres")
	return NewCompact(CompactParams{
		VolumeL: rapid.Float64Range(40, 200).Draw(t, "litres"), HeightM: height, Layers: layers, LossWPerK: loss,
		ConductivityWPerMK: conductivity, InletMixingShare: stir, CoilWaterL: coilL,
		CoilDisplacedL: 1.5 * coilL, CoilLaw: coil.Stated(ua, 10, rapid.Float64Range(0, 0.6).Draw(t, "exponent")),
	})
}

// anyFlows draws a stretch of time, and keeps its step to what the vessel takes.
func anyFlows(t *rapid.T, v Vessel) Flows {
	f := Flows{
		MainsC:  rapid.Float64Range(2, 25).Draw(t, "mains C"),
		RoomC:   rapid.Float64Range(5, 30).Draw(t, "room C"),
		FlowInC: rapid.Float64Range(15, 75).Draw(t, "flow C"),
	}
	if rapid.Bool().Draw(t, "drawing") {
		f.DrawKgPerS = rapid.Float64Range(1e-4, 0.5).Draw(t, "draw kg/s")
	}
	if rapid.Bool().Draw(t, "charging") {
		f.PrimaryKgPerS = rapid.Float64Range(0.02, 0.6).Draw(t, "primary kg/s")
	}
	f.DtS = math.Min(rapid.Float64Range(0.1, 900).Draw(t, "step s"), v.StepLimitS(f.DrawKgPerS, f.PrimaryKgPerS))
	return f
}

// Whatever flows: the balance closes, and no water is hotter than the hottest of
// what came in, the room and what was there, or colder than the coldest: by more than
// slackK, that is, since where a flow ends within a layer, or comes in at another
// temperature than the layer was taken at, what the water that had not come did to its
// surroundings is undone, and in flows as wild as these not where it was done.
func TestAnythingWithinBounds(t *testing.T) {
	const slackK = 10
	rapid.Check(t, func(t *rapid.T) {
		staysWithin(t, slackK, func(v Vessel) Flows { return anyFlows(t, v) })
	})
}

// Flows that go on as they begin keep the bounds to rounding: 1e-9 K.
func TestSteadyFlowsWithinBounds(t *testing.T) {
	const rounding = 1e-9
	rapid.Check(t, func(t *rapid.T) {
		var steady Flows
		staysWithin(t, rounding, func(v Vessel) Flows {
			if steady.DtS == 0 {
				steady = anyFlows(t, v)
			}
			f := steady
			f.DtS = math.Min(rapid.Float64Range(0.1, 900).Draw(t, "step s"), v.StepLimitS(f.DrawKgPerS, f.PrimaryKgPerS))
			return f
		})
	})
}

// staysWithin steps any vessel up to sixty times.
func staysWithin(t *rapid.T, slackK float64, flows func(Vessel) Flows) {
	v := anyVessel(t)
	start := rapid.Float64Range(5, 75).Draw(t, "start C")
	v.Fill(start)
	low, high := start, start
	for range rapid.IntRange(1, 60).Draw(t, "steps") {
		f := flows(v)
		low, high = math.Min(low, f.RoomC), math.Max(high, f.RoomC)
		if f.DrawKgPerS > 0 {
			low, high = math.Min(low, f.MainsC), math.Max(high, f.MainsC)
		}
		if f.PrimaryKgPerS > 0 {
			low, high = math.Min(low, f.FlowInC), math.Max(high, f.FlowInC)
		}
		slope, intercept := v.ReturnLine(math.Max(f.PrimaryKgPerS, 0.01), 0)
		r := balance(t, v, f)
		seen := append(allTemps(v), r.DrawOutC, v.OutletC(), intercept/(1-slope))
		if !(slices.Min(seen) >= low-slackK && slices.Max(seen) <= high+slackK) {
			t.Fatalf("%v leaves %g to %g", seen, low, high)
		}
	}
}

// allTemps gives every temperature that a vessel holds.
func allTemps(v Vessel) []float64 {
	switch v := v.(type) {
	case *Compact:
		return slices.Concat(v.temps, v.coil.temps)
	case *Cylinder:
		return v.temps
	default:
		return nil
	}
}

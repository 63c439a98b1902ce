package coil

import "math"

// FastLaw is UA as a function of flow and store temperature, condensed from the
// full chain or stated by hand:
//
//	UA = UA10 exp(n x + c x^2) (1 + (p + s x)(T_store - T_ref)),  x = ln(flow/10 l/min)
//
// With c, p and s zero it is the plain power law of a stated coil.
type FastLaw struct {
	UA10WPerK       float64 // UA at 10 l/min and the reference store temperature
	Exponent        float64 // n: of flow, at 10 l/min
	Curvature       float64 // c: how the exponent falls as the flow rises
	ReferenceStoreC float64 // T_ref
	PerK            float64 // p: share by which UA grows with each kelvin of store, at 10 l/min
	PerKPerLogFlow  float64 // s: how that share changes with x
	StillWPerK      float64 // from the water standing in the coil to the store, see [StillUA]
}

const referenceFlowLPerMin = 10.0

// A law holds within these flows, in l/min. Beyond them the value at the nearer
// end is kept: at less flow the water leaves at store temperature either way.
const (
	lawLowLPerMin  = 2.0
	lawHighLPerMin = 20.0
)

// UA is the coefficient in W/K of the whole coil at a mains flow, in l/min, in a
// store of the mean temperature storeC. A law from [Fit] is within 5 % of the
// full chain for 2 to 20 l/min, a store at 35 to 65 C and mains at 10 C; within
// 7 % for mains at 5 to 15 C and 12 % at 20 C, where it is too high in a store
// that is hardly warmer than the mains. Flows outside 2 to 20 l/min count as the
// nearer of the two; store temperatures extrapolate in a straight line, which is
// never taken below a tenth.
func (l FastLaw) UA(flowLPerMin, storeC float64) float64 {
	x := logFlow(min(max(flowLPerMin, lawLowLPerMin), lawHighLPerMin))
	return l.atReference(x) * max(1+l.slopePerK(x)*(storeC-l.ReferenceStoreC), leastWarmth)
}

// atReference is UA in a store at the reference temperature.
func (l FastLaw) atReference(x float64) float64 {
	return l.UA10WPerK * math.Exp(x*(l.Exponent+l.Curvature*x))
}

// slopePerK is the share by which UA grows with each kelvin of store.
func (l FastLaw) slopePerK(x float64) float64 { return l.PerK + l.PerKPerLogFlow*x }

func logFlow(flowLPerMin float64) float64 { return math.Log(flowLPerMin / referenceFlowLPerMin) }

// The least that a cold store may leave of UA: the outside film never vanishes.
const leastWarmth = 0.1

// Stated is the law of a coil whose UA is known at one flow: a power law in flow,
// the same at any store temperature. The full chain gives exponents of 0.31 (1.4
// m2) to 0.48 (5.5 m2). The standing coil is taken at [StillShare] of UA at 10
// l/min.
func Stated(uaWPerK, atFlowLPerMin, exponent float64) FastLaw {
	ua10 := uaWPerK * math.Pow(referenceFlowLPerMin/atFlowLPerMin, exponent)
	return FastLaw{UA10WPerK: ua10, Exponent: exponent, StillWPerK: StillShare * ua10}
}

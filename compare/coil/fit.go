package coil

import "math"

// Where the full chain is asked for a fit: three flows spread over 2 to 20 l/min
// fix the two powers of flow, two store temperatures about the reference the
// slope at the outer flows.
const (
	fitLowLPerMin  = 2.5
	fitMidLPerMin  = 7.5
	fitHighLPerMin = 18.0
	fitMainsC      = 10.0
	fitStoreC      = 50.0
	fitStoreSpanK  = 12.0
)

// Fit condenses the full chain of a coil into a law, once at set-up; it takes
// some milliseconds. The geometry must pass [Geometry.Check].
func Fit(g Geometry) FastLaw {
	law := fitFlow(g)
	low, high := relativeSlope(g, fitLowLPerMin), relativeSlope(g, fitHighLPerMin)
	xLow, xHigh := logFlow(fitLowLPerMin), logFlow(fitHighLPerMin)
	law.PerKPerLogFlow = (high - low) / (xHigh - xLow)
	law.PerK = low - law.PerKPerLogFlow*xLow
	law.StillWPerK = StillUA(g)
	return law
}

// fitFlow lays a parabola in log UA over log flow through three points.
func fitFlow(g Geometry) FastLaw {
	flows := [3]float64{fitLowLPerMin, fitMidLPerMin, fitHighLPerMin}
	var x, y [3]float64
	for i, f := range flows {
		x[i], y[i] = logFlow(f), math.Log(UA(g, fitStoreC, fitMainsC, f).UAWPerK)
	}
	slope := (y[1] - y[0]) / (x[1] - x[0])
	curve := ((y[2]-y[1])/(x[2]-x[1]) - slope) / (x[2] - x[0])
	return FastLaw{
		UA10WPerK:       math.Exp(y[0] - x[0]*slope + x[0]*x[1]*curve),
		Exponent:        slope - (x[0]+x[1])*curve,
		Curvature:       curve,
		ReferenceStoreC: fitStoreC,
	}
}

// relativeSlope is the share by which UA grows with each kelvin of store.
func relativeSlope(g Geometry, flowLPerMin float64) float64 {
	at := func(storeC float64) float64 { return UA(g, storeC, fitMainsC, flowLPerMin).UAWPerK }
	return (at(fitStoreC+fitStoreSpanK) - at(fitStoreC-fitStoreSpanK)) / (2 * fitStoreSpanK * at(fitStoreC))
}

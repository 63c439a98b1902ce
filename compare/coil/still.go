package coil

import (
	"math"

	"dhwcompare/compare/water"
)

// The state at which a standing coil is judged: engineering judgement. The last
// kelvins decide whether the next draw-off starts hot, so it is judged there.
const (
	stillStoreC = 50.0
	stillDiffK  = 5.0
)

// Free convection inside a tube, Nu = C Ra^(1/4): laminar boundary-layer scaling
// with C from engineering judgement, 0.3 to 0.6, at the low side because water in
// a winding lies in layers.
const stillConvection = 0.4

// conductionNusselt belongs to water at rest in a tube whose wall is held at one
// temperature: the square of the first zero of the Bessel function J0, exact.
const conductionNusselt = 5.7832

// StillShare is the coefficient of a standing coil over that at 10 l/min, for a
// coil known by its UA alone. Engineering judgement: 0.2 to 0.4.
const StillShare = 0.30

// StillUA is the coefficient in W/K between the water standing in a coil and the
// store, which warms it between draw-offs. Inside there is free convection alone,
// never less than conduction:
//
//	Nu_i = max(5.78, 0.4 Ra^(1/4)), on the bore
//
// with half of a 5 K difference inside the tube, in a store at 50 C; wall,
// fouling and outside film as in [UA]. This is engineering judgement, not a
// published correlation: 20 to 40 % of the value at 10 l/min, uncertain by a
// third either way. It moves by a fifth when the difference doubles.
func StillUA(g Geometry) float64 {
	t := g.perMetre()
	coilC := stillStoreC - stillDiffK
	ra := rayleigh(coilC, stillDiffK/2, t.boreM)
	nusselt := max(conductionNusselt, stillConvection*math.Sqrt(math.Sqrt(ra)))
	h := nusselt * water.ConductivityWPerMK(coilC) / t.boreM
	return t.solve(1/(h*t.insideM2PerM), coilC, stillStoreC).uaWPerMK * g.LengthM
}

package coil

import (
	"math"

	"dhwcompare/compare/water"
)

const gravityMPerS2 = 9.80665 // standard gravity

// OutsideNusselt is the Nusselt number, on the outside diameter, of free
// convection about a long horizontal cylinder at the Rayleigh number ra:
//
//	Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2
//
// Source: Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), for Ra from
// 1e-5 to 1e12. The windings of a real coil shield and heat each other, which no
// settled correlation covers. Below the range it tends to 0.36.
func OutsideNusselt(ra, pr float64) float64 {
	root := 0.60 + 0.387*math.Pow(ra, 1.0/6)/math.Pow(1+math.Pow(0.559/pr, 9.0/16), 8.0/27)
	return root * root
}

// rayleigh is that of water at filmC about or in a tube, for a difference of
// diffK between wall and water. The size of the expansion counts, not its sign:
// below 4 C the plume sinks instead of rising.
func rayleigh(filmC, diffK, diameterM float64) float64 {
	nu := water.KinematicViscosityM2PerS(filmC)
	buoyancy := gravityMPerS2 * math.Abs(water.ExpansionPerK(filmC)*diffK)
	return buoyancy * diameterM * diameterM * diameterM * water.Prandtl(filmC) / (nu * nu)
}

// outsideWPerM2K is the film coefficient towards a store at storeC for a wall
// that is diffK cooler (or warmer, if negative), with properties at the mean.
func outsideWPerM2K(storeC, diffK, outsideM float64) float64 {
	film := storeC - diffK/2
	nusselt := OutsideNusselt(rayleigh(film, diffK, outsideM), water.Prandtl(film))
	return nusselt * water.ConductivityWPerMK(film) / outsideM
}

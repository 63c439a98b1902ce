package coil

import "math"

// The Reynolds number above which flow in a coil is fully turbulent.
const turbulentRe = 2.2e4

// CriticalRe is the Reynolds number up to which flow in a coil stays laminar, for
// a bore over winding diameter r below 0.14:
//
//	Re_crit = 2300 (1 + 8.6 r^0.45)
//
// Source: Schmidt, Chem.-Ing.-Tech. 39 (1967). It is higher than in a straight
// tube because the secondary flow damps disturbances. Above 0.14 it extrapolates.
func CriticalRe(boreOverCoil float64) float64 {
	return 2300 * (1 + 8.6*math.Pow(boreOverCoil, 0.45))
}

// InsideNusselt is the Nusselt number, on the bore, of flow in a coil with the
// Reynolds number re, the Prandtl number pr and a bore over winding diameter r:
//
//	laminar, below Re_crit:
//	  Nu = 3.66 + 0.08 (1 + 0.8 r^0.9) Re^m Pr^(1/3),  m = 0.5 + 0.2903 r^0.194
//	turbulent, above 22,000:
//	  Nu = (z/8) Re Pr / (1 + 12.7 (z/8)^0.5 (Pr^(2/3) - 1)),  z = 0.3164 Re^-0.25 + 0.03 r^0.5
//	between: a straight line from the laminar value at Re_crit to the turbulent one at 22,000
//
// Source: Gnielinski 1986, as in the VDI heat atlas, section Gc. The factor for
// the wall's Prandtl number is left out: it is within 10 % of 1 for water here.
// Other published forms lie within 15 %, which moves UA by about 4 %. Without
// flow it gives the 3.66 of steady conduction.
func InsideNusselt(re, pr, boreOverCoil float64) float64 {
	critical := CriticalRe(boreOverCoil)
	switch {
	case re <= critical:
		return laminarNusselt(re, pr, boreOverCoil)
	case re >= turbulentRe:
		return turbulentNusselt(re, pr, boreOverCoil)
	}
	laminar := laminarNusselt(critical, pr, boreOverCoil)
	turbulent := turbulentNusselt(turbulentRe, pr, boreOverCoil)
	share := (re - critical) / (turbulentRe - critical)
	return laminar + share*(turbulent-laminar)
}

func laminarNusselt(re, pr, r float64) float64 {
	m := 0.5 + 0.2903*math.Pow(r, 0.194)
	return 3.66 + 0.08*(1+0.8*math.Pow(r, 0.9))*math.Pow(re, m)*math.Cbrt(pr)
}

func turbulentNusselt(re, pr, r float64) float64 {
	z8 := (0.3164/math.Pow(re, 0.25) + 0.03*math.Sqrt(r)) / 8
	return z8 * re * pr / (1 + 12.7*math.Sqrt(z8)*(math.Cbrt(pr*pr)-1))
}

package water

import "math"

// inRange moves a temperature to the nearer end of the range of the fits.
func inRange(tC float64) float64 { return min(max(tC, minC), maxC) }

// The density polynomial of Kell, rho = (a0 + a1 t + ... + a5 t^5)/(1 + b t).
const (
	kellA0 = 999.83952
	kellA1 = 16.945176
	kellA2 = -7.9870401e-3
	kellA3 = -46.170461e-6
	kellA4 = 105.56302e-9
	kellA5 = -280.54253e-12
	kellB  = 16.879850e-3
)

// DensityKgPerM3 is the density in kg/m3 at tC.
//
//	rho = (a0 + a1 t + a2 t^2 + a3 t^3 + a4 t^4 + a5 t^5)/(1 + b t)
//
// Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, from memory; within
// 0.002 % of IAPWS-95 over 0 to 100 C. Outside: the value at the nearer end.
func DensityKgPerM3(tC float64) float64 {
	t := inRange(tC)
	return (kellA0 + t*(kellA1+t*(kellA2+t*(kellA3+t*(kellA4+t*kellA5))))) / (1 + kellB*t)
}

// ExpansionPerK is the volumetric thermal expansion coefficient in 1/K at tC,
// -(1/rho) d(rho)/dt of [DensityKgPerM3]: negative below 4 C.
//
// Within 0.1 % of IAPWS-95 from 10 to 100 C, within 0.5e-6 1/K below 10 C.
// Outside 0 to 100 C: the value at the nearer end.
func ExpansionPerK(tC float64) float64 {
	t := inRange(tC)
	top := kellA0 + t*(kellA1+t*(kellA2+t*(kellA3+t*(kellA4+t*kellA5))))
	slope := kellA1 + t*(2*kellA2+t*(3*kellA3+t*(4*kellA4+t*5*kellA5)))
	return kellB/(1+kellB*t) - slope/top
}

// SpecificHeatJPerKgK is the isobaric specific heat in J/(kg K) at tC. It
// serves heat transfer; heat balances use the constant [CpJPerKgK].
//
// Quartic fitted by least squares to IAPWS-95 at 1 atm, within 0.03 % over 0 to
// 100 C. Outside: the value at the nearer end.
func SpecificHeatJPerKgK(tC float64) float64 {
	t := inRange(tC)
	return 4218.44464 + t*(-2.88762655+t*(7.15475485e-2+t*(-7.14433853e-4+t*2.85591519e-6)))
}

// ConductivityWPerMK is the thermal conductivity in W/(m K) at tC.
//
// Cubic fitted by least squares to the IAPWS formulation for conductivity at
// 1 atm, within 0.12 % over 0 to 100 C. Outside: the value at the nearer end.
func ConductivityWPerMK(tC float64) float64 {
	t := inRange(tC)
	return 0.556236206 + t*(2.3686932e-3+t*(-1.54853603e-5+t*3.93045636e-8))
}

// ViscosityPaS is the dynamic viscosity in Pa s at tC.
//
// Exponential of a quartic fitted by least squares to the IAPWS formulation for
// viscosity at 1 atm, within 0.16 % over 0 to 100 C. Outside: the value at the
// nearer end.
func ViscosityPaS(tC float64) float64 {
	t := inRange(tC)
	return math.Exp(-6.32610313 + t*(-3.40237975e-2+t*(2.87264088e-4+t*(-1.92373976e-6+t*6.05570999e-9))))
}

// KinematicViscosityM2PerS is the kinematic viscosity mu/rho in m2/s at tC, with
// the range of [ViscosityPaS].
func KinematicViscosityM2PerS(tC float64) float64 { return ViscosityPaS(tC) / DensityKgPerM3(tC) }

// Prandtl is the Prandtl number cp mu/k at tC, from the fits above: within
// 0.3 % of the IAPWS values over 0 to 100 C.
func Prandtl(tC float64) float64 {
	return SpecificHeatJPerKgK(tC) * ViscosityPaS(tC) / ConductivityWPerMK(tC)
}

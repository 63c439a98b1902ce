package coil

import "math"

// Effectiveness is the share of the temperature difference that water passing
// through a surface loses or gains, 1 - exp(-UA/C), against surroundings of one
// temperature; UA and the capacity rate C in W/K. It is 1 without flow and 0
// without surface.
func Effectiveness(uaWPerK, capacityWPerK float64) float64 {
	if uaWPerK <= 0 {
		return 0
	}
	return -math.Expm1(-uaWPerK / capacityWPerK)
}

// Pass is the temperature in C at which water that enters at inC leaves a stretch
// of coil in surroundings at storeC.
func Pass(inC, storeC, uaWPerK, capacityWPerK float64) float64 {
	return inC + (storeC-inC)*Effectiveness(uaWPerK, capacityWPerK)
}

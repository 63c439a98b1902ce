package coil

// IndirectUA is the coefficient in W/K of an indirect coil with the area in m2,
// the overall coefficient when clean in W/(m2 K), and the fouling resistance in
// m2 K/W of that area:
//
//	UA = A/(1/U + R_f)
//
// Area and clean coefficient must be above 0. The coefficient of a real coil
// grows somewhat with the heat it passes; this is its value near 5 to 8 kW.
func IndirectUA(areaM2, cleanUWPerM2K, foulingM2KPerW float64) float64 {
	return areaM2 / (1/cleanUWPerM2K + foulingM2KPerW)
}

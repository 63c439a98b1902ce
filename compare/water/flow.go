package water

// KgPerLitre is the mass in kg of a litre of water metered at tC.
func KgPerLitre(tC float64) float64 { return DensityKgPerM3(tC) / litresPerCubicM }

// Kg is the mass in kg of litres metered at tC.
func Kg(litres, tC float64) float64 { return litres * KgPerLitre(tC) }

// Litres is the volume in litres of a mass in kg at tC.
func Litres(kg, tC float64) float64 { return kg / KgPerLitre(tC) }

// CapacityRateWPerK is the heat capacity rate m cp in W/K of a flow in litres a
// minute that is metered at tC.
func CapacityRateWPerK(flowLPerMin, tC float64) float64 {
	return flowLPerMin / secondsPerMinute * KgPerLitre(tC) * CpJPerKgK
}

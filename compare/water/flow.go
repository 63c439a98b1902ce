package water

// KgPerLitre is the mass in kg of a litre of water metered at tC.
func KgPerLitre(tC float64) float64 { return DensityKgPerM3(tC) / litresPerCubicM }

// CapacityRateWPerK is the heat capacity rate m cp in W/K of a flow in litres a
// minute that is metered at tC.
func CapacityRateWPerK(flowLPerMin, tC float64) float64 {
	return flowLPerMin / secondsPerMinute * KgPerLitre(tC) * CpJPerKgK
}

package compare

import "dhwcompare/compare/space"

// Defaults of money, carbon and room. Amounts are British pounds with tax. The
// outlays stand in for a quote and are wide ranges from memory, of which the
// middle is taken; results say so as long as they are used.
const (
	defaultMateriality     = 20.0 // currency a year, practice
	defaultHorizonYears    = 20   // years, service life of a vessel, memory
	defaultDiscountPercent = 3.5  // % real, the public-sector rate of the British Green Book (read); a household may want 0 to 7
	defaultEnergyGrowth    = 0.0  // % a year beyond inflation: no forecast

	defaultCompactPurchase      = 1700.0 // 900-2,500, memory, few on the market
	defaultCompactInstallation  = 750.0  // 1,400-3,500 together with the purchase, memory
	defaultCompactDescaling     = 20.0   // a year: 100 every five years in hard water, practice; 0 in soft water
	defaultCompactLife          = 20     // years, 20-25 for a closed store, memory
	defaultCylinderPurchase     = 1450.0 // 900-2,000, memory
	defaultCylinderInstallation = 1050.0 // 1,500-3,500 together with the purchase, memory
	defaultCylinderCheck        = 110.0  // a year: 89-140 for unvented storage on a London trade page (read)
	defaultCylinderLife         = 20     // years, 20-25 for stainless steel, 10-15 for enamelled, memory
	defaultVolumiser            = 300.0  // 150-500, fitted, memory
	defaultUpkeep               = 15.0   // a year: expansion vessel after 8-12 years, mixing valve after 10, memory

	// A year's rent of a square metre: British mean rent of 1,367 a month in January
	// 2026 (read) over about 76 m2 (memory).
	defaultFloorValue = 216.0
	// A square metre of cupboard is worth less than one of a room unless it makes
	// one: judgement.
	defaultFloorShare = 0.5
)

func defaultMoney() Money {
	return Money{
		MaterialityPerYear: defaultMateriality,
		HorizonYears:       defaultHorizonYears, DiscountPercent: defaultDiscountPercent, EnergyGrowthPercent: defaultEnergyGrowth,
		Compact: Outlay{
			Purchase: defaultCompactPurchase, Installation: defaultCompactInstallation, Volumiser: defaultVolumiser,
			UpkeepPerYear: defaultUpkeep, DescalingPerYear: defaultCompactDescaling, LifeYears: defaultCompactLife,
		},
		Cylinder: Outlay{
			Purchase: defaultCylinderPurchase, Installation: defaultCylinderInstallation, Volumiser: defaultVolumiser,
			SafetyCheckPerYear: defaultCylinderCheck, UpkeepPerYear: defaultUpkeep, LifeYears: defaultCylinderLife,
		},
		FloorValuePerM2Year: defaultFloorValue, FloorValueShare: defaultFloorShare,
		CarbonKgPerKWh: defaultCarbon(),
	}
}

// defaultCarbon is of British electricity on a standard tariff, a projection for
// 2020 to 2025: SAP 10.2, Table 12d (read).
func defaultCarbon() [12]float64 {
	return [12]float64{0.163, 0.160, 0.153, 0.143, 0.132, 0.120, 0.111, 0.112, 0.122, 0.136, 0.151, 0.163}
}

// defaultRoom states nothing but a narrow landing in front of the cupboard.
func defaultRoom() Room { return Room{FrontFreeMM: space.DefaultFrontFreeMM} }

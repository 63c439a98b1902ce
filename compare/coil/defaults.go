package coil

const (
	// FoulingM2KPerW is the fouling resistance of a coil in ordinary mains or
	// heating water, in m2 K/W of outside area; 1e-4 to 2e-4 is usual. From memory.
	FoulingM2KPerW = 1.5e-4

	// HardWaterFoulingM2KPerW is the fouling resistance with hard mains water, in
	// m2 K/W of outside area. From memory.
	HardWaterFoulingM2KPerW = 4e-4

	// StainlessWPerMK is the conductivity of austenitic stainless steel, in
	// W/(m K); 15 to 16 is usual. From memory.
	StainlessWPerMK = 15.0

	// CopperWPerMK is the conductivity of copper tube, in W/(m K); 380 to 390 is
	// usual. From memory.
	CopperWPerMK = 385.0

	// IndirectAreaM2 is the area of an indirect coil made for heat pumps, in m2.
	// Common practice, no source.
	IndirectAreaM2 = 3.0

	// IndirectCleanWPerM2K is the overall coefficient of a clean indirect coil, in
	// W/(m2 K); 350 to 450 is usual. Common practice, no source.
	IndirectCleanWPerM2K = 400.0
)

// Corrugated25 is a coil of corrugated stainless tube of nominal size 25 mm, the
// usual kind in a compact store, with ordinary fouling. A length of 25 m has 3.4
// m2 of outside area, holds 12 litres and displaces 19. Dimensions from memory.
func Corrugated25(lengthM float64) Geometry {
	return Geometry{
		LengthM:                lengthM,
		BoreMM:                 25,
		OutsideMM:              31,
		WallMM:                 0.3,
		CoilDiameterM:          0.35,
		AreaFactor:             1.4,
		WallConductivityWPerMK: StainlessWPerMK,
		InsideFactor:           1,
		FoulingM2KPerW:         FoulingM2KPerW,
	}
}

// Smooth22 is a coil of smooth stainless tube, 22 mm with a wall of 1 mm, with
// ordinary fouling. A length of 20 m has 1.4 m2 of outside area. Dimensions from
// memory.
func Smooth22(lengthM float64) Geometry {
	return Geometry{
		LengthM:                lengthM,
		BoreMM:                 20,
		OutsideMM:              22,
		WallMM:                 1,
		CoilDiameterM:          0.30,
		AreaFactor:             1,
		WallConductivityWPerMK: StainlessWPerMK,
		InsideFactor:           1,
		FoulingM2KPerW:         FoulingM2KPerW,
	}
}

package coil

const (
	// FoulingM2KPerW is the fouling resistance of a coil in ordinary mains or
	// heating water, in m2 K/W of outside area; 1e-4 to 2e-4 is usual. From memory.
	FoulingM2KPerW = 1.5e-4

	// StainlessWPerMK is the conductivity of austenitic stainless steel, in
	// W/(m K); 15 to 16 is usual. From memory.
	StainlessWPerMK = 15.0

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

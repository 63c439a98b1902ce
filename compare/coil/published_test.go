package coil

// near says whether got is near want by a share of want.
func near(got, want, share float64) bool {
	return got >= want-share*abs(want) && got <= want+share*abs(want)
}

func abs(v float64) float64 { return max(v, -v) }

// hardWaterM2KPerW is the fouling resistance with hard mains water, in m2 K/W of
// outside area. From memory.
const hardWaterM2KPerW = 4e-4

// smooth22 is a coil of smooth stainless tube, 22 mm with a wall of 1 mm, with
// ordinary fouling. A length of 20 m has 1.4 m2 of outside area.
func smooth22(lengthM float64) Geometry {
	g := Corrugated25(lengthM)
	g.BoreMM, g.OutsideMM, g.WallMM, g.CoilDiameterM, g.AreaFactor = 20, 22, 1, 0.30, 1
	return g
}

// outsideAreaM2 is the surface towards the store, corrugation included.
func outsideAreaM2(g Geometry) float64 { return g.perMetre().outsideM2PerM * g.LengthM }

// testCoil gives the six coils of coil_ua.csv, clean.
func testCoil(letter string) Geometry {
	smooth, corrugated := smooth22(20), Corrugated25(25)
	smooth.FoulingM2KPerW, corrugated.FoulingM2KPerW = 0, 0
	switch letter {
	case "A":
		smooth.BoreMM, smooth.WallMM, smooth.WallConductivityWPerMK = 20.2, 0.9, 385 // copper
	case "C":
		smooth.LengthM, smooth.BoreMM, smooth.OutsideMM, smooth.CoilDiameterM = 25, 26, 28, 0.35
	case "D":
		corrugated.LengthM, corrugated.BoreMM, corrugated.OutsideMM, corrugated.CoilDiameterM = 20, 20, 25, 0.30
		return corrugated
	case "E":
		return corrugated
	case "F":
		corrugated.LengthM = 40
		return corrugated
	}
	return smooth
}

var testLetters = []string{"A", "B", "C", "D", "E", "F"}

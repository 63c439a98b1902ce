package coil

// near says whether got is near want by a share of want.
func near(got, want, share float64) bool {
	return got >= want-share*abs(want) && got <= want+share*abs(want)
}

func abs(v float64) float64 { return max(v, -v) }

// testCoil gives the six coils of coil_ua.csv, clean.
func testCoil(letter string) Geometry {
	smooth, corrugated := Smooth22(20), Corrugated25(25)
	smooth.FoulingM2KPerW, corrugated.FoulingM2KPerW = 0, 0
	switch letter {
	case "A":
		smooth.BoreMM, smooth.WallMM, smooth.WallConductivityWPerMK = 20.2, 0.9, CopperWPerMK
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

package coil

import "math"

const (
	mmPerM          = 1000.0
	litresPerCubicM = 1000.0
)

// Geometry describes an immersed coil of one tube.
type Geometry struct {
	LengthM                float64 // length of tube under water
	BoreMM                 float64 // inside diameter; of corrugated tube, the free bore
	OutsideMM              float64 // outside diameter; of corrugated tube, over the crests
	WallMM                 float64 // thickness of the wall itself
	CoilDiameterM          float64 // of the windings, between tube centres
	AreaFactor             float64 // surface over that of a smooth tube: 1 smooth, 1.3-1.6 corrugated
	WallConductivityWPerMK float64 // of the wall material
	InsideFactor           float64 // inside film over that of a smooth tube: 1 smooth, 1-1.5 corrugated
	FoulingM2KPerW         float64 // fouling resistance, for a square metre of outside area
}

// ContentLitres is the water inside the tube, in litres.
func (g Geometry) ContentLitres() float64 { return cylinderLitres(g.BoreMM, g.LengthM) }

// DisplacedLitres is what the coil takes from the water of the store, in litres:
// tube wall and content together. For corrugated tube it is counted over the
// crests, which is a little too much.
func (g Geometry) DisplacedLitres() float64 { return cylinderLitres(g.OutsideMM, g.LengthM) }

func cylinderLitres(diameterMM, lengthM float64) float64 {
	d := diameterMM / mmPerM
	return math.Pi / 4 * d * d * lengthM * litresPerCubicM
}

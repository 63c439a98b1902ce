package coil

import (
	"errors"
	"fmt"
)

// The largest bore over winding diameter for which the critical Reynolds number
// of a coil is known (Schmidt 1967).
const maxBoreOverCoil = 0.14

// Check says what is wrong with a geometry, every fault at once, or returns nil.
// [UA] and [Fit] are meaningful only for a geometry that passes.
func (g Geometry) Check() error {
	faults := []error{
		within("length_m", g.LengthM, 1, 100, "m"),
		within("bore_mm", g.BoreMM, 8, 60, "mm"),
		within("outside_mm", g.OutsideMM, 8, 80, "mm"),
		within("wall_mm", g.WallMM, 0.1, 5, "mm"),
		within("coil_diameter_m", g.CoilDiameterM, 0.1, 1.5, "m"),
		within("area_factor", g.AreaFactor, 1, 3, "times a smooth tube"),
		within("wall_conductivity_w_per_mk", g.WallConductivityWPerMK, 0.1, 420, "W/(m K)"),
		within("inside_factor", g.InsideFactor, 0.5, 3, "times a smooth tube"),
		within("fouling_m2k_per_w", g.FoulingM2KPerW, 0, 2e-3, "m2 K/W"),
		g.checkTube(),
	}
	return errors.Join(faults...)
}

// checkTube looks at the dimensions that have to fit each other.
func (g Geometry) checkTube() error {
	if g.OutsideMM < g.BoreMM+2*g.WallMM*(1-1e-9) {
		return fmt.Errorf("coil outside_mm %g is less than bore_mm %g and two walls of wall_mm %g: give the diameter over the tube", g.OutsideMM, g.BoreMM, g.WallMM)
	}
	if r := g.boreOverCoil(); r > maxBoreOverCoil {
		return fmt.Errorf("coil bore_mm %g is %.2f of coil_diameter_m %g; at most %g is known to behave as a coil: give wider windings", g.BoreMM, r, g.CoilDiameterM, maxBoreOverCoil)
	}
	return nil
}

// within also refuses what is not a number.
func within(key string, v, low, high float64, unit string) error {
	if v >= low && v <= high {
		return nil
	}
	return fmt.Errorf("coil %s is %g; give %g to %g %s", key, v, low, high, unit)
}

func (g Geometry) boreOverCoil() float64 { return g.BoreMM / mmPerM / g.CoilDiameterM }

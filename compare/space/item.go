// Package space measures what an option takes of a home: the floor, the litres
// of a cupboard and the weight, with everything that has to stand beside the
// vessel, and says whether it fits the room there is and what blocks it.
package space

import (
	"fmt"
	"math"
)

// Item is one thing that needs a place.
type Item struct {
	Name string
	// WidthMM, DepthMM and HeightMM are the outer dimensions as it stands,
	// insulation included, millimetres.
	WidthMM, DepthMM, HeightMM float64
	// Clearances are free space kept for fitting and service, millimetres: on each
	// side, in front, and above.
	ClearSideMM, ClearFrontMM, ClearAboveMM float64
	// WeightFullKg is the weight with all its water; WaterL the litres it holds.
	WeightFullKg, WaterL float64
	// Above marks a small thing that hangs on the wall above those that stand on
	// the floor, and so takes no floor of its own.
	Above bool
}

// check refuses dimensions that are no dimensions.
func (i *Item) check() error {
	for _, d := range []struct {
		name    string
		value   float64
		minimum bool // must be more than zero
	}{
		{"width_mm", i.WidthMM, true}, {"depth_mm", i.DepthMM, true}, {"height_mm", i.HeightMM, true},
		{"side clearance_mm", i.ClearSideMM, false}, {"front clearance_mm", i.ClearFrontMM, false},
		{"clearance above_mm", i.ClearAboveMM, false}, {"full weight_kg", i.WeightFullKg, false}, {"water_l", i.WaterL, false},
	} {
		if err := checkLength(i.Name, d.name, d.value, d.minimum); err != nil {
			return err
		}
	}
	return nil
}

// largestMM is beyond any room: a larger figure is a slip of unit.
const largestMM = 20_000

func checkLength(owner, name string, v float64, positive bool) error {
	if math.IsNaN(v) || v < 0 || v > largestMM || positive && v == 0 {
		least := "0"
		if positive {
			least = "more than 0"
		}
		return fmt.Errorf("%s: %s %g: must be from %s to %d; check the unit", owner, name, v, least, largestMM)
	}
	return nil
}

// gravity turns a mass into a load, m/s2.
const gravity = 9.81

// LoadKN is the weight of the full item as a force on the floor, kN.
func (i *Item) LoadKN() float64 { return i.WeightFullKg * gravity / 1000 }

package space

import (
	"fmt"
	"math"
)

// DefaultCylinder gives generic outer dimensions of a cylinder from its litres
// (120 to 300): the middle of ranges from memory, interpolated between sizes.
// Outside the range there is no default: the dimensions have to be given.
func DefaultCylinder(litres float64) (Item, error) {
	return fromSizes("cylinder", cylinderSizes(), litres)
}

// DefaultCompact gives generic outer dimensions of a compact store from its
// litres (50 to 150), as DefaultCylinder.
func DefaultCompact(litres float64) (Item, error) {
	return fromSizes("compact store", compactSizes(), litres)
}

func fromSizes(name string, sizes []size, litres float64) (Item, error) {
	first, last := sizes[0], sizes[len(sizes)-1]
	if !(litres >= first.litres && litres <= last.litres) {
		return Item{}, fmt.Errorf("%s of %g l: default dimensions reach from %g to %g l; give width, depth, height and weight",
			name, litres, first.litres, last.litres)
	}
	k := 1
	for litres > sizes[k].litres {
		k++
	}
	share := (litres - sizes[k-1].litres) / (sizes[k].litres - sizes[k-1].litres)
	between := func(of func(size) float64) float64 {
		return of(sizes[k-1])*(1-share) + of(sizes[k])*share
	}
	diameter := between(func(s size) float64 { return (s.diameterLow + s.diameterTop) / 2 })
	empty := between(func(s size) float64 { return (s.emptyLow + s.emptyTop) / 2 })
	return Item{
		Name:         name,
		WidthMM:      diameter,
		DepthMM:      diameter,
		HeightMM:     between(func(s size) float64 { return (s.heightLow + s.heightTop) / 2 }),
		ClearSideMM:  vesselSideMM,
		ClearFrontMM: vesselFrontMM,
		ClearAboveMM: vesselAboveMM,
		WeightFullKg: empty + kgPerL*litres,
		WaterL:       litres,
	}, nil
}

// DefaultVolumiser gives a slim tank of the stated litres (10 to 100) beside a
// vessel, for a heating circuit that holds too little water by itself. A small one
// hangs on the wall, a larger one stands. Its height follows from the volume of its
// bore.
func DefaultVolumiser(litres float64) (Item, error) {
	if !(litres >= 10 && litres <= 100) {
		return Item{}, fmt.Errorf("volumiser of %g l: must be from 10 to 100", litres)
	}
	const outer = volumiserInnerMM + 2*volumiserInsulationMM
	bore := math.Pi / 4 * volumiserInnerMM * volumiserInnerMM
	return Item{
		Name:         "volumiser",
		WidthMM:      outer,
		DepthMM:      outer,
		HeightMM:     litres*mm3PerL/bore + 2*volumiserInsulationMM,
		ClearSideMM:  fittingSideMM,
		ClearFrontMM: volumiserFrontMM,
		ClearAboveMM: volumiserAboveMM,
		WeightFullKg: litres * (kgPerL + volumiserKgPerL),
		WaterL:       litres,
		Above:        litres <= volumiserHangsL,
	}, nil
}

package space

import "errors"

// Footprint is the room that a set of items takes.
type Footprint struct {
	// WidthMM, DepthMM and HeightMM are the envelope: side clearances and what is
	// above are in it, the free space in front is not.
	WidthMM, DepthMM, HeightMM float64
	// FrontMM is the free depth needed in front of the envelope for service. With
	// a cupboard it lies outside the open door.
	FrontMM float64
	// FloorAreaM2 is the floor with all clearances, the front included; StandM2 is
	// the floor of the envelope alone, what a cupboard would take.
	FloorAreaM2, StandM2 float64
	// CupboardL is the volume of the envelope, litres.
	CupboardL float64
	// WeightFullKg and WaterL are sums over all items.
	WeightFullKg, WaterL float64
	// LargestLoadKN is the weight of the heaviest item as a force on one place of
	// the floor; compare it with FloorCheckKN.
	LargestLoadKN float64

	standing []Item
}

// NeedsFloorCheck reports whether one item alone exceeds the concentrated load
// that the floor of a home is usually designed for, so that the joists want a
// look by somebody qualified.
func (f *Footprint) NeedsFloorCheck() bool { return f.LargestLoadKN > FloorCheckKN }

// Measure arranges the items and gives the room that they take.
//
// The arrangement is simple, common practice without a source:
//   - what stands on the floor stands in one row along the width, in the order
//     given; two neighbours share the larger of their side clearances;
//   - all keep their backs to one wall, so the deepest item gives the depth, and
//     the largest front clearance the free space in front;
//   - what hangs above hangs in rows above the tallest standing item, in the order
//     given, as many side by side as the width holds. It may use the clearance
//     above the standing items, which is kept free for just such fittings.
//
// At least one item has to stand on the floor.
func Measure(items []Item) (Footprint, error) {
	var f Footprint
	var hanging []Item
	for _, i := range items {
		if err := i.check(); err != nil {
			return Footprint{}, err
		}
		f.count(i)
		if i.Above {
			hanging = append(hanging, i)
		} else {
			f.standing = append(f.standing, i)
		}
	}
	if len(f.standing) == 0 {
		return Footprint{}, errors.New("nothing stands on the floor: give the vessel as an item that does not hang above")
	}
	f.standInRow()
	f.hangInRows(hanging)
	f.areas()
	return f, nil
}

func (f *Footprint) count(i Item) {
	f.WeightFullKg += i.WeightFullKg
	f.WaterL += i.WaterL
	f.DepthMM = max(f.DepthMM, i.DepthMM)
	f.FrontMM = max(f.FrontMM, i.ClearFrontMM)
	f.LargestLoadKN = max(f.LargestLoadKN, i.LoadKN())
}

func (f *Footprint) standInRow() {
	f.WidthMM = rowWidth(f.standing)
	for _, i := range f.standing {
		f.HeightMM = max(f.HeightMM, i.HeightMM+i.ClearAboveMM)
	}
}

// rowWidth is the width of items side by side, with their clearances.
func rowWidth(row []Item) float64 {
	width, last := 0.0, 0.0
	for _, i := range row {
		width += max(last, i.ClearSideMM) + i.WidthMM
		last = i.ClearSideMM
	}
	return width + last
}

func (f *Footprint) hangInRows(hanging []Item) {
	top := 0.0
	for _, i := range f.standing {
		top = max(top, i.HeightMM)
	}
	for len(hanging) > 0 {
		n := 1
		for n < len(hanging) && rowWidth(hanging[:n+1]) <= f.WidthMM {
			n++
		}
		row := hanging[:n]
		hanging = hanging[n:]
		f.WidthMM = max(f.WidthMM, rowWidth(row))
		top += rowHeight(row)
	}
	f.HeightMM = max(f.HeightMM, top)
}

func rowHeight(row []Item) float64 {
	height := 0.0
	for _, i := range row {
		height = max(height, i.HeightMM+i.ClearAboveMM)
	}
	return height
}

// Square millimetres in a square metre; cubic millimetres in a litre.
const (
	mm2PerM2 = 1e6
	mm3PerL  = 1e6
)

func (f *Footprint) areas() {
	f.StandM2 = f.WidthMM * f.DepthMM / mm2PerM2
	f.FloorAreaM2 = f.WidthMM * (f.DepthMM + f.FrontMM) / mm2PerM2
	f.CupboardL = f.WidthMM * f.DepthMM * f.HeightMM / mm3PerL
}

package heatpump

import "strings"

// Range is a span of outdoor air and leaving water temperatures.
type Range struct {
	OutdoorMinC, OutdoorMaxC float64
	LeavingMinC, LeavingMaxC float64
}

// Extrapolation says in which directions a working point lies outside the data
// behind the map: a set of bits, zero inside.
type Extrapolation uint8

// The directions, and whether the map gave up following them.
const (
	ColderAir    Extrapolation = 1 << iota // outdoor air below the data
	WarmerAir                              // outdoor air above the data
	CoolerWater                            // leaving water below the data
	HotterWater                            // leaving water above the data
	HeldAtLimits                           // so far out that the nearest value is used instead
)

// Has reports whether any of the given bits is set.
func (e Extrapolation) Has(bits Extrapolation) bool { return e&bits != 0 }

// String names the directions, or gives "none".
func (e Extrapolation) String() string {
	if e == 0 {
		return "none"
	}
	var names []string
	for i, name := range [...]string{"colder air", "warmer air", "cooler water", "hotter water", "held at limits"} {
		if e.Has(1 << i) {
			names = append(names, name)
		}
	}
	return strings.Join(names, ", ")
}

func (r *Range) beyond(outdoorC, leavingC float64) Extrapolation {
	var e Extrapolation
	if outdoorC < r.OutdoorMinC {
		e |= ColderAir
	}
	if outdoorC > r.OutdoorMaxC {
		e |= WarmerAir
	}
	if leavingC < r.LeavingMinC {
		e |= CoolerWater
	}
	if leavingC > r.LeavingMaxC {
		e |= HotterWater
	}
	return e
}

func (u *Unit) extrapolation(outdoorC, leavingC float64) Extrapolation {
	e := u.covered.beyond(outdoorC, leavingC)
	if e == 0 {
		return 0
	}
	liftHeld := u.table == nil && leavingC < outdoorC+smallestLiftK
	if liftHeld || u.held.beyond(outdoorC, leavingC) != 0 {
		e |= HeldAtLimits
	}
	return e
}

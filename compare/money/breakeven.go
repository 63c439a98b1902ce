package money

import "math"

// BreakEven is the factor on all energy prices at which two options cost the same,
//
//	x = (fixed_b - fixed_a) / (energy_a - energy_b)
//
// and false if there is none: if both use energy for the same money, or the lines
// meet only at a price below zero. At a factor of 0 they meet if energy alone
// tells them apart.
func BreakEven(a, b Cost) (float64, bool) {
	gap := a.Energy - b.Energy
	if gap == 0 {
		return 0, false
	}
	x := (b.Fixed() - a.Fixed()) / gap
	if !(x >= 0) || math.IsInf(x, 0) {
		return 0, false
	}
	return x + 0, true // no negative zero
}

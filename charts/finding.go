package charts

import (
	"math"

	"dhwcompare/compare"
)

// finding is what can be said of a difference, compact store minus cylinder.
type finding int

const (
	same finding = iota // no real difference
	more
	less
	unsettled
)

// negligibleShare of the larger of two values is too little to speak of. A
// judgement of this package, for figures that have no limit in the case.
const negligibleShare = 0.01

// find holds the interval of a difference against what is negligible, and then
// against zero. Without an interval the difference itself has to speak.
func find(s compare.DifferenceSpread, larger float64) finding {
	band := negligibleShare * math.Abs(larger)
	low, high := min(s.CILow, s.CIHigh), max(s.CILow, s.CIHigh)
	switch {
	case low >= -band && high <= band:
		return same
	case low > 0:
		return more
	case high < 0:
		return less
	default:
		return unsettled
	}
}

// differenceOf gives the spread of a figure's difference; a comparison without it
// has the difference alone.
func differenceOf(cmp *compare.Comparison, name string, gap float64) compare.DifferenceSpread {
	if s, ok := cmp.Difference.Spread[name]; ok {
		return s
	}
	return compare.DifferenceSpread{Spread: compare.Spread{Mean: gap, CILow: gap, CIHigh: gap}}
}

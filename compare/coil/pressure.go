package coil

import "math"

const (
	dropFlowLPerMin = 15.0  // the flow at which pressure drops are stated
	kPaPerBar       = 100.0 // definition
)

// LargestFlow is the largest flow in l/min that the mains can push through what
// stands between it and the outlet: no more than mainsLPerMin, and no more than
// uses up the dynamic pressure, in bar, in the drops, stated in kPa at 15 l/min
// and growing with the square of the flow:
//
//	dp = (flow/15)^2 sum(dp_15)
//
// The dynamic pressure is that left at the home while water runs. Without drops
// the mains alone decides; without pressure nothing flows.
func LargestFlow(mainsLPerMin, dynamicBar float64, dropsKPaAt15 ...float64) float64 {
	sum := 0.0
	for _, d := range dropsKPaAt15 {
		sum += d
	}
	if sum <= 0 {
		return mainsLPerMin
	}
	return min(mainsLPerMin, dropFlowLPerMin*math.Sqrt(max(dynamicBar, 0)*kPaPerBar/sum))
}

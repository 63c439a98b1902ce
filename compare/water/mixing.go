package water

// Mix is what a mixing device makes of the water that it is given: the share of
// hot water, by mass, and the mixed temperature in C. A device holds the wanted
// temperature only while the hot side is at least marginK warmer (see
// [ShowerMarginK]; a manual tap has none, it can be turned fully to hot); marginK
// must not be negative.
//
//	T_mix = max(T_cold, min(T_want, T_hot - margin))
//	share = (T_mix - T_cold)/(T_hot - T_cold)
//
// Below that the mixed water stays marginK cooler than the hot water, so it
// falls kelvin by kelvin with it: without a jump, and never rising as the hot
// water cools. For a manual tap (no margin) this reads: hot water cooler than
// asked comes as it is. The share is always within 0..1 and always agrees with
// the temperature. Water is never colder than the cold side: when the hot side
// has nothing left to give, the share is 0.
func Mix(wantC, hotC, coldC, marginK float64) (share, mixedC float64) {
	mixedC = min(wantC, hotC-marginK)
	if mixedC <= coldC {
		return 0, coldC
	}
	return (mixedC - coldC) / (hotC - coldC), mixedC
}

package household

import "math"

// logNormal turns a standard normal variate into a log-normal one with the stated
// mean; spread is the standard deviation of its logarithm. A spread of 0 gives
// the mean itself.
func logNormal(mean, spread, z float64) float64 {
	return mean * math.Exp(spread*z-spread*spread/2)
}

// wholeNumber turns a mean rate a day into a whole number for one day: the rate
// rounded down, and one more with the chance that makes the mean right. A higher
// rate never gives fewer.
func wholeNumber(rate, u float64) int { return int(rate + u) }

// poisson turns one uniform variate into a Poisson number by inverting its
// distribution, so that a higher mean never gives fewer. Means up to some hundreds
// are fine: beyond 700 exp(-mean) would vanish.
func poisson(mean, u float64) int {
	chance := math.Exp(-mean)
	sum := chance
	n := 0
	// The sum of rounded terms may stay below a u next to 1: stop far in the tail.
	last := int(mean+12*math.Sqrt(mean)) + 12
	for u >= sum && n < last {
		n++
		chance *= mean / float64(n)
		sum += chance
	}
	return n
}

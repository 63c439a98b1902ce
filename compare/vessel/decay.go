package vessel

import "math"

// decay is 1 - exp(-x) for x of zero or more. Most steps are short, and their x
// small: there four terms of the series are exact to the last digit and need no
// exponential.
func decay(x float64) float64 {
	const small = 1e-3 // the term left out, x^5/120, is below 1e-17
	if x < small {
		return x * (1 - x*(1.0/2-x*(1.0/6-x*(1.0/24))))
	}
	return -math.Expm1(-x)
}

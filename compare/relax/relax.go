// Package relax is the exponential approach to a new value, the one function that
// every balance of heat asks for at every step.
package relax

import "math"

// Share is the part of the way covered after x time constants, x zero or more:
//
//	1 - exp(-x)
//
// Most steps are short, and their x small: there a few terms of the series are
// exact to the last digit and need no exponential.
func Share(x float64) float64 {
	const small = 0.008 // the term left out, x^6/5040 of the whole, is below 1e-16
	if x < small {
		return x * (1 - x*(1.0/2-x*(1.0/6-x*(1.0/24-x*(1.0/120-x*(1.0/720))))))
	}
	return -math.Expm1(-x)
}

// MeanShare is the mean of Share over 0 to x:
//
//	1 - (1 - exp(-x))/x
func MeanShare(x float64) float64 {
	const small = 0.008 // the term left out, x^6/40320 of the whole, is below 1e-17
	if x < small {
		return x * (1.0/2 - x*(1.0/6-x*(1.0/24-x*(1.0/120-x*(1.0/720-x*(1.0/5040))))))
	}
	return 1 + math.Expm1(-x)/x
}

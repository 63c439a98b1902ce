// Package relax is the exponential approach to a new value, the one function that
// every balance of heat asks for at every step.
package relax

import "math"

// Share is the part of the way covered after x time constants, x zero or more:
//
//	1 - exp(-x) = 2t/(1+t),  t = tanh(x/2)
//
// Up to one time constant, where nearly all steps lie, tanh is its continued
// fraction (Lambert 1768) cut after seven terms, which is exact to the last digit
// there and costs one division; beyond, the library's exponential.
func Share(x float64) float64 {
	const longest = 1 // the error of the fraction grows as x^14: 2e-16 at 1
	if x > longest {
		return 1 - math.Exp(-x)
	}
	y := x / 2
	s := y * y
	above := y * (135135 + s*(17325+s*(378+s)))
	below := 135135 + s*(62370+s*(3150+s*28))
	return 2 * above / (below + above)
}

// MeanShare is the mean of Share over 0 to x:
//
//	1 - (1 - exp(-x))/x
func MeanShare(x float64) float64 {
	const small = 0.008 // the term left out, x^6/40320 of the whole, is below 1e-17
	if x < small {
		return x * (1.0/2 - x*(1.0/6-x*(1.0/24-x*(1.0/120-x*(1.0/720-x*(1.0/5040))))))
	}
	return 1 - Share(x)/x
}

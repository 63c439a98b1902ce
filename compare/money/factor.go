// Package money holds the formulas of life-cycle cost: what payments of many
// years are worth today, and what one yearly payment is worth as much as they.
//
// Everything is real, in today's money: rates and growth are those beyond
// general inflation. Payments fall at the ends of years; year 0 is today.
package money

import "math"

// DiscountFactor is what a payment of 1 at the end of year n is worth today,
//
//	D = (1 + r)^-n
//
// for a real rate r as a share, above -1, and n of 0 or more. Textbook, from
// memory; EN 15459-1 uses the same. At or below -1 it is not a number: Check
// refuses such a rate.
func DiscountFactor(rate float64, years int) float64 {
	return math.Exp(-float64(years) * math.Log1p(rate))
}

// PresentValueFactor is what payments of 1 at the ends of years 1 to n are worth
// today,
//
//	f = (1 - (1 + r)^-n) / r, and n for r = 0
//
// with the ranges and the source of DiscountFactor. It keeps its digits for rates
// close to 0.
func PresentValueFactor(rate float64, years int) float64 {
	n := float64(years)
	if rate == 0 {
		return n
	}
	return -math.Expm1(-n*math.Log1p(rate)) / rate
}

// AnnuityFactor is the yearly payment over n years, at least 1, that is worth 1
// today, a = 1/f with f of PresentValueFactor.
func AnnuityFactor(rate float64, years int) float64 { return 1 / PresentValueFactor(rate, years) }

// RealRate is the rate beyond inflation j of a nominal rate R, both shares,
//
//	r = (1 + R)/(1 + j) - 1
//
// the exact form; j must be above -1. Textbook, from memory.
func RealRate(nominal, inflation float64) float64 { return (nominal - inflation) / (1 + inflation) }

// GrowingFactor is what n yearly payments are worth today for each 1 of a payment
// at today's price, if the price grows by e a year beyond inflation and the first
// payment, at the end of year 1, has grown once:
//
//	g = (1 + e)/(r - e) (1 - ((1 + e)/(1 + r))^n), and n for r = e
//
// which is PresentValueFactor at the rate (1 + r)/(1 + e) - 1. Both shares must
// be above -1. Textbook, from memory.
func GrowingFactor(rate, growth float64, years int) float64 {
	return PresentValueFactor(RealRate(rate, growth), years)
}

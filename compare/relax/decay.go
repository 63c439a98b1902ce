package relax

import "math"

// decay is exp(-x) for x from zero to some hundred, to a few units of the last digit
// and in a third of the time of the library's, without a branch: of the halvings
//
//	exp(-x) = 2^-m 2^(-j/32) exp(-r),  x = (m + j/32) ln 2 + r
//
// the whole ones are an exponent, those of a thirty-second part come from a table, and
// what is left, at most ln 2/64, is a short series.
func decay(x float64) float64 {
	const (
		perHalving = 32
		// ln 2/32 in two parts: the first so short that its multiples are exact.
		stepHigh = 0x1.62e42fefp-6
		stepLow  = math.Ln2/perHalving - stepHigh
	)
	k := int64(x*(perHalving/math.Ln2) + 0.5)
	r := (x - float64(k)*stepHigh) - float64(k)*stepLow
	rr := r * r
	series := (1 - r) + rr*((1.0/2-r*(1.0/6))+rr*((1.0/24-r*(1.0/120))+rr*(1.0/720)))
	exponent := math.Float64frombits(uint64(1023-k>>5) << 52)
	return halvings[k&(perHalving-1)] * series * exponent
}

// halvings are 2^(-j/32).
var halvings = func() (h [32]float64) {
	for j := range h {
		h[j] = math.Exp2(-float64(j) / 32)
	}
	return h
}()

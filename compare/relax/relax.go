// Package relax is the exponential approach to a new value, the one function that
// every balance of heat asks for at every step.
package relax

// Share is the part of the way covered after x time constants, x zero or more:
//
//	1 - exp(-x) = 2t/(1+t),  t = tanh(x/2)
//
// Up to one time constant, where nearly all steps lie, tanh is its continued
// fraction (Lambert 1768) cut after seven terms, which is exact to the last digit
// there and costs one division; beyond, see decay.
func Share(x float64) float64 {
	if x > longest {
		return farShare(x)
	}
	const short = 1.0 / 64 // the term left out, x^7/40320 of the whole, is below 1e-17
	if x < short {
		xx := x * x
		return x * ((1 - x*(1.0/2)) + xx*((1.0/6-x*(1.0/24))+xx*((1.0/120-x*(1.0/720))+xx*(1.0/5040))))
	}
	return x * ratio(x)
}

// farShare is Share beyond one time constant. Beyond forty, exp(-x) no longer changes a
// float64 near one.
func farShare(x float64) float64 {
	const settled = 40
	if !(x <= settled) {
		return 1
	}
	return 1 - decay(x)
}

// ratio is Share(x)/x up to one time constant.
func ratio(x float64) float64 {
	y := x / 2
	s := y * y
	above := 135135 + s*(17325+s*(378+s))
	below := 135135 + s*(62370+s*(3150+s*28))
	return above / (below + y*above)
}

// longest is how far the fraction goes: its error grows as x^14 and is 2e-16 there.
const longest = 1

// Shares gives [Share] and its mean over 0 to x:
//
//	1 - (1 - exp(-x))/x
func Shares(x float64) (share, mean float64) {
	const small = 0.008 // the term left out, x^6/40320 of the whole, is below 1e-17
	switch {
	case x < small:
		return Share(x), x * (1.0/2 - x*(1.0/6-x*(1.0/24-x*(1.0/120-x*(1.0/720-x*(1.0/5040))))))
	case x <= longest:
		r := ratio(x)
		return x * r, 1 - r
	default:
		share = farShare(x)
		return share, 1 - share/x
	}
}

// Memo is [Share] or [Shares], not both, for one place in a march whose steps are often
// alike: the last answer is kept. The zero Memo is ready.
type Memo struct{ x, share, mean float64 }

// Share is the function of the same name.
func (m *Memo) Share(x float64) float64 {
	if x != m.x {
		m.x, m.share = x, Share(x)
	}
	return m.share
}

// Shares is the function of the same name.
func (m *Memo) Shares(x float64) (share, mean float64) {
	if x != m.x {
		m.x = x
		m.share, m.mean = Shares(x)
	}
	return m.share, m.mean
}

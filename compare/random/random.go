// Package random gives every part of the simulation its own repeatable stream
// of random numbers, keyed by what the numbers are for.
//
// A stream depends on its key alone: not on other streams, on the order in
// which they are opened or on the number of workers. So a household-day can be
// drawn anywhere, in any order, and two cases that share a seed meet the same
// chances (common random numbers). To keep that true, draw standard variates,
// always the same number of them, and scale afterwards.
package random

import "math/rand/v2"

// Stream opens the stream of one purpose on one day of one year. Days and years
// may be negative; the purpose is a short fixed word such as "weather". Each
// call starts the stream anew, and the result must not be shared between
// goroutines.
//
// The four parts of the key are hashed one after the other into two 64-bit
// words, which become the 128-bit state of the PCG generator of math/rand/v2.
// Within a word each part enters through a bijection, so two keys that differ
// only in seed, only in year or only in day never meet; for any other two keys
// the chance is that of a 128-bit hash.
func Stream(seed uint64, year, day int, purpose string) *rand.Rand {
	return rand.New(rand.NewPCG(
		key(firstWord, seed, year, day, purpose),
		key(secondWord, seed, year, day, purpose),
	))
}

// Starting values of the two hashed words: the fractions of the square roots of
// 2 and 3 in 64 bits, chosen only because they are plainly unrelated.
const (
	firstWord  uint64 = 0x6a09e667f3bcc908
	secondWord uint64 = 0xbb67ae8584caa73b
)

func key(start, seed uint64, year, day int, purpose string) uint64 {
	h := absorb(start, seed)
	h = absorb(h, uint64(year))
	h = absorb(h, uint64(day))
	for i := range len(purpose) {
		h = absorb(h, uint64(purpose[i]))
	}
	return h
}

// absorb mixes one value into a hash. The added odd constant keeps an all-zero
// key from staying zero.
func absorb(h, v uint64) uint64 {
	const golden = 0x9e3779b97f4a7c15 // 2^64 divided by the golden ratio, made odd
	return mix(h + golden ^ mix(v+golden))
}

// mix is a bijection of 64-bit words in which each bit of the input flips about
// half of the bits of the output: the finaliser of the SplitMix64 generator
// (Steele, Lea and Flood 2014; constants of Stafford's variant 13, from memory).
func mix(x uint64) uint64 {
	x ^= x >> 30
	x *= 0xbf58476d1ce4e5b9
	x ^= x >> 27
	x *= 0x94d049bb133111eb
	return x ^ x>>31
}

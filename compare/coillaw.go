package compare

import (
	"sync"

	"dhwcompare/compare/coil"
)

// fittedLaws keeps what was fitted last: a run makes the same coil anew for every
// change that it tries, and a fit takes as long as a month of a year.
var fittedLaws = lawCache{laws: map[coil.Geometry]coil.FastLaw{}}

// lawCache keeps the laws of some coils. It may be used from several goroutines.
type lawCache struct {
	mu   sync.Mutex
	laws map[coil.Geometry]coil.FastLaw
}

// mostLaws bounds the memory of a batch of homes that all have other coils.
const mostLaws = 64

// of gives the law of a coil.
func (k *lawCache) of(g coil.Geometry) coil.FastLaw {
	k.mu.Lock()
	defer k.mu.Unlock()
	law, known := k.laws[g]
	if !known {
		if len(k.laws) >= mostLaws {
			clear(k.laws)
		}
		law = coil.Fit(g)
		k.laws[g] = law
	}
	return law
}

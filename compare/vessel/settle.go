package vessel

// pool is a run of layers that have mixed.
type pool struct {
	sum   float64
	count int
}

// settle mixes inverted layers until no layer is warmer than one above it: a
// lighter layer never stays below a denser one. Layers that mix take their
// common mean, so heat is conserved exactly. The result does not depend on the
// order of mixing (pooling of adjacent violators).
//
// Warmer is taken as lighter. Between 0 and 4 deg C water is the other way
// round by at most 0.013 % of density; mains water that cold is colder than
// everything else in the vessel, and the difference is left out.
func settle(temps []float64, pools []pool) {
	if ordered(temps) {
		return
	}
	top := -1
	for _, t := range temps {
		top++
		pools[top] = pool{sum: t, count: 1}
		for top > 0 && warmer(pools[top-1], pools[top]) {
			pools[top-1].sum += pools[top].sum
			pools[top-1].count += pools[top].count
			top--
		}
	}
	spread(temps, pools[:top+1])
}

func ordered(temps []float64) bool {
	for i := 1; i < len(temps); i++ {
		if temps[i-1] > temps[i] {
			return false
		}
	}
	return true
}

// warmer compares means without a division.
func warmer(lower, upper pool) bool {
	return lower.sum*float64(upper.count) > upper.sum*float64(lower.count)
}

func spread(temps []float64, pools []pool) {
	i := 0
	for _, p := range pools {
		mean := p.sum / float64(p.count)
		for range p.count {
			temps[i] = mean
			i++
		}
	}
}

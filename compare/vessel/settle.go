package vessel

// settle mixes inverted layers until no layer is warmer than one above it: a
// lighter layer never stays below a denser one. Layers that mix take their
// common mean, so heat is conserved exactly. The result does not depend on the
// order of mixing (pooling of adjacent violators).
//
// Warmer is taken as lighter. Between 0 and 4 deg C water is the other way
// round by at most 0.013 % of density; mains water that cold is colder than
// everything else in the vessel, and the difference is left out.
func settle(temps []float64) {
	below := temps[0]
	for i := 1; i < len(temps); i++ {
		if below > temps[i] {
			i = pool(temps, i)
		}
		below = temps[i]
	}
}

// calm settles the column if anything has disturbed it.
func (c *column) calm() {
	if c.disturbed {
		settle(c.temps)
		c.disturbed = false
	}
}

// pool mixes the layers around an inversion, the one at i lying below a warmer one,
// with all neighbours that this makes inverted in turn, and gives the last of them.
func pool(temps []float64, i int) (last int) {
	low, high := i-1, i
	sum, count := temps[low]+temps[high], 2.0
	for {
		switch {
		case high+1 < len(temps) && temps[high+1]*count < sum:
			high++
			sum += temps[high]
		case low > 0 && temps[low-1]*count > sum:
			low--
			sum += temps[low]
		default:
			mean := sum / count
			for k := low; k <= high; k++ {
				temps[k] = mean
			}
			return high
		}
		count++
	}
}

package vessel

import "dhwcompare/compare/relax"

// zone is the part of a column that an inlet keeps stirred.
type zone struct {
	layers int     // whole layers
	part   float64 // of the next
}

// stir gives the zone of a share of the volume. A share below one layer stirs
// nothing.
func (c *column) stir(share float64) zone {
	n := len(c.temps)
	x := share * float64(n)
	if x < 1 || c.firstOrder {
		return zone{}
	}
	layers := min(int(x), n)
	return zone{layers: layers, part: x - float64(layers)}
}

// flush passes a volume, in layers, at inC through the stirred layers, and gives
// the mean temperature of what leaves them: one body of one temperature, exactly.
//
//	T = T_in + (T_0 - T_in) exp(-v/V)
func (z zone) flush(temps []float64, volume, inC float64) (outC float64) {
	if z.layers == 0 {
		return inC
	}
	sum := 0.0
	for _, t := range temps {
		sum += t
	}
	layers := float64(z.layers)
	above := (sum/layers - inC) * relax.Share(volume/layers) // what the zone gives up
	for i := range temps {
		temps[i] = sum/layers - above
	}
	return inC + above*layers/volume
}

// fringe mixes the stirred layers with the next, of which a part belongs to the
// zone, by exchange in proportion to the flow: none for no part, and the whole of
// the layer as the part goes to one. Heat is conserved exactly.
func (z zone) fringe(temps []float64, next *float64, volume float64) {
	if z.layers == 0 || z.part == 0 {
		return
	}
	layers := float64(z.layers)
	pair := layers / (layers + 1)
	moved := (*next - temps[0]) * pair * relax.Share(z.part/(1-z.part)*volume/pair)
	*next -= moved
	for i := range temps {
		temps[i] += moved / layers
	}
}

package vessel

import "dhwcompare/compare/relax"

// zone is the part of a column that an inlet keeps stirred.
type zone struct {
	layers int     // whole layers
	part   float64 // of the next
	whole  passage // of one layer's volume
}

// passage is what a volume does on its way through a zone.
type passage struct {
	flushed float64 // share of the zone's heat that it carries on
	evened  float64 // share of the difference to the next layer that evens out
}

// stir gives the zone of a share of the volume. A share below one layer stirs
// nothing.
func (c *column) stir(share float64) zone {
	n := len(c.temps)
	x := share * float64(n)
	if x < 1 {
		return zone{}
	}
	layers := min(int(x), n)
	z := zone{layers: layers, part: x - float64(layers)}
	z.whole = z.passageOf(1)
	return z
}

// passageOf works out what a volume, in layers, does. Flow from a heat pump mostly
// moves by whole layers.
func (z *zone) passageOf(volume float64) passage {
	if volume == 1 && z.whole != (passage{}) {
		return z.whole
	}
	layers := float64(z.layers)
	p := passage{flushed: relax.Share(volume / layers)}
	if z.part > 0 {
		p.evened = z.pair() * relax.Share(z.part/(1-z.part)*volume/z.pair())
	}
	return p
}

// pair is the share of the layers that lie in the zone, of the zone and the next.
func (z *zone) pair() float64 { return float64(z.layers) / float64(z.layers+1) }

// flush passes a volume, in layers, at inC through the stirred layers, and gives
// the mean temperature of what leaves them: one body of one temperature, exactly.
//
//	T = T_in + (T_0 - T_in) exp(-v/V)
func (z *zone) flush(temps []float64, volume, inC float64, p passage) (outC float64) {
	sum := 0.0
	for _, t := range temps {
		sum += t
	}
	layers := float64(z.layers)
	above := (sum/layers - inC) * p.flushed // what the zone gives up
	for i := range temps {
		temps[i] = sum/layers - above
	}
	return inC + above*layers/volume
}

// fringe mixes the stirred layers with the next, of which a part belongs to the
// zone, by exchange in proportion to the flow: none for no part, and the whole of
// the layer as the part goes to one. Heat is conserved exactly.
func (z *zone) fringe(temps []float64, next *float64, p passage) {
	if p.evened == 0 {
		return
	}
	moved := (*next - temps[0]) * p.evened
	*next -= moved
	for i := range temps {
		temps[i] += moved / float64(z.layers)
	}
}

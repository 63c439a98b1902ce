package vessel

import "dhwcompare/compare/relax"

// zone is the part of a column that an inlet keeps stirred.
type zone struct {
	layers   int     // whole layers
	part     float64 // of the next
	flushing relax.Memo
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
	return zone{layers: layers, part: x - float64(layers)}
}

// flush passes a volume, in layers, at inC through the stirred layers, and gives
// the mean temperature of what leaves them: one body of one temperature, exactly.
//
//	T = T_in + (T_0 - T_in) exp(-v/V)
func (z *zone) flush(stirred []float64, volume, inC float64) (outC float64) {
	layers, bodyC := float64(len(stirred)), mean(stirred)
	flushed := z.flushing.Share(volume / layers)
	above := (bodyC - inC) * flushed // what the zone gives up
	for i := range stirred {
		stirred[i] = bodyC - above
	}
	return inC + above*layers/volume
}

func mean(temps []float64) float64 {
	sum := 0.0
	for _, t := range temps {
		sum += t
	}
	return sum / float64(len(temps))
}

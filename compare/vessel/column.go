package vessel

import (
	"dhwcompare/compare/relax"
	"dhwcompare/compare/water"
)

// column is a body of water in equal layers, bottom first, with what happens
// along its height whatever the kind of vessel: through-flow, stirring at an
// inlet, conduction, loss and buoyancy.
type column struct {
	temps      []float64
	owed       advance // of the layer that moves, see through.go
	portion    float64 // of a layer that leaves at one temperature
	goneC      float64 // of the layer that left last
	way        int     // of the water that passes, 1 for up and -1 for down
	layerKg    float64 // water in one layer
	layerJPerK float64
	mixPerS    float64 // conduction between neighbours, 1/s
	lossPerS   float64 // loss to the room, 1/s
	inlet      zone    // stirred by what flows in
	losing     relax.Memo
	unstoodS   float64 // time for which conduction and loss are still to be counted
	disturbed  bool    // lighter water may lie below denser
	firstOrder bool    // plain upwind flow: every layer fully stirred (tests)
}

// newColumn makes a column of n layers that holds litres of water (at density
// kgPerL), heightM high, with the stated effective conductivity and loss.
func newColumn(n int, litres, heightM, conductivityWPerMK, lossWPerK float64) column {
	kg := litres * water.VesselKgPerLitre / float64(n)
	capacity := kg * water.CpJPerKgK
	layerM := heightM / float64(n)
	areaM2 := litres / 1000 / heightM
	return column{
		temps:      make([]float64, n),
		layerKg:    kg,
		portion:    1,
		way:        1,
		layerJPerK: capacity,
		mixPerS:    conductivityWPerMK * areaM2 / layerM / capacity,
		lossPerS:   lossWPerK / float64(n) / capacity,
	}
}

// fillWith changes the specific heat of what the column holds from that of water;
// conduction and loss stay what they are in watts.
func (c *column) fillWith(cpJPerKgK float64) {
	share := cpJPerKgK / water.CpJPerKgK
	c.layerJPerK *= share
	c.mixPerS /= share
	c.lossPerS /= share
}

// primaryCp is the specific heat of heating water whose heat content is the given
// share of that of water; 0 counts as 1.
func primaryCp(share float64) float64 {
	if share == 0 {
		share = 1
	}
	return share * water.CpJPerKgK
}

func (c *column) fill(tempC float64) {
	for i := range c.temps {
		c.temps[i] = tempC
	}
	c.owed, c.goneC, c.unstoodS = advance{}, tempC, 0
}

// snapshot adds all that the column remembers to a list, restore takes it from
// the front of one and gives the rest.
func (c *column) snapshot(list []float64) []float64 {
	a := &c.owed
	return append(append(list, c.temps...), a.kg, a.inC, a.moreKK, a.outC, a.fallK, c.goneC, c.unstoodS)
}

func (c *column) restore(list []float64) (rest []float64) {
	n := copy(c.temps, list)
	c.disturbed = true
	c.owed = advance{list[n], list[n+1], list[n+2], list[n+3], list[n+4]}
	c.goneC, c.unstoodS = list[n+5], list[n+6]
	return list[n+7:]
}

func (c *column) heatJ() float64 {
	sum := 0.0
	for _, t := range c.temps {
		sum += t
	}
	return (sum + c.owed.heatKgK()/c.layerKg) * c.layerJPerK
}

// warm heats the layer at a height by an electric element; what gets lighter than
// the water above rises when the column settles.
func (c *column) warm(height, heatJ float64) {
	c.temps[c.layerAt(height)] += heatJ / c.layerJPerK
	c.disturbed = true
}

func (c *column) layerAt(height float64) int {
	n := len(c.temps)
	return max(0, min(int(height*float64(n)), n-1))
}

// nearC is the mean of the layer at a height.
func (c *column) nearC(height float64) float64 { return c.temps[c.layerAt(height)] }

// AboveJPerK implements Vessel.
func (c *column) AboveJPerK(height float64) float64 {
	return float64(len(c.temps)-c.layerAt(height)) * c.layerJPerK
}

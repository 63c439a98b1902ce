package vessel

import (
	"math"
)

// CylinderParams describes a cylinder.
type CylinderParams struct {
	VolumeL            float64 // hot water held
	HeightM            float64 // inside height
	Layers             int
	LossWPerK          float64 // standing loss
	ConductivityWPerMK float64 // effective, along the height
	InletMixingShare   float64 // share of the volume stirred by incoming mains water
	CoilUAWPerK        float64 // indirect coil, fouled
	CoilTop            float64 // top of the coil, as a share of the height
	PrimaryShare       float64 // heat content of the heating water over that of water; 0 counts as 1
	CoilBottom         float64 // bottom of the coil, as a share of the height
}

// Cylinder is a vessel of drinking water: mains water enters at the bottom, hot
// water leaves from the top, heat comes through an indirect coil in its lower
// part. The heating water inside that coil is not counted as storage.
type Cylinder struct {
	column
	stirShare float64
	coilUA    float64
	primaryCp float64   // of the heating water, J/(kg K)
	overlap   []float64 // share of the coil in each layer, from coilFirst up
	coilFirst int
	passedAt  float64   // primary flow for which passed holds
	passed    []float64 // share of the temperature difference left after a layer
	passedAll float64   // product of passed
}

// NewCylinder makes a cylinder at 0 deg C; see Fill.
func NewCylinder(p CylinderParams) *Cylinder {
	c := &Cylinder{
		column:    newColumn(p.Layers, p.VolumeL, p.HeightM, p.ConductivityWPerMK, p.LossWPerK),
		stirShare: p.InletMixingShare,
		coilUA:    p.CoilUAWPerK,
		primaryCp: primaryCp(p.PrimaryShare),
		passedAt:  math.NaN(),
	}
	c.placeCoil(p.CoilBottom, p.CoilTop)
	return c
}

// placeCoil spreads the coil evenly over its height.
func (c *Cylinder) placeCoil(bottom, top float64) {
	n := len(c.temps)
	c.coilFirst = -1
	for i := range n {
		low, high := float64(i)/float64(n), float64(i+1)/float64(n)
		share := (math.Min(high, top) - math.Max(low, bottom)) / (top - bottom)
		if share <= 0 {
			continue
		}
		if c.coilFirst < 0 {
			c.coilFirst = i
		}
		c.overlap = append(c.overlap, share)
	}
	c.passed = make([]float64, len(c.overlap))
}

// setPrimary works out how much of the temperature difference between primary
// water and a layer is left behind each layer: exp(-NTU) of the coil in it
// (effectiveness of a stream in a body of one temperature).
func (c *Cylinder) setPrimary(kgPerS float64) {
	if kgPerS == c.passedAt {
		return
	}
	c.passedAt, c.passedAll = kgPerS, 1
	for i, share := range c.overlap {
		c.passed[i] = math.Exp(-c.coilUA * share / (kgPerS * c.primaryCp))
		c.passedAll *= c.passed[i]
	}
}

// StepLimitS implements Vessel.
func (c *Cylinder) StepLimitS(drawKgPerS, primaryKgPerS float64) float64 {
	limit := math.Inf(1)
	if drawKgPerS > 0 {
		limit = c.layerKg / drawKgPerS
	}
	if primaryKgPerS > 0 {
		// A layer may take up a tenth of its difference to the primary water.
		const share = 0.1
		limit = math.Min(limit, share*c.layerJPerK*float64(len(c.overlap))/c.coilUA)
	}
	return limit
}

// OutletC implements Vessel.
func (c *Cylinder) OutletC() float64 {
	n := len(c.temps)
	return c.next(c.temps[max(n-3, 0)], c.temps[max(n-2, 0)], c.temps[n-1])
}

// ReturnLine implements Vessel: primary water passes the coil from top to
// bottom.
func (c *Cylinder) ReturnLine(primaryKgPerS float64) (slope, interceptC float64) {
	c.setPrimary(primaryKgPerS)
	t := 0.0
	for i := len(c.passed) - 1; i >= 0; i-- {
		layer := c.temps[c.coilFirst+i]
		t = layer + (t-layer)*c.passed[i]
	}
	return c.passedAll, t
}

// Step implements Vessel.
func (c *Cylinder) Step(f Flows) Result {
	r := Result{LossJ: c.loseBefore(&f)}
	if f.PrimaryKgPerS > 0 {
		r.PrimaryInJ = c.heatFromCoil(f)
	}
	r.DrawOutC = c.OutletC()
	if f.DrawKgPerS > 0 {
		r.DrawOutC = c.riseThrough(f.DrawKgPerS*f.DtS, f.MainsC, c.stirShare)
	}
	if f.ImmersionW > 0 {
		c.warm(f.ImmersionHeight, f.ImmersionW*f.DtS)
	}
	c.even(f.DtS, f.moving())
	r.LossJ += c.loseRest(&f)
	settle(c.temps, c.pools)
	if f.DrawKgPerS == 0 {
		c.beyondC = c.temps[len(c.temps)-1]
	}
	return r
}

func (c *Cylinder) heatFromCoil(f Flows) (heatJ float64) {
	c.setPrimary(f.PrimaryKgPerS)
	capacity := f.PrimaryKgPerS * c.primaryCp * f.DtS
	t := f.FlowInC
	for i := len(c.passed) - 1; i >= 0; i-- {
		layer := &c.temps[c.coilFirst+i]
		left := *layer + (t-*layer)*c.passed[i]
		*layer += capacity * (t - left) / c.layerJPerK
		t = left
	}
	return capacity * (f.FlowInC - t)
}

// AtC implements Vessel.
func (c *Cylinder) AtC(height float64) float64 { return c.atC(height) }

// HeatJ implements Vessel.
func (c *Cylinder) HeatJ() float64 { return c.heatJ() }

// Fill implements Vessel.
func (c *Cylinder) Fill(tempC float64) { c.fill(tempC) }

// Snapshot implements Vessel.
func (c *Cylinder) Snapshot() []float64 { return c.snapshot(nil) }

// Restore implements Vessel.
func (c *Cylinder) Restore(temps []float64) { c.restore(temps) }

package vessel

import (
	"math"

	"dhwcompare/compare/relax"
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
	coilUA    float64
	primaryCp float64   // of the heating water, J/(kg K)
	overlap   []float64 // share of the coil in each layer, from coilFirst up
	coilFirst int
	chargingS float64 // longest step while heating water passes
	setKgPerS float64 // flow and length of the step for which taken and left hold
	setS      float64
	taken     []float64 // share of its difference to the primary water that a layer makes up
	left      []float64 // share of that difference left in the water behind a layer
	slope     float64   // of all of it, left behind the coil
	weights   []float64 // of the layers in the temperature behind the coil
}

// NewCylinder makes a cylinder at 0 deg C; see Fill.
func NewCylinder(p CylinderParams) *Cylinder {
	c := &Cylinder{
		column:    newColumn(p.Layers, p.VolumeL, p.HeightM, p.ConductivityWPerMK, p.LossWPerK),
		coilUA:    p.CoilUAWPerK,
		primaryCp: primaryCp(p.PrimaryShare),
		setKgPerS: math.NaN(),
	}
	c.inlet = c.stir(p.InletMixingShare)
	c.portion = drawnPortion
	c.placeCoil(p.CoilBottom, p.CoilTop)
	return c
}

// drawnPortion is the part of a layer that is drawn at one temperature: a front that is
// steep within some layers is felt at the tap in smaller steps.
const drawnPortion = 1.0 / 2

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
		const rounding = 1e-12 // layers of one share are worked out once, see setStep
		if last := len(c.overlap) - 1; last >= 0 && math.Abs(share-c.overlap[last]) < rounding {
			share = c.overlap[last]
		}
		c.overlap = append(c.overlap, share)
	}
	c.taken, c.left = make([]float64, len(c.overlap)), make([]float64, len(c.overlap))
	c.weights = make([]float64, len(c.overlap))
	// A layer may take up a seventh of its difference to the primary water.
	const share = 1.0 / 7
	c.chargingS = share * c.layerJPerK * float64(len(c.overlap)) / c.coilUA
}

// setStep works out how much of its difference to the primary water a layer makes
// up in a step, and how much of that difference is left in the water behind it: a
// stream in a body of one temperature keeps exp(-NTU) of it, and the layer warms
// while the stream passes, so that it takes less and less. A step of no length
// takes nothing from the layers.
func (c *Cylinder) setStep(kgPerS, dt float64) {
	if kgPerS == c.setKgPerS && dt == c.setS {
		return
	}
	c.setKgPerS, c.setS = kgPerS, dt
	capacity := kgPerS * c.primaryCp
	for i, share := range c.overlap {
		if i > 0 && share == c.overlap[i-1] {
			c.taken[i], c.left[i] = c.taken[i-1], c.left[i-1]
			continue
		}
		effectiveness := -math.Expm1(-c.coilUA * share / capacity)
		c.taken[i], c.left[i] = 0, 1-effectiveness
		if dt > 0 {
			c.taken[i] = relax.Share(dt * capacity * effectiveness / c.layerJPerK)
			c.left[i] = 1 - c.taken[i]*c.layerJPerK/(capacity*dt)
		}
	}
	c.slope = 1
	for i, left := range c.left {
		c.weights[i] = c.slope * (1 - left)
		c.slope *= left
	}
}

// StepLimitS implements Vessel.
func (c *Cylinder) StepLimitS(drawKgPerS, primaryKgPerS float64) float64 {
	limit := math.Inf(1)
	if drawKgPerS > 0 {
		limit = c.toComplete(1) / drawKgPerS
	}
	if primaryKgPerS > 0 {
		limit = lesser(limit, c.chargingS)
	}
	return limit
}

// OutletC implements Vessel.
func (c *Cylinder) OutletC() float64 { return c.leavesC() }

// ReturnLine implements Vessel: primary water passes the coil from top to
// bottom. Of a step longer than the vessel takes it is that of the first.
func (c *Cylinder) ReturnLine(primaryKgPerS, dtS float64) (slope, interceptC float64) {
	c.setStep(primaryKgPerS, lesser(dtS, c.chargingS))
	layers := c.temps[c.coilFirst:][:len(c.weights)]
	even, odd := 0.0, 0.0 // two sums need not wait for each other
	for i := 0; i+1 < len(layers); i += 2 {
		even += c.weights[i] * layers[i]
		odd += c.weights[i+1] * layers[i+1]
	}
	if last := len(layers) - 1; last%2 == 0 {
		even += c.weights[last] * layers[last]
	}
	return c.slope, even + odd
}

// Step implements Vessel.
func (c *Cylinder) Step(f *Flows) Result {
	r := Result{}
	if f.PrimaryKgPerS > 0 {
		r.PrimaryInJ = c.heatFromCoil(f)
	}
	if f.DrawKgPerS > 0 {
		r.DrawOutC = c.pass(f.DrawKgPerS*f.DtS, f.MainsC)
	} else {
		c.land()
		c.calm()
		r.DrawOutC = c.OutletC()
	}
	if f.ImmersionW > 0 {
		c.warm(f.ImmersionHeight, f.ImmersionW*f.DtS)
	}
	r.LossJ = c.stand(f.DtS, f.RoomC, f.moving())
	c.calm()
	return r
}

func (c *Cylinder) heatFromCoil(f *Flows) (heatJ float64) {
	c.setStep(f.PrimaryKgPerS, f.DtS)
	c.disturbed = true
	t := f.FlowInC
	layers, taken := c.temps[c.coilFirst:][:len(c.left)], c.taken[:len(c.left)]
	for i := len(c.left) - 1; i >= 0; i-- {
		layer, left := layers[i], c.left[i]
		layers[i] = layer + (t-layer)*taken[i]
		t = t*left + layer*(1-left)
	}
	return f.PrimaryKgPerS * c.primaryCp * f.DtS * (f.FlowInC - t)
}

// AtC implements Vessel.
func (c *Cylinder) AtC(height float64) float64 { return c.atC(height) }

// NearC implements Vessel.
func (c *Cylinder) NearC(height float64) float64 { return c.nearC(height) }

// HeatJ implements Vessel.
func (c *Cylinder) HeatJ() float64 { return c.heatJ() }

// Fill implements Vessel.
func (c *Cylinder) Fill(tempC float64) { c.fill(tempC) }

// Snapshot implements Vessel.
func (c *Cylinder) Snapshot() []float64 { return c.snapshot(nil) }

// Restore implements Vessel.
func (c *Cylinder) Restore(temps []float64) { c.restore(temps) }

package vessel

import (
	"math"

	"dhwcompare/compare/coil"
	"dhwcompare/compare/relax"
)

// CompactParams describes a compact store.
type CompactParams struct {
	VolumeL            float64 // heating water and coil together
	HeightM            float64 // inside height
	Layers             int
	LossWPerK          float64      // standing loss
	ConductivityWPerMK float64      // effective, along the height
	InletMixingShare   float64      // share of the volume stirred by the flow from the heat pump
	CoilWaterL         float64      // mains water held in the coil
	CoilDisplacedL     float64      // what the coil takes away from the heating water
	CoilLaw            coil.FastLaw // heat transfer of the whole coil
	PrimaryShare       float64      // heat content of the heating water over that of water; 0 counts as 1
}

// Compact is a body of heating water that is never drawn off. The heat pump
// charges it directly: flow in at the top, return out at the bottom. Mains water
// passes once through a coil from bottom to top; the water that stands in the
// coil takes part in the balance, because a draw-off begins with it.
type Compact struct {
	column
	coil       column      // the water in the coil, one cell for each layer
	primaryCp  float64     // of the heating water, J/(kg K)
	law        *coil.Table // heat transfer while water flows
	stillWPerK float64     // and while none does
	pairPerJK  float64     // 1/capacity of a layer + 1/that of its coil cell
	fromLayer  float64     // parts of their difference that layer and coil cell
	toCoil     float64     // make up until they are even
}

// NewCompact makes a compact store at 0 deg C; see Fill.
func NewCompact(p CompactParams) *Compact {
	s := &Compact{
		column:     newColumn(p.Layers, p.VolumeL-p.CoilDisplacedL, p.HeightM, p.ConductivityWPerMK, p.LossWPerK),
		coil:       newColumn(p.Layers, p.CoilWaterL, p.HeightM, 0, 0),
		law:        p.CoilLaw.Table(),
		stillWPerK: p.CoilLaw.StillWPerK,
	}
	s.inlet = s.stir(p.InletMixingShare)
	s.primaryCp = primaryCp(p.PrimaryShare)
	s.column.fillWith(s.primaryCp)
	s.pairPerJK = 1/s.layerJPerK + 1/s.coil.layerJPerK
	s.fromLayer, s.toCoil = 1/(s.pairPerJK*s.layerJPerK), 1/(s.pairPerJK*s.coil.layerJPerK)
	return s
}

// How many layers of heating water may pass in one step, without and with a
// draw-off.
const (
	mostLayers    = 3
	layersDrawing = 2
)

// StepLimitS implements Vessel: mains water moves by no more than one cell, heating
// water by a few.
func (s *Compact) StepLimitS(drawKgPerS, primaryKgPerS float64) float64 {
	limit := math.Inf(1)
	layers := float64(mostLayers)
	if drawKgPerS > 0 {
		limit, layers = s.coil.layerKg/drawKgPerS, layersDrawing
	}
	if primaryKgPerS > 0 {
		limit = math.Min(limit, layers*s.layerKg/primaryKgPerS)
	}
	return limit
}

// OutletC implements Vessel.
func (s *Compact) OutletC() float64 { return s.coil.temps[len(s.coil.temps)-1] }

// ReturnLine implements Vessel: the return is the water at the bottom.
func (s *Compact) ReturnLine(float64, float64) (slope, interceptC float64) {
	last := len(s.temps) - 1
	return 0, s.next(s.temps[min(2, last)], s.temps[min(1, last)], s.temps[0])
}

// Step implements Vessel.
func (s *Compact) Step(f Flows) Result {
	r := Result{LossJ: s.loseMidway(&f), DrawOutC: s.OutletC()}
	if f.DrawKgPerS > 0 {
		r.DrawOutC = s.draw(&f)
	} else {
		s.exchange(s.stillWPerK, f.DtS)
	}
	if f.PrimaryKgPerS > 0 {
		r.PrimaryInJ = s.charge(&f)
	}
	if f.ImmersionW > 0 {
		s.warm(f.ImmersionHeight, f.ImmersionW*f.DtS)
	}
	s.even(f.DtS, f.moving())
	settle(s.temps)
	if f.PrimaryKgPerS == 0 {
		s.beyondC = s.temps[0]
	}
	return r
}

// draw passes mains water up through the coil and gives the mean temperature of what
// leaves.
func (s *Compact) draw(f *Flows) (outC float64) {
	uaWPerK := s.law.UA(f.DrawKgPerS*secondsPerMinute/kgPerLCold, s.meanC())
	outC = advectUp(s.coil.temps, f.DrawKgPerS*f.DtS/s.coil.layerKg, f.MainsC, s.OutletC(), false)
	s.exchange(uaWPerK, f.DtS)
	return outC
}

// charge passes primary water down through the store, no more than a layer at a
// time: whole layers first, which only shift the others.
func (s *Compact) charge(f *Flows) (heatJ float64) {
	kg := f.PrimaryKgPerS * f.DtS
	outKgK := 0.0
	for left := kg; left > wholeCell*kg; {
		part := min(left, s.layerKg)
		outKgK += part * s.sinkThrough(part, f.FlowInC)
		left -= part
	}
	return s.primaryCp * (kg*f.FlowInC - outKgK)
}

// exchange lets each layer and the coil water in it approach each other with
// their exact common relaxation. A parcel of mains water that stays dt in each
// of n layers of one temperature leaves with exactly 1 - exp(-UA/(m cp)) of the
// temperature difference.
func (s *Compact) exchange(uaWPerK, dt float64) {
	perLayer := uaWPerK / float64(len(s.temps))
	share := relax.Share(perLayer * dt * s.pairPerJK)
	fromLayer, toCoil := s.fromLayer*share, s.toCoil*share
	temps := s.temps
	inCoil := s.coil.temps[:len(temps)]
	for i, t := range temps {
		gap := t - inCoil[i]
		temps[i] = t - gap*fromLayer
		inCoil[i] += gap * toCoil
	}
}

func (s *Compact) meanC() float64 { return s.column.heatJ() / (s.layerJPerK * float64(len(s.temps))) }

// AtC implements Vessel: the temperature of the heating water.
func (s *Compact) AtC(height float64) float64 { return s.atC(height) }

// HeatJ implements Vessel: heating water and coil water.
func (s *Compact) HeatJ() float64 { return s.column.heatJ() + s.coil.heatJ() }

// Fill implements Vessel.
func (s *Compact) Fill(tempC float64) {
	s.fill(tempC)
	s.coil.fill(tempC)
}

// Snapshot implements Vessel.
func (s *Compact) Snapshot() []float64 { return s.coil.snapshot(s.column.snapshot(nil)) }

// Restore implements Vessel.
func (s *Compact) Restore(temps []float64) { s.coil.restore(s.column.restore(temps)) }

package vessel

import (
	"math"

	"dhwcompare/compare/coil"
	"dhwcompare/compare/relax"
	"dhwcompare/compare/water"
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
	relaxing   relax.Memo
}

// NewCompact makes a compact store at 0 deg C; see Fill.
func NewCompact(p CompactParams) *Compact {
	s := &Compact{
		column:     newColumn(p.Layers, p.VolumeL-p.CoilDisplacedL, p.HeightM, p.ConductivityWPerMK, p.LossWPerK),
		coil:       newColumn(p.Layers, p.CoilWaterL, p.HeightM, 0, 0),
		law:        p.CoilLaw.Table(),
		stillWPerK: p.CoilLaw.StillWPerK,
	}
	s.way = -1
	s.inlet = s.stir(p.InletMixingShare)
	s.primaryCp = primaryCp(p.PrimaryShare)
	s.column.fillWith(s.primaryCp)
	s.pairPerJK = 1/s.layerJPerK + 1/s.coil.layerJPerK
	s.fromLayer, s.toCoil = 1/(s.pairPerJK*s.layerJPerK), 1/(s.pairPerJK*s.coil.layerJPerK)
	return s
}

// mostLayers is how many layers of heating water may pass in one step.
const mostLayers = 3

// StepLimitS implements Vessel: mains water moves by no more than one cell, heating
// water by a few.
func (s *Compact) StepLimitS(drawKgPerS, primaryKgPerS float64) float64 {
	limit := math.Inf(1)
	if drawKgPerS > 0 {
		limit = s.coil.toComplete(1) / drawKgPerS
	}
	if primaryKgPerS > 0 {
		limit = lesser(limit, s.toComplete(mostLayers)/primaryKgPerS)
	}
	return limit
}

// OutletC implements Vessel.
func (s *Compact) OutletC() float64 { return s.coil.leavesC() }

// ReturnLine implements Vessel: the return is the water at the bottom, layer after
// layer.
func (s *Compact) ReturnLine(primaryKgPerS, dtS float64) (slope, interceptC float64) {
	return 0, s.leaving(primaryKgPerS * dtS)
}

// leaving is the mean temperature of the next kg of heating water to leave, if nothing
// changes until then.
func (s *Compact) leaving(kg float64) (meanC float64) {
	left, sum := kg, 0.0
	if s.owed.kg > 0 || kg == 0 {
		if kg <= s.owed.kg {
			return s.leavesC()
		}
		left -= s.owed.kg
		sum = s.owed.kg * s.owed.outC
	}
	for _, t := range s.temps {
		part := lesser(left, s.layerKg)
		sum += part * t
		if left -= part; left <= 0 {
			break
		}
	}
	return sum / (kg - left)
}

// Step implements Vessel.
func (s *Compact) Step(f *Flows) Result {
	r := Result{DrawOutC: s.OutletC()}
	if f.DrawKgPerS > 0 {
		r.DrawOutC = s.draw(f)
	} else {
		// What water that never came took from the lowest layer goes back to it.
		s.temps[0] += s.coil.goBack() * water.CpJPerKgK / s.layerJPerK
		s.exchange(s.stillWPerK, f.DtS)
	}
	if f.PrimaryKgPerS > 0 {
		r.PrimaryInJ = s.charge(f)
	} else {
		s.land()
	}
	if f.ImmersionW > 0 {
		s.warm(f.ImmersionHeight, f.ImmersionW*f.DtS)
	}
	r.LossJ = s.stand(f.DtS, f.RoomC, f.moving())
	s.calm()
	return r
}

// draw passes mains water up through the coil and gives the mean temperature of what
// leaves.
func (s *Compact) draw(f *Flows) (outC float64) {
	uaWPerK := s.law.UA(f.DrawKgPerS*secondsPerMinute/kgPerLCold, s.meanC())
	outC = s.coil.pass(f.DrawKgPerS*f.DtS, f.MainsC)
	s.exchange(uaWPerK, f.DtS)
	return outC
}

// charge passes primary water down through the store.
func (s *Compact) charge(f *Flows) (heatJ float64) {
	kg := f.PrimaryKgPerS * f.DtS
	return s.primaryCp * kg * (f.FlowInC - s.pass(kg, f.FlowInC))
}

// exchange lets each layer and the coil water in it approach each other with
// their exact common relaxation. A parcel of mains water that stays dt in each
// of n layers of one temperature leaves with exactly 1 - exp(-UA/(m cp)) of the
// temperature difference.
func (s *Compact) exchange(uaWPerK, dt float64) {
	perLayer := uaWPerK / float64(len(s.temps))
	share := s.relaxing.Share(perLayer * dt * s.pairPerJK)
	fromLayer, toCoil := s.fromLayer*share, s.toCoil*share
	s.disturbed = true
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

// NearC implements Vessel: the temperature of the heating water.
func (s *Compact) NearC(height float64) float64 { return s.nearC(height) }

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

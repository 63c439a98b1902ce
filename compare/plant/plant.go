package plant

import (
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
	"dhwcompare/compare/water"
)

// Plant is one option with its present state.
type Plant struct {
	params  Params
	vessel  vessel.Vessel
	loop    loop
	legs    []leg
	sensorC float64
	running bool
	changeS float64 // when the heat pump last started or stopped
	busyS   float64 // when water last moved
	nowS    float64 // the plant's clock
	active  []drawing

	primaryKgPerS float64
	primaryWPerK  float64
}

// New makes a plant at rest: vessel at its setpoint, pipes at room temperature.
func New(p Params) *Plant {
	kgPerS := p.Loop.FlowLPerMin / secondsPerMinute * water.VesselKgPerLitre
	pl := &Plant{
		params:        p,
		vessel:        p.Vessel,
		loop:          newLoop(p.Loop),
		legs:          make([]leg, len(p.Supply.DeadLegsL)),
		changeS:       -p.Control.AntiCycleS,
		active:        make([]drawing, 0, 8),
		primaryKgPerS: kgPerS,
		primaryWPerK:  kgPerS * water.CpJPerKgK,
	}
	for i, litres := range p.Supply.DeadLegsL {
		pl.legs[i] = leg{kg: litres * water.VesselKgPerLitre, tempC: p.RoomC}
	}
	pl.loop.tempC = p.RoomC
	pl.Charge(p.Control.SetpointC)
	return pl
}

// Charge sets the whole vessel and its sensor to one temperature.
func (p *Plant) Charge(tempC float64) {
	p.vessel.Fill(tempC)
	p.sensorC = tempC
}

// State is everything that a plant remembers.
type State struct {
	vessel               []float64
	loopC                float64
	legs                 []leg
	sensorC              float64
	running              bool
	changeS, busyS, nowS float64
}

// State copies the plant's state out. Draw-offs in progress are not part of it:
// Run ends them.
func (p *Plant) State() State {
	return State{
		vessel: p.vessel.Snapshot(), loopC: p.loop.tempC, legs: append([]leg(nil), p.legs...),
		sensorC: p.sensorC, running: p.running, changeS: p.changeS, busyS: p.busyS, nowS: p.nowS,
	}
}

// Restore brings a state back.
func (p *Plant) Restore(s State) {
	p.vessel.Restore(s.vessel)
	p.loop.tempC = s.loopC
	copy(p.legs, s.legs)
	p.sensorC, p.running = s.sensorC, s.running
	p.changeS, p.busyS, p.nowS = s.changeS, s.busyS, s.nowS
	p.active = p.active[:0]
}

// setClock moves the plant's clock to t with everything it remembers: a stretch
// of time may follow any other.
func (p *Plant) setClock(t float64) {
	shift := t - p.nowS
	p.changeS += shift
	p.busyS += shift
	for i := range p.legs {
		p.legs[i].atS += shift
	}
	p.nowS = t
}

// heatJ is all heat in the plant's water and metal, above 0 deg C.
func (p *Plant) heatJ() float64 {
	sum := p.vessel.HeatJ() + p.loop.heatJ()
	for i := range p.legs {
		sum += p.legs[i].heatJ()
	}
	return sum
}

// Vessel gives the plant's vessel, for tests and pictures.
func (p *Plant) Vessel() vessel.Vessel { return p.vessel }

// point gives what the heat pump would do now in steady running.
func (p *Plant) point(outdoorC, outputCap, targetC float64) (heatpump.Point, float64, float64) {
	slope, intercept := p.vessel.ReturnLine(p.primaryKgPerS)
	returnC := slope*p.loop.tempC + intercept
	pt := p.params.HeatPump.At(outdoorC, returnC, p.primaryWPerK, outputCap, targetC)
	return pt, slope, intercept
}

package plant

import (
	"math"

	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
	"dhwcompare/compare/water"
)

// duty is what the compressor runs for.
type duty int

const (
	idle     duty = iota // standstill
	forWater             // hot water
	forHouse             // heating
)

// Plant is one option with its present state.
type Plant struct {
	params Params
	vessel vessel.Vessel
	active []drawing
	memory

	primaryKgPerS float64
	primaryWPerK  float64
}

// memory is what a plant remembers from step to step, beside its vessel.
type memory struct {
	loop        loop
	legs        []leg
	sensorC     float64
	duty        duty
	loopOfHouse bool    // the loop was last used for heating
	changeS     float64 // when hot water last began or ended
	startS      float64 // when the compressor last started
	rise        heatpump.Rise
	riseS       float64 // time for which rise holds
	holdS       float64 // hot water waits until then for a house that needs heat
	overrunS    float64 // until when the pump runs on
	nowS        float64 // the plant's clock
	boosting    bool    // the immersion heater helps
	frost       frostState
	hygiene     hygieneState
	room        room
}

// New makes a plant at rest: vessel at its setpoint, pipes and rooms at room
// temperature.
func New(p Params) *Plant {
	if p.Loop.CapacityShare == 0 {
		p.Loop.CapacityShare = 1
	}
	if p.pace == (pace{}) {
		p.pace = ownPace
	}
	kgPerS := p.Loop.FlowLPerMin / secondsPerMinute * water.VesselKgPerLitre
	pl := &Plant{
		params:        p,
		vessel:        p.Vessel,
		active:        make([]drawing, 0, 8),
		primaryKgPerS: kgPerS,
		primaryWPerK:  kgPerS * water.CpJPerKgK * p.Loop.CapacityShare,
	}
	pl.loop = newLoop(p.Loop)
	pl.loop.tempC = p.RoomC
	pl.legs = make([]leg, len(p.Supply.DeadLegsL))
	for i, litres := range p.Supply.DeadLegsL {
		pl.legs[i] = leg{kg: litres * water.VesselKgPerLitre, tempC: p.RoomC}
	}
	pl.changeS = -p.Control.AntiCycleS
	pl.room.tempC = p.House.RoomC
	pl.hygiene.dueS = p.Hygiene.FirstS
	pl.Charge(p.Control.SetpointC)
	return pl
}

// Charge sets the whole vessel and its sensor to one temperature.
func (p *Plant) Charge(tempC float64) {
	p.vessel.Fill(tempC)
	p.sensorC = tempC
}

// WarmLoop sets the loop between heat pump and vessel to one temperature.
func (p *Plant) WarmLoop(tempC float64) { p.loop.tempC = tempC }

// State is everything that a plant remembers.
type State struct {
	vessel []float64
	memory memory
}

// State copies the plant's state out. Draw-offs in progress are not part of it:
// Run ends them.
func (p *Plant) State() State {
	s := State{vessel: p.vessel.Snapshot(), memory: p.memory}
	s.memory.legs = append([]leg(nil), p.legs...)
	return s
}

// Restore brings a state back.
func (p *Plant) Restore(s State) {
	p.vessel.Restore(s.vessel)
	legs := p.legs
	p.memory = s.memory
	p.legs = legs
	copy(p.legs, s.memory.legs)
	p.active = p.active[:0]
}

// setClock moves the plant's clock to t with everything it remembers: a stretch
// of time may follow any other.
func (p *Plant) setClock(t float64) {
	shift := t - p.nowS
	for _, moment := range []*float64{&p.changeS, &p.startS, &p.holdS, &p.overrunS, &p.hygiene.dueS, &p.hygiene.sinceS} {
		*moment += shift
	}
	for i := range p.legs {
		p.legs[i].atS += shift
	}
	p.riseS = math.NaN() // to be worked out anew
	p.nowS = t
}

// heatJ is all heat that the hot-water side holds, above 0 deg C.
func (p *Plant) heatJ() float64 {
	sum := p.vessel.HeatJ()
	if !p.loopOfHouse {
		sum += p.loop.heatJ()
	}
	for i := range p.legs {
		sum += p.legs[i].heatJ()
	}
	return sum
}

// houseLoopJ is the heat in the loop while the house owns it.
func (p *Plant) houseLoopJ() float64 {
	if p.loopOfHouse {
		return p.loop.heatJ()
	}
	return 0
}

// level replaces working conditions in the COP by the same for both options.
func (p *Plant) level(pt *heatpump.Point, outdoorC float64) {
	waterC, share := pt.LeavingC, pt.Share
	if p.params.Level.WaterC > 0 {
		waterC = p.params.Level.WaterC
	}
	if p.params.Level.Share > 0 {
		share = p.params.Level.Share
	}
	pt.COP = p.params.HeatPump.COP(outdoorC, waterC, share)
	pt.ElectricityW = pt.OutputW / pt.COP
}

// RoomSetC gives the room temperature that heating keeps.
func (p *Plant) RoomSetC() float64 { return p.params.House.RoomC }

// LoopHeldJ gives the heat in the loop while hot water owns it, joules above 0 deg C.
func (p *Plant) LoopHeldJ() float64 { return p.loop.heatJ() - p.houseLoopJ() }

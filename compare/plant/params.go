// Package plant marches one option through any stretch of time: a vessel, the
// heat pump that charges it, the loop between them, the controls, the house that
// the same heat pump heats, and the draw-offs. The same engine serves a year, a
// cold spell and a timed test.
//
// It gives a Ledger: facts about energy, starts and draw-offs, with neither
// money nor opinion.
package plant

import (
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
)

// Params describes one option. Vessel must be fresh: the plant owns it. What is
// left zero is not there: no frost, no immersion heater, no disinfection, no
// house.
type Params struct {
	Vessel    vessel.Vessel
	HeatPump  *heatpump.Unit
	Start     heatpump.Start
	Loop      Loop
	Control   Control
	Supply    Supply
	Service   Service
	Power     Power
	Frost     Frost
	Immersion Immersion
	Hygiene   Hygiene
	House     House
	RoomC     float64 // air around the vessel and indoor pipes
	Level     Level

	pace pace // zero: ownPace
}

// Loop is the heating water between heat pump and vessel, and its metal.
type Loop struct {
	WaterL           float64 // water in the unit, its exchanger and the pipes both ways
	MetalJPerK       float64 // heat capacity of pipes and exchanger
	IndoorLossWPerK  float64 // loss to the room
	OutdoorLossWPerK float64 // loss to outdoor air
	FlowLPerMin      float64 // primary flow while the heat pump runs
	CapacityShare    float64 // heat content of the heating water over that of water; 0 counts as 1
	ValveS           float64 // travel of the diverting valve, during which no water reaches the vessel
	OverrunS         float64 // the pump runs on this long after a stop, while it brings heat
}

// Control is how hot water is called for and stopped.
type Control struct {
	SetpointC    float64      // the heat pump stops when the sensor reads this
	MonthC       *[12]float64 // setpoint by month, in place of SetpointC
	Raised       []Raised     // setpoints that hold in windows of their own
	HysteresisK  float64      // and starts when it reads this much less
	SensorHeight float64      // share of the vessel's height
	SensorLagS   float64      // first-order lag of sensor and pocket
	SensorErrorK float64      // the sensor reads this much too high
	Allowed      Schedule     // when a run may start and go on
	AntiCycleS   float64      // least time from stop to start
	MinRunS      float64      // least run, unless water gets too hot
	OutputCap    float64      // largest share of the heat pump's output
	FlowAboveK   float64      // flow target above the setpoint
	OvershootK   float64      // above the target by this much at least output: stop
	LongestRunS  float64      // hot water gives way to a house that needs heat; 0 for never
}

// Raised is a setpoint that holds while its schedule is open.
type Raised struct {
	When      Schedule
	SetpointC float64
}

// Supply is the cold and hot side of the taps.
type Supply struct {
	LargestFlowLPerMin float64   // what mains and vessel let through, all taps together
	ShowerLimitLPerMin float64   // fitted flow limiter of the showers; 0: none
	TurnDownShare      float64   // people turn a shower that runs cold down to this share of its flow; 0: they do not
	PatienceS          float64   // people wait this long for a shower's hot water to recover; 0: they do not
	DeadLegsL          []float64 // water in the pipe to each outlet
	DeadLegCoolS       float64   // time constant of its cooling
	MixerMarginK       []float64 // margin of the mixing device at each outlet
}

// Service is how a draw-off is judged.
type Service struct {
	ColdSeconds   float64 // a shower may be too cold this long
	BathPatienceS float64 // a bath slower than this has failed
}

// Power is what runs beside the compressor.
type Power struct {
	PumpW    float64 // circulation pump while water is heated
	StandbyW float64 // hot water's share of standby, all year
	HouseW   float64 // the rest of standby, put down to the house
}

// Immersion is an electric heating element in the vessel.
type Immersion struct {
	PowerW      float64 // 0: none
	Height      float64 // share of the vessel's height; it heats what lies above
	BoostBelowC float64 // it helps when the water at its height is colder; 0: never
	BoostK      float64 // and stops this much above
}

// Hygiene is a regular hot spell of the whole vessel.
type Hygiene struct {
	EveryS    float64 // 0: never
	FirstS    float64 // time of the first, seconds since the start of the year
	TargetC   float64 // at the control sensor
	HoldS     float64
	HeadroomK float64 // the heat pump reaches its highest flow temperature less this; the immersion heater does the rest
	GiveUpS   float64 // a spell that has not held by then is given up
}

// Level takes part of the working conditions out of the COP for hot water, to see
// what they cost: a counterfactual, not a plant. The zero Level changes nothing.
type Level struct {
	WaterC float64 // COP as if the leaving water always had this temperature
	Share  float64 // COP as if this were always the share of the output
}

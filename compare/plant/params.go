// Package plant marches one option through any stretch of time: a vessel, the
// heat pump that charges it, the loop between them, the controls, and the
// draw-offs. The same engine serves a year, a cold spell and a timed test.
//
// It gives a Ledger: facts about energy, starts and draw-offs, with neither
// money nor opinion.
package plant

import (
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/vessel"
)

// Params describes one option. Vessel must be fresh: the plant owns it.
type Params struct {
	Vessel   vessel.Vessel
	HeatPump *heatpump.Unit
	Start    heatpump.Start
	Loop     Loop
	Control  Control
	Supply   Supply
	Service  Service
	Power    Power
	RoomC    float64 // air around the vessel and indoor pipes
}

// Loop is the heating water between heat pump and vessel, and its metal.
type Loop struct {
	WaterL           float64 // water in the unit, its exchanger and the pipes both ways
	MetalJPerK       float64 // heat capacity of pipes and exchanger
	IndoorLossWPerK  float64 // loss to the room
	OutdoorLossWPerK float64 // loss to outdoor air
	FlowLPerMin      float64 // primary flow while the heat pump runs
}

// Control is how hot water is called for and stopped.
type Control struct {
	SetpointC    float64  // the heat pump stops when the sensor reads this
	HysteresisK  float64  // and starts when it reads this much less
	SensorHeight float64  // share of the vessel's height
	SensorLagS   float64  // first-order lag of sensor and pocket
	Allowed      Schedule // when a run may start and go on
	AntiCycleS   float64  // least time from stop to start
	MinRunS      float64  // least run, unless water gets too hot
	OutputCap    float64  // largest share of the heat pump's output
	FlowAboveK   float64  // flow target above the setpoint
	OvershootK   float64  // above the target by this much at least output: stop
}

// Supply is the cold and hot side of the taps.
type Supply struct {
	LargestFlowLPerMin float64   // what mains and vessel let through, all taps together
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
	PumpW    float64 // circulation pump while the heat pump runs for hot water
	StandbyW float64 // hot water's share of standby, all year
}

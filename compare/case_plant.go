package compare

import "dhwcompare/compare/heatpump"

// HeatPump is the unit that charges either vessel.
type HeatPump struct {
	Size         heatpump.Size
	NominalKW    Auto
	Table        []heatpump.Row
	MinimumShare float64 // with a table only
	LoadPenalty  float64
	FieldDerate  float64
	HighestFlowC float64

	HeatLagS        float64
	ElectricityLagS float64
	MinRunMin       float64
	PumpW           float64
	StandbyW        float64
	StandbyShare    float64 // of standby that is put down to hot water

	DefrostIntervalMin float64 // run from clean to a defrost in humid air at 0-2 C, 20-200 min; 0: no frost
	DefrostMin         float64 // length of a defrost, 1-15 min
	DefrostHeatKWh     float64 // heat taken back from the water by one, 0-1 kWh
	GlycolPercent      float64 // in the heating water, 0-40 %
	ValveTravelS       float64 // of the diverting valve, 0-60 s
	PumpOverrunS       float64 // pump runs on after hot water while it brings heat, 0-600 s
	PriorityMin        float64 // longest hot-water run while the house needs heat, 0-600 min; 0: no limit
	LeastWaterL        float64 // heating water that must stand open to the unit for defrosts and least runs, 5-100 l; 0: any
	DesignStarts       float64 // starts that the compressor is designed for, 0-10,000,000; 0: not stated

	Limits Limits
}

// Limits are what the unit's controller can be set to.
type Limits struct {
	LeastHysteresisK  float64 // 0.5-15 K
	LargestSetpointC  float64 // of the vessel, 40-75 C
	LeastAntiCycleMin float64 // between hot-water runs, 0-60 min
}

// Pipes are the loop between heat pump and vessel, and the pipes to the outlets.
type Pipes struct {
	UnitWaterL       float64 // in the unit and its exchanger
	LoopLengthM      float64 // flow and return together
	LoopBoreMM       float64
	LoopMetalKJPerK  float64 // pipes and exchanger
	IndoorLossWPerK  float64
	OutdoorLossWPerK float64
	PrimaryLPerMin   float64 // flow while the heat pump heats water

	ShowerLegL, BathLegL, KitchenLegL, BasinLegL float64 // water in the pipe to each outlet
	LegCoolingMin                                float64 // time constant
}

// Control is how one option calls for heat.
type Control struct {
	SetpointC    float64
	HysteresisK  float64
	SensorHeight float64 // share of the vessel's height
	SensorLagS   float64
	Windows      []Window // none: always
	AntiCycleMin float64
	OutputCap    float64 // largest share of the heat pump's output
	FlowAboveK   float64 // flow target above the setpoint
	OvershootK   float64 // above the target at least output: stop

	MonthSetpointC *[12]float64 // setpoint by month in place of SetpointC; nil: the same all year
	Raised         []Raised     // setpoints that hold in windows of their own, such as cheap hours
	SensorErrorK   float64      // the sensor reads this much too high, -3 to 3 K
	OffWhenAway    bool         // no hot water on the household's days away
	Cheapest       Cheapest     // windows that follow the first tariff, in place of Windows
	ShowerLimit    float64      // l/min, flow limiter fitted to the showers with this option, 3-20; 0: none
}

// Window is a stretch of the day on the wall clock, in minutes.
type Window struct{ FromMin, ToMin int }

// Raised is a setpoint that holds in a window of every day.
type Raised struct {
	Window    Window
	SetpointC float64
}

// Immersion is an electric heating element in a vessel.
type Immersion struct {
	PowerKW     float64 // 0-6 kW; 0: none
	Height      float64 // share of the vessel's height, 0-1
	BoostBelowC float64 // helps while the water at its height is colder, 30-70 C; 0: never
	BoostK      float64 // and stops this much above, 1-20 K
}

// Hygiene is a regular hot spell of the whole vessel.
type Hygiene struct {
	EveryDays float64 // 0-60; 0: never
	TargetC   float64 // at the control sensor, 50-75 C
	HoldMin   float64 // 1-180 min
	StartMin  int     // on the wall clock of the first day, minutes
}

// Body is what both vessels have.
type Body struct {
	Immersion Immersion
	Hygiene   Hygiene

	VolumeL            float64
	HeightM            Auto // inside
	LossW              Auto // standing loss at 45 K above the room
	ConductivityWPerMK float64
	InletMixingShare   float64
	Layers             int

	WidthMM, DepthMM, OutsideHeightMM       Auto // with insulation
	SideClearMM, FrontClearMM, AboveClearMM float64

	// FloorShare is the share of its floor that is lost to other use, 0-1: 1 for a vessel
	// that has a cupboard to itself, about a half under a worktop that stays in use, 0 in
	// a loft or outdoors.
	FloorShare float64
	VolumiserL Auto // of a tank that heating needs beside the vessel, 10-100 l; 0: none
	OwnPump    bool // a pump of its own stands beside the vessel
}

// CompactStore is the first option.
type CompactStore struct {
	Body
	Control     Control
	CoilLengthM float64 // corrugated stainless tube of 25 mm
	CoilUAWPerK Auto    // of the whole coil at CoilUAFlow; nil: from its length
	CoilUAFlow  float64 // l/min
	CoilWaterL  Auto
	CoilBodyL   Auto // displaced, water and metal
	FoulingM2KW float64
	// InDefrostCircuit: defrosts of heating take their heat from the store, whose
	// water then counts towards what the unit needs.
	InDefrostCircuit bool
}

// Cylinder is the second option.
type Cylinder struct {
	Body
	Control     Control
	CoilAreaM2  float64
	CoilUWPerM2 float64 // clean, W/m2K
	FoulingM2KW float64
	CoilBottom  float64 // share of the height
	CoilTop     float64
}

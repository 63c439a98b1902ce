// Package compare decides between a compact store and a cylinder for one home:
// a Case goes in, both options live through the same years, a Comparison comes
// out. It renders nothing and reads no files.
package compare

import (
	"time"

	"dhwcompare/climate"
	"dhwcompare/compare/datafile"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/tariffs"
)

// Schema names the form of the case file and of the comparison.
const Schema = "dhwcompare-1"

// Auto is a value that follows from others unless somebody states it: nil means
// that it is derived.
type Auto = *float64

// Case is everything that a person can state about a home and its two options.
// Field names carry their unit. Default gives what a case leaves out.
type Case struct {
	Title    string // one line, shown as it is
	Currency string // three letters, such as GBP
	Seed     uint64
	Years    int // paired years in the ensemble

	Household Household
	Mains     Mains
	Climate   Climate
	Dwelling  Dwelling
	HeatPump  HeatPump
	Pipes     Pipes
	Compact   CompactStore
	Cylinder  Cylinder
	Tariffs   []tariffs.Tariff // the first is primary; rates in currency units per kWh
	Surplus   Surplus
	Money     Money
	Room      Room
	Service   Service
}

// Household is the people and their habits. Minutes, litres and flows are means.
type Household struct {
	People  float64
	HasBath bool

	ShowersPerDay       Auto
	ShowerMinutes       float64
	ShowerMinutesSpread float64
	ShowerFlowLPerMin   float64
	ShowerFlowSpread    float64
	ShowerC             float64
	ShowerMinC          float64

	BathsPerDay     Auto
	BathLitres      float64
	BathFlowLPerMin float64
	BathC           float64
	BathMinC        float64

	TapLitresPerDay Auto // hot litres at 52 C
	TapsPerDay      Auto
	TapFlowLPerMin  float64
	TapC            float64
	TapMinC         float64

	Bathrooms         int
	BackToBackShare   float64
	BackToBackGapMin  float64
	Rhythm            household.Rhythm
	LoadProfile       string // a published profile instead of habits; empty for habits
	Away              []household.DayRange
	Guests            []household.Stay
	ShowerMixerMargin float64 // K by which hot water must exceed a thermostatic shower's
	TurnDownShare     float64 // people turn a shower that runs cold down to this share of its flow, 0.3-0.95; 0: they do not
	PatienceMin       float64 // people wait this long before a shower for hot water to recover, 0-60 min
}

// Mains is the cold supply and what stands in its way.
type Mains struct {
	LargestFlowLPerMin float64 // at the stopcock
	DynamicBar         float64 // pressure while water flows
	CompactCoilKPa     float64 // pressure drop of the compact store's coil at 15 l/min
	TemperingKPa       float64 // of a tempering valve at 15 l/min, either option
}

// Climate is the place.
type Climate struct {
	OutdoorC     [12]float64
	MainsC       *[12]float64 // nil: estimated from outdoor air
	SDDailyMeanK [12]float64
	DailyRangeK  [12]float64
	RHPercent    [12]float64
	Persistence  float64
	MainsSwingK  float64
	FirstWeekday time.Weekday
	SummerTime   bool
	UTCOffsetMin int // standard time ahead of UTC, -720 to 840

	// WeatherFile and Outdoor are a year of outdoor air from a file; no name and nil:
	// it follows from monthly means. With a file, OutdoorC and, if the file holds
	// humidity, RHPercent are its means.
	WeatherFile datafile.File
	Outdoor     *climate.Outdoor
}

// Dwelling is the building around the plant, which the same heat pump heats.
type Dwelling struct {
	RoomC           float64 // kept by heating; also where vessel and indoor pipes stand
	HeatLossWPerK   float64 // heat loss coefficient, 0-1000 W/K; 0: the heat pump makes hot water only
	BaseC           float64 // outdoor temperature below which heating is needed, 5-20 C
	DesignC         float64 // design outdoor temperature, -30 to 10 C, below BaseC
	CapacityKWhPerK float64 // heat capacity that takes part in a day, 1-50 kWh/K
	FlowDesignC     float64 // heating flow at DesignC, 25-65 C
	FlowBaseC       float64 // heating flow at BaseC, 20-50 C, at most FlowDesignC
	HeatingRunMin   float64 // least heating run that the thermostat aims at, 3-120 min
	HeatedShare     float64 // share of hot water's indoor losses that lands in heated rooms, 0-1
	OpenWaterL      Auto    // heating water that no valve shuts off from the heat pump, without the loop, 0-1,000 l
}

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

// Service is what the household expects.
type Service struct {
	ColdSeconds       float64 // a shower may be too cold this long
	BathPatienceMin   float64
	FailuresPerYear   float64 // failing showers that are acceptable
	ConfidencePercent float64
}

// Package compare decides between a compact store and a cylinder for one home:
// a Case goes in, both options live through the same years, a Comparison comes
// out. It renders nothing and reads no files.
package compare

import (
	"time"

	"dhwcompare/climate"
	"dhwcompare/compare/datafile"
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

// Service is what the household expects.
type Service struct {
	ColdSeconds       float64 // a shower may be too cold this long
	BathPatienceMin   float64
	FailuresPerYear   float64 // failing showers that are acceptable
	ConfidencePercent float64
}

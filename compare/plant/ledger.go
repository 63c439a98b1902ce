package plant

import (
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

// Channel names what half-hourly electricity was for.
type Channel int

// The channels of half-hourly electricity.
const (
	HotWater      Channel = iota // compressor and pump for hot water
	ImmersionHeat                // the immersion heater
	Standby                      // hot water's share of standby
	Heating                      // compressor and pump for the house, and its share of standby
	channels
)

// drawKinds is the number of kinds of draw-off.
const drawKinds = int(household.Tap) + 1

// Month is what happened in one month, in joules unless the name says otherwise.
//
// The hot-water side is vessel, dead legs, and the loop while hot water owns it;
// while the heat pump heats the house, and after until the next hot water, the
// loop belongs to the house. A defrost of heating that takes its heat from the
// vessel has the loop meanwhile. What is in the loop changes hands with it.
type Month struct {
	HeatPumpHeat    float64 // given to the water at the unit's outlet, for hot water
	ImmersionHeat   float64
	LoopToVessel    float64 // of that, what the loop passed on to the vessel
	DefrostHeat     float64 // taken back from the hot-water side by defrosts, also by those of heating that take it from the vessel
	LoopFromHouse   float64 // held by the loop when hot water took it over
	LoopToHouse     float64 // held by the loop when the house took it over
	Wanted          float64 // heat above mains that the draws asked for, at the outlet
	Delivered       float64 // heat above mains that they got
	DeadLegLoss     float64 // run away before it was warm, or cooled in the pipes to the outlets
	VesselLoss      float64
	LoopLoss        float64
	StoreGain       float64 // change of the heat held by the hot-water side
	ElectricRun     float64 // compressor for hot water, for the heat that it gave
	ElectricGone    float64 // compressor for hot water, spent on starting
	ElectricDefrost float64 // compressor during defrosts of hot-water runs
	ElectricPump    float64 // circulation pump for hot water
	ElectricIdle    float64 // hot water's share of standby

	HeatingHeat       float64 // given to the water at the unit's outlet, for the house
	HeatingDefrost    float64 // taken back from the house by the other defrosts of heating
	HeatingLoopLoss   float64 // lost by the loop while the house owned it
	HeatingLoopGain   float64 // change of the heat in the loop while the house owned it
	ElectricHeating   float64 // compressor, starts and defrosts for the house
	ElectricHousePump float64 // circulation pump for the house
	ElectricHouseIdle float64 // the house's share of standby

	HouseHeat      float64 // heat that reached the rooms
	HouseFromWater float64 // of the hot-water side's losses, what landed in heated rooms
	Credited       float64 // of that, what heating would have had to give
	HouseGain      float64
	HouseLoss      float64
	HouseAired     float64
	HouseKept      float64 // change of the heat in the house

	RunS            float64 // seconds of compressor run for hot water
	ExtrapolatedS   float64 // of which outside the range of the performance map
	HeatingRunS     float64 // seconds of compressor run for the house
	InterruptedS    float64 // seconds in which hot water kept a house that needs it from heat
	LongestGapS     float64 // longest such stretch
	WorstDipK       float64 // largest fall of the room temperature
	Starts          int     // of the compressor from standstill, for hot water
	Changeovers     int     // from heating to hot water
	HeatingStarts   int     // of the compressor from standstill, for the house
	Defrosts        int     // in hot-water runs
	HeatingDefrosts int     // in heating runs
	HygieneHeld     int     // hot spells that held
	HygieneMissed   int     // hot spells that were given up
	TepidS          float64 // seconds with the vessel's outlet below TepidC
	Draws           [drawKinds]Tally
	ShowerTime      ShowerTime
}

// TepidC is the outlet temperature below which the hours of a vessel are counted: the
// temperature that hot water is to have at the outlets for the control of legionella
// (British health and safety guidance, read).
const TepidC = 50

// Tally counts the draw-offs of one kind.
type Tally struct {
	Count, Failed int
	ColdS         float64 // seconds below the lowest acceptable temperature
	WaitS         float64 // seconds of waiting for hot water
	Litres        float64 // mixed water delivered
}

// Electricity gives all electricity for hot water, in joules. An immersion heater
// turns all of its own into heat.
func (m *Month) Electricity() float64 {
	return m.ElectricRun + m.ElectricGone + m.ElectricDefrost + m.ElectricPump + m.ElectricIdle + m.ImmersionHeat
}

// HouseElectricity gives all electricity for the house, in joules.
func (m *Month) HouseElectricity() float64 {
	return m.ElectricHeating + m.ElectricHousePump + m.ElectricHouseIdle
}

// HeatIn is the heat that the hot-water side was given.
func (m *Month) HeatIn() float64 { return m.HeatPumpHeat + m.ImmersionHeat + m.LoopFromHouse }

// Imbalance gives the heat that the month's balance of the hot-water side cannot
// account for, in joules: heat in, less heat out, losses and what is kept.
func (m *Month) Imbalance() float64 {
	return m.HeatIn() - m.DefrostHeat - m.LoopToHouse -
		m.Delivered - m.DeadLegLoss - m.VesselLoss - m.LoopLoss - m.StoreGain
}

// HouseImbalance is the same for the house, heating circuit included.
func (m *Month) HouseImbalance() float64 {
	circuit := m.HeatingHeat - m.HeatingDefrost + m.LoopToHouse - m.LoopFromHouse -
		m.HeatingLoopLoss - m.HeatingLoopGain - m.HouseHeat
	rooms := m.HouseHeat + m.HouseFromWater + m.HouseGain - m.HouseLoss - m.HouseAired - m.HouseKept
	return math.Abs(circuit) + math.Abs(rooms)
}

// Outcome is what became of one draw-off.
type Outcome struct {
	Draw       household.Draw
	HeldS      float64 // waited before the shower for the vessel to recover
	WaitS      float64 // until the cooled water of the dead leg was out
	WarmUpS    float64 // and from then until the water was first warm enough; all of its time if it never was
	FlowingS   float64 // time at the outlet after the dead leg
	ColdS      float64 // time below the lowest acceptable temperature
	LowestC    float64 // of the water delivered; 0, as MeanC, if the stretch ended before any came
	MeanC      float64 // of all water delivered
	Litres     float64 // mixed water delivered
	WantedJ    float64
	DeliveredJ float64
	Failed     bool
}

// Ledger is one option's stretch of time, as facts. The zero Ledger keeps no half
// hours, which a timed test does not need; NewLedger makes one that does.
type Ledger struct {
	Months      [calendar.MonthsInAYear]Month
	HalfHourKWh [channels][]float64 // electricity by half hour of the year
	Outcomes    []Outcome           // in the order in which the draws ended
}

// NewLedger makes an empty ledger of one year.
func NewLedger() *Ledger {
	l := &Ledger{}
	for c := range l.HalfHourKWh {
		l.HalfHourKWh[c] = make([]float64, calendar.HalfHours)
	}
	return l
}

// Reset empties the ledger and keeps its memory.
func (l *Ledger) Reset() {
	l.Months = [calendar.MonthsInAYear]Month{}
	for c := range l.HalfHourKWh {
		clear(l.HalfHourKWh[c])
	}
	l.Outcomes = l.Outcomes[:0]
}

// Residual gives the largest share of heat input that a month's balance cannot
// account for, of the hot-water side or of the house.
func (l *Ledger) Residual() float64 {
	worst := 0.0
	for i := range l.Months {
		m := &l.Months[i]
		if in := m.HeatIn(); in > 0 {
			worst = max(worst, math.Abs(m.Imbalance())/in)
		}
		if in := m.HeatingHeat + m.HouseGain; in > 0 {
			worst = max(worst, m.HouseImbalance()/in)
		}
	}
	return worst
}

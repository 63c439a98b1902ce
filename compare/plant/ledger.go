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
	HotWater Channel = iota // compressor and pump for hot water
	Standby                 // hot water's share of standby
	channels
)

// drawKinds is the number of kinds of draw-off.
const drawKinds = int(household.Tap) + 1

// Month is what happened in one month, in joules unless the name says otherwise.
type Month struct {
	HeatPumpHeat float64 // heat given to the water at the unit's outlet
	Wanted       float64 // heat above mains that the draws asked for, at the outlet
	Delivered    float64 // heat above mains that they got
	DeadLegLoss  float64 // run away before it was warm, or cooled in the pipes to the outlets
	VesselLoss   float64
	LoopLoss     float64
	StoreGain    float64 // change of the heat in vessel, loop and dead legs
	ElectricRun  float64 // compressor, for the heat that it gave
	ElectricGone float64 // compressor, spent on starting
	ElectricPump float64
	ElectricIdle float64 // standby

	RunS          float64 // seconds of compressor run
	ExtrapolatedS float64 // of which outside the range of the performance map
	Starts        int
	Draws         [drawKinds]Tally
}

// Tally counts the draw-offs of one kind.
type Tally struct {
	Count, Failed int
	ColdS         float64 // seconds below the lowest acceptable temperature
	WaitS         float64 // seconds of waiting for hot water
	Litres        float64 // mixed water delivered
}

// Electricity gives all electricity of the month, in joules.
func (m *Month) Electricity() float64 {
	return m.ElectricRun + m.ElectricGone + m.ElectricPump + m.ElectricIdle
}

// Imbalance gives the heat that the month's balance cannot account for, in
// joules: heat in, less heat to the taps, losses and what is kept.
func (m *Month) Imbalance() float64 {
	return m.HeatPumpHeat - m.Delivered - m.DeadLegLoss - m.VesselLoss - m.LoopLoss - m.StoreGain
}

// Outcome is what became of one draw-off.
type Outcome struct {
	Draw       household.Draw
	WaitS      float64 // until the cooled water of the dead leg was out
	FlowingS   float64 // time at the outlet after that
	ColdS      float64 // time below the lowest acceptable temperature
	LowestC    float64
	MeanC      float64 // of all water delivered
	Litres     float64 // mixed water delivered
	WantedJ    float64
	DeliveredJ float64
	Failed     bool
}

// Ledger is one option's stretch of time, as facts.
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
// account for.
func (l *Ledger) Residual() float64 {
	worst := 0.0
	for i := range l.Months {
		m := &l.Months[i]
		if m.HeatPumpHeat > 0 {
			worst = math.Max(worst, math.Abs(m.Imbalance())/m.HeatPumpHeat)
		}
	}
	return worst
}

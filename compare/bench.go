package compare

import (
	"context"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// testBench runs timed tests of one option: steady weather, a freshly charged
// vessel, the house left alone. It is the engine of the year.
type testBench struct {
	c       *Case
	fresh   freshPlant
	weather *climate.Series
	control Control
}

func newTestBench(c *Case, side Side) (*testBench, error) {
	alone := *c
	alone.Dwelling.HeatLossWPerK = 0
	alone.Cylinder.Hygiene.EveryDays, alone.Compact.Hygiene.EveryDays = 0, 0
	p, err := alone.Plant(side)
	if err != nil {
		return nil, err
	}
	return &testBench{
		c: c, fresh: freshPlant{p, p.State()}, control: c.control(side),
		weather: &climate.Series{
			OutdoorC: make([]float64, calendar.Hours), RHPercent: make([]float64, calendar.Hours), MainsC: make([]float64, calendar.Hours),
		},
	}, nil
}

// weatherHours is how much of the year's weather a test sees.
const weatherHours = 30

// conditions are the steady surroundings of a test.
type conditions struct {
	month                       int
	outdoorC, mainsC, rhPercent float64
}

// ofMonth gives the mean conditions of a month.
func (c *Case) ofMonth(month int) conditions {
	mains, _ := c.Climate.Mains()
	return conditions{month: month, outdoorC: c.Climate.OutdoorC[month], mainsC: mains[month], rhPercent: c.Climate.RHPercent[month]}
}

// testStartS is when a test begins: 7 in the morning of the second day of the month,
// by standard time.
func testStartS(month int) float64 {
	return float64(calendar.MonthStartDay(month)+1)*calendar.DayS + 7*calendar.HourS
}

// set puts the weather in place and gives the plant, charged to a temperature, with
// its loop warm from the charge.
func (b *testBench) set(at conditions, chargedC float64) (p *plant.Plant, startS float64) {
	start := testStartS(at.month)
	first := calendar.HourOf(start)
	for i := range weatherHours {
		h := (first + i) % calendar.Hours
		b.weather.OutdoorC[h], b.weather.MainsC[h], b.weather.RHPercent[h] = at.outdoorC, at.mainsC, at.rhPercent
	}
	p = b.fresh.again()
	p.Charge(chargedC)
	p.WarmLoop(chargedC)
	return p, start
}

func (b *testBench) setpoint(month int) float64 {
	if b.control.MonthSetpointC != nil {
		return b.control.MonthSetpointC[month]
	}
	return b.control.SetpointC
}

// run serves some draws, given by their start after the test's, for a time, from a
// vessel at its setpoint.
func (b *testBench) run(ctx context.Context, at conditions, o plant.Override, forS float64, draws []household.Draw, trace func(*plant.Sample)) (*plant.Ledger, error) {
	p, start := b.set(at, b.setpoint(at.month))
	l := &plant.Ledger{}
	err := p.Run(ctx, start, start+forS, b.inputs(start, draws...), o, plant.Recorder{Ledger: l, Trace: trace})
	return l, err
}

// inputs are the weather and some draws, given by their start after the test's.
func (b *testBench) inputs(start float64, draws ...household.Draw) plant.Inputs {
	moved := make([]household.Draw, len(draws))
	for i, d := range draws {
		d.StartS += start
		moved[i] = d
	}
	return plant.Inputs{Weather: b.weather, Draws: moved}
}

// runUntil marches a plant until somebody has seen enough, or to the end. What was
// booked is then of no use.
func runUntil(ctx context.Context, p *plant.Plant, from, to float64, in plant.Inputs, o plant.Override, enough func(*plant.Sample) bool) error {
	short, stop := context.WithCancel(ctx)
	defer stop()
	seen := false
	err := p.Run(short, from, to, in, o, plant.Recorder{Trace: func(s *plant.Sample) {
		if !seen && enough(s) {
			seen = true
			stop() // which the plant asks about each half hour
		}
	}})
	if seen {
		return ctx.Err()
	}
	return err
}

// shower is a test shower as the household takes it, of the stated length.
func (b *testBench) shower(startS, flowLPerMin, minutes float64) household.Draw {
	h := &b.c.Household
	return household.Draw{
		StartS: startS, Outlet: 0, Kind: household.Shower, FlowLPerMin: flowLPerMin, WantC: h.ShowerC, MinC: h.ShowerMinC,
		End: household.End{By: household.BySeconds, Amount: minutes * secondsPerMinute},
	}
}

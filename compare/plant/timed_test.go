package plant

import (
	"context"
	"math"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
)

const (
	joulesPerKWh = 3.6e6
	// noon is the start of every timed test: a summer day.
	noon = 200*calendar.DayS + 12*calendar.HourS
)

// marched runs a plant through a stretch of time into a fresh ledger.
func marched(t testing.TB, p *Plant, from, to float64, in Inputs, o Override) *Ledger {
	t.Helper()
	l := NewLedger()
	if err := p.Run(context.Background(), from, to, in, o, Recorder{Ledger: l}); err != nil {
		t.Fatal(err)
	}
	return l
}

// throughout is a pace of one step length throughout.
func throughout(s float64) pace {
	return pace{drawingS: s, refillingS: s, startingS: s, runningS: s, longestS: s}
}

// total sums what a function of the months gives.
func total(l *Ledger, of func(*Month) float64) float64 {
	sum := 0.0
	for i := range l.Months {
		sum += of(&l.Months[i])
	}
	return sum
}

// atTheStore takes away pipes and mixing device: what is left is what the store
// itself can give to a tap that mixes by hand.
func atTheStore(p Params, marginK float64) Params {
	p.Supply.DeadLegsL = []float64{0, 0, 0, 0}
	p.Supply.MixerMarginK = []float64{marginK, marginK, marginK, marginK}
	return p
}

// shower is one shower at noon, wanted at 40 C and too cold below 38 C.
func shower(flowLPerMin, minutes float64) household.Draw {
	return household.Draw{
		StartS: noon, FlowLPerMin: flowLPerMin, WantC: 40, MinC: 38,
		End: household.End{By: household.BySeconds, Amount: minutes * secondsPerMinute},
	}
}

// course is how one long draw-off went.
type course struct {
	lastsMin   float64 // until the mixed water fell below the lowest acceptable temperature
	fullMin    float64 // until it fell more than a tenth of a kelvin below the wanted one
	litres     float64 // mixed water, while it lasted
	coldestC   float64 // mixed water over the whole draw
	returnMin  float64 // until the heat pump's return fell below 40 C; whole draw if never
	firstRunS  float64 // from the start of the draw until the heat pump came on; Inf if never
	topOverBtm float64 // spread of the store after two minutes of running, K
}

// drawn takes one draw-off from a fully charged plant in unchanging weather. The
// pipes to the heat pump stand at room temperature, as after some hours at rest.
func drawn(t testing.TB, p Params, mode Mode, d household.Draw, outdoorC, mainsC float64) course {
	t.Helper()
	return drawnFrom(t, New(p), mode, d, outdoorC, mainsC)
}

// running is a plant in the midst of a run that began at 45 C, at the moment at
// which the mean of its store passes toC: its pipes are as hot as the store.
func running(t testing.TB, p Params, toC, outdoorC, mainsC float64) *Plant {
	t.Helper()
	const fromC, mostS = 45, 2 * calendar.HourS
	pl := New(p)
	pl.Charge(fromC)
	perK := pl.vessel.HeatJ() / fromC
	in := Inputs{Weather: steady(outdoorC, mainsC)}
	start, passedS := pl.State(), math.Inf(1)
	watch := func(s *Sample) {
		if pl.vessel.HeatJ() >= toC*perK {
			passedS = math.Min(passedS, s.T+s.Dt)
		}
	}
	for _, rec := range []Recorder{{Trace: watch}, {}} {
		pl.Restore(start)
		if err := pl.Run(t.Context(), noon, math.Min(passedS, noon+mostS), in, Override{Mode: On}, rec); err != nil {
			t.Fatal(err)
		}
	}
	if math.IsInf(passedS, 1) {
		t.Fatalf("the store never came to %g C", toC)
	}
	return pl
}

func drawnFrom(t testing.TB, pl *Plant, mode Mode, d household.Draw, outdoorC, mainsC float64) course {
	t.Helper()
	in := Inputs{Weather: steady(outdoorC, mainsC), Draws: []household.Draw{d}}
	endMin := d.End.Amount / secondsPerMinute
	c := course{lastsMin: endMin, fullMin: endMin, returnMin: endMin, coldestC: math.Inf(1), firstRunS: math.Inf(1), topOverBtm: math.NaN()}
	note := func(s *Sample) {
		if len(s.Draws) == 1 {
			c.note(s, &d)
		}
	}
	err := pl.Run(t.Context(), d.StartS, d.StartS+d.End.Amount, in, Override{Mode: mode}, Recorder{Trace: note})
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func (c *course) note(s *Sample, d *household.Draw) {
	const tenth = 0.1
	ran := s.T - d.StartS
	minute := ran / secondsPerMinute
	got := &s.Draws[0]
	if got.DeliveredC < d.MinC {
		c.lastsMin = math.Min(c.lastsMin, minute)
	}
	if got.DeliveredC < d.WantC-tenth {
		c.fullMin = math.Min(c.fullMin, minute)
	}
	if c.lastsMin >= minute {
		c.litres += got.FlowLPerMin * s.Dt / secondsPerMinute
	}
	c.coldestC = math.Min(c.coldestC, got.DeliveredC)
	if !s.Running {
		return
	}
	c.firstRunS = math.Min(c.firstRunS, ran)
	if s.ReturnC < 40 {
		c.returnMin = math.Min(c.returnMin, minute)
	}
	const settledS = 120
	if math.IsNaN(c.topOverBtm) && ran > c.firstRunS+settledS {
		c.topOverBtm = s.TopC - s.BottomC
	}
}

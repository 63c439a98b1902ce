package compare

import (
	"context"
	"math"
	"sort"
	"testing"

	"dhwcompare/climate"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/heatpump"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// stepMin is how exactly a timed shower's end is known: one step of a draw.
const stepMin = 10.0 / secondsPerMinute

// The table of shower minutes: more flow never lengthens a shower, whatever the month and
// the heat pump, but by the step in which it is timed. What the table says in several places, it says once.
func TestDrawoffTable(t *testing.T) {
	if testing.Short() {
		t.Skip("the full table")
	}
	c := british(1)
	const pauseMin = 5
	d, err := Drawoffs(context.Background(), &c, pauseMin)
	if err != nil {
		t.Fatal(err)
	}
	off := stateNamed(t, d, "off")
	for side := range sides {
		r := d.Of(side)
		for month := range r.ShowerMin {
			for state, row := range r.ShowerMin[month] {
				for i := 1; i < len(row); i++ {
					if row[i] > row[i-1]+stepMin {
						t.Errorf("%s, month %d, %s: %.2f min at %g l/min, %.2f min at %g l/min", side, month+1, d.States[state],
							row[i], d.FlowsLPerMin[i], row[i-1], d.FlowsLPerMin[i-1])
					}
				}
			}
			second := r.BackToBack[month]
			if second.Serves != (second.Minutes >= c.Household.ShowerMinutes) || second.Serves && second.ShortestPauseMin > pauseMin {
				t.Errorf("%s, month %d: %+v", side, month+1, second)
			}
			if bath := r.Bath[month]; bath.Serves != (bath.MeanC >= c.Household.BathMinC && bath.Minutes <= c.Service.BathPatienceMin) {
				t.Errorf("%s, month %d: %+v", side, month+1, bath)
			}
		}
		rule := r.Rule
		flow := sort.SearchFloat64s(d.FlowsLPerMin, c.Household.ShowerFlowLPerMin)
		closeTo(t, side.String()+", minutes of the rule", rule.HaveMin, r.ShowerMin[rule.Month-1][off][flow], 0)
		if rule.Holds != (rule.HaveMin >= rule.NeedMin) {
			t.Errorf("%s: %+v", side, rule)
		}
		if len(r.Strips) != 2*len(d.States) {
			t.Errorf("%s: %d strips", side, len(r.Strips))
		}
	}
}

func stateNamed(t *testing.T, d *Drawoff, name string) int {
	t.Helper()
	for i, s := range d.States {
		if s == name {
			return i
		}
	}
	t.Fatalf("no state %q among %v", name, d.States)
	return 0
}

// Warmer mains never shortens a timed shower, in any state of the heat pump, but by the
// step in which it is timed.
func TestWarmerMainsNeverShortensATimedShower(t *testing.T) {
	c := british(1)
	for side := range sides {
		b, err := newTestBench(&c, side)
		if err != nil {
			t.Fatal(err)
		}
		for _, state := range pumpStates() {
			for _, flow := range []float64{6, 10} {
				before := 0.0
				for mainsC := 4.0; mainsC <= 22; mainsC += 3 {
					minutes, err := b.showerMinutes(context.Background(), conditions{0, 5, mainsC, 80}, state.override, flow)
					if err != nil {
						t.Fatal(err)
					}
					if minutes < before-stepMin {
						t.Errorf("%s, %s, %g l/min: %.2f min at mains of %g C, %.2f min three kelvin colder", side, state.name, flow, minutes, mainsC, before)
					}
					before = minutes
				}
			}
		}
	}
}

// The minutes of a timed test are the plant's own judgement: a shower of that length has
// not failed, one that goes on for the patience of the service rule and two steps more
// has.
func TestTimedMinutesAreTheServiceRules(t *testing.T) {
	c := tooSmall(1)
	ctx := context.Background()
	for side := range sides {
		b, err := newTestBench(&c, side)
		if err != nil {
			t.Fatal(err)
		}
		for _, state := range pumpStates() {
			at := c.ofMonth(0)
			minutes, err := b.showerMinutes(ctx, at, state.override, 12)
			if err != nil {
				t.Fatal(err)
			}
			if minutes == longestShowerMin {
				t.Errorf("%s, %s: never too cold, so nothing is tested", side, state.name)
			}
			failed := func(min float64) bool {
				l, err := b.run(ctx, at, state.override, 2*calendar.HourS, []household.Draw{b.shower(1, 12, min)}, nil)
				if err != nil {
					t.Fatal(err)
				}
				return l.Outcomes[0].Failed
			}
			if failed(minutes) || !failed(minutes+c.Service.ColdSeconds/secondsPerMinute+2*stepMin) {
				t.Errorf("%s, %s: %.2f min by the timed test are not the edge", side, state.name, minutes)
			}
			l, err := b.run(ctx, at, state.override, 2*calendar.HourS, []household.Draw{b.shower(1, 12, minutes)}, nil)
			if err != nil {
				t.Fatal(err)
			}
			closeTo(t, "seconds too cold by then", l.Outcomes[0].ColdS, 0, 60*stepMin)
		}
	}
}

// What the design rule's search gives does meet the rule, and a step less does not.
func TestDesignRuleSearch(t *testing.T) {
	c := tooSmall(1)
	for side := range sides {
		b, err := newTestBench(&c, side)
		if err != nil {
			t.Fatal(err)
		}
		rule, err := b.designRule(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%s: %+v", side, rule)
		at, off := b.c.ofMonth(rule.Month-1), plant.Override{Mode: plant.Off}
		lasts := func(flow, setpointC float64) float64 {
			b.control.SetpointC = setpointC
			minutes, err := b.showerMinutes(context.Background(), at, off, flow)
			if err != nil {
				t.Fatal(err)
			}
			return minutes
		}
		own := b.control.SetpointC
		more := rule.FlowLPerMin + 2*flowResolution
		if lasts(rule.FlowLPerMin, own) < ruleMinutes || more < largestTestFlow && lasts(more, own) >= ruleMinutes {
			t.Errorf("%s: %g l/min is not the largest flow that meets the rule", side, rule.FlowLPerMin)
		}
		if rule.SetpointC == 0 {
			continue // none within limits: the highest must fail
		}
		flow := b.meanFlow()
		if lasts(flow, rule.SetpointC) < ruleMinutes || lasts(flow, rule.SetpointC-setpointStepK) >= ruleMinutes {
			t.Errorf("%s: %g C is not the lowest setpoint that meets the rule", side, rule.SetpointC)
		}
	}
}

// drawnWater is a draw's delivered temperature against time.
type drawnWater struct{ atS, c []float64 }

func (d *drawnWater) note(startS float64) func(*plant.Sample) {
	return func(s *plant.Sample) {
		if len(s.Draws) == 1 && !s.Draws[0].Waiting && s.T >= startS {
			d.atS, d.c = append(d.atS, s.T+s.Dt/2-startS), append(d.c, s.Draws[0].DeliveredC)
		}
	}
}

// at interpolates.
func (d *drawnWater) at(x float64) float64 {
	i := sort.SearchFloat64s(d.atS, x)
	if i == 0 || i == len(d.atS) {
		return d.c[min(i, len(d.c)-1)]
	}
	share := (x - d.atS[i-1]) / (d.atS[i] - d.atS[i-1])
	return d.c[i-1] + share*(d.c[i]-d.c[i-1])
}

// The timed test and the year deliver the same draw: within 0.1 K at each moment of a
// long shower on the controls. The plant loses nothing and its loop holds next to
// nothing, so that the year comes to the draw in the state in which the test begins it:
// at its setpoint.
func TestDrawoffAndYearAgree(t *testing.T) {
	none := 0.0
	c := british(1)
	c.Compact.LossW, c.Cylinder.LossW = &none, &none
	c.Pipes.IndoorLossWPerK, c.Pipes.OutdoorLossWPerK, c.Pipes.LoopMetalKJPerK = 0, 0, 0
	c.Pipes.UnitWaterL, c.Pipes.LoopLengthM = 0.002, 0
	c.Dwelling.HeatLossWPerK, c.Cylinder.Hygiene.EveryDays = 0, 0
	for _, month := range []int{0, 6} {
		at := c.ofMonth(month)
		const longMin, flow = 25, 8
		start := testStartS(month)
		for side := range sides {
			b, err := newTestBench(&c, side)
			if err != nil {
				t.Fatal(err)
			}
			var timed, lived drawnWater
			d := b.shower(1, flow, longMin)
			if _, err := b.run(context.Background(), at, plant.Override{}, calendar.HourS, []household.Draw{d}, timed.note(start)); err != nil {
				t.Fatal(err)
			}
			p, err := c.Plant(side)
			if err != nil {
				t.Fatal(err)
			}
			d.StartS += start
			w := World{Weather: unchanging(at), Draws: []household.Draw{d}}
			if err := Live(context.Background(), p, w, plant.Recorder{Trace: lived.note(start)}); err != nil {
				t.Fatal(err)
			}
			worst, cold := 0.0, math.Inf(1)
			for x := 90.0; x < longMin*secondsPerMinute; x += 10 {
				worst = math.Max(worst, math.Abs(timed.at(x)-lived.at(x)))
				cold = math.Min(cold, lived.at(x))
			}
			t.Logf("%s, month %d: worst difference %.4f K, coldest water %.1f C", side, month+1, worst, cold)
			if !(worst <= 0.1) {
				t.Errorf("%s, month %d: timed test and year differ by %.3f K", side, month+1, worst)
			}
		}
	}
}

// unchanging is a year of the same conditions.
func unchanging(at conditions) *climate.Series {
	s := &climate.Series{
		OutdoorC: make([]float64, calendar.Hours), RHPercent: make([]float64, calendar.Hours), MainsC: make([]float64, calendar.Hours),
	}
	for i := range s.OutdoorC {
		s.OutdoorC[i], s.RHPercent[i], s.MainsC[i] = at.outdoorC, at.rhPercent, at.mainsC
	}
	return s
}

// The largest steady flow carries what the heat pump gives, no more: against its
// certified output at the month's outdoor air and water of 50 C, less the losses.
// What stands warm in a cylinder at the start still counts for a little after six
// hours.
func TestSteadyFlowIsWhatTheHeatPumpGives(t *testing.T) {
	c := british(1)
	unit, err := heatpump.New(c.HeatPump.Params())
	if err != nil {
		t.Fatal(err)
	}
	const month, waterC, kgPerL, jPerKgK = 0, 50, 0.992, 4180
	for side, most := range map[Side]float64{SideCompact: 1.05, SideCylinder: 1.35} {
		b, err := newTestBench(&c, side)
		if err != nil {
			t.Fatal(err)
		}
		at := c.ofMonth(month)
		flow, err := b.steadyFlow(context.Background(), at)
		if err != nil {
			t.Fatal(err)
		}
		taken := flow / secondsPerMinute * kgPerL * jPerKgK * (c.Household.ShowerMinC - at.mainsC)
		given := unit.MaxOutputW(at.outdoorC, waterC) * c.control(side).OutputCap
		if share := taken / given; share < 0.85 || share > most {
			t.Errorf("%v: %.1f l/min take %.0f W, the heat pump gives %.0f W", side, flow, taken, given)
		}
	}
}

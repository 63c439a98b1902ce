package compare

import (
	"context"
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// Drawoff is what timed draw-off tests say of both options.
type Drawoff struct {
	FlowsLPerMin []float64      `json:"flows_l_per_min"`
	States       []string       `json:"heat_pump_states"`
	LongestMin   float64        `json:"longest_minutes"` // a shower that lasts this long does not run cold
	PauseMin     float64        `json:"pause_minutes"`   // between back-to-back showers
	Compact      DrawoffResults `json:"compact"`
	Cylinder     DrawoffResults `json:"cylinder"`
}

// Of gives one option's results.
func (d *Drawoff) Of(side Side) *DrawoffResults {
	if side == SideCompact {
		return &d.Compact
	}
	return &d.Cylinder
}

// NearestFlow is the place of the tested flow that is nearest to another; of two as
// near, the lower one's.
func (d *Drawoff) NearestFlow(flowLPerMin float64) int {
	best := 0
	for i, f := range d.FlowsLPerMin {
		if math.Abs(f-flowLPerMin) < math.Abs(d.FlowsLPerMin[best]-flowLPerMin) {
			best = i
		}
	}
	return best
}

// DrawoffResults are one option's.
type DrawoffResults struct {
	// ShowerMin is the minutes of shower until it is too cold, by month, heat-pump
	// state and flow, from a vessel charged to its setpoint.
	ShowerMin   [calendar.MonthsInAYear][][]float64  `json:"shower_minutes"`
	BackToBack  [calendar.MonthsInAYear]SecondShower `json:"back_to_back"`
	SteadyFlow  [calendar.MonthsInAYear]float64      `json:"largest_steady_flow_l_per_min"` // never runs cold with the heat pump on
	Bath        [calendar.MonthsInAYear]BathTest     `json:"bath"`
	RechargeMin [calendar.MonthsInAYear]float64      `json:"recharge_minutes"` // after the household's mean shower
	FromColdMin [calendar.MonthsInAYear]float64      `json:"heat_up_minutes"`  // from mains temperature
	Rule        DesignRule                           `json:"design_rule"`
	Strips      []Strip                              `json:"strips"`
}

// SecondShower is a mean shower that follows another.
type SecondShower struct {
	Minutes          float64 `json:"minutes"`            // until the second is too cold
	Serves           bool    `json:"serves"`             // at the stated pause
	ShortestPauseMin float64 `json:"shortest_pause_min"` // that serves; negative: none up to an hour
}

// BathTest is a bath filled at its best flow: the fastest that ends warm enough, or
// else the one that ends warmest.
type BathTest struct {
	FlowLPerMin float64 `json:"flow_l_per_min"`
	Minutes     float64 `json:"minutes"`
	MeanC       float64 `json:"mean_c"`
	Serves      bool    `json:"serves"`
}

// Strip is the delivered temperature of a test shower against time.
type Strip struct {
	Month       int          `json:"month"` // 1 is January
	State       string       `json:"heat_pump_state"`
	FlowLPerMin float64      `json:"flow_l_per_min"`
	Points      []StripPoint `json:"points"`
}

// StripPoint is one moment of a strip.
type StripPoint struct {
	Minute float64 `json:"minute"`
	C      float64 `json:"c"`
}

// pumpState is a way to run the heat pump during a test.
type pumpState struct {
	name     string
	override plant.Override
}

// cappedShare is the share of its output to which a capped heat pump is held.
const cappedShare = 0.5

func pumpStates() []pumpState {
	return []pumpState{
		{"full output", plant.Override{Mode: plant.On, OutputCap: 1}},
		{"capped", plant.Override{Mode: plant.On, OutputCap: cappedShare}},
		{"off", plant.Override{Mode: plant.Off}},
		{"in defrost", plant.Override{Mode: plant.InDefrost, OutputCap: 1}},
	}
}

// Limits of the tests.
const (
	longestShowerMin = 30
	longestPauseMin  = 60
	largestTestFlow  = 15
)

func testFlows() []float64 { return []float64{5, 6, 7, 8, 10, 12} }

// Drawoffs runs the timed tests of both options. pauseMin lies between two
// showers back to back.
func Drawoffs(ctx context.Context, c *Case, pauseMin float64) (*Drawoff, error) {
	var d *Drawoff
	err := find(int(sides), drawoffSearch(ctx, c, pauseMin, &d))
	return d, err
}

func drawoffSearch(ctx context.Context, c *Case, pauseMin float64, into **Drawoff) search {
	d := &Drawoff{FlowsLPerMin: testFlows(), LongestMin: longestShowerMin, PauseMin: pauseMin}
	for _, s := range pumpStates() {
		d.States = append(d.States, s.name)
	}
	var s search
	for side := range sides {
		s.parts = append(s.parts, func() error {
			b, err := newTestBench(c, side)
			if err != nil {
				return err
			}
			return b.all(ctx, d, d.Of(side))
		})
	}
	s.whole = func() { *into = d }
	return s
}

func (b *testBench) all(ctx context.Context, d *Drawoff, r *DrawoffResults) error {
	for month := range calendar.MonthsInAYear {
		at := b.c.ofMonth(month)
		if err := b.showers(ctx, at, d, r); err != nil {
			return err
		}
		if err := b.others(ctx, at, d, r); err != nil {
			return err
		}
	}
	if err := b.strips(ctx, r); err != nil {
		return err
	}
	var err error
	r.Rule, err = b.designRule(ctx)
	return err
}

// showers fills a month of the table of shower minutes.
func (b *testBench) showers(ctx context.Context, at conditions, d *Drawoff, r *DrawoffResults) error {
	for _, state := range pumpStates() {
		row := make([]float64, len(d.FlowsLPerMin))
		for i, flow := range d.FlowsLPerMin {
			minutes, err := b.showerMinutes(ctx, at, state.override, flow)
			if err != nil {
				return err
			}
			row[i] = minutes
		}
		r.ShowerMin[at.month] = append(r.ShowerMin[at.month], row)
	}
	return nil
}

// others fills a month of the other tests.
func (b *testBench) others(ctx context.Context, at conditions, d *Drawoff, r *DrawoffResults) (err error) {
	if r.BackToBack[at.month], err = b.secondShower(ctx, at, d.PauseMin); err != nil {
		return err
	}
	if r.SteadyFlow[at.month], err = b.steadyFlow(ctx, at); err != nil {
		return err
	}
	if r.Bath[at.month], err = b.bath(ctx, at); err != nil {
		return err
	}
	if r.RechargeMin[at.month], err = b.recharge(ctx, at); err != nil {
		return err
	}
	r.FromColdMin[at.month], err = b.heatUp(ctx, at)
	return err
}

// showerMinutes gives the minutes of a shower until it has been too cold for as
// long as the service rule lets pass, counted from warm water at the outlet.
func (b *testBench) showerMinutes(ctx context.Context, at conditions, o plant.Override, flow float64) (float64, error) {
	return b.lasts(ctx, at, o, []household.Draw{b.shower(1, flow, longestShowerMin)})
}

// lasts gives the minutes until the last of the given showers is too cold.
func (b *testBench) lasts(ctx context.Context, at conditions, o plant.Override, draws []household.Draw) (float64, error) {
	watch := coldWatch{minC: b.c.Household.ShowerMinC, patienceS: b.c.Service.ColdSeconds}
	last := draws[len(draws)-1].StartS
	span := last + longestShowerMin*secondsPerMinute + calendar.HalfHourS/3
	start := testStartS(at.month)
	_, err := b.run(ctx, at, o, span, draws, func(s *plant.Sample) {
		if s.T >= start+last {
			watch.see(s)
		}
	})
	return watch.minutes(), err
}

// coldWatch times a shower.
type coldWatch struct {
	minC, patienceS float64
	flowingS, coldS float64
	failed          bool
	lastedS         float64
}

func (w *coldWatch) see(s *plant.Sample) {
	if w.failed || len(s.Draws) == 0 || s.Draws[0].Waiting {
		return
	}
	w.flowingS += s.Dt
	if s.Draws[0].DeliveredC >= w.minC {
		w.lastedS = w.flowingS
		return
	}
	w.coldS += s.Dt
	w.failed = w.coldS > w.patienceS
}

// minutes is until the water turned too cold; a shower that never failed lasts as
// long as the test.
func (w *coldWatch) minutes() float64 {
	if !w.failed {
		return longestShowerMin
	}
	return w.lastedS / secondsPerMinute
}

package compare

import (
	"context"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// Shown is the part of the first simulated year that is shown in detail.
type Shown struct {
	Year      int `json:"year"` // of the ensemble, counted from 1
	WinterDay Day `json:"winter_day"`
	// Failed lists the draw-offs that fell short in that year.
	FailedCompact  []FailedDraw `json:"failed_draws_compact"`
	FailedCylinder []FailedDraw `json:"failed_draws_cylinder"`
}

// Day is one day of both options.
type Day struct {
	Day      int      `json:"day"` // of the year, 1 is 1 January
	MeanC    float64  `json:"mean_outdoor_c"`
	Compact  DayTrace `json:"compact"`
	Cylinder DayTrace `json:"cylinder"`
}

// Of gives one option's day.
func (d *Day) Of(side Side) *DayTrace {
	if side == SideCompact {
		return &d.Compact
	}
	return &d.Cylinder
}

// DayTrace follows one option through a day.
type DayTrace struct {
	Points []DayPoint `json:"points"`
	Draws  []DayDraw  `json:"draws"`
}

// DayPoint is the state of an option at a time of the day.
type DayPoint struct {
	Hour      float64 `json:"hour"` // of standard time
	BottomC   float64 `json:"bottom_c"`
	MiddleC   float64 `json:"middle_c"`
	TopC      float64 `json:"top_c"`
	HeatW     float64 `json:"heat_w"` // mean since the point before
	ElectricW float64 `json:"electric_w"`
}

// DayDraw is a draw-off of the day.
type DayDraw struct {
	Hour    float64 `json:"hour"`
	Kind    string  `json:"kind"`
	Minutes float64 `json:"minutes"`
	Litres  float64 `json:"litres"`
	WantC   float64 `json:"want_c"`
	MeanC   float64 `json:"mean_c"`
	LowestC float64 `json:"lowest_c"`
	Failed  bool    `json:"failed"`
}

// FailedDraw is a draw-off that fell short.
type FailedDraw struct {
	Day      int     `json:"day"`  // 1 is 1 January
	Hour     float64 `json:"hour"` // of standard time
	Kind     string  `json:"kind"`
	QueuePos int     `json:"queue_position"`
	Minutes  float64 `json:"minutes"`
	WantC    float64 `json:"want_c"`
	MeanC    float64 `json:"mean_c"`
	LowestC  float64 `json:"lowest_c"`
	ColdS    float64 `json:"cold_seconds"`
}

func failedDraws(outcomes []plant.Outcome) []FailedDraw {
	var out []FailedDraw
	for i := range outcomes {
		o := &outcomes[i]
		if !o.Failed {
			continue
		}
		day := calendar.DayOf(o.Draw.StartS)
		out = append(out, FailedDraw{
			Day: day + 1, Hour: hourOf(o.Draw.StartS, day), Kind: o.Draw.Kind.String(), QueuePos: o.Draw.QueuePos,
			Minutes: o.FlowingS / secondsPerMinute, WantC: o.Draw.WantC, MeanC: o.MeanC, LowestC: o.LowestC, ColdS: o.ColdS,
		})
	}
	return out
}

func hourOf(t float64, day int) float64 { return (t - float64(day)*calendar.DayS) / calendar.HourS }

// pointS is the time between the points of a day's trace.
const pointS = 120

// winterDay shows the coldest day of January with a shower in it.
func (c *Case) winterDay(ctx context.Context) (Day, error) {
	world, err := c.World(0)
	if err != nil {
		return Day{}, err
	}
	day, meanC := coldestDay(world)
	shown := Day{Day: day + 1, MeanC: meanC}
	for side := range sides {
		p, err := c.Plant(side)
		if err != nil {
			return Day{}, err
		}
		t := newDayTracer(day)
		rec := plant.Recorder{Ledger: plant.NewLedger(), Trace: t.sample}
		in := plant.Inputs{Weather: world.Weather, Draws: world.Draws}
		from := float64((day - spinUpDays) * calendar.DayS)
		if err := p.Run(ctx, from, float64((day+1)*calendar.DayS), in, plant.Override{}, rec); err != nil {
			return Day{}, err
		}
		t.trace.Draws = drawsOf(day, rec.Ledger.Outcomes)
		*shown.Of(side) = t.trace
	}
	return shown, nil
}

// coldestDay picks the coldest day of January on which somebody showers, or else
// the coldest.
func coldestDay(w World) (day int, meanC float64) {
	var showers [calendar.Days]bool
	for i := range w.Draws {
		if w.Draws[i].Kind == household.Shower {
			showers[calendar.WrapDay(calendar.DayOf(w.Draws[i].StartS))] = true
		}
	}
	best := -1
	for d := range calendar.DaysIn(0) {
		mean := dayMean(w, d)
		if best < 0 || (showers[d] && !showers[best]) || (showers[d] == showers[best] && mean < meanC) {
			best, meanC = d, mean
		}
	}
	return best, meanC
}

func dayMean(w World, day int) float64 {
	const hours = 24
	sum := 0.0
	for h := range hours {
		sum += w.Weather.OutdoorC[day*hours+h]
	}
	return sum / hours
}

// dayTracer turns the engine's steps into evenly spaced points.
type dayTracer struct {
	fromS            float64
	trace            DayTrace
	next             float64
	heatJ, electricJ float64
	since            float64
}

func newDayTracer(day int) *dayTracer {
	from := float64(day * calendar.DayS)
	return &dayTracer{fromS: from, next: from + pointS, since: from}
}

func (t *dayTracer) sample(s *plant.Sample) {
	if s.T < t.fromS {
		return
	}
	t.heatJ += s.HeatW * s.Dt
	t.electricJ += (s.ElectricW + s.PumpW) * s.Dt
	end := s.T + s.Dt
	if end < t.next {
		return
	}
	span := end - t.since
	t.trace.Points = append(t.trace.Points, DayPoint{
		Hour: (end - t.fromS) / calendar.HourS, BottomC: s.BottomC, MiddleC: s.MiddleC, TopC: s.TopC,
		HeatW: t.heatJ / span, ElectricW: t.electricJ / span,
	})
	t.heatJ, t.electricJ, t.since = 0, 0, end
	t.next = end + pointS
}

func drawsOf(day int, outcomes []plant.Outcome) []DayDraw {
	var out []DayDraw
	for i := range outcomes {
		o := &outcomes[i]
		if calendar.DayOf(o.Draw.StartS) != day {
			continue
		}
		out = append(out, DayDraw{
			Hour: hourOf(o.Draw.StartS, day), Kind: o.Draw.Kind.String(), Minutes: o.FlowingS / secondsPerMinute,
			Litres: o.Litres, WantC: o.Draw.WantC, MeanC: o.MeanC, LowestC: o.LowestC, Failed: o.Failed,
		})
	}
	return out
}

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
	SummerDay Day `json:"summer_day"`
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
	Loop   LoopDay    `json:"loop"`
}

// LoopDay follows the heat of the loop between heat pump and vessel through a day,
// kWh: what came in is what went out and what was kept.
type LoopDay struct {
	FromHeatPump float64 `json:"from_heat_pump_kwh"`
	FromHouse    float64 `json:"from_house_kwh"` // in the loop when hot water took it over
	ToVessel     float64 `json:"to_vessel_kwh"`
	ToHouse      float64 `json:"to_house_kwh"` // in the loop when heating took it over
	Lost         float64 `json:"lost_kwh"`
	ToDefrosts   float64 `json:"to_defrosts_kwh"`
	Kept         float64 `json:"kept_kwh"`
}

// loopDay sums the months of a day's ledger.
func loopDay(l *plant.Ledger, keptJ float64) LoopDay {
	d := LoopDay{Kept: keptJ / joulesPerKWh}
	for i := range l.Months {
		m := &l.Months[i]
		d.FromHeatPump += m.HeatPumpHeat / joulesPerKWh
		d.FromHouse += m.LoopFromHouse / joulesPerKWh
		d.ToVessel += m.LoopToVessel / joulesPerKWh
		d.ToHouse += m.LoopToHouse / joulesPerKWh
		d.Lost += m.LoopLoss / joulesPerKWh
		d.ToDefrosts += m.DefrostHeat / joulesPerKWh
	}
	return d
}

// DayPoint is the state of an option at a time of the day.
type DayPoint struct {
	Hour       float64 `json:"hour"` // of standard time
	BottomC    float64 `json:"bottom_c"`
	MiddleC    float64 `json:"middle_c"`
	TopC       float64 `json:"top_c"`
	HeatW      float64 `json:"heat_w"` // for hot water, mean since the point before
	ElectricW  float64 `json:"electric_w"`
	HouseW     float64 `json:"house_heat_w"` // for heating, likewise; negative while a defrost takes heat back
	RoomC      float64 `json:"room_c"`
	Defrosting bool    `json:"defrosting"` // since the point before
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

// showDays shows a day of winter and one of summer.
func (c *Case) showDays(ctx context.Context, w *worlds, shown *Shown) error {
	world, err := w.of(c, 0)
	if err != nil {
		return err
	}
	winter, meanC := coldestDay(world)
	if shown.WinterDay, err = c.showDay(ctx, world, winter, meanC); err != nil {
		return err
	}
	summer := busiestDay(world)
	shown.SummerDay, err = c.showDay(ctx, world, summer, dayMean(world, summer))
	return err
}

// showDay follows both options through a day, counted from 0.
func (c *Case) showDay(ctx context.Context, world World, day int, meanC float64) (Day, error) {
	shown := Day{Day: day + 1, MeanC: meanC}
	for side := range sides {
		p, err := c.Plant(side)
		if err != nil {
			return Day{}, err
		}
		t := newDayTracer(day)
		rec := plant.Recorder{Ledger: plant.NewLedger(), Trace: t.sample}
		in := plant.Inputs{Weather: world.Weather, Draws: world.Draws}
		from := float64(day * calendar.DayS)
		if err := p.Run(ctx, from-spinUpDays*calendar.DayS, from, in, plant.Override{}, plant.Recorder{}); err != nil {
			return Day{}, err
		}
		before := p.LoopHeldJ()
		if err := p.Run(ctx, from, from+calendar.DayS, in, plant.Override{}, rec); err != nil {
			return Day{}, err
		}
		t.trace.Draws = drawsOf(day, rec.Ledger.Outcomes)
		t.trace.Loop = loopDay(rec.Ledger, p.LoopHeldJ()-before)
		*shown.Of(side) = t.trace
	}
	return shown, nil
}

// coldestDay picks the coldest day of January on which somebody showers, or else
// the coldest.
func coldestDay(w World) (day int, meanC float64) {
	showers := showersOf(w)
	best := -1
	for d := range calendar.DaysIn(0) {
		mean, any := dayMean(w, d), showers[d] > 0
		if best < 0 || (any && showers[best] == 0) || (any == (showers[best] > 0) && mean < meanC) {
			best, meanC = d, mean
		}
	}
	return best, meanC
}

// busiestDay picks the day of July with the most showers, the first of equals.
func busiestDay(w World) int {
	const july = 6
	showers := showersOf(w)
	first := calendar.MonthStartDay(july)
	best := first
	for d := first; d < first+calendar.DaysIn(july); d++ {
		if showers[d] > showers[best] {
			best = d
		}
	}
	return best
}

// showersOf counts the showers of each day.
func showersOf(w World) (count [calendar.Days]int) {
	for i := range w.Draws {
		if w.Draws[i].Kind == household.Shower {
			count[calendar.WrapDay(calendar.DayOf(w.Draws[i].StartS))]++
		}
	}
	return count
}

func dayMean(w World, day int) float64 {
	const hours = 24
	sum := 0.0
	for h := range hours {
		sum += w.Weather.OutdoorC[day*hours+h]
	}
	return sum / hours
}

func drawsOf(day int, outcomes []plant.Outcome) []DayDraw {
	var out []DayDraw
	for i := range outcomes {
		o := &outcomes[i]
		if calendar.DayOf(o.Draw.StartS) != day || o.Litres == 0 { // the day ended before its water came
			continue
		}
		out = append(out, DayDraw{
			Hour: hourOf(o.Draw.StartS, day), Kind: o.Draw.Kind.String(), Minutes: o.FlowingS / secondsPerMinute,
			Litres: o.Litres, WantC: o.Draw.WantC, MeanC: o.MeanC, LowestC: o.LowestC, Failed: o.Failed,
		})
	}
	return out
}

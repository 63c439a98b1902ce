package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// pointS is the time between the points of a day's trace.
const pointS = 120

// dayTracer turns the engine's steps into about evenly spaced points. A point ends
// with the step that is past its time, and where a defrost begins or ends.
type dayTracer struct {
	fromS  float64
	trace  DayTrace
	next   float64
	since  float64
	heatJ  float64
	powerJ float64
	houseJ float64
	state  DayPoint // after the last step
}

func newDayTracer(day int) *dayTracer {
	from := float64(day * calendar.DayS)
	return &dayTracer{fromS: from, next: from + pointS, since: from}
}

func (t *dayTracer) sample(s *plant.Sample) {
	if s.T < t.fromS {
		return
	}
	if s.T > t.since && s.Defrosting != t.state.Defrosting {
		t.point(s.T)
	}
	t.heatJ += s.HeatW * s.Dt
	t.powerJ += (s.ElectricW + s.PumpW) * s.Dt
	t.houseJ += s.HouseW * s.Dt
	t.state = DayPoint{BottomC: s.BottomC, MiddleC: s.MiddleC, TopC: s.TopC, RoomC: s.RoomTempC, Defrosting: s.Defrosting}
	if end := s.T + s.Dt; end >= t.next {
		t.point(end)
	}
}

// point closes the stretch since the point before.
func (t *dayTracer) point(end float64) {
	span, p := end-t.since, t.state
	p.Hour = (end - t.fromS) / calendar.HourS
	p.HeatW, p.ElectricW, p.HouseW = t.heatJ/span, t.powerJ/span, t.houseJ/span
	t.trace.Points = append(t.trace.Points, p)
	t.heatJ, t.powerJ, t.houseJ, t.since = 0, 0, 0, end
	t.next = end + pointS
}

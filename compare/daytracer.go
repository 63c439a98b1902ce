package compare

import (
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// pointS is the time between the points of a day's trace.
const pointS = 120

// dayTracer turns the engine's steps into evenly spaced points.
type dayTracer struct {
	fromS  float64
	trace  DayTrace
	next   float64
	since  float64
	heatJ  float64
	powerJ float64
	houseJ float64
	iced   bool
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
	t.powerJ += (s.ElectricW + s.PumpW) * s.Dt
	t.houseJ += s.HouseW * s.Dt
	t.iced = t.iced || s.Defrosting
	if end := s.T + s.Dt; end >= t.next {
		t.point(end, s)
	}
}

// point closes the stretch since the point before.
func (t *dayTracer) point(end float64, s *plant.Sample) {
	span := end - t.since
	t.trace.Points = append(t.trace.Points, DayPoint{
		Hour: (end - t.fromS) / calendar.HourS, BottomC: s.BottomC, MiddleC: s.MiddleC, TopC: s.TopC,
		HeatW: t.heatJ / span, ElectricW: t.powerJ / span, HouseW: t.houseJ / span, RoomC: s.RoomTempC, Defrosting: t.iced,
	})
	t.heatJ, t.powerJ, t.houseJ, t.iced, t.since = 0, 0, 0, false, end
	t.next = end + pointS
}

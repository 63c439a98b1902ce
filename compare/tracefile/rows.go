package tracefile

import (
	"fmt"
	"strconv"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/plant"
)

// Digits after the point: time to a hundredth of a second, for a step may be as
// short as a quarter; temperatures and flows to a hundredth; powers to a watt
// tenth.
const (
	timeDigits  = 2
	stateDigits = 2
	powerDigits = 1
)

// minuteRow writes the state at the end of a minute and what ran in it.
func (t *tracer) minuteRow(s *plant.Sample, atS float64, at heights) {
	t.begin("minute", atS, s)
	t.line = append(t.line, ",,,,,,"...)
	for i := range t.workJ {
		t.workJ[i] /= minuteS
	}
	t.end(s, at, t.workJ)
	t.workJ = powers{}
}

// drawRow writes a step of a draw-off.
func (t *tracer) drawRow(s *plant.Sample, d *plant.DrawSample, atS float64, at heights) {
	t.begin("draw", atS, s)
	t.text(d.Kind)
	t.text(t.outlets[d.Outlet].Name)
	t.text(yesNo(d.Waiting))
	t.number(d.FlowLPerMin, stateDigits)
	t.number(d.WantC, stateDigits)
	t.number(d.DeliveredC, stateDigits)
	t.end(s, at, powersOf(s))
}

func (t *tracer) begin(kind string, atS float64, s *plant.Sample) {
	t.line = append(t.line, t.option...)
	t.text(kind)
	t.number(atS, timeDigits)
	date, clock := moment(atS)
	t.text(date)
	t.text(clock)
	t.number(s.OutdoorC, stateDigits)
	t.number(s.MainsC, stateDigits)
}

func (t *tracer) end(s *plant.Sample, at heights, meanW powers) {
	t.number(at.bottomC, stateDigits)
	t.number(at.middleC, stateDigits)
	t.number(at.topC, stateDigits)
	t.text(stateOf(s))
	for _, w := range meanW {
		t.number(w, powerDigits)
	}
	t.line = append(t.line, '\n')
}

func (t *tracer) text(s string) { t.line = append(append(t.line, ','), s...) }

func (t *tracer) number(v float64, digits int) {
	t.line = strconv.AppendFloat(append(t.line, ','), v, 'f', digits, 64)
}

// stateOf names what the heat pump does.
func stateOf(s *plant.Sample) string {
	switch {
	case s.Defrosting:
		return "defrost"
	case s.Running:
		return "hot water"
	case s.HouseElectricW > 0:
		return "heating"
	default:
		return "off"
	}
}

func yesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

// moment writes a time of the year as month-day and clock.
func moment(atS float64) (date, clock string) {
	second := int(atS)
	day := second / calendar.DayS
	month := calendar.MonthOfDay(day)
	inDay := second % calendar.DayS
	return fmt.Sprintf("%02d-%02d", month+1, calendar.WrapDay(day)-calendar.MonthStartDay(month)+1),
		fmt.Sprintf("%02d:%02d:%02d", inDay/calendar.HourS, inDay/minuteS%60, inDay%minuteS)
}

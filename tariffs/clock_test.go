package tariffs

import (
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// A meter without summer time that is cheap 00:30-07:30 is cheap 01:30-08:30 on
// the wall clock in summer.
func TestFixedClockShiftsTheNightInSummer(t *testing.T) {
	r := compile(t, TwoRate("two-rate", 0.14, 0.34, 0, standardNight()))
	summerDay, winterDay := calendar.MonthStartDay(6), calendar.MonthStartDay(0)+10
	tests := []struct {
		day     int
		local   int // minutes since local midnight
		perKWh  float64
		comment string
	}{
		{winterDay, 0, 0.34, "winter, before the night"},
		{winterDay, 30, 0.14, "winter, night begins"},
		{winterDay, 7 * 60, 0.14, "winter, last half hour"},
		{winterDay, 7*60 + 30, 0.34, "winter, night has ended"},
		{summerDay, 60, 0.34, "summer, before the shifted night"},
		{summerDay, 90, 0.14, "summer, shifted night begins"},
		{summerDay, 8 * 60, 0.14, "summer, a morning shower still at night rate"},
		{summerDay, 8*60 + 30, 0.34, "summer, shifted night has ended"},
	}
	for _, tt := range tests {
		standard := british().Standard(float64(tt.day*calendar.DayS + tt.local*60))
		if got := r.PerKWh(int(standard / calendar.HalfHourS)); got != tt.perKWh {
			t.Errorf("%s: %g, want %g", tt.comment, got, tt.perKWh)
		}
	}
}

// On the days of change a local band keeps its hours on the wall clock: the night
// 00:30-07:30 is an hour shorter in spring and an hour longer in autumn.
func TestLocalNightOnTheDaysOfChange(t *testing.T) {
	y := british()
	r := compile(t, TwoRate("two-rate", 0.14, 0.34, 0, Window{StartMin: 30, EndMin: 7*60 + 30, Clock: LocalClock}))
	nightHours := func(day int) float64 {
		hours := 0.0
		noonBefore := day*calendar.HalfHoursADay - calendar.HalfHoursADay/2
		for i := range calendar.HalfHoursADay {
			if r.PerKWh(noonBefore+i) == 0.14 {
				hours += 0.5
			}
		}
		return hours
	}
	spring, autumn := y.DSTStart/calendar.DayS, y.DSTEnd/calendar.DayS
	for _, tt := range []struct {
		day  int
		want float64
	}{{spring - 1, 7}, {spring, 6}, {spring + 1, 7}, {autumn - 1, 7}, {autumn, 8}, {autumn + 1, 7}} {
		if got := nightHours(tt.day); got != tt.want {
			t.Errorf("day %d: %g night hours, want %g", tt.day, got, tt.want)
		}
	}
}

func TestWeekendsAndMonthsFollowTheBandsClock(t *testing.T) {
	y := british()
	tariff := &Tariff{
		Name: "weekend nights in summer",
		Bands: []Band{{
			Label: "cheap", Days: Weekends, Months: []time.Month{time.July},
			StartMin: 22 * 60, EndMin: 6 * 60, PerKWh: 0.1,
		}},
		Remaining: &Remaining{Label: "rest", PerKWh: 0.3},
	}
	r, err := tariff.Compile(y)
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.MonthStartDay(6)
	for y.Weekday(day) != time.Saturday {
		day++
	}
	local := func(day, minute int) float64 {
		return r.PerKWh(int(y.Standard(float64(day*calendar.DayS+minute*60)) / calendar.HalfHourS))
	}
	tests := []struct {
		name        string
		day, minute int
		want        float64
	}{
		{"Friday evening belongs to Friday", day - 1, 23 * 60, 0.3},
		{"Saturday small hours", day, 0, 0.1},
		{"Saturday noon", day, 12 * 60, 0.3},
		{"Saturday evening", day, 22 * 60, 0.1},
		{"Sunday small hours", day + 1, 5*60 + 30, 0.1},
		{"Sunday late evening", day + 1, 23*60 + 30, 0.1},
		{"Monday small hours belong to Monday", day + 2, 0, 0.3},
		{"a Saturday in June", day - 7 - 21, 0, 0.3},
	}
	for _, tt := range tests {
		if got := local(tt.day, tt.minute); got != tt.want {
			t.Errorf("%s: %g, want %g", tt.name, got, tt.want)
		}
	}
}

package compare

import (
	"math"
	"slices"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// TestDayTracer holds the tracer against steps whose means are plain: three of a
// minute, of which a defrost ends after the first, and one of four minutes.
func TestDayTracer(t *testing.T) {
	const day = 2
	from := float64(day * calendar.DayS)
	tracer := newDayTracer(day)
	for _, s := range []plant.Sample{
		{T: from - 60, Dt: 60, HeatW: 9e9},
		{T: from, Dt: 60, HeatW: -6000, ElectricW: 1900, PumpW: 100, Defrosting: true, TopC: 49},
		{T: from + 60, Dt: 60, HouseW: 3000, RoomTempC: 20.25},
		{T: from + 120, Dt: 60, HouseW: 1000, RoomTempC: 20.5, TopC: 50},
		{T: from + 180, Dt: 240, HouseW: -500, RoomTempC: 20.25},
	} {
		tracer.sample(&s)
	}
	want := []DayPoint{
		{Hour: 60.0 / 3600, TopC: 49, HeatW: -6000, ElectricW: 2000, Defrosting: true},
		{Hour: 180.0 / 3600, TopC: 50, HouseW: 2000, RoomC: 20.5},
		{Hour: 420.0 / 3600, HouseW: -500, RoomC: 20.25},
	}
	if got := tracer.trace.Points; !slices.Equal(got, want) {
		t.Errorf("points %+v, want %+v", got, want)
	}
}

func TestBusiestDay(t *testing.T) {
	const july = 6
	shower := func(day int) household.Draw {
		return household.Draw{Kind: household.Shower, StartS: float64(day*calendar.DayS + 100)}
	}
	first := calendar.MonthStartDay(july)
	for _, c := range []struct {
		name  string
		draws []household.Draw
		want  int
	}{
		{"none", nil, first},
		{"only in June and August", []household.Draw{shower(first - 1), shower(first + 31)}, first},
		{"most on the last", []household.Draw{shower(first + 3), shower(first + 30), shower(first + 30)}, first + 30},
		{"the first of equals", []household.Draw{shower(first + 8), shower(first + 4)}, first + 4},
		{"a bath is none", []household.Draw{shower(first + 8), {Kind: household.Bath, StartS: float64((first + 2) * calendar.DayS)}}, first + 8},
	} {
		if got := busiestDay(World{Draws: c.draws}); got != c.want {
			t.Errorf("%s: day %d, want %d", c.name, got, c.want)
		}
	}
}

// TestShownDays lives through both days and holds them to what a day can be.
func TestShownDays(t *testing.T) {
	c := Default()
	// A summer so warm that nothing is heated.
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 15, 25, 27, 25, 14.1, 10.6, 7.1, 4.2}
	c.Climate.MainsC = &[12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	var shown Shown
	if err := c.showDays(t.Context(), nil, &shown); err != nil {
		t.Fatal(err)
	}
	const july = 6
	if m := calendar.MonthOfDay(shown.WinterDay.Day - 1); m != 0 {
		t.Errorf("the winter day lies in month %d", m+1)
	}
	if m := calendar.MonthOfDay(shown.SummerDay.Day - 1); m != july {
		t.Errorf("the summer day lies in month %d", m+1)
	}
	for side := range sides {
		winter, summer := shown.WinterDay.Of(side), shown.SummerDay.Of(side)
		if houseKWh(winter) <= 0 || houseKWh(summer) != 0 {
			t.Errorf("%v: %.1f kWh of heating in January, %.1f in July", side, houseKWh(winter), houseKWh(summer))
		}
		for _, trace := range []*DayTrace{winter, summer} {
			if last := trace.Points[len(trace.Points)-1]; math.Abs(last.Hour-24) > pointS/calendar.HourS || len(trace.Draws) == 0 {
				t.Errorf("%v: the day ends at %.2f h with %d draws", side, last.Hour, len(trace.Draws))
			}
		}
	}
}

// houseKWh adds up a day's heating.
func houseKWh(d *DayTrace) float64 {
	sum, before := 0.0, 0.0
	for i := range d.Points {
		p := &d.Points[i]
		sum += p.HouseW * (p.Hour - before) / 1000
		before = p.Hour
	}
	return sum
}

// TestLoopOfADay: what came into the loop is what went out and what was kept, to
// rounding, for both options on a day with heating and on one without; and the loop
// never loses more than its coefficient at the hottest water all day long.
func TestLoopOfADay(t *testing.T) {
	c := Default()
	c.Household.People = 2
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	var shown Shown
	if err := c.showDays(t.Context(), nil, &shown); err != nil {
		t.Fatal(err)
	}
	for _, day := range []*Day{&shown.WinterDay, &shown.SummerDay} {
		for side := range sides {
			l := day.Of(side).Loop
			in, out := l.FromHeatPump+l.FromHouse, l.ToVessel+l.ToHouse+l.Lost+l.ToDefrosts+l.Kept
			t.Logf("day %d, %v: %+v", day.Day, side, l)
			if math.Abs(in-out) > 1e-9*(1+in) || l.FromHeatPump <= 0 {
				t.Errorf("day %d, %v: %.9f kWh in, %.9f kWh out", day.Day, side, in, out)
			}
			const coldestC, hours, wattsPerKW = -15, 24, 1000
			most := (c.Pipes.IndoorLossWPerK + c.Pipes.OutdoorLossWPerK) * (c.HeatPump.HighestFlowC - coldestC) * hours / wattsPerKW
			if l.Lost < 0 || l.Lost > most {
				t.Errorf("day %d, %v: %.3f kWh lost, at most %.3f", day.Day, side, l.Lost, most)
			}
		}
	}
}

package compare

import (
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// tooSmall is a home whose compact store and cylinder both run cold at times.
func tooSmall(years int) Case {
	c := british(years)
	c.Household.People = 4
	c.Compact.VolumeL, c.Cylinder.VolumeL = 60, 120
	c.Compact.Control.SetpointC = 55
	return c
}

// Failing showers by month, by place in the queue and by hour all add up to the year's,
// in the mean and in each year.
func TestFailuresAddUp(t *testing.T) {
	c := tooSmall(3)
	cmp := compared(t, &c)
	for side := range sides {
		o := cmp.Options.Of(side)
		year := o.FailingShowers
		if year < 1 {
			t.Fatalf("%s: %g failing showers say nothing", o.Name, year)
		}
		byMonth, byMonthSpread, byMonthRisk := 0.0, 0.0, 0.0
		for m := range o.Months {
			byMonth += o.Months[m].FailingShowers
			byMonthSpread += o.FailuresByMonth[m].Mean
			byMonthRisk += o.Risk.Showers[m].Failing
		}
		byQueue, byHour, showers := 0.0, 0.0, 0.0
		for _, q := range o.Risk.ByQueue {
			byQueue += q.Failing
			showers += q.Showers
		}
		for _, n := range o.Risk.ByHour {
			byHour += n
		}
		for what, sum := range map[string]float64{
			"months": byMonth, "spread of months": byMonthSpread, "months of the risk": byMonthRisk, "queue": byQueue, "hours": byHour,
			"spread of the year": o.Spread["failing_showers_per_year"].Mean,
		} {
			closeTo(t, o.Name+", failing showers by "+what, sum, year, sumShare*year)
		}
		closeTo(t, o.Name+", showers by place in the queue", showers, o.Showers, sumShare*o.Showers)
		if first := o.Risk.Chances[0]; first.MoreThan != 0 || first.Share != 1 || first.High != 1 || first.Low > 0.6 {
			t.Errorf("%s: chance of any failing shower in three bad years: %+v", o.Name, first)
		}
		if o.Risk.LongestSpell.Mean > o.Risk.BadDays.Mean || o.Risk.WorstDay.Mean < 1 || o.Risk.BadDays.Mean > year {
			t.Errorf("%s: %+v", o.Name, o.Risk)
		}
	}
}

// outcome is a shower at an hour of a day that failed or not.
func outcome(day int, hour float64, place int, failed bool) plant.Outcome {
	return plant.Outcome{
		Draw:   household.Draw{StartS: float64(day)*calendar.DayS + hour*calendar.HourS, Kind: household.Shower, QueuePos: place},
		Failed: failed,
	}
}

// Worked by hand: days 10, 11 and 12 run cold, then day 20 twice; a cold bath is no
// shower; the clock of the hours is that on the wall.
func TestRiskOfAHandMadeYear(t *testing.T) {
	const summerDay = 180
	list := []plant.Outcome{
		outcome(10, 7.5, 0, true), outcome(11, 7.5, 1, true), outcome(12, 8, 0, true), outcome(12, 9, 0, false),
		outcome(20, 7.1, 0, true), outcome(20, 7.3, 5, true), outcome(summerDay, 7.5, 0, true),
	}
	bath := outcome(15, 20, 0, true)
	bath.Draw.Kind = household.Bath
	c := british(1)
	r := riskOf(append(list, bath), c.Climate.Year())
	year := badYear(&r)
	if year.WorstDay != 2 || year.LongestSpell != 3 || year.BadDays != 5 {
		t.Errorf("worst day %g, longest spell %g, bad days %g", year.WorstDay, year.LongestSpell, year.BadDays)
	}
	if r.byHour[7] != 4 || r.byHour[8] != 2 { // the summer's 07:30 is 08:30 on the wall
		t.Errorf("by hour %v", r.byHour)
	}
	if r.queue[0].Showers != 5 || r.queue[0].Failing != 4 || r.queue[1].Failing != 1 || r.queue[queueDepth-1].Failing != 1 {
		t.Errorf("by queue %+v", r.queue)
	}
}

// badYear puts the months of a year together.
func badYear(r *riskYear) Totals {
	var months [calendar.MonthsInAYear]MonthTotals
	for m := range months {
		r.months[m].note(&months[m].Totals)
	}
	t, _ := yearTotals(&months)
	return t
}

// A spell that runs over the end of a month counts whole: from 30 January to
// 2 February are four days in a row, and two bad days in each month.
func TestSpellOverTheEndOfAMonth(t *testing.T) {
	var list []plant.Outcome
	for day := 29; day <= 32; day++ {
		list = append(list, outcome(day, 8, 0, true))
	}
	c := british(1)
	r := riskOf(list, c.Climate.Year())
	if year := badYear(&r); year.LongestSpell != 4 || year.BadDays != 4 || r.months[0].days != 2 || r.months[1].days != 2 || r.months[0].longest != 2 {
		t.Errorf("%+v in January, %+v in February, year %g", r.months[0], r.months[1], year.LongestSpell)
	}
}

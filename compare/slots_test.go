package compare

import (
	"context"
	"encoding/json"
	"math"
	"slices"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/tariffs"
)

func pricesOf(t *testing.T, tariff *tariffs.Tariff) [slotsADay]float64 {
	t.Helper()
	return slotPricesOf(t, &Case{Tariffs: []tariffs.Tariff{*tariff}, Climate: Climate{FirstWeekday: time.Thursday, SummerTime: true}})
}

// A meter on standard time shifts its night by an hour on the wall clock in summer,
// so the hours at both ends of the night are cheap for a part of the year only.
func TestSlotPricesAreOfTheWallClock(t *testing.T) {
	night := tariffs.Window{StartMin: 30, EndMin: 7*60 + 30, Clock: tariffs.StandardClock}
	p := pricesOf(t, tariffs.TwoRate("two-rate", 0.10, 0.30, 0, night))
	y := calendar.European(time.Thursday)
	// The clocks change at 01:00 of standard time, before the night's end of that
	// day: as many mornings as the summer has days are an hour late.
	summer := float64(calendar.DayOf(float64(y.DSTEnd))-calendar.DayOf(float64(y.DSTStart))) / calendar.Days
	for slot, want := range map[int]float64{
		4: 0.10, 14: 0.10, // 02:00 and 07:00: night all year
		15: 0.30 - 0.20*summer, 16: 0.30 - 0.20*summer, // 07:30 to 08:30: night in summer
		1: 0.10 + 0.20*summer, // 00:30: night in winter
		0: 0.30, 40: 0.30,
	} {
		closeTo(t, clockText(slot*minutesASlot), p[slot], want, 0.30/calendar.Days+1e-12) // a day more or less at the change
	}
}

func slotPricesOf(t *testing.T, c *Case) [slotsADay]float64 {
	t.Helper()
	rates, err := c.rates()
	if err != nil {
		t.Fatal(err)
	}
	return slotPrices(c.marginalPrices(rates[0]), c.Climate.Year())
}

func threeBands() *tariffs.Tariff {
	return &tariffs.Tariff{
		Name: "invented", PricesIncludeTax: true,
		Bands: []tariffs.Band{
			{Label: "cheap", StartMin: 23 * 60, EndMin: 2 * 60, PerKWh: 0.15},
			{Label: "cheap", StartMin: 12*60 + 30, EndMin: 15*60 + 30, PerKWh: 0.15},
			{Label: "peak", StartMin: 16 * 60, EndMin: 19 * 60, PerKWh: 0.39},
		},
		Remaining: &tariffs.Remaining{Label: "day", PerKWh: 0.26},
	}
}

func TestCandidatesAreTheCheapestHours(t *testing.T) {
	candidates := windowCandidates(pricesOf(t, threeBands()), 6)
	if candidates[0] != nil {
		t.Errorf("the windows as stated do not come first: %v", candidates[0])
	}
	both := []Window{{12*60 + 30, 15*60 + 30}, {23 * 60, 2 * 60}}
	if !slices.ContainsFunc(candidates, func(w []Window) bool { return slices.Equal(w, both) }) {
		t.Errorf("the six cheap hours are not among %v", candidates)
	}
	for _, windows := range candidates[1:] {
		if open := hoursOpen(windows); open != 6 && open != 9 && open != 12 {
			t.Errorf("%v are open for %g hours", windowTexts(windows), open)
		}
	}
}

// At one price all day, the warmest hours come first.
func TestEqualPricesPreferTheWarmestHours(t *testing.T) {
	first := windowCandidates(pricesOf(t, tariffs.Flat("flat", 0.26, 0)), 3)[1]
	if got := windowTexts(first); !slices.Equal(got, []string{"12:30-15:30"}) {
		t.Errorf("three hours of a flat rate: %v", got)
	}
}

func TestWindowsOverMidnight(t *testing.T) {
	for _, c := range []struct {
		r    run
		text string
	}{{run{46, 4}, "23:00-01:00"}, {run{44, 4}, "22:00-24:00"}, {run{0, 1}, "00:00-00:30"}} {
		if got := windowTexts([]Window{c.r.window()}); got[0] != c.text || hoursOpen([]Window{c.r.window()}) != float64(c.r.length)/slotsAnHour {
			t.Errorf("%+v: %s for %g hours, want %s", c.r, got[0], hoursOpen([]Window{c.r.window()}), c.text)
		}
	}
	if hoursOpen(nil) != 24 {
		t.Errorf("no windows are open for %g hours", hoursOpen(nil))
	}
}

// pick takes the cheapest set that serves; sets that do not serve are cheap because
// they run cold.
func TestOnlyWindowsThatServeArePicked(t *testing.T) {
	c := Default()
	c.Service.FailuresPerYear = 2
	w := &WindowChoice{}
	for _, x := range []struct{ cost, failing, unmet float64 }{
		{300, 1, 0.001}, {200, 9, 0.001}, {210, 1, 0.03}, {250, 2, 0.01}, {260, 0, 0},
	} {
		w.try(&c, []Window{{0, 60}}, &Trial{Cost: x.cost, Failing: Spread{Mean: x.failing}, UnmetShare: x.unmet})
	}
	if got := w.pick(); got != 3 {
		t.Errorf("picked %d of %+v", got, w.Tried)
	}
	closeTo(t, "saved", w.SavedPerYear, 50, 0)
	closeTo(t, "risked", w.ExtraFailing, 1, 0)
	closeTo(t, "more unmet", w.ExtraUnmet, 0.009, 1e-12)
}

// british is a small home in the average British climate (SAP 10.2, Tables U1 and
// J1), for a year or two.
func british(years int) Case {
	c := Default()
	c.Years = years
	c.Household.People = 2
	c.Climate.OutdoorC = [12]float64{4.3, 4.9, 6.5, 8.9, 11.7, 14.6, 16.6, 16.4, 14.1, 10.6, 7.1, 4.2}
	c.Climate.MainsC = &[12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}
	return c
}

// The windows are solved on the first tariff, whatever the workers, and replace
// the wish; a case without a wish comes back untouched.
func TestSolvedWindowsReplaceTheWish(t *testing.T) {
	plain := british(1)
	if same, choices, err := plain.SolveWindows(context.Background(), 1); err != nil || same != &plain || choices[SideCompact] != nil || choices[SideCylinder] != nil {
		t.Errorf("a case without a wish: %p, %v, %v", same, choices, err)
	}
	c := british(1)
	c.Tariffs = []tariffs.Tariff{*threeBands()}
	c.Cylinder.VolumeL = 300
	c.Cylinder.Control.Cheapest = Cheapest{Hours: 12}
	solved, choices, err := c.SolveWindows(context.Background(), 2)
	if err != nil {
		t.Fatal(err)
	}
	choice := choices[SideCylinder]
	if solved.Cylinder.Control.Cheapest.Hours != 0 || c.Cylinder.Control.Cheapest.Hours != 12 || choices[SideCompact] != nil {
		t.Errorf("wish left %+v, case changed to %+v", solved.Cylinder.Control.Cheapest, c.Cylinder.Control.Cheapest)
	}
	if got := windowTexts(solved.Cylinder.Control.Windows); !slices.Equal(got, choice.Windows) {
		t.Errorf("the case has %v, the choice says %v", got, choice.Windows)
	}
	for i := range choice.Tried {
		if tried := &choice.Tried[i]; tried.Serves && tried.Cost < choice.Tried[0].Cost-choice.SavedPerYear {
			t.Errorf("%v serve for less than the choice", tried.Windows)
		}
	}
	if choice.SavedPerYear < 0 {
		t.Errorf("the choice costs %g more than the windows as stated", -choice.SavedPerYear)
	}
}

// A raised setpoint in the cheapest hours leaves the windows as they are.
func TestPrechargeRaisesTheSetpoint(t *testing.T) {
	c := Default()
	c.Compact.Control.Cheapest = Cheapest{Hours: 3, RaisedC: 65}
	got := c.withWindows(SideCompact, []Window{{60, 240}}).Compact.Control
	if len(got.Windows) != 0 || len(got.Raised) != 1 || got.Raised[0] != (Raised{Window{60, 240}, 65}) {
		t.Errorf("%+v", got)
	}
	if len(c.Compact.Control.Raised) != 0 {
		t.Error("the case itself was changed")
	}
}

// One comparison: its bills add up, its carbon follows the monthly factors, and it
// can be written as JSON, which knows no infinite numbers.
func TestMoneyOfASimulatedHome(t *testing.T) {
	c := british(2)
	c.Tariffs = append(c.Tariffs, *threeBands())
	c.HeatPump.DesignStarts = 50_000
	c.Room.WidthMM = 800
	cmp := compared(t, &c)
	if _, err := json.Marshal(cmp); err != nil {
		t.Error(err)
	}
	factors := c.Money.CarbonByMonth()
	for side := range sides {
		o := cmp.Options.Of(side)
		carbon := 0.0
		for m := range o.Months {
			carbon += factors[m] * o.Months[m].WholeHouseKWh
		}
		closeTo(t, o.Name+", carbon", o.CarbonKg, carbon, 1e-9*carbon)
		for i := range cmp.Tariffs {
			billsAddUp(t, &cmp.Tariffs[i], side, o.WholeHouseKWh)
		}
		closeTo(t, o.Name+", whole life on the first tariff", cmp.Tariffs[0].Of(side).NetPresentCost, o.NetPresentCost, 1e-6)
	}
	if r := cmp.BreakEven.Ratio; r != nil && (math.IsInf(*r, 0) || *r < 0) {
		t.Errorf("break-even at %g", *r)
	}
}

// billsAddUp holds bands, months and the year of a bill against each other, and its
// energy against the plant's.
func billsAddUp(t *testing.T, tariff *TariffCost, side Side, wholeHouseKWh float64) {
	t.Helper()
	bill := tariff.Of(side)
	bands, months := 0.0, 0.0
	for _, b := range bill.Bands {
		bands += b.Cost
	}
	for m := range bill.Months {
		for _, b := range bill.Months[m] {
			months += b.Cost
		}
	}
	const penny = 0.005
	closeTo(t, tariff.Name+", bands", bands, bill.Cost, penny)
	closeTo(t, tariff.Name+", months", months, bill.Cost, penny)
	closeTo(t, tariff.Name+", energy", bill.KWh, wholeHouseKWh, 1e-9*wholeHouseKWh)
}

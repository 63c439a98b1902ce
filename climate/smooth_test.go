package climate

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"dhwcompare/compare/calendar"
)

// A yearly sine is known exactly: its month means by integration, its days by
// the same. The derivative of a cubic spline errs by at most h^3/24 times the
// fourth derivative (Hall and Meyer 1976, from memory); with h the longest month
// and the sine's amplitude A that is A (2 pi 31/365)^3 / 24.
func TestSmoothMonthsRecoversASine(t *testing.T) {
	const mean, amplitude, shiftDays = 10.0, 6.2, 20.0
	omega := 2 * math.Pi / calendar.Days
	average := func(from, to int) float64 {
		wave := func(day int) float64 { return math.Sin(omega*(float64(day)-shiftDays)) / omega }
		return mean + amplitude*(wave(to)-wave(from))/float64(to-from)
	}
	var monthly Monthly
	for m := range monthly {
		monthly[m] = average(calendar.MonthStartDay(m), calendar.MonthStartDay(m+1))
	}
	tol := amplitude * math.Pow(omega*31, 3) / 24
	for day, got := range smoothMonths(monthly) {
		if want := average(day, day+1); math.Abs(got-want) > tol {
			t.Errorf("day %d: %.4f, want %.4f +/- %.4f", day, got, want, tol)
		}
	}
}

func TestSmoothMonthsKeepsAConstant(t *testing.T) {
	var monthly Monthly
	for m := range monthly {
		monthly[m] = 7.25
	}
	for day, got := range smoothMonths(monthly) {
		if math.Abs(got-7.25) > 1e-12 { // rounding of a few operations on values near 7
			t.Fatalf("day %d: %v, want 7.25", day, got)
		}
	}
}

// Whatever the months are, their means are kept to rounding, and the curve leaves
// their span by at most 0.366 of it; 0.38 allows for months of unequal length.
func TestSmoothMonthsKeepsMeansAndBoundsItsOvershoot(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var monthly Monthly
		for m := range monthly {
			monthly[m] = rapid.Float64Range(-40, 40).Draw(t, "mean")
		}
		days := smoothMonths(monthly)
		for m, want := range monthly {
			got := average(days[calendar.MonthStartDay(m):calendar.MonthStartDay(m+1)])
			if math.Abs(got-want) > 1e-11 { // rounding of 31 sums of values up to 60
				t.Fatalf("month %d: mean %v, want %v", m+1, got, want)
			}
		}
		low, high := slices.Min(monthly[:]), slices.Max(monthly[:])
		over := max(slices.Max(days[:])-high, low-slices.Min(days[:]))
		if over > 0.38*(high-low)+1e-12 {
			t.Fatalf("overshoot %.3f of a span of %.3f", over, high-low)
		}
	})
}

// Half a year at 0 and half at 1: by the theory of the spline on equal months the
// curve is 0.5 at the step and 1.134 a month later, and the parabola between them
// with mean 1 peaks at 1.183. Months of unequal length, up to a tenth shorter, and
// the average over a day may move the excess by a tenth of itself.
func TestSmoothMonthsOvershootsAStepByNearlyAFifth(t *testing.T) {
	monthly := Monthly{6: 1, 7: 1, 8: 1, 9: 1, 10: 1, 11: 1}
	days := smoothMonths(monthly)
	if over := slices.Max(days[:]) - 1; math.Abs(over-0.183) > 0.018 {
		t.Errorf("overshoot %.3f of the step, want 0.183", over)
	}
}

// Days that meet at a change of month differ no more than smoothly: for the
// British year the steepest month-to-month change is 3.5 K in 30.5 days, 0.115 K a
// day, and no step passes 0.13 K, the change of year included. Twelve flat
// months would step by 3.5 K.
func TestSmoothMonthsHasNoSteps(t *testing.T) {
	days := smoothMonths(british(t).OutdoorC)
	for day := range days {
		next := days[calendar.WrapDay(day+1)]
		if step := math.Abs(next - days[day]); step > 0.13 {
			t.Errorf("day %d: step of %.3f K", day, step)
		}
	}
}

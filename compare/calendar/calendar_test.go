package calendar

import (
	"testing"
	"time"
)

func TestMonthsCoverTheYear(t *testing.T) {
	if got := MonthStartDay(MonthsInAYear); got != Days {
		t.Fatalf("months sum to %d days, want %d", got, Days)
	}
	for m := range MonthsInAYear {
		first, last := MonthStartDay(m), MonthStartDay(m+1)-1
		if MonthOfDay(first) != m || MonthOfDay(last) != m {
			t.Errorf("month %d: days %d and %d fall in months %d and %d", m, first, last, MonthOfDay(first), MonthOfDay(last))
		}
	}
	if MonthOfDay(-1) != 11 || MonthOfDay(365) != 0 {
		t.Error("days outside the year do not wrap")
	}
}

func TestEuropeanSummerTime(t *testing.T) {
	// 2026 begins on a Thursday; clocks change on 29 March and 25 October.
	y := European(time.Thursday)
	if got, want := y.DSTStart, (MonthStartDay(2)+28)*DayS+HourS; got != want {
		t.Errorf("summer time starts at %d, want %d", got, want)
	}
	if got, want := y.DSTEnd, (MonthStartDay(9)+24)*DayS+HourS; got != want {
		t.Errorf("summer time ends at %d, want %d", got, want)
	}
}

func TestLocalAndStandardAreInverse(t *testing.T) {
	y := European(time.Thursday)
	for std := 0.0; std < YearS; std += 1799 {
		local := y.Local(std)
		back := y.Standard(local)
		// In the hour after the autumn change a wall-clock time occurs twice, and
		// Standard gives the first of the two.
		repeated := std >= float64(y.DSTEnd) && std < float64(y.DSTEnd)+secondsPerHour
		if repeated {
			back += secondsPerHour
		}
		if back != std {
			t.Fatalf("standard %.0f: local %.0f, back %.0f", std, local, back)
		}
	}
	skipped := float64(y.DSTStart) + 600
	if got := y.Standard(skipped); got != float64(y.DSTStart) {
		t.Errorf("skipped local time maps to %.0f, want the change at %d", got, y.DSTStart)
	}
}

func TestIndicesWrap(t *testing.T) {
	if WrapHalfHour(-1) != HalfHours-1 || WrapHalfHour(HalfHours) != 0 || WrapHalfHour(2*HalfHours+1) != 1 {
		t.Error("half-hour index does not wrap")
	}
	if HourOf(-1) != Hours-1 || HourOf(YearS) != 0 || HourOf(3599) != 0 {
		t.Error("hour index does not wrap")
	}
}

func TestWeekdaysGoOn(t *testing.T) {
	y := WithoutSummerTime(time.Thursday)
	if y.Weekday(-1) != time.Wednesday || y.Weekday(7) != time.Thursday {
		t.Error("weekday does not go on outside the year")
	}
	if !y.IsWeekend(2) || y.IsWeekend(4) {
		t.Error("weekend: day 2 is a Saturday, day 4 a Monday")
	}
	if y.Local(15e6) != 15e6 || y.Standard(15e6) != 15e6 {
		t.Error("a year without summer time shifts its clock")
	}
}

func TestMonthNames(t *testing.T) {
	names := MonthNames()
	if names[0] != "January" || names[11] != "December" || ShortMonth(0) != "Jan" || ShortMonth(8) != "Sep" {
		t.Errorf("%v, %s, %s", names, ShortMonth(0), ShortMonth(8))
	}
}

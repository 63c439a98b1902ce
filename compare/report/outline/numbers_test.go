package outline

import "testing"

func TestAmounts(t *testing.T) {
	pounds, kroner := writer{sign("GBP")}, writer{sign("NOK")}
	for _, test := range []struct{ got, want string }{
		{amount(0, 0), "0"}, {amount(-0.4, 0), "0"}, {amount(999.6, 0), "1,000"}, {amount(1234567.891, 2), "1,234,567.89"}, {amount(-12, 1), "−12.0"},
		{change(0.04, 1), "0.0"}, {change(3, 0), "+3"}, {change(-1000, 0), "−1,000"},
		{pounds.whole(1250.4), "£1,250"}, {pounds.amount(-0.031, 2), "−£0.03"}, {pounds.change(60, 0), "+£60"}, {pounds.change(0.2, 0), "£0"},
		{kroner.whole(60), "NOK 60"},
		{few(0.04), "0.0"}, {few(3), "3"}, {few(9.94), "9.9"}, {few(9.96), "10"}, {few(9.95), "10"}, {few(2.65), "2.7"}, {few(0.95), "1.0"}, {few(120.4), "120"},
		{percentOf(0.305), "31 %"},
		{minutesUpTo(29.6, 30), "30"}, {minutesUpTo(30, 30), "30+"},
		{counted(0, "shower", "showers"), "no shower"}, {counted(0, "", ""), "none"}, {counted(0.3, "shower", "showers"), "less than one shower"},
		{counted(1.2, "shower", "showers"), "about one shower"}, {counted(12.4, "shower", "showers"), "about 12 showers"}, {counted(2, "", ""), "about 2"},
		{timesADay(0.5), "less than once a day"}, {timesADay(1), "about once a day"}, {timesADay(1.5), "once or twice a day"}, {timesADay(2), "about twice a day"}, {timesADay(6.3), "about 6 times a day"},
		{joined(nil), ""}, {joined([]string{"a"}), "a"}, {joined([]string{"a", "b", "c"}), "a, b and c"},
		{monthName(1), "January"}, {monthName(12), "December"}, {monthName(0), "0"},
	} {
		if test.got != test.want {
			t.Errorf("%q, want %q", test.got, test.want)
		}
	}
}

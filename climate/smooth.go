package climate

import "dhwcompare/compare/calendar"

// smoothMonths spreads twelve monthly means over 365 daily means that run
// smoothly from month to month, and from December into January, and whose
// average over each month is the input to rounding.
//
// Within a month of mean M the curve is the parabola
//
//	f(x) = a (1-x) + b x + 6 (M - (a+b)/2) x (1-x),  x from 0 to 1,
//
// which has mean M whatever its end values a and b; a day takes the average of
// f over that day. The end values are chosen so that neighbouring parabolas
// meet with the same slope, which makes the running integral a periodic cubic
// spline through the month ends (a histospline; textbook spline theory).
//
// So a peak month rises above its own mean, and beside an abrupt step the curve
// overshoots by nearly a fifth of the step. It is not clamped, since that would
// shift the mean. However wild the months, it leaves their span by at most
// (sqrt(3)-1)/2 = 0.37 of the span, the Lebesgue constant of this spline on equal
// months being sqrt(3).
func smoothMonths(monthly Monthly) daily {
	var days daily
	starts := monthStarts(monthly)
	for m, mean := range monthly {
		from, to := calendar.MonthStartDay(m), calendar.MonthStartDay(m+1)
		fillMonth(days[from:to], mean, starts[m], starts[(m+1)%len(starts)])
	}
	return days
}

func fillMonth(days []float64, mean, first, last float64) {
	bulge := 6 * (mean - (first+last)/2)
	integral := func(x float64) float64 {
		return x * (first + x*((last-first+bulge)/2-x*bulge/3))
	}
	n := float64(len(days))
	for i := range days {
		days[i] = n * (integral(float64(i+1)/n) - integral(float64(i)/n))
	}
}

// monthStarts solves for the value of the curve at the start of each month. With
// w = 1/days of the months before and after, equal slopes mean
//
//	w1 s(m-1) + 2 (w1+w2) s(m) + w2 s(m+1) = 3 (w1 M(m-1) + w2 M(m)),
//
// a ring of twelve equations. Each is dominated twofold by its middle term, so a
// Gauss-Seidel sweep at least halves the error and the sweeps below end at
// rounding; the monthly means hold exactly even before that.
func monthStarts(monthly Monthly) Monthly {
	const sweeps = 52 // bits of a float64 fraction
	n := len(monthly)
	starts := monthly
	for range sweeps {
		for m := range starts {
			before, after := (m+n-1)%n, (m+1)%n
			w1, w2 := 1/float64(calendar.DaysIn(before)), 1/float64(calendar.DaysIn(m))
			rhs := 3 * (w1*monthly[before] + w2*monthly[m])
			starts[m] = (rhs - w1*starts[before] - w2*starts[after]) / (2 * (w1 + w2))
		}
	}
	return starts
}

package climate

import (
	"math"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/random"
)

// daily holds one value for each day of the year.
type daily = [calendar.Days]float64

// variates draws one standard normal a day, each from the day's own stream, so
// that they depend on seed and year alone and never on a parameter.
func variates(seed uint64, year int) daily {
	var e daily
	for day := range e {
		e[day] = random.Stream(seed, year, day, "weather").NormFloat64()
	}
	return e
}

// anomalies gives each day's departure from the month's course, K: a first-order
// autoregressive chain with the mean of each calendar month taken out, so that
// the monthly mean temperature stays what was asked for.
//
// Taking the mean out also takes variance out (a sixth of it at a persistence of
// 0.7), so the rest is scaled up to have the stated standard deviation within
// the month.
func anomalies(p Params, e daily) daily {
	z := ring(p.Persistence, e)
	for m := range calendar.MonthsInAYear {
		month := z[calendar.MonthStartDay(m):calendar.MonthStartDay(m+1)]
		mean := average(month)
		scale := p.SDDailyMeanK[m] / sdWithin(p.Persistence, len(month))
		for i := range month {
			month[i] = (month[i] - mean) * scale
		}
	}
	return z
}

// ring is the stationary chain z(d) = p z(d-1) + sqrt(1-p^2) e(d) of unit
// variance, closed on itself: the day before 1 January is 31 December of the
// same year. The chain is linear, so if a lap begun at 0 ends at L, the lap that
// ends where it began starts from L / (1 - p^days).
func ring(p float64, e daily) daily {
	step := math.Sqrt(1 - p*p)
	last := 0.0
	for _, v := range e {
		last = p*last + step*v
	}
	last /= 1 - math.Pow(p, float64(len(e)))

	var z daily
	for day, v := range e {
		last = p*last + step*v
		z[day] = last
	}
	return z
}

// sdWithin is the expected root-mean-square departure of n successive values of
// the unit chain from their own mean: sqrt(1 - Var(mean)), where
//
//	Var(mean) = (n + 2 sum over k<n of (n-k) p^k) / n^2.
func sdWithin(p float64, n int) float64 {
	sum, power := float64(n), 1.0
	for k := 1; k < n; k++ {
		power *= p
		sum += 2 * float64(n-k) * power
	}
	return math.Sqrt(1 - sum/float64(n*n))
}

func average(values []float64) float64 {
	sum := 0.0
	for _, v := range values {
		sum += v
	}
	return sum / float64(len(values))
}

package climate

import (
	"math"
	"testing"

	"dhwcompare/compare/calendar"
)

// flat is a climate without seasons, so that every departure of a daily mean is
// the anomaly.
func flat(t testing.TB) Params {
	p := british(t)
	for m := range p.OutdoorC {
		p.OutdoorC[m] = 10
	}
	return p
}

// dailyDepartures gives the daily means of a year less 10 deg C.
func dailyDepartures(p Params, seed uint64, year int) daily {
	s := Synthesize(p, seed, year)
	var d daily
	for day := range d {
		d[day] = average(s.OutdoorC[day*hoursADay:(day+1)*hoursADay]) - 10
	}
	return d
}

func TestRingClosesOnItself(t *testing.T) {
	e := variates(3, 0)
	for _, p := range []float64{0, 0.7, 0.95} {
		z := ring(p, e)
		want := p*z[calendar.Days-1] + math.Sqrt(1-p*p)*e[0]
		if math.Abs(z[0]-want) > 1e-12 { // rounding of one lap, which the chain forgets
			t.Errorf("persistence %g: 1 January %v, want %v from 31 December", p, z[0], want)
		}
	}
}

// Over N days of a first-order chain the standard error of the lag-1 estimate is
// sqrt((1-p^2)/N) and that of the variance sqrt(2 (1+p^2)/(1-p^2)/N) (Bartlett).
// The tolerances are four standard errors.
func TestRingHasUnitVarianceAndItsPersistence(t *testing.T) {
	const seeds = 200
	const n = float64(seeds * calendar.Days)
	for _, p := range []float64{0, 0.6, 0.7, 0.8} {
		var squares, products float64
		for seed := range uint64(seeds) {
			z := ring(p, variates(seed, 0))
			for day, v := range z {
				squares += v * v
				products += v * z[calendar.WrapDay(day+1)]
			}
		}
		if lag1, tol := products/squares, 4*math.Sqrt((1-p*p)/n); math.Abs(lag1-p) > tol {
			t.Errorf("persistence %g: lag-1 %.4f, tolerance %.4f", p, lag1, tol)
		}
		if v, tol := squares/n, 4*math.Sqrt(2*(1+p*p)/(1-p*p)/n); math.Abs(v-1) > tol {
			t.Errorf("persistence %g: variance %.4f, want 1 +/- %.4f", p, v, tol)
		}
	}
}

// The spread of every month over 300 years is the one asked for. The tolerance
// is 4.5 standard errors of the mean square, taken from the scatter of the
// years themselves; by chance alone one of twelve months exceeds that once in
// 10,000 choices of seed.
func TestMonthsHaveTheStatedDeviation(t *testing.T) {
	const years = 300
	p := flat(t)
	p.SDDailyMeanK[6] = 0
	var sum, sumSquares Monthly
	for year := range years {
		d := dailyDepartures(p, 11, year)
		for m := range sum {
			ms := 0.0
			for _, v := range d[calendar.MonthStartDay(m):calendar.MonthStartDay(m+1)] {
				ms += v * v / float64(calendar.DaysIn(m))
			}
			sum[m], sumSquares[m] = sum[m]+ms, sumSquares[m]+ms*ms
		}
	}
	for m, want := range p.SDDailyMeanK {
		mean := sum[m] / years
		tol := 4.5 * math.Sqrt(max(sumSquares[m]/years-mean*mean, 0)/years)
		if math.Abs(mean-want*want) > tol+1e-12 { // rounding, for the month without any spread
			t.Errorf("month %d: mean square %.3f K2, want %.3f +/- %.3f", m+1, mean, want*want, tol)
		}
	}
}

// Taking out the month's mean lowers the correlation seen within a month below
// the persistence, as it does in a measured month. The expected value is summed
// here from the covariances p^|i-j| alone: 0.64 at p = 0.70 in 31 days, where the
// weather files behind the defaults give 0.51-0.71. Tolerance as for the chain, over
// the pairs of 200 Januaries.
func TestMonthsHaveTheExpectedLag1(t *testing.T) {
	const years, n = 200, 31
	p := flat(t)
	var squares, products float64
	for year := range years {
		d := dailyDepartures(p, 5, year)
		for i := range n - 1 {
			squares += d[i] * d[i]
			products += d[i] * d[i+1]
		}
	}
	want := expectedLag1(p.Persistence, n)
	tol := 4 * math.Sqrt((1-p.Persistence*p.Persistence)/(years*(n-1)))
	if got := products / squares; math.Abs(got-want) > tol {
		t.Errorf("lag-1 within January %.3f, want %.3f +/- %.3f", got, want, tol)
	}
}

// expectedLag1 is sum E[x(i) x(i+1)] / sum E[x(i)^2] over i < n-1, x being the
// chain less its mean over n days.
func expectedLag1(p float64, n int) float64 {
	cov := func(i, j int) float64 { return math.Pow(p, math.Abs(float64(i-j))) }
	withMean := func(i int) float64 {
		sum := 0.0
		for j := range n {
			sum += cov(i, j) / float64(n)
		}
		return sum
	}
	meanVariance := 0.0
	for i := range n {
		meanVariance += withMean(i) / float64(n)
	}
	var num, den float64
	for i := range n - 1 {
		num += cov(i, i+1) - withMean(i) - withMean(i+1) + meanVariance
		den += cov(i, i) - 2*withMean(i) + meanVariance
	}
	return num / den
}

// Two days by hand: the mean of z1, z2 with correlation p has variance (1+p)/2.
func TestSDWithinTwoDays(t *testing.T) {
	if got, want := sdWithin(0.5, 2), 0.5; math.Abs(got-want) > 1e-15 { // one rounding
		t.Errorf("got %v, want sqrt(1 - 0.75) = %v", got, want)
	}
}

// Common random numbers: a parameter scales the weather, it does not draw anew.
func TestTwiceTheDeviationIsTheSameWeatherTwice(t *testing.T) {
	p := flat(t)
	once := anomalies(p, variates(1, 2))
	for m := range p.SDDailyMeanK {
		p.SDDailyMeanK[m] *= 2
	}
	for day, twice := range anomalies(p, variates(1, 2)) {
		if twice != 2*once[day] { // doubling is exact in binary
			t.Fatalf("day %d: %v, want twice %v", day, twice, once[day])
		}
	}
}

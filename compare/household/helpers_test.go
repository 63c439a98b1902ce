package household

import (
	"math"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// britishMainsC are the monthly mains temperatures of SAP 10.2, Table J1.
var britishMainsC = [calendar.MonthsInAYear]float64{
	8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5,
}

var testYear = calendar.European(time.Thursday)

const testSeed = 20260101

// sample collects one figure a year.
type sample []float64

// meanAndError gives the mean and its standard error.
func (s sample) meanAndError() (mean, standardError float64) {
	n := float64(len(s))
	for _, x := range s {
		mean += x / n
	}
	var squares float64
	for _, x := range s {
		squares += (x - mean) * (x - mean)
	}
	return mean, math.Sqrt(squares / (n - 1) / n)
}

// expect holds the sample against a mean that must be met within sampling error:
// four standard errors, which chance alone exceeds about once in 16,000 checks
// (more often for few years), and the error itself small enough to mean something.
func (s sample) expect(t *testing.T, what string, want float64) {
	t.Helper()
	mean, standardError := s.meanAndError()
	t.Logf("%s: %.4g, expected %.4g, standard error %.2g", what, mean, want, standardError)
	if math.Abs(mean-want) > 4*standardError {
		t.Errorf("%s: mean %.5g is %.1f standard errors off %.5g", what, mean, (mean-want)/standardError, want)
	}
	if standardError > 0.02*want {
		t.Errorf("%s: standard error %.3g exceeds 2 %% of %.3g, the check is weak", what, standardError, want)
	}
}

// mixedLitres gives the litres of a draw at the outlet.
func mixedLitres(d Draw) float64 {
	if d.End.By == ByLitres {
		return d.End.Amount
	}
	return d.FlowLPerMin * d.End.Amount / 60
}

// hotLitres gives the litres at HotSupplyC that a draw takes from mains water of
// its month.
func hotLitres(d Draw) float64 {
	coldC := britishMainsC[calendar.MonthOfDay(calendar.DayOf(d.StartS))]
	return mixedLitres(d) * (d.WantC - coldC) / (HotSupplyC - coldC)
}

func only(draws []Draw, kind Kind) []Draw {
	var list []Draw
	for _, d := range draws {
		if d.Kind == kind {
			list = append(list, d)
		}
	}
	return list
}

func localDay(d Draw) int { return calendar.DayOf(testYear.Local(d.StartS)) }

func yearOf(p Params, year int) []Draw {
	return Draws(p, testYear, britishMainsC, testSeed, year)
}

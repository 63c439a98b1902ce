package compare

import (
	"math"
	"sort"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Spread says how a figure varies over the years of the ensemble: spread of
// weather and habits, not total uncertainty. The interval shrinks as years are
// added, the percentiles do not.
type Spread struct {
	Mean   float64 `json:"mean"`
	SE     float64 `json:"se"`       // standard error of the mean
	CILow  float64 `json:"ci90_low"` // 90 % interval of the mean
	CIHigh float64 `json:"ci90_high"`
	P05    float64 `json:"p05"` // of years
	P95    float64 `json:"p95"`
}

// LowCount is the lower end of the interval for words about things that are counted:
// Student's interval of a few rare ones reaches below none.
func (s *Spread) LowCount() float64 { return max(0, s.CILow) }

// DifferenceSpread is the spread of the paired difference, compact store minus
// cylinder.
type DifferenceSpread struct {
	Spread
	// ShareBetter is the share of years in which the compact store is better;
	// a tie counts half. Absent for figures that are neither good nor bad.
	ShareBetter *float64 `json:"share_compact_better,omitempty"`
}

// What a spread gives: the level of the interval of the mean, and the share of
// years below the low percentile and above the high one.
const (
	IntervalLevel = 0.90
	LowPercentile = 0.05
)

// SpreadOf summarises one value for each year. The interval is Student's; one
// year has none, and then both ends are the mean.
func SpreadOf(values []float64) Spread {
	mean, sd := stat.MeanStdDev(values, nil)
	s := Spread{Mean: mean, CILow: mean, CIHigh: mean}
	if n := float64(len(values)); n > 1 {
		s.SE = stat.StdErr(sd, n)
		half := s.SE * studentQuantile((1+IntervalLevel)/2, n-1)
		s.CILow, s.CIHigh = mean-half, mean+half
	}
	sorted := append([]float64(nil), values...)
	sort.Float64s(sorted)
	s.P05, s.P95 = percentile(sorted, LowPercentile), percentile(sorted, 1-LowPercentile)
	return s
}

func studentQuantile(p, freedom float64) float64 {
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: freedom}.Quantile(p)
}

// percentile interpolates linearly between the order statistics, with the first
// at 0 and the last at 1.
func percentile(sorted []float64, p float64) float64 {
	x := p * float64(len(sorted)-1)
	i := int(math.Floor(x))
	if i >= len(sorted)-1 {
		return sorted[len(sorted)-1]
	}
	return sorted[i] + (x-float64(i))*(sorted[i+1]-sorted[i])
}

// shareBetter gives the share of differences in which the first is better.
func shareBetter(differences []float64, better Better) *float64 {
	if better == Neither {
		return nil
	}
	count := 0.0
	for _, d := range differences {
		switch {
		case d == 0:
			count += 0.5
		case (d < 0) == (better == Less):
			count++
		}
	}
	share := count / float64(len(differences))
	return &share
}

package compare

import (
	"math"
	"math/rand/v2"
	"testing"

	"dhwcompare/compare/checkvalues"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Wilson's interval against values worked independently to four decimals.
func TestWilsonAgainstWorkedValues(t *testing.T) {
	const z95, rounding = 1.959964, 5e-5
	for _, r := range checkvalues.Published(t, "wilson.csv") {
		row := r.Numbers(t, "successes", "trials", "low", "high")
		low, high := wilson(row[0], row[1], z95)
		closeTo(t, "low", low, row[2], rounding)
		closeTo(t, "high", high, row[3], rounding)
	}
	closeTo(t, "quantile of a two-sided 90 % interval", normalQuantile95, distuv.UnitNormal.Quantile(0.95), 1e-12)
}

// Wilson's ends are where the score test just accepts: the observed share lies z
// standard errors of the end itself away from it.
func TestWilsonSolvesTheScoreEquation(t *testing.T) {
	for n := 1.0; n <= 40; n += 3 {
		for k := 0.0; k <= n; k++ {
			low, high := wilson(k, n, normalQuantile95)
			for _, end := range []float64{low, high} {
				if (end == low && k == 0) || (end == high && k == n) {
					continue // there it is the edge itself
				}
				closeTo(t, "score", math.Abs(k/n-end)/math.Sqrt(end*(1-end)/n), normalQuantile95, 1e-9)
			}
			const crumb = 1e-12
			if !(low <= k/n+crumb && k/n <= high+crumb) || k == 0 && low > crumb || k == n && high < 1-crumb {
				t.Errorf("%g of %g: %g to %g", k, n, low, high)
			}
		}
	}
}

// Averaged over all true shares, Wilson's interval of 20 years covers the truth as often
// as it says, within 1 % (for a single share it swings about that). Exact sums, no
// chance.
func TestWilsonCoverage(t *testing.T) {
	const n, steps = 20, 1000
	mean := 0.0
	for i := range steps {
		p := (float64(i) + 0.5) / steps
		for k := range n + 1 {
			low, high := wilson(float64(k), n, normalQuantile95)
			if low <= p && p <= high {
				mean += distuv.Binomial{N: n, P: p}.Prob(float64(k)) / steps
			}
		}
	}
	closeTo(t, "mean coverage", mean, 0.90, 0.01)
}

// The summary of ten differences against values worked independently; the interval
// of this program is at 90 %, so the published one at 95 % checks quantile and standard
// error.
func TestSpreadAgainstWorkedDifferences(t *testing.T) {
	var gaps []float64
	for _, row := range checkvalues.Published(t, "paired_differences.csv") {
		gaps = append(gaps, row.Number(t, "first")-row.Number(t, "second"))
	}
	s := SpreadOf(gaps)
	closeTo(t, "mean", s.Mean, 8.3, 1e-12)
	closeTo(t, "standard deviation", s.SE*math.Sqrt(10), 8.34066, 5e-6)
	closeTo(t, "standard error", s.SE, 2.63755, 5e-6)
	t95 := studentQuantile(0.975, 9)
	closeTo(t, "t at 95 %", t95, 2.262157, 5e-7)
	closeTo(t, "low at 95 %", s.Mean-t95*s.SE, 2.333, 5e-4)
	closeTo(t, "high at 95 %", s.Mean+t95*s.SE, 14.267, 5e-4)
	// Student's table: 1.833113 for 9 degrees of freedom, two-sided 90 % (from memory).
	closeTo(t, "low at 90 %", s.CILow, s.Mean-1.833113*s.SE, 5e-6)
	closeTo(t, "high at 90 %", s.CIHigh, s.Mean+1.833113*s.SE, 5e-6)

	closeTo(t, "mean by gonum", s.Mean, stat.Mean(gaps, nil), 1e-12)
	closeTo(t, "standard error by gonum", s.SE, stat.StdErr(stat.StdDev(gaps, nil), 10), 1e-12)
}

// Percentiles interpolate between order statistics: of 0 to 20 they are the numbers
// themselves. One year has no interval.
func TestPercentilesOfAKnownSample(t *testing.T) {
	var values []float64
	for i := range 21 {
		values = append(values, float64((i*8)%21)) // 0 to 20 in another order
	}
	s := SpreadOf(values)
	closeTo(t, "5 %", s.P05, 1, 1e-12)
	closeTo(t, "95 %", s.P95, 19, 1e-12)
	closeTo(t, "mean", s.Mean, 10, 1e-12)
	if values[1] != 8 {
		t.Error("the sample itself was sorted")
	}
	if rare := SpreadOf([]float64{0, 0, 0, 1}); rare.CILow >= 0 || rare.LowCount() != 0 {
		t.Errorf("rare: low %g, as a count %g", rare.CILow, rare.LowCount())
	}
	if many := SpreadOf([]float64{9, 10}); many.LowCount() != many.CILow {
		t.Errorf("many: low %g, as a count %g", many.CILow, many.LowCount())
	}
	if one := SpreadOf([]float64{7}); one != (Spread{Mean: 7, CILow: 7, CIHigh: 7, P05: 7, P95: 7}) {
		t.Errorf("one year: %+v", one)
	}
}

// The 90 % interval of the mean covers the true mean in 90 % of many trials, within
// four standard errors of that share: of normal years, for which it is exact, and of
// counts of failing showers, for which it is nearly so. And it is the interval of the
// mean: it covers far fewer of the years themselves.
func TestIntervalCoverage(t *testing.T) {
	const trials, years = 4000, 20
	r := rand.New(rand.NewPCG(2026, 7))
	counts := distuv.Poisson{Lambda: 6, Src: r}
	for _, c := range []struct {
		name    string
		mean    float64
		draw    func() float64
		slackOf float64 // beyond sampling error: skewed counts of 20 years
	}{
		{"normal years", 300, func() float64 { return 300 + 25*r.NormFloat64() }, 0},
		{"counts", 6, counts.Rand, 0.01},
	} {
		covered, inside := 0.0, 0.0
		for range trials {
			values := make([]float64, years)
			for i := range values {
				values[i] = c.draw()
			}
			s := SpreadOf(values)
			if s.CILow <= c.mean && c.mean <= s.CIHigh {
				covered++
			}
			if next := c.draw(); s.CILow <= next && next <= s.CIHigh {
				inside++
			}
		}
		share := covered / trials
		t.Logf("%s: covered in %.1f %% of trials; %.0f %% of further years lie inside", c.name, 100*share, 100*inside/trials)
		closeTo(t, c.name+", coverage", share, IntervalLevel, 4*math.Sqrt(IntervalLevel*(1-IntervalLevel)/trials)+c.slackOf)
		if inside/trials > 0.6 {
			t.Errorf("%s: the interval of the mean holds %.2f of the years", c.name, inside/trials)
		}
	}
}

// The service rule's one-sided interval: of homes whose true mean lies on the limit, as
// many as its confidence leaves out keep the rule by chance.
func TestServiceRuleKeepsItsConfidence(t *testing.T) {
	const trials, years = 4000, 20
	rule := Service{FailuresPerYear: 100, ConfidencePercent: 90}
	r := rand.New(rand.NewPCG(2026, 8))
	kept := 0.0
	for range trials {
		values := make([]float64, years)
		for i := range values {
			values[i] = rule.FailuresPerYear + 15*r.NormFloat64()
		}
		if meetsServiceRule(&rule, SpreadOf(values), years) {
			kept++
		}
	}
	closeTo(t, "share that keeps the rule by chance", kept/trials, 0.10, 4*math.Sqrt(0.1*0.9/trials))
	// Student's one-sided 90 % for 19 degrees of freedom: 1.3277 (table, from memory).
	const t19, se = 1.3277, 5
	if !meetsServiceRule(&rule, Spread{Mean: 100 - t19*se - 0.01, SE: se}, years) || meetsServiceRule(&rule, Spread{Mean: 100 - t19*se + 0.01, SE: se}, years) {
		t.Error("the rule's edge is not that of Student's interval")
	}
	if !meetsServiceRule(&rule, Spread{Mean: 100}, 1) || meetsServiceRule(&rule, Spread{Mean: 100.5}, 1) {
		t.Error("a single year is judged by its own number")
	}
}

// The chance of more than k counts years strictly above k.
func TestChanceOfMoreThan(t *testing.T) {
	failures := []float64{0, 0, 1, 2, 2, 3, 5, 5, 8, 30}
	for _, c := range []struct{ more, share float64 }{{0, 0.8}, {2, 0.5}, {5, 0.2}, {10, 0.1}, {30, 0}} {
		got := chanceOf(failures, c.more)
		closeTo(t, "share", got.Share, c.share, 1e-12)
		low, high := wilson(10*c.share, 10, normalQuantile95)
		if got.MoreThan != c.more || got.Low != low || got.High != high {
			t.Errorf("more than %g: %+v", c.more, got)
		}
	}
	if got := chanceLimits(2); len(got) != 5 || got[1] != 2 {
		t.Errorf("limits %v", got)
	}
	if got := chanceLimits(10); len(got) != 3 {
		t.Errorf("limits %v", got)
	}
}

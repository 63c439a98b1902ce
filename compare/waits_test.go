package compare

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"dhwcompare/compare/household"
	"dhwcompare/compare/plant"
)

// The tally of waits against the sorted sample: means exactly, median and 95th
// percentile to the width of a bin, and a wait beyond the last bin is not lost.
func TestWaitTallyAgainstTheSample(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	var tally waitTally
	var sample []float64
	for i := range 4000 {
		wait := 0.0
		if i%10 > 0 {
			wait = 12 * math.Exp(random.NormFloat64())
		}
		tally.add(wait*0.75, wait*0.25)
		sample = append(sample, wait)
	}
	mean := stat.Mean(sample, nil)
	slices.Sort(sample)
	closeTo(t, "mean wait", tally.sumS/float64(tally.count), mean, 1e-9*mean)
	closeTo(t, "warm-up", tally.warmUpS/float64(tally.count), mean/4, 1e-9*mean)
	for _, p := range []float64{0.05, 0.5, 0.95} {
		closeTo(t, "percentile", tally.percentile(p), stat.Quantile(p, stat.Empirical, sample, nil), waitBinS)
	}
	if tally.atOnce != 400 || tally.longest != sample[len(sample)-1] {
		t.Errorf("%d at once, longest %g", tally.atOnce, tally.longest)
	}
	tally = waitTally{}
	tally.add(3000, 0)
	tally.add(10, 0)
	if got := tally.percentile(0.95); got != 3000 {
		t.Errorf("95 %% of 10 and 3000 s: %g", got)
	}
}

// The waits at the outlets add up to the year's, a cold coil makes people wait
// longer than the pipe alone, and both options wait for the same pipes.
func TestWaitsByOutlet(t *testing.T) {
	c := tooSmall(2)
	cmp := compared(t, &c)
	for side := range sides {
		o := cmp.Options.Of(side)
		deadLegMin, draws, warmUp := 0.0, 0.0, 0.0
		for _, w := range o.Risk.Waits {
			deadLegMin += w.Draws * (w.MeanS - w.WarmUpS) / secondsPerMinute
			draws += w.Draws
			warmUp += w.WarmUpS
			if w.MedianS > w.P95S || w.P95S > w.LongestS || w.MeanS > w.LongestS || w.AtOnce < 0 || w.AtOnce > 1 {
				t.Errorf("%s, %s: %+v", o.Name, w.Outlet, w)
			}
		}
		closeTo(t, o.Name+", minutes of waiting", deadLegMin, o.WaitMinutes, sumShare*o.WaitMinutes)
		closeTo(t, o.Name+", draw-offs", draws, o.Showers+o.Baths+o.TapDraws, sumShare*draws)
		if warmUp <= 0 {
			t.Errorf("%s runs cold, but nobody waits for it to warm up", o.Name)
		}
	}
	if got, want := len(cmp.Options.Compact.Risk.Waits), len(household.Outlets(1)); got != want {
		t.Errorf("%d outlets, want %d", got, want)
	}
}

// The list of failing showers holds each of them, with its place in the queue and
// its hour: it adds up to the tables.
func TestEachFailingShower(t *testing.T) {
	c := tooSmall(1)
	cmp := compared(t, &c)
	for side := range sides {
		o := cmp.Options.Of(side)
		var byHour [hoursADay]float64
		byQueue := make([]float64, queueDepth)
		for _, f := range o.Risk.Each {
			byHour[int(f.Hour)] += 1 / float64(c.Years)
			byQueue[min(f.QueuePos, queueDepth-1)] += 1 / float64(c.Years)
			if f.Year < 1 || f.Year > c.Years || f.Day < 1 || f.Day > 365 || f.ColdS <= c.Service.ColdSeconds || f.LowestC >= c.Household.ShowerMinC {
				t.Errorf("%s: %+v did not fail", o.Name, f)
			}
		}
		if byHour != o.Risk.ByHour {
			t.Errorf("%s by hour: %v, listed %v", o.Name, o.Risk.ByHour, byHour)
		}
		for i, q := range o.Risk.ByQueue {
			closeTo(t, o.Name+", by queue", byQueue[i], q.Failing, sumShare*o.FailingShowers)
		}
		if o.Risk.LeftOff != 0 {
			t.Errorf("%s: %d left off", o.Name, o.Risk.LeftOff)
		}
	}
	var full failedShowers
	for range mostListed + 3 {
		full.add(0, []plant.Outcome{outcome(10, 7.5, 0, true)}, c.Climate.Year())
	}
	if len(full.first) != mostListed || full.leftOff != 3 {
		t.Errorf("%d listed, %d left off", len(full.first), full.leftOff)
	}
}

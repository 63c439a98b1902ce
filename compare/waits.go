package compare

import (
	"math"

	"dhwcompare/compare/plant"
)

// OutletWait is how long people wait at one outlet, from opening it until the water
// is warm enough: until the cooled water of the pipe is out, and then until what
// comes after it is warm. A draw-off that never gets warm waits for all of its
// time. All draw-offs of all years count; the median and the percentile are good to
// half a second.
type OutletWait struct {
	Outlet   string  `json:"outlet"`
	Draws    float64 `json:"draws_per_year"`
	AtOnce   float64 `json:"warm_at_once_share"`
	MeanS    float64 `json:"mean_s"`
	WarmUpS  float64 `json:"mean_after_dead_leg_s"` // of the mean, what comes after the dead leg
	MedianS  float64 `json:"median_s"`
	P95S     float64 `json:"p95_s"` // 95 of 100 draw-offs wait no longer
	LongestS float64 `json:"longest_s"`
}

// Waits are counted in bins of half a second up to ten minutes; the last bin holds
// all beyond. So their memory does not grow with the years.
const (
	waitBinS = 0.5
	waitBins = 1200
)

// waitTally counts the waits at one outlet.
type waitTally struct {
	count, atOnce          int
	sumS, warmUpS, longest float64
	bins                   [waitBins]int
}

func addWaits(tallies []waitTally, outcomes []plant.Outcome) {
	for i := range outcomes {
		o := &outcomes[i]
		tallies[o.Draw.Outlet].add(o.WaitS, o.WarmUpS)
	}
}

func (t *waitTally) add(deadLegS, warmUpS float64) {
	wait := deadLegS + warmUpS
	t.count++
	t.sumS += wait
	t.warmUpS += warmUpS
	t.longest = math.Max(t.longest, wait)
	if wait == 0 {
		t.atOnce++
		return
	}
	t.bins[min(int(wait/waitBinS), waitBins-1)]++
}

// percentile gives the wait that a share of the draw-offs do not exceed, with those
// of a bin spread evenly over it.
func (t *waitTally) percentile(p float64) float64 {
	left := p*float64(t.count) - float64(t.atOnce)
	if left <= 0 {
		return 0
	}
	for i, n := range t.bins {
		if left <= float64(n) && i < waitBins-1 {
			return math.Min((float64(i)+left/float64(n))*waitBinS, t.longest)
		}
		left -= float64(n)
	}
	return t.longest
}

// outletWaits sums up each outlet that is drawn from.
func (k *collector) outletWaits(side Side) []OutletWait {
	list := []OutletWait{}
	for i := range k.waits[side] {
		t := &k.waits[side][i]
		if t.count == 0 {
			continue
		}
		n := float64(t.count)
		list = append(list, OutletWait{
			Outlet: k.outlets[i].Name, Draws: n * k.weight, AtOnce: float64(t.atOnce) / n,
			MeanS: t.sumS / n, WarmUpS: t.warmUpS / n,
			MedianS: t.percentile(0.5), P95S: t.percentile(1 - LowPercentile), LongestS: t.longest,
		})
	}
	return list
}

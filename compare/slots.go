package compare

import (
	"fmt"
	"math"
	"slices"

	"dhwcompare/compare/calendar"
)

// Gaps between two windows, in slots. Two nearer than the least are as good as
// one; the wide gap puts one before the morning and one before the evening.
const (
	leastGap = 2 * slotsAnHour
	wideGap  = 6 * slotsAnHour
)

// Slots are the half hours of a day on the wall clock.
const (
	slotsADay    = calendar.HalfHoursADay
	minutesASlot = 30
	slotsAnHour  = 2
	minutesADay  = slotsADay * minutesASlot
	warmestSlot  = 28 // 14:00, when the air is warmest as a rule
)

// slotPrices gives the mean of half-hourly prices for each slot over the year.
func slotPrices(prices []float64, y calendar.Year) [slotsADay]float64 {
	var sum, count [slotsADay]float64
	for i := range calendar.HalfHours {
		slot := int(y.Local(float64(i)*calendar.HalfHourS)/calendar.HalfHourS) % slotsADay
		sum[slot] += prices[i]
		count[slot]++
	}
	for slot := range sum {
		sum[slot] /= count[slot]
	}
	return sum
}

// run is a stretch of slots; it may go on past midnight.
type run struct{ first, length int }

func (r run) holds(slot int) bool { return (slot-r.first+slotsADay)%slotsADay < r.length }

// apart reports whether two runs keep a gap on both sides.
func (r run) apart(o run, gap int) bool {
	wide := run{(o.first - gap + slotsADay) % slotsADay, o.length + 2*gap}
	if wide.length >= slotsADay {
		return false
	}
	for i := range r.length {
		if wide.holds((r.first + i) % slotsADay) {
			return false
		}
	}
	return true
}

// fromWarmest is the distance of the run's middle from the warmest time of day, in
// half slots. Of runs at one price the warmest costs least to heat in.
func (r run) fromWarmest() int {
	away := (2*r.first + r.length - 2*warmestSlot + 4*slotsADay) % (2 * slotsADay)
	return min(away, 2*slotsADay-away)
}

func (r run) window() Window {
	from := r.first * minutesASlot
	to := (from + r.length*minutesASlot) % minutesADay
	if to == 0 {
		to = minutesADay
	}
	return Window{FromMin: from, ToMin: to}
}

// cheapestRun finds the run of a length with the lowest price, among those that
// are allowed.
func cheapestRun(prices *[slotsADay]float64, length int, allowed func(run) bool) (run, bool) {
	best, bestPrice, found := run{}, math.Inf(1), false
	for first := range slotsADay {
		r := run{first, length}
		if !allowed(r) {
			continue
		}
		price := 0.0
		for i := range length {
			price += prices[(first+i)%slotsADay]
		}
		const alike = 1e-9 // rounding of sums that are equal on paper
		level := math.Abs(price-bestPrice) <= alike
		if (!level && price < bestPrice) || (level && r.fromWarmest() < best.fromWarmest()) {
			best, bestPrice, found = r, price, true
		}
	}
	return best, found
}

func anywhere(run) bool { return true }

// windowCandidates lists the windows to try: none, for those that are stated, and
// then the cheapest hours in one window, in two, and in two far apart, of the
// length wished for and longer, in case that is too short to serve.
func windowCandidates(prices [slotsADay]float64, hours float64) [][]Window {
	candidates := [][]Window{nil}
	for _, stretch := range []float64{1, 1.5, 2} {
		length := max(1, int(math.Round(hours*stretch*slotsAnHour)))
		if length >= slotsADay {
			break
		}
		first, _ := cheapestRun(&prices, length, anywhere)
		candidates = append(candidates, []Window{first.window()})
		for _, gap := range []int{leastGap, wideGap} {
			two := cheapestPair(&prices, length, gap)
			if two != nil && !slices.Equal(two, candidates[len(candidates)-1]) {
				candidates = append(candidates, two)
			}
		}
	}
	return candidates
}

// cheapestPair divides a length between the two cheapest runs that keep a gap, in
// the order of the day; nil if there is no room for two.
func cheapestPair(prices *[slotsADay]float64, length, gap int) []Window {
	if length < 2 {
		return nil
	}
	first, _ := cheapestRun(prices, length-length/2, anywhere)
	second, ok := cheapestRun(prices, length/2, func(r run) bool { return r.apart(first, gap) })
	if !ok {
		return nil
	}
	if second.first < first.first {
		first, second = second, first
	}
	return []Window{first.window(), second.window()}
}

// hoursOpen gives the hours a day in which windows are open; none means always.
func hoursOpen(windows []Window) float64 {
	if len(windows) == 0 {
		return minutesADay / minutesPerHour
	}
	open := 0
	for _, w := range windows {
		length := w.ToMin - w.FromMin
		if length <= 0 {
			length += minutesADay
		}
		open += length
	}
	return math.Min(float64(open), minutesADay) / minutesPerHour
}

func windowTexts(windows []Window) []string {
	texts := make([]string, len(windows))
	for i, w := range windows {
		texts[i] = clockText(w.FromMin) + "-" + clockText(w.ToMin)
	}
	return texts
}

func clockText(minute int) string {
	return fmt.Sprintf("%02d:%02d", minute/minutesPerHour, minute%minutesPerHour)
}

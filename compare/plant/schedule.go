package plant

import (
	"fmt"
	"math"
	"sort"

	"dhwcompare/compare/calendar"
)

// Never is a schedule that is not open at any time.
func Never() Schedule { return Schedule{edgesS: []float64{math.Inf(1), math.Inf(1)}} }

// Schedule says when something is allowed over a year of standard time. The zero
// Schedule allows it always.
type Schedule struct {
	edgesS []float64 // closed before the first edge, then open and closed in turn
}

// Window is a stretch of the day on the wall clock. An end at or before the
// start runs over midnight.
type Window struct{ FromS, ToS float64 }

// daysAround is how far a schedule reaches beyond either end of the year: runs may
// begin some days before it.
const daysAround = 14

// DailyWindows makes a schedule that opens every day in the given windows of the
// wall clock. No windows means always.
func DailyWindows(windows []Window, y calendar.Year) (Schedule, error) {
	if len(windows) == 0 {
		return Schedule{}, nil
	}
	var spans [][2]float64
	for _, w := range windows {
		if !(w.FromS >= 0 && w.FromS < calendar.DayS && w.ToS >= 0 && w.ToS <= calendar.DayS) {
			return Schedule{}, fmt.Errorf("window from %.0f s to %.0f s: outside the day", w.FromS, w.ToS)
		}
		length := w.ToS - w.FromS
		if length <= 0 {
			length += calendar.DayS
		}
		for day := -daysAround; day < calendar.Days+daysAround; day++ {
			from := float64(day*calendar.DayS) + w.FromS
			spans = append(spans, [2]float64{y.Standard(from), y.Standard(from + length)})
		}
	}
	return merge(spans), nil
}

// merge joins spans that touch or overlap.
func merge(spans [][2]float64) Schedule {
	sort.Slice(spans, func(i, j int) bool { return spans[i][0] < spans[j][0] })
	var edges []float64
	for _, s := range spans {
		last := len(edges) - 1
		switch {
		case s[1] <= s[0]:
		case last >= 0 && s[0] <= edges[last]:
			edges[last] = max(edges[last], s[1])
		default:
			edges = append(edges, s[0], s[1])
		}
	}
	return Schedule{edgesS: edges}
}

// cursor walks a schedule forward in time.
type cursor struct {
	edges []float64
	next  int
}

func (s Schedule) at(t float64) cursor {
	return cursor{edges: s.edgesS, next: sort.SearchFloat64s(s.edgesS, math.Nextafter(t, math.Inf(1)))}
}

// open reports whether the schedule is open at t and until when that holds. Calls
// must go forward in time.
func (c *cursor) open(t float64) (bool, float64) {
	for c.next < len(c.edges) && c.edges[c.next] <= t {
		c.next++
	}
	if len(c.edges) == 0 {
		return true, math.Inf(1)
	}
	until := math.Inf(1)
	if c.next < len(c.edges) {
		until = c.edges[c.next]
	}
	return c.next%2 == 1, until
}

// Without closes a schedule in the given stretches of standard time.
func (s Schedule) Without(spans [][2]float64) Schedule {
	edges := s.edgesS
	if len(edges) == 0 {
		edges = []float64{math.Inf(-1), math.Inf(1)}
	}
	for _, span := range spans {
		edges = cut(edges, span[0], span[1])
	}
	return Schedule{edgesS: edges}
}

// cut takes one stretch out of a list of open stretches.
func cut(edges []float64, from, to float64) []float64 {
	var kept []float64
	keep := func(a, b float64) {
		if b > a {
			kept = append(kept, a, b)
		}
	}
	for i := 0; i < len(edges); i += 2 {
		keep(edges[i], min(edges[i+1], from))
		keep(max(edges[i], to), edges[i+1])
	}
	return kept
}

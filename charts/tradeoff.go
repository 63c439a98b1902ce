package charts

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"dhwcompare/compare"
)

// sizingCharts draws the sizes that were found to serve, if they were looked for.
func sizingCharts(doc *compare.Document) ([]Chart, error) {
	if doc.Sizing == nil {
		return nil, nil
	}
	if err := sizingFinite(doc.Sizing); err != nil {
		return nil, err
	}
	return []Chart{tradeOffChart(doc.Sizing, doc.Comparison)}, nil
}

// tradeOff is the picture of what a size costs against how many showers it fails.
type tradeOff struct {
	sizing *compare.Sizing
	unit   string // of money
}

func tradeOffChart(s *compare.Sizing, of *compare.Comparison) Chart {
	t := tradeOff{s, currencyName(of)}
	return Chart{
		Name:     "trade-off",
		Title:    tradeOffTitle(s, of),
		Alt:      t.inWords(of),
		subtitle: t.subtitle(),
		caption:  fmt.Sprintf("%d settings tried, these confirmed on %s", s.Tried, simulatedYears(s.ConfirmYears)),
		room:     t.room(),
		body:     t.draw,
	}
}

func simulatedYears(n int) string {
	if n == 1 {
		return "one simulated year"
	}
	return fmt.Sprintf("%d simulated years", n)
}

func tradeOffTitle(s *compare.Sizing, of *compare.Comparison) string {
	h := s.HeadToHead
	if h == nil {
		return "Best against best cannot be compared: " + lacking(s)
	}
	best := fmt.Sprintf("the best compact store (%s l)", number(h.CompactVolumeL, 0))
	other := fmt.Sprintf("the best cylinder (%s l)", number(h.CylinderVolumeL, 0))
	gap := money(of, max(h.Cost.Mean, -h.Cost.Mean))
	cost := 0.0
	if s.Cylinder.Cheapest != nil {
		cost = s.Cylinder.Cheapest.Trial.Cost
	}
	switch find(h.Cost, cost) {
	case same:
		return fmt.Sprintf("No real difference in running cost between %s and %s", best, other)
	case more:
		return fmt.Sprintf("%s costs %s a year more to run than %s", capital(best), gap, other)
	case less:
		return fmt.Sprintf("%s costs %s a year less to run than %s", capital(best), gap, other)
	default:
		return fmt.Sprintf("The simulated years do not settle whether %s or %s costs less to run", best, other)
	}
}

// lacking says which option has nothing that serves and fits.
func lacking(s *compare.Sizing) string {
	var without []string
	for _, side := range bothSides() {
		if s.Of(side).Cheapest == nil {
			without = append(without, "no "+side.String()+" that fits keeps the service rule")
		}
	}
	if len(without) == 0 {
		return "it was not done"
	}
	return strings.Join(without, ", and ")
}

func (t *tradeOff) subtitle() string {
	text := "Each point is a size with its settings that keeps the service rule. Filled: no other of its kind beats it all round, space and runs included. Line: those that nothing beats in cost and failing showers."
	for _, side := range bothSides() {
		for i := range t.sizing.Of(side).Sizes {
			if t.sizing.Of(side).Sizes[i].NeedsLimiter {
				return text + " Small: serves only with a flow limiter at the shower."
			}
		}
	}
	return text
}

func (t *tradeOff) any() bool { return len(t.sizing.Compact.Sizes)+len(t.sizing.Cylinder.Sizes) > 0 }

// inWords lists the winners, and how many others there are.
func (t *tradeOff) inWords(of *compare.Comparison) string {
	text := "Points, cost a year against failing showers a year."
	for _, side := range bothSides() {
		r := t.sizing.Of(side)
		text += fmt.Sprintf(" %s: %d sizes and settings", capital(side.String()), len(r.Sizes))
		for _, w := range winners(r) {
			text += fmt.Sprintf("; %s, %s, %s a year, %s failing showers a year", w.why, sizeText(w.size), money(of, w.size.Trial.Cost), none(w.size.Trial.Failing.Mean))
		}
		text += "."
	}
	return text
}

// winner is a size that is named in the picture.
type winner struct {
	size *compare.Size
	why  string
}

// winners are the cheapest and the smallest, once if they are the same.
func winners(r *compare.SizingResult) []winner {
	switch c, s := r.Cheapest, r.Smallest; {
	case c == nil && s == nil:
		return nil
	case s == nil:
		return []winner{{c, "cheapest"}}
	case c == nil:
		return []winner{{s, "smallest"}}
	case c.VolumeL == s.VolumeL && c.SetpointC == s.SetpointC && c.Trial.Cost == s.Trial.Cost:
		return []winner{{c, "cheapest and smallest"}}
	default:
		return []winner{{c, "cheapest"}, {s, "smallest"}}
	}
}

// sizeText names a size and the setting that matters most.
func sizeText(s *compare.Size) string {
	text := fmt.Sprintf("%s l at %s °C", number(s.VolumeL, 0), number(s.SetpointC, 0))
	if s.SummerC != s.SetpointC {
		text += fmt.Sprintf(" (summer %s)", number(s.SummerC, 0))
	}
	return text
}

// edge lists the sizes that nothing of their kind beats in cost and failing
// showers, from the fewest failures on. What needs a limiter is not set against
// what does not.
func edge(sizes []compare.Size) []*compare.Size {
	var list []*compare.Size
	for i := range sizes {
		if s := &sizes[i]; s.NonDominated && !s.NeedsLimiter {
			list = append(list, s)
		}
	}
	slices.SortStableFunc(list, func(a, b *compare.Size) int {
		return cmp.Or(cmp.Compare(a.Trial.Failing.Mean, b.Trial.Failing.Mean), cmp.Compare(a.Trial.Cost, b.Trial.Cost))
	})
	var out []*compare.Size
	for _, s := range list {
		if len(out) == 0 || s.Trial.Cost < out[len(out)-1].Trial.Cost {
			out = append(out, s)
		}
	}
	return out
}

package charts

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// sized is a document with sizes of invented cost and failures.
func sized(t testing.TB) *compare.Document {
	t.Helper()
	s := &compare.Sizing{ScreenYears: 3, ConfirmYears: 20, Tried: 91}
	for _, side := range bothSides() {
		r := s.Of(side)
		for i := range 6 {
			size := compare.Size{VolumeL: float64(80+30*i) + 60*float64(side), SetpointC: 64 - 10*float64(side) - float64(i), SpaceL: float64(300 + 50*i)}
			size.SummerC = size.SetpointC - float64(i%2*4)
			size.Trial.Cost, size.Trial.Failing.Mean = 900-60*float64(side)-7*float64(i%4), 0.3*float64(i)
			size.NonDominated, size.NeedsLimiter = i%3 != 2, i == 5
			r.Sizes = append(r.Sizes, size)
		}
		r.Smallest, r.Cheapest = &r.Sizes[0], &r.Sizes[3]
	}
	s.HeadToHead = &compare.HeadToHead{CompactVolumeL: 170, CylinderVolumeL: 230, Cost: spread(50, 70)}
	return &compare.Document{Comparison: home(t), Sizing: s}
}

func TestTradeOff(t *testing.T) {
	c := findChart(t, drawn(t, sized(t)), "trade-off")
	if want := "The best compact store (170 l) costs £60 a year more to run than the best cylinder (230 l)"; c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
	checkPicture(t, c)
	for _, want := range []string{"cheapest, 170 l at 61 °C (summer 57), £879 a year, 0.9 failing", "smallest, 140 l at 54 °C"} {
		if !strings.Contains(c.Alt, want) {
			t.Errorf("%q is not in %q", want, c.Alt)
		}
	}
	if !strings.Contains(c.subtitle, "flow limiter") {
		t.Errorf("small points are not explained: %s", c.subtitle)
	}
}

func TestTradeOffTitle(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		want      string
	}{
		{-3, 4, "No real difference in running cost between the best compact store (170 l) and the best cylinder (230 l)"},
		{-60, -50, "The best compact store (170 l) costs £55 a year less to run than the best cylinder (230 l)"},
		{-60, 50, "The simulated years do not settle whether the best compact store (170 l) or the best cylinder (230 l) costs less to run"},
	} {
		doc := sized(t)
		doc.Sizing.HeadToHead.Cost = spread(c.low, c.high)
		if got := tradeOffTitle(doc.Sizing, doc.Comparison); got != c.want {
			t.Errorf("%v to %v: %q, want %q", c.low, c.high, got, c.want)
		}
	}
	doc := sized(t)
	doc.Sizing.HeadToHead, doc.Sizing.Compact = nil, compare.SizingResult{}
	if got, want := tradeOffTitle(doc.Sizing, doc.Comparison), "Best against best cannot be compared: no compact store that fits keeps the service rule"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestEdge holds that the line goes from the fewest failures down in cost, and
// leaves out what is beaten or needs a limiter.
func TestEdge(t *testing.T) {
	size := func(failing, cost float64, best, limiter bool) compare.Size {
		s := compare.Size{NonDominated: best, NeedsLimiter: limiter}
		s.Trial.Failing.Mean, s.Trial.Cost = failing, cost
		return s
	}
	sizes := []compare.Size{
		size(1.5, 800, true, false), size(0.2, 900, true, false), size(0.2, 890, true, false), size(0.7, 895, true, false),
		size(1, 700, false, false), size(0.9, 750, true, true), size(1, 850, true, false),
	}
	var got []string
	for _, s := range edge(sizes) {
		got = append(got, fmt.Sprint(s.Trial.Failing.Mean, s.Trial.Cost))
	}
	if text := strings.Join(got, "; "); text != "0.2 890; 1 850; 1.5 800" {
		t.Errorf("edge %s", text)
	}
}

func TestWinners(t *testing.T) {
	a, b := &compare.Size{VolumeL: 100}, &compare.Size{VolumeL: 150}
	copied := *a
	for name, c := range map[string]struct {
		cheapest, smallest *compare.Size
		want               string
	}{
		"two":      {b, a, "cheapest 150, smallest 100"},
		"the same": {a, &copied, "cheapest and smallest 100"},
		"none":     {nil, nil, ""},
		"one":      {b, nil, "cheapest 150"},
		"other":    {nil, a, "smallest 100"},
	} {
		var got []string
		for _, w := range winners(&compare.SizingResult{Cheapest: c.cheapest, Smallest: c.smallest}) {
			got = append(got, fmt.Sprintf("%s %v", w.why, w.size.VolumeL))
		}
		if text := strings.Join(got, ", "); text != c.want {
			t.Errorf("%s: %q, want %q", name, text, c.want)
		}
	}
}

// TestPointsDifferInShape holds that every cylinder is a square and every compact
// store is none, and that what is beaten is hollow.
func TestPointsDifferInShape(t *testing.T) {
	doc := sized(t)
	svg := string(svgOf(t, findChart(t, drawn(t, doc), "trade-off")))
	sizes := len(doc.Sizing.Cylinder.Sizes)
	hollow := 0
	for i := range doc.Sizing.Cylinder.Sizes {
		if !doc.Sizing.Cylinder.Sizes[i].NonDominated {
			hollow++
		}
	}
	if got := strings.Count(svg, `Z" style="fill:#2B2F77"`); got != sizes-hollow {
		t.Errorf("%d filled squares, want %d", got, sizes-hollow)
	}
	if got := strings.Count(svg, "stroke:#2B2F77;stroke-width:0.7"); got != sizes+1 {
		t.Errorf("%d lines of the cylinder, want those around %d squares and one edge", got, sizes)
	}
}

func TestTradeOffExtremes(t *testing.T) {
	each := func(f func(*compare.Size)) func(*compare.Sizing) {
		return func(s *compare.Sizing) {
			for _, side := range bothSides() {
				for i := range s.Of(side).Sizes {
					f(&s.Of(side).Sizes[i])
				}
			}
		}
	}
	for name, change := range map[string]func(*compare.Sizing){
		"nothing":         func(s *compare.Sizing) { *s = compare.Sizing{} },
		"one option":      func(s *compare.Sizing) { s.Compact, s.HeadToHead = compare.SizingResult{}, nil },
		"no winner noted": func(s *compare.Sizing) { s.Cylinder.Cheapest, s.Cylinder.Smallest = nil, nil },
		"one size":        func(s *compare.Sizing) { s.Cylinder.Sizes, s.Compact.Sizes = s.Cylinder.Sizes[:1], s.Compact.Sizes[:1] },
		"all alike":       each(func(z *compare.Size) { z.Trial.Cost, z.Trial.Failing.Mean = 800, 1 }),
		"no failures":     each(func(z *compare.Size) { z.Trial.Failing.Mean = 0 }),
		"huge":            each(func(z *compare.Size) { z.Trial.Cost *= 1e250; z.Trial.Failing.Mean *= 1e250 }),
		"huge and alike":  each(func(z *compare.Size) { z.Trial.Cost = 1e250 }),
		"tiny":            each(func(z *compare.Size) { z.Trial.Cost *= 1e-250; z.Trial.Failing.Mean *= 1e-250 }),
		"below zero":      each(func(z *compare.Size) { z.Trial.Cost *= -1 }),
		"endless numbers": each(func(z *compare.Size) { z.VolumeL, z.SetpointC = 1e12, 1e12 }),
	} {
		t.Run(name, func(t *testing.T) {
			doc := sized(t)
			change(doc.Sizing)
			checkPicture(t, findChart(t, drawn(t, doc), "trade-off"))
		})
	}
}

func TestRefusesSizesThatAreNoNumbers(t *testing.T) {
	for name, spoil := range map[string]func(*compare.Sizing){
		"cost":     func(s *compare.Sizing) { s.Compact.Sizes[2].Trial.Cost = math.NaN() },
		"failing":  func(s *compare.Sizing) { s.Cylinder.Sizes[2].Trial.Failing.Mean = math.Inf(1) },
		"interval": func(s *compare.Sizing) { s.HeadToHead.Cost.CILow = math.NaN() },
	} {
		doc := sized(t)
		spoil(doc.Sizing)
		if _, err := Of(doc); err == nil {
			t.Errorf("%s: drawn all the same", name)
		}
	}
}

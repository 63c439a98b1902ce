package charts

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// TestShowerStrips holds title and crosses against strips whose end is known: that
// of the compact store alone in January reaches 38 C after 8+4-4+2 minutes, and
// is below it at the next point.
func TestShowerStrips(t *testing.T) {
	doc := tested(t)
	c := findChart(t, drawn(t, doc), "shower-strips")
	checkPicture(t, c)
	want := "In January with the heat pump off, a shower from the compact store turns too cold after 10 minutes; from the cylinder it turns too cold after 20 minutes"
	if c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
	cold := 0
	s := showerStrips{draws: doc.Draws, coldC: 38}
	for _, strip := range s.all() {
		if _, is := s.coldAt(&strip); is {
			cold++
		}
	}
	const strokesACross, panels = 2, 4
	svg := string(svgOf(t, c))
	if got := strings.Count(svg, "stroke:#A0143C") - panels; got != strokesACross*cold || cold == 0 {
		t.Errorf("%d strokes beside the limit, want those of %d crosses", got, cold)
	}
}

func TestStripExtremes(t *testing.T) {
	for name, change := range map[string]func(*compare.Strip){
		"no points":         func(s *compare.Strip) { s.Points = nil },
		"one point":         func(s *compare.Strip) { s.Points = s.Points[:1] },
		"never warm":        func(s *compare.Strip) { s.Points = []compare.StripPoint{{Minute: 1, C: 9}, {Minute: 20, C: 9}} },
		"all alike":         func(s *compare.Strip) { s.Points = []compare.StripPoint{{Minute: 1, C: 40}, {Minute: 20, C: 40}} },
		"no number":         func(s *compare.Strip) { s.Points[3].C = math.NaN() },
		"beyond the test":   func(s *compare.Strip) { s.Points[3].Minute = 1e9 },
		"no such month":     func(s *compare.Strip) { s.Month = 40 },
		"a state not known": func(s *compare.Strip) { s.State = "<b>asleep</b>" },
		"steam":             func(s *compare.Strip) { s.Points[3].C = 1e6 },
	} {
		t.Run(name, func(t *testing.T) {
			doc := tested(t)
			for _, side := range bothSides() {
				for i := range doc.Draws.Of(side).Strips {
					change(&doc.Draws.Of(side).Strips[i])
				}
			}
			checkPicture(t, findChart(t, drawn(t, doc), "shower-strips"))
		})
	}
	doc := tested(t)
	doc.Draws.Compact.Strips, doc.Draws.Cylinder.Strips = nil, nil
	for _, c := range drawn(t, doc) {
		if c.Name == "shower-strips" {
			t.Error("drawn without strips")
		}
	}
}

func TestColdAt(t *testing.T) {
	s := showerStrips{coldC: 38}
	for _, c := range []struct {
		name   string
		points []compare.StripPoint
		minute float64
		cold   bool
	}{
		{"warm throughout", []compare.StripPoint{{Minute: 0, C: 40}, {Minute: 5, C: 38}}, 0, false},
		{"warms up first", []compare.StripPoint{{Minute: 0, C: 20}, {Minute: 1, C: 40}, {Minute: 2, C: 37}}, 2, true},
		{"never warm", []compare.StripPoint{{Minute: 0, C: 20}, {Minute: 1, C: 30}}, 0, false},
		{"nothing", nil, 0, false},
	} {
		if minute, cold := s.coldAt(&compare.Strip{Points: c.points}); minute != c.minute || cold != c.cold {
			t.Errorf("%s: %v %v, want %v %v", c.name, minute, cold, c.minute, c.cold)
		}
	}
}

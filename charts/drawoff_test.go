package charts

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// tested is a document with draw-off tests of invented minutes: those of the
// compact store fall in winter and with less help of the heat pump.
func tested(t testing.TB) *compare.Document {
	t.Helper()
	d := &compare.Drawoff{FlowsLPerMin: []float64{6, 8, 12}, States: []string{"full output", "capped", "off", "in defrost"}, LongestMin: 30}
	for _, side := range bothSides() {
		for m := range d.Of(side).ShowerMin {
			for state := range d.States {
				row := make([]float64, len(d.FlowsLPerMin))
				for i, flow := range d.FlowsLPerMin {
					row[i] = min(30, (168+80*float64(side)-64*winter(m))/flow-2*float64(state))
				}
				d.Of(side).ShowerMin[m] = append(d.Of(side).ShowerMin[m], row)
			}
		}
	}
	for _, side := range bothSides() {
		for _, month := range []int{1, 7} {
			for state, name := range d.States {
				d.Of(side).Strips = append(d.Of(side).Strips, stripOf(month, name, 8+4*float64(month)+10*float64(side)-2*float64(state)))
			}
		}
	}
	c := compare.Default()
	c.Household.ShowerFlowLPerMin, c.Household.ShowerMinutes, c.Household.ShowerMinC = 8.4, 15, 38
	return &compare.Document{Case: &c, Comparison: home(t), Draws: d}
}

// stripOf is a shower of half an hour that stays at 40 C for so many minutes and then
// falls by a kelvin a minute.
func stripOf(month int, state string, minutes float64) compare.Strip {
	s := compare.Strip{Month: month, State: state, FlowLPerMin: 8}
	for at := 0.0; at <= 30; at += 0.25 {
		s.Points = append(s.Points, compare.StripPoint{Minute: at, C: 40 - max(0, at-minutes)})
	}
	return s
}

func TestShowerMinutes(t *testing.T) {
	c := findChart(t, drawn(t, tested(t)), "shower-minutes")
	// 104/8 and 168/8 of the compact store, 184/8 and 248/8 of the cylinder.
	want := "A shower lasts 13 minutes in January and 21 in July from the compact store, 23 and 30 or more from the cylinder"
	if c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
	if !strings.Contains(c.subtitle, "8 litres a minute") {
		t.Errorf("the nearest flow is not drawn: %s", c.subtitle)
	}
	checkPicture(t, c)
	if !bytes.Equal(pngOf(t, c), pngOf(t, c)) {
		t.Error("the same picture differs")
	}
}

func TestShowerMinutesAllAlike(t *testing.T) {
	for _, minutes := range []float64{0, 30, 90} {
		doc := tested(t)
		for _, side := range bothSides() {
			for _, states := range doc.Draws.Of(side).ShowerMin {
				for _, row := range states {
					for i := range row {
						row[i] = minutes
					}
				}
			}
		}
		for _, c := range drawn(t, doc) {
			if strings.HasPrefix(c.Name, "shower") {
				checkPicture(t, &c)
			}
			if c.Name == "shower-minutes" && !strings.HasSuffix(c.Title, " in both from the cylinder") {
				t.Errorf("%g minutes: %s", minutes, c.Title)
			}
		}
	}
}

func TestRefusesIncompleteTests(t *testing.T) {
	for name, spoil := range map[string]func(*compare.Drawoff){
		"no flows":         func(d *compare.Drawoff) { d.FlowsLPerMin = nil },
		"a missing state":  func(d *compare.Drawoff) { d.Compact.ShowerMin[3] = d.Compact.ShowerMin[3][:2] },
		"a missing minute": func(d *compare.Drawoff) { d.Cylinder.ShowerMin[3][1] = []float64{1} },
		"no number":        func(d *compare.Drawoff) { d.Cylinder.ShowerMin[3][1][0] = math.NaN() },
		"no length":        func(d *compare.Drawoff) { d.LongestMin = 0 },
		"a flow of none":   func(d *compare.Drawoff) { d.FlowsLPerMin[1] = math.NaN() },
	} {
		doc := tested(t)
		spoil(doc.Draws)
		if _, err := Of(doc); err == nil {
			t.Errorf("%s: drawn all the same", name)
		}
	}
	if _, err := Of(nil); err == nil {
		t.Error("nothing is drawn")
	}
}

func TestDocumentWithoutTests(t *testing.T) {
	charts, err := Of(&compare.Document{Comparison: home(t)})
	if err != nil || len(charts) != len(all(t, home(t))) {
		t.Errorf("%d charts, %v", len(charts), err)
	}
}

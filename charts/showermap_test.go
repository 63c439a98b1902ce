package charts

import (
	"image/color"
	"strings"
	"testing"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

func TestShowerMap(t *testing.T) {
	doc := tested(t)
	c := findChart(t, drawn(t, doc), "shower-map")
	// The store alone lasts (168-64 winter)/8 - 4 min: above 15 only in the five
	// months about July, 16 min or more.
	want := "With the heat pump off, a shower of 15 minutes at 8 l/min stays warm in 5 months with the compact store, all year with the cylinder"
	if c.Title != want {
		t.Errorf("title %q, want %q", c.Title, want)
	}
	checkPicture(t, c)
	if !strings.Contains(c.subtitle, "Framed in red: shorter than the household's shower of 15 minutes") {
		t.Errorf("the frame is not explained: %s", c.subtitle)
	}
	svg := string(svgOf(t, c))
	const panels, flows = 4, 3
	others := len(c.title) + len(c.under) + 1 + panels*(2+4+flows) // caption, heads, months, flows
	if got := strings.Count(svg, "<text") - others; got != panels*flows*calendar.MonthsInAYear {
		t.Errorf("%d numbers, want one a cell", got)
	}
}

func TestShowerMapWithoutFrames(t *testing.T) {
	doc := tested(t)
	doc.Case.Household.ShowerMinutes = 1
	c := findChart(t, drawn(t, doc), "shower-map")
	if strings.Contains(c.subtitle, "red") || strings.Contains(string(svgOf(t, c)), "#A0143C") {
		t.Error("frames where every shower lasts")
	}
}

// TestFrame counts the edges around the cells that do not serve: a lone one has
// four, two beside each other six, and the whole map its outer edges.
func TestFrame(t *testing.T) {
	months, flows := calendar.MonthsInAYear, 3
	for _, c := range []struct {
		name  string
		short func(month, flow int) bool
		want  int
	}{
		{"none", func(int, int) bool { return false }, 0},
		{"one", func(m, f int) bool { return m == 4 && f == 1 }, 4},
		{"two beside each other", func(m, f int) bool { return m < 2 && f == 2 }, 6},
		{"all", func(int, int) bool { return true }, 2 * (months + flows)},
	} {
		doc := tested(t)
		for month := range doc.Draws.Compact.ShowerMin {
			for flow := range flows {
				doc.Draws.Compact.ShowerMin[month][0][flow] = 20
				if c.short(month, flow) {
					doc.Draws.Compact.ShowerMin[month][0][flow] = 2
				}
			}
		}
		m := showerMap{draws: doc.Draws, needs: 10}
		flat := func(v float64) vg.Length { return vg.Points(v) }
		if got := len(m.frame(flat, flat, compare.SideCompact, 0)); got != c.want {
			t.Errorf("%s: %d edges, want %d", c.name, got, c.want)
		}
	}
}

// TestNumbersOnShades holds every shade of the map to the contrast of text (WCAG
// 2.2, 1.4.3), and darker to mean shorter.
func TestNumbersOnShades(t *testing.T) {
	colours := shades{}.colours()
	before := -1
	for _, share := range []float64{2, 1, 0.9, 0.6, 0.4, 0.1, 0, -1} {
		shade := mapShade(share)
		if shade < before {
			t.Errorf("share %v is lighter than a longer shower", share)
		}
		before = shade
		if got := contrast(color.NRGBA(inkOn(shade)), colours[shade]); got < 4.5 {
			t.Errorf("numbers on shade %d: %.2f:1", shade, got)
		}
	}
	if before != darkest {
		t.Errorf("the shortest shower has shade %d", before)
	}
}

package charts

import (
	"regexp"
	"strconv"
	"testing"

	"gonum.org/v1/plot/vg"
)

func TestTextsAreWrittenClearOfLines(t *testing.T) {
	lines := uprights{130, 100, 112}
	for _, c := range []struct{ end, sign, wide, want float64 }{
		{50, 1, 20, 50}, {98, 1, 6, 100}, {95, 1, 6, 100}, {97, 1, 9, 112}, {80, 1, 15, 80}, {112, 1, 5, 112}, {140, 1, 90, 140},
		{150, -1, 10, 150}, {135, -1, 9, 130}, {114, -1, 20, 100}, {100, -1, 20, 100}, {105, -1, 30, 100},
		// Too far off: 130 from 95 and from 80, 100 from 150.
		{95, 1, 20, 95}, {80, 1, 40, 80}, {150, -1, 20, 150},
	} {
		if got := lines.clear(vg.Length(c.end), c.sign, vg.Length(c.wide)); got != vg.Length(c.want) {
			t.Errorf("%v wide from %v, sign %v: %v, want %v", c.wide, c.end, c.sign, got, c.want)
		}
	}
	if got := (uprights{}).clear(7, -1, 100); got != 7 {
		t.Errorf("without lines: %v", got)
	}
}

var (
	uprightPath = regexp.MustCompile(`<path d="M([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)" style="fill:none;stroke:#([0-9A-F]{6})`)
	groundPath  = regexp.MustCompile(`<path d="M([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L[0-9.,]+Z" style="fill:#FFFFFF"`)
)

// drawnAt is what a pattern finds in a picture: the numbers of its groups, and where.
type drawnAt struct {
	where  int
	at     []float64
	colour string
}

func found(t *testing.T, svg string, pattern *regexp.Regexp, numbers int) []drawnAt {
	t.Helper()
	var out []drawnAt
	for _, m := range pattern.FindAllStringSubmatchIndex(svg, -1) {
		d := drawnAt{where: m[0]}
		for i := 1; i <= numbers; i++ {
			v, err := strconv.ParseFloat(svg[m[2*i]:m[2*i+1]], 64)
			if err != nil {
				t.Fatal(err)
			}
			d.at = append(d.at, v)
		}
		if last := 2 * (numbers + 1); last < len(m) {
			d.colour = svg[m[last]:m[last+1]]
		}
		out = append(out, d)
	}
	return out
}

// checkClear holds that no text of the picture's body lies on an upright line of it,
// or touches one, unless a ground is drawn over the line; the thin lines of the grid
// and the paper under others aside.
func checkClear(t *testing.T, c *Chart) {
	t.Helper()
	svg := string(svgOf(t, c))
	texts, grounds, seen := labels(t, []byte(svg)), found(t, svg, groundPath, 6), 0
	for _, line := range found(t, svg, uprightPath, 4) {
		const grid, paper = "DCDCE2", "FFFFFF"
		x, foot, head := line.at[0], c.height.Points()-line.at[1], c.height.Points()-line.at[3]
		if x != line.at[2] || line.colour == grid || line.colour == paper {
			continue
		}
		seen++
		for _, l := range texts {
			if l.y1 < foot && l.y0 > head && l.x0-1 < x && x < l.x1+1 && !covered(grounds, line.where, c.height.Points(), l) {
				t.Errorf("%s: %q, %.1f to %.1f, lies on the line at %.1f", c.Name, l.text, l.x0, l.x1, x)
			}
		}
	}
	if seen == 0 {
		t.Errorf("%s: no upright lines are seen", c.Name)
	}
}

// covered reports whether a text has a ground that is drawn after a place in the
// picture, and wider than the text.
func covered(grounds []drawnAt, after int, height float64, l label) bool {
	for _, g := range grounds {
		middle := (l.y0 + l.y1) / 2
		if g.where > after && g.at[0] < l.x0-1 && g.at[2] > l.x1+1 && height-g.at[1] > middle && height-g.at[5] < middle {
			return true
		}
	}
	return false
}

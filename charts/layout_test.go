package charts

import (
	"encoding/xml"
	"fmt"
	"maps"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// label is a text of a picture and the room that its letters take.
type label struct {
	text           string
	x0, y0, x1, y1 float64
}

var (
	sizeOf = regexp.MustCompile(`font-size:([0-9.]+)px`)
	isBold = regexp.MustCompile(`font-weight:bold`)
)

// labels reads the texts of an SVG back. y is measured downwards.
func labels(t *testing.T, svg []byte) []label {
	t.Helper()
	var doc struct {
		G struct {
			Texts []struct {
				X     float64 `xml:"x,attr"`
				Y     float64 `xml:"y,attr"`
				Style string  `xml:"style,attr"`
				Text  string  `xml:",chardata"`
			} `xml:"text"`
		} `xml:"g"`
		ViewBox string `xml:"viewBox,attr"`
	}
	if err := xml.Unmarshal(svg, &doc); err != nil {
		t.Fatal(err)
	}
	high, err := strconv.ParseFloat(strings.Fields(doc.ViewBox)[3], 64)
	if err != nil {
		t.Fatal(err)
	}
	var out []label
	for _, e := range doc.G.Texts {
		size, err := strconv.ParseFloat(sizeOf.FindStringSubmatch(e.Style)[1], 64)
		if err != nil {
			t.Fatal(err)
		}
		style := words(size, nil)
		if isBold.MatchString(e.Style) {
			style = bold(style)
		}
		// Letters reach from a little under the line, say a tenth, to the height of
		// capitals, 0.73 of the size. (Deeper tails may come near another line.)
		base := high + e.Y
		out = append(out, label{e.Text, e.X, base - 0.73*size, e.X + style.Width(e.Text).Points(), base + 0.1*size})
	}
	return out
}

func (a label) meets(b label) bool {
	const touch = 0.3 // points that do not show
	return a.x0 < b.x1-touch && b.x0 < a.x1-touch && a.y0 < b.y1-touch && b.y0 < a.y1-touch
}

// checkLayout holds that no text is cut by the edge, and that none lies on another.
func checkLayout(t *testing.T, c *Chart) {
	t.Helper()
	list := labels(t, svgOf(t, c))
	for i, a := range list {
		if a.x0 < 0 || a.y0 < 0 || a.x1 > width.Points() || a.y1 > c.height.Points() {
			t.Errorf("%s: %q leaves the picture: %.1f..%.1f, %.1f..%.1f", c.Name, a.text, a.x0, a.x1, a.y0, a.y1)
		}
		for _, b := range list[:i] {
			if a.meets(b) {
				t.Errorf("%s: %q lies on %q", c.Name, a.text, b.text)
			}
		}
	}
}

// extremes are comparisons that no home has, or few.
func extremes() map[string]func(*compare.Comparison) {
	all := extremeFigures()
	maps.Copy(all, extremeThings())
	return all
}

// extremeFigures are the extremes of figures and names.
func extremeFigures() map[string]func(*compare.Comparison) {
	return map[string]func(*compare.Comparison){
		"as simulated": func(*compare.Comparison) {},
		"nothing at all": func(c *compare.Comparison) {
			*c = compare.Comparison{}
		},
		"all zero": func(c *compare.Comparison) {
			eachFigure(c, func(float64) float64 { return 0 })
		},
		"huge": func(c *compare.Comparison) {
			eachFigure(c, func(v float64) float64 { return 1e6 * v })
		},
		"beyond all measure": func(c *compare.Comparison) {
			eachFigure(c, func(v float64) float64 { return 1e250 * v })
		},
		"tiny": func(c *compare.Comparison) {
			eachFigure(c, func(v float64) float64 { return 1e-9 * v })
		},
		"vanishing": func(c *compare.Comparison) {
			eachFigure(c, func(v float64) float64 { return 1e-250 * v })
		},
		"cylinder never fails": func(c *compare.Comparison) {
			for m := range c.Options.Cylinder.Months {
				c.Options.Cylinder.Months[m].FailingShowers = 0
				c.Options.Cylinder.FailuresByMonth[m] = compare.Spread{}
			}
			c.Options.Cylinder.FailingShowers = 0
		},
		"worst month is December": func(c *compare.Comparison) {
			c.Options.Compact.Months[11].ElectricityKWh *= 3
			c.Options.Cylinder.Months[11].StartsPerDay *= 3
		},
		"one year": func(c *compare.Comparison) {
			c.Years = 1
			for i := range c.Tariffs {
				t := &c.Tariffs[i]
				t.DifferenceOver.CILow, t.DifferenceOver.CIHigh = t.Difference, t.Difference
			}
		},
		"compact store costs less": func(c *compare.Comparison) {
			for i := range c.Tariffs {
				t := &c.Tariffs[i]
				t.Compact, t.Cylinder = t.Cylinder, t.Compact
				t.Difference = -t.Difference
				t.DifferenceOver.CILow, t.DifferenceOver.CIHigh = -t.DifferenceOver.CIHigh, -t.DifferenceOver.CILow
			}
		},
		"no tariffs": func(c *compare.Comparison) { c.Tariffs = nil },
		"many tariffs": func(c *compare.Comparison) {
			for i := range 40 {
				t := c.Tariffs[0]
				t.Name = fmt.Sprintf("a tariff with a name that is far too long to stand beside its bar, number %d", i)
				c.Tariffs = append(c.Tariffs, t)
			}
		},
		"long title": func(c *compare.Comparison) { c.Title = strings.Repeat("the long house ", 100) },
		"no spaces":  func(c *compare.Comparison) { c.Title = strings.Repeat("x", 4000) },
	}
}

// extremeThings are the extremes of shown days, causes and things in a room.
func extremeThings() map[string]func(*compare.Comparison) {
	return map[string]func(*compare.Comparison){
		"no points of the day": func(c *compare.Comparison) {
			c.Shown.WinterDay.Compact.Points = nil
			c.Shown.WinterDay.Cylinder.Points = nil
		},
		"holes in the day": func(c *compare.Comparison) {
			points := c.Shown.WinterDay.Compact.Points
			c.Shown.WinterDay.Compact.Points = append(points[:20:20], points[200:210]...)
			c.Shown.WinterDay.Cylinder.Points[5].TopC = math.NaN()
			c.Shown.WinterDay.Cylinder.Points[7].RoomC = math.Inf(-1)
			c.Shown.WinterDay.Cylinder.Points[9].HouseW = math.NaN()
			c.Shown.WinterDay.Cylinder.Points[80].HeatW = math.Inf(1)
			c.Shown.WinterDay.Cylinder.Draws[0].Litres = math.Inf(1)
		},
		"no draws": func(c *compare.Comparison) {
			c.Shown.WinterDay.Compact.Draws, c.Shown.WinterDay.Cylinder.Draws = nil, nil
		},
		"the compact store uses less": func(c *compare.Comparison) {
			for i := range c.ByCause.Parts {
				c.ByCause.Parts[i].KWh *= -1
			}
			a, b := &c.Options.Compact.WholeHouseKWh, &c.Options.Cylinder.WholeHouseKWh
			*a, *b = *b, *a
		},
		"causes with long names": func(c *compare.Comparison) {
			for i := range c.ByCause.Parts {
				c.ByCause.Parts[i].Label = strings.Repeat("a long cause ", 20)
			}
		},
		"causes that cancel": func(c *compare.Comparison) {
			c.ByCause.Parts[0].KWh, c.ByCause.Parts[1].KWh = -4000, 4000
		},
		"a room without heat": func(c *compare.Comparison) {
			for i := range c.Shown.WinterDay.Cylinder.Points {
				c.Shown.WinterDay.Cylinder.Points[i].HouseW = 0
				c.Shown.WinterDay.Cylinder.Points[i].RoomC = -40
			}
		},
		"a furnace": func(c *compare.Comparison) {
			for i := range c.Shown.WinterDay.Compact.Points {
				c.Shown.WinterDay.Compact.Points[i].HouseW *= 1e9
				c.Shown.WinterDay.Compact.Points[i].RoomC = 1e4
			}
		},
		"no showers": func(c *compare.Comparison) {
			c.Options.Compact.ShowerTime, c.Options.Cylinder.ShowerTime = compare.ShowerTime{}, compare.ShowerTime{}
		},
		"showers that are never warm": func(c *compare.Comparison) {
			for _, side := range bothSides() {
				c.Options.Of(side).ShowerTime = showers(40, 38, 100, 80)
			}
		},
		"showers all as wanted": func(c *compare.Comparison) {
			for _, side := range bothSides() {
				c.Options.Of(side).ShowerTime = compare.ShowerTime{WantC: 40, LeastC: 38, Minutes: 4000,
					Colder: []compare.TimeColder{{C: 40}, {C: 40.1, Minutes: 4000, Share: 1}}}
			}
		},
		"showers of icy water in one option": func(c *compare.Comparison) {
			c.Options.Cylinder.ShowerTime = compare.ShowerTime{WantC: 40, LeastC: 40, Minutes: 4000,
				Colder: []compare.TimeColder{{C: 15}, {C: 15.1, Minutes: 4000, Share: 1}}}
		},
		"no half hours":   func(c *compare.Comparison) { c.Profiles[0] = nil },
		"no such day":     func(c *compare.Comparison) { c.Shown.WinterDay.Day = 400 },
		"nothing to draw": func(c *compare.Comparison) { c.Options.Compact.SpaceItems, c.Options.Cylinder.SpaceItems = nil, nil },
		"many things": func(c *compare.Comparison) {
			item := c.Options.Compact.SpaceItems[0]
			for range 30 {
				c.Options.Compact.SpaceItems = append(c.Options.Compact.SpaceItems, item)
			}
		},
		"a tower and a mat": func(c *compare.Comparison) {
			c.Options.Compact.SpaceItems[0].HeightMM = 20000
			c.Options.Cylinder.SpaceItems[0].WidthMM = 20000
			c.Options.Cylinder.SpaceItems[0].HeightMM = 1
		},
	}
}

// eachFigure changes every figure of a comparison that a chart may draw.
func eachFigure(c *compare.Comparison, f func(float64) float64) {
	totals := func(t *compare.Totals) {
		for _, figure := range compare.Figures() {
			*figure.Of(t) = f(*figure.Of(t))
		}
	}
	spread := func(s *compare.Spread) {
		*s = compare.Spread{Mean: f(s.Mean), SE: f(s.SE), CILow: f(s.CILow), CIHigh: f(s.CIHigh), P05: f(s.P05), P95: f(s.P95)}
	}
	totals(&c.Difference.Totals)
	for i := range c.ByCause.Parts {
		c.ByCause.Parts[i].KWh = f(c.ByCause.Parts[i].KWh)
	}
	for name, s := range c.Difference.Spread {
		spread(&s.Spread)
		c.Difference.Spread[name] = s
	}
	for _, side := range bothSides() {
		o := c.Options.Of(side)
		totals(&o.Totals)
		for m := range calendar.MonthsInAYear {
			totals(&o.Months[m].Totals)
			spread(&o.FailuresByMonth[m])
		}
		for _, cause := range compare.CauseList() {
			*cause.Of(&o.ElectricityByCause) = f(*cause.Of(&o.ElectricityByCause))
		}
		for i := range c.Tariffs {
			c.Tariffs[i].Of(side).Cost = f(c.Tariffs[i].Of(side).Cost)
		}
	}
	for side := range c.Profiles {
		profile := append([]float64(nil), c.Profiles[side]...)
		for i, v := range profile {
			profile[i] = f(v)
		}
		c.Profiles[side] = profile
	}
	for i := range c.Tariffs {
		c.Tariffs[i].Difference = f(c.Tariffs[i].Difference)
		spread(&c.Tariffs[i].DifferenceOver.Spread)
	}
}

func TestExtremes(t *testing.T) {
	for name, change := range extremes() {
		t.Run(name, func(t *testing.T) {
			cmp := home(t)
			change(cmp)
			for _, c := range all(t, cmp) {
				checkPicture(t, &c)
			}
		})
	}
}

// TestBarsStandOnZero holds that a bar twice as high stands for twice as much.
func TestBarsStandOnZero(t *testing.T) {
	m := monthBars{unit: "kWh", values: monthValues{{10, 20}, {5}}}
	c := Chart{Name: "bars", room: monthsHeight, body: m.draw}
	c.layOut()
	tops := barTops(t, svgOf(t, &c))
	if len(tops) != 3 {
		t.Fatalf("%d bars, want one for each value above zero", len(tops))
	}
	// Coordinates are written with five digits.
	if r := tops[1] / tops[0]; math.Abs(r-2) > 1e-3 {
		t.Errorf("20 is drawn %.4f times as high as 10", r)
	}
	if r := tops[0] / tops[2]; math.Abs(r-2) > 1e-3 {
		t.Errorf("10 is drawn %.4f times as high as 5", r)
	}
}

var barPath = regexp.MustCompile(`<path d="M([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L([0-9.]+),([0-9.]+)L[0-9.,]+Z" style="fill:#(D4752A|2B2F77)"`)

// barTops gives the heights of the bars, points.
func barTops(t *testing.T, svg []byte) []float64 {
	t.Helper()
	var out []float64
	for _, m := range barPath.FindAllStringSubmatch(string(svg), -1) {
		foot, err1 := strconv.ParseFloat(m[2], 64)
		head, err2 := strconv.ParseFloat(m[6], 64)
		if err1 != nil || err2 != nil {
			t.Fatal(m)
		}
		out = append(out, head-foot)
	}
	return out
}

func TestThinnedShowsTheSame(t *testing.T) {
	var pts []vg.Point
	for i := range 400 {
		x := float64(i)
		pts = append(pts, vg.Point{X: vg.Length(x), Y: vg.Length(50*math.Sin(x/40) + x)})
	}
	less := thinned(pts)
	if len(less) > len(pts)/4 {
		t.Errorf("%d of %d points are left", len(less), len(pts))
	}
	for _, q := range pts {
		if d := distance(less, q); d > unseen {
			t.Errorf("the point at %v is %.3f points off", q, d)
		}
	}
}

// distance is how far a point lies above or below a line.
func distance(line []vg.Point, q vg.Point) float64 {
	for i := 1; i < len(line); i++ {
		if a, b := line[i-1], line[i]; q.X >= a.X && q.X <= b.X {
			return math.Abs(float64(q.Y - (a.Y + (b.Y-a.Y)*(q.X-a.X)/(b.X-a.X))))
		}
	}
	return math.Inf(1)
}

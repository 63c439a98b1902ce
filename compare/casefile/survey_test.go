package casefile

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
	"dhwcompare/compare/household"
)

// Every key of the survey is a key, is shown in a new case with how to measure it
// right above it, and has a range or a form that a measurement fits.
func TestSurveyStandsAboveItsKeys(t *testing.T) {
	text := string(Template())
	for _, s := range surveys() {
		if !contains(Keys(), s.key) {
			t.Errorf("%s is no key", s.key)
		}
		name := (&Key{Path: s.key}).name()
		if strings.Count(text, "# "+name+":") == 0 {
			t.Errorf("%s is not shown", s.key)
		}
		last := "It moves " + string(s.moves) + " most."
		whole := strings.Join(strings.Fields(strings.ReplaceAll(text, "#", " ")), " ")
		if !strings.Contains(whole, "How to find out: "+s.how+" "+last) {
			t.Errorf("%s: how to find it out is not shown", s.key)
		}
	}
}

// found is how far a survey may move a figure of the demo from what the case says.
type found []string // pairs of key and value

// surveyChanges are what a visit may find in place of the figures of the demo, one
// at a time. The room is told apart by other means.
func surveyChanges() map[string]found {
	return map[string]found{
		"household.showers_per_day":       {"household.showers_per_day", "0.5"},
		"household.shower_minutes":        {"household.shower_minutes", "7"},
		"household.shower_flow_l_per_min": {"household.shower_flow_l_per_min", "9"},
		"household.bath_l":                {"household.bath_l", "120"},
		"mains.largest_flow_l_per_min":    {"mains.largest_flow_l_per_min", "8"},
		"mains.dynamic_pressure_bar":      {"mains.dynamic_pressure_bar", "0.3"},
		"dwelling.open_water_l":           {"dwelling.open_water_l", "60"},
		"pipes.loop_length_m":             {"pipes.loop_length_m", "40"},
		"pipes.loop_bore_mm":              {"pipes.loop_bore_mm", "20.2"},
		"pipes.shower_leg_l":              {"pipes.shower_leg_l", "2"},
		"pipes.bath_leg_l":                {"pipes.bath_leg_l", "2"},
		"pipes.kitchen_leg_l":             {"pipes.kitchen_leg_l", "1.8"},
		"pipes.basin_leg_l":               {"pipes.basin_leg_l", "1.5"},
		"compact_store.fouling_m2k_per_w": {"compact_store.fouling_m2k_per_w", "0", "cylinder.fouling_m2k_per_w", "0", "money.compact_store.descaling_per_year", "0"},
	}
}

// noticed is the size of a change that a household would notice, by result: the
// materiality and the service rule of the demo, three seconds of waiting at an
// outlet each time, a minute at the bath. Judgement.
func noticed() map[result]float64 {
	return map[result]float64{movesShowers: 2, movesBaths: 2, movesWaiting: 3, movesFilling: 1, movesCost: 20}
}

// What the survey says a figure moves most is what it moves most: measured by what
// a household would notice, where it moves most, over two years.
func TestSurveyMovesWhatItSays(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates some fifty years")
	}
	base := surveyResults(t, nil, func(*compare.Case) {})
	results := []result{movesShowers, movesBaths, movesWaiting, movesFilling, movesCost}
	for _, s := range surveys() {
		if s.moves == movesFit {
			decidesTheFit(t, s.key)
			continue
		}
		changes, edit := surveyChanges()[s.key], func(*compare.Case) {}
		switch s.key {
		case "household.away":
			edit = func(c *compare.Case) { c.Household.Away = []household.DayRange{{FirstDay: 210, LastDay: 223}} }
		case "household.guests":
			edit = func(c *compare.Case) {
				c.Household.Guests = []household.Stay{{DayRange: household.DayRange{FirstDay: 0, LastDay: 9}, People: 3}}
			}
		}
		seen := surveyResults(t, changes, edit)
		most, by := result("nothing"), 0.0
		for _, r := range results {
			if moved := seen.noticedFrom(base, r); moved > by {
				most, by = r, moved
			}
		}
		t.Logf("%s: %s", s.key, seen.all(base))
		if most != s.moves {
			t.Errorf("%s moves %q most, the survey says %q: %s", s.key, most, s.moves, seen.all(base))
		}
	}
}

// decidesTheFit: what a key of the place says keeps an option out, or lets it in.
func decidesTheFit(t *testing.T, key string) {
	t.Helper()
	for _, tt := range []struct {
		mm   string
		fits bool
	}{{"100", false}, {"5000", true}} {
		c, _, err := Load("demo.yaml", Demo(), nil)
		if err != nil {
			t.Fatal(err)
		}
		c.Years = 1
		if err := Set(c, key, tt.mm); err != nil {
			t.Fatal(err)
		}
		cmp, err := compare.Compare(context.Background(), c, 2, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, o := range []*compare.Option{&cmp.Options.Compact, &cmp.Options.Cylinder} {
			if o.Fit == nil || o.Fit.Fits != tt.fits {
				t.Errorf("%s of %s mm: %s, %+v", key, tt.mm, o.Name, o.Fit)
			}
		}
	}
}

// surveyed are the results, of both options and of each outlet.
type surveyed map[result][]float64

// noticedFrom is the largest change by what a household would notice. Counts of a
// few years tell no less than that apart.
func (f surveyed) noticedFrom(base surveyed, r result) float64 {
	moved := f.movedFrom(base, r) / noticed()[r]
	if (r == movesShowers || r == movesBaths) && moved < 1 {
		return 0
	}
	return moved
}

// movedFrom is the largest change.
func (f surveyed) movedFrom(base surveyed, r result) float64 {
	most := 0.0
	for i := range f[r] {
		most = math.Max(most, math.Abs(f[r][i]-base[r][i]))
	}
	return most
}

func (f surveyed) all(base surveyed) string {
	var texts []string
	for _, r := range []result{movesShowers, movesBaths, movesWaiting, movesFilling, movesCost} {
		texts = append(texts, fmt.Sprintf("%s %.2f", r, f.movedFrom(base, r)/noticed()[r]))
	}
	return strings.Join(texts, ", ")
}

func surveyResults(t *testing.T, changes found, edit func(*compare.Case)) surveyed {
	t.Helper()
	c, _, err := Load("demo.yaml", Demo(), nil)
	if err != nil {
		t.Fatal(err)
	}
	c.Years = 2
	for i := 0; i+1 < len(changes); i += 2 {
		if err := Set(c, changes[i], changes[i+1]); err != nil {
			t.Fatal(err)
		}
	}
	edit(c)
	cmp, err := compare.Compare(context.Background(), c, 2, nil)
	if err != nil {
		t.Fatal(err)
	}
	f := surveyed{movesFilling: fillingMinutes(t, c)}
	for _, o := range []*compare.Option{&cmp.Options.Compact, &cmp.Options.Cylinder} {
		f[movesShowers] = append(f[movesShowers], o.FailingShowers)
		f[movesBaths] = append(f[movesBaths], o.FailingBaths)
		f[movesCost] = append(f[movesCost], o.EquivalentAnnualCost)
		for _, w := range o.Risk.Waits {
			f[movesWaiting] = append(f[movesWaiting], w.MeanS)
		}
	}
	return f
}

// fillingMinutes is the mean time of a bath in the first year, of both options.
func fillingMinutes(t *testing.T, c *compare.Case) []float64 {
	t.Helper()
	var minutes []float64
	err := compare.Years(context.Background(), c, 1, 1, func(_ int, p compare.Pair) error {
		for _, l := range p.Ledgers {
			sum, baths := 0.0, 0.0
			for i := range l.Outcomes {
				if o := &l.Outcomes[i]; o.Draw.Kind == household.Bath {
					sum += o.FlowingS / 60
					baths++
				}
			}
			minutes = append(minutes, sum/baths)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return minutes
}

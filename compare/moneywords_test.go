package compare

import (
	"strings"
	"testing"
)

// told puts all words on money, starts, windows and room of a comparison together.
func told(c *Case, cmp *Comparison) string {
	lines := append([]string{lifeClause(c, cmp), carbonReason(cmp)}, lifeReasons(c, cmp)...)
	for _, more := range [][]string{budgetReasons(cmp), windowReasons(c, cmp), fitReasons(cmp)} {
		lines = append(lines, more...)
	}
	return strings.Join(lines, "\n")
}

func TestWordsOnMoney(t *testing.T) {
	years := func(costs ...float64) []float64 { return costs }
	for _, x := range []struct {
		name              string
		compact, cylinder []float64
		change            func(*Case)
		finish            func(*Comparison)
		says              []string
	}{
		{"saves", years(200, 201, 200, 201, 200), years(250, 250, 251, 250, 250), func(*Case) {}, func(*Comparison) {},
			[]string{"a year less, and the 0.40 m2 of floor that it frees cost nothing", "none on \"flat\"", "no value of floor turns that"}},
		{"alike", years(330, 331, 330, 331, 330), years(250, 250, 251, 250, 250), func(c *Case) {}, func(*Comparison) {},
			[]string{"(no real difference)"}},
		{"too few years", years(270), years(250), func(*Case) {}, func(*Comparison) {}, []string{"(undecided on the years simulated)"}},
		{"floor without a value", years(900), years(250), func(c *Case) { c.Money.FloorValuePerM2Year = 0 }, func(*Comparison) {},
			[]string{"of which it frees 0.40, or"}},
		{"the check is the compact store's", years(255), years(250), func(c *Case) { c.Money.Compact, c.Money.Cylinder = c.Money.Cylinder, c.Money.Compact }, func(*Comparison) {},
			[]string{"Safety check: that of the compact store"}},
		{"starts, windows and room", years(270), years(250), func(c *Case) { c.HeatPump.DesignStarts = 100_000 }, func(cmp *Comparison) {
			a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
			a.CheapestWindows = &WindowChoice{Tariff: "night", Windows: []string{"03:00-06:00"}, RaisedC: 65, SavedPerYear: 12, ExtraFailing: 0.5, Years: 3}
			b.CheapestWindows = &WindowChoice{Tariff: "night", Windows: []string{}, Years: 3}
			a.Fit, b.Fit = &Fit{Text: "fits"}, &Fit{Text: "does not fit (height)"}
		}, []string{
			"Starts against the 100000", "compact store on \"night\": 65 C from 03:00-06:00, GBP 12 a year saved and +0.5 failing",
			"cylinder on \"night\": at any time", "the compact store fits; the cylinder does not fit (height).",
		}},
	} {
		c := publishedOptions()
		c.Money.Compact.Purchase = 2000
		if x.name == "alike" {
			c.Money.Compact.Purchase = 2150
		}
		x.change(&c)
		cmp := weighed(t, &c, x.compact, x.cylinder)
		x.finish(cmp)
		words := told(&c, cmp)
		for _, want := range x.says {
			if !strings.Contains(words, want) {
				t.Errorf("%s: no %q in\n%s", x.name, want, words)
			}
		}
	}
}

func TestColdOptionsAreNotPriced(t *testing.T) {
	c := publishedOptions()
	cmp := weighed(t, &c, []float64{200}, []float64{250})
	cmp.Options.Compact.WantedHeatKWh, cmp.Options.Compact.UnmetHeatKWh = 1000, 50
	if clause := lifeClause(&c, cmp); clause != "" {
		t.Errorf("the verdict prices an option that runs cold: %s", clause)
	}
	if words := told(&c, cmp); strings.Contains(words, "Price of space") || !strings.Contains(words, "Whole life") {
		t.Errorf("the reasons price an option that runs cold:\n%s", words)
	}
}

// The comparison stays one of the case as stated, whatever was solved for it.
func TestChoicesAreKeptWithTheStatedCase(t *testing.T) {
	c := Default()
	c.Cylinder.Control.Cheapest.Hours = 3
	want, err := c.Digest()
	if err != nil {
		t.Fatal(err)
	}
	cmp, choice := &Comparison{CaseDigest: "of the solved case"}, &WindowChoice{Tariff: "flat"}
	if err := cmp.keepChoices(&c, [sides]*WindowChoice{SideCylinder: choice}); err != nil {
		t.Fatal(err)
	}
	if cmp.CaseDigest != want || cmp.Options.Cylinder.CheapestWindows != choice || cmp.Options.Compact.CheapestWindows != nil {
		t.Errorf("digest %s, windows %v and %v", cmp.CaseDigest, cmp.Options.Compact.CheapestWindows, cmp.Options.Cylinder.CheapestWindows)
	}
}

package compare

import (
	"math"
	"strings"
	"testing"

	"dhwcompare/tariffs"
)

// spaced makes a comparison with an extra annual cost of the compact store and the
// floor and litres that it frees.
func spaced(extra, freedM2, freedL float64) *Comparison {
	cmp := &Comparison{}
	cmp.Difference.EquivalentAnnualCost = extra
	cmp.Difference.FloorAreaM2, cmp.Difference.SpaceL = -freedM2, -freedL
	cmp.Difference.Spread = map[string]DifferenceSpread{annualCostName: {Spread: Spread{Mean: extra, CILow: extra - 10, CIHigh: extra + 10}}}
	return cmp
}

func TestPriceOfSpace(t *testing.T) {
	none := math.NaN()
	for _, c := range []struct {
		name                   string
		extra, freedM2, freedL float64
		perM2, perL, turns     float64 // NaN: none
		note                   string
	}{
		{"costs more and frees space", 60, 0.5, 300, 120, 0.2, 120, ""},
		{"costs less and frees space", -60, 0.5, 300, none, none, none, "the space is free"},
		{"costs the same and frees space", 0, 0.5, 300, none, none, none, "the space is free"},
		{"costs more and takes more", 60, -0.5, -300, none, none, none, "frees no space"},
		{"costs less and takes more floor", -60, -0.5, -300, none, none, 120, "frees no space"},
		{"costs more and frees height only", 60, 0, 300, none, 0.2, none, "no floor"},
		{"costs more and frees floor only", 60, 0.5, -300, 120, none, 120, "no cupboard volume"},
	} {
		m := defaultMoney()
		p := priceOfSpace(&m, spaced(c.extra, c.freedM2, c.freedL))
		for _, v := range []struct {
			what string
			got  *float64
			want float64
		}{{"a m2", p.PerM2, c.perM2}, {"a litre", p.PerL, c.perL}, {"turns at", p.TurnsAtPerM2, c.turns}} {
			switch {
			case (v.got == nil) != math.IsNaN(v.want):
				t.Errorf("%s, %s: %v, want %g", c.name, v.what, v.got, v.want)
			case v.got != nil:
				closeTo(t, c.name+", "+v.what, *v.got, v.want, 1e-9)
			}
		}
		if !strings.Contains(p.Note, c.note) || (c.note == "") != (p.Note == "") {
			t.Errorf("%s: note %q, want %q", c.name, p.Note, c.note)
		}
		if p.TurnsNote == "" {
			t.Errorf("%s: no word on where the decision turns", c.name)
		}
	}
}

// At the value at which the decision turns, both options are worth the same.
func TestDecisionTurnsAtItsValue(t *testing.T) {
	for _, c := range [][2]float64{{60, 0.5}, {-60, -0.5}} {
		m := defaultMoney()
		turns := priceOfSpace(&m, spaced(c[0], c[1], 0)).TurnsAtPerM2
		m.FloorValuePerM2Year, m.FloorValueShare = 2**turns, 0.5
		closeTo(t, "difference with the value of space", priceOfSpace(&m, spaced(c[0], c[1], 0)).DifferenceWithSpace, 0, 1e-9)
	}
}

func TestColdOptionHasNoPriceOfSpace(t *testing.T) {
	m := defaultMoney()
	cmp := spaced(60, 0.5, 300)
	cmp.Options.Compact.WantedHeatKWh, cmp.Options.Compact.UnmetHeatKWh = 1000, 11
	p := priceOfSpace(&m, cmp)
	if p.PerM2 != nil || p.PerL != nil || p.TurnsAtPerM2 != nil || !strings.Contains(p.Note, "cold") {
		t.Errorf("%+v", p)
	}
}

func TestVerdictNamesThePriceAndTheBreakEven(t *testing.T) {
	c := publishedOptions()
	c.Money.Compact.Purchase = 4000
	cmp := weighed(t, &c, []float64{230, 231}, []float64{250, 249})
	text := lifeClause(&c, cmp)
	for _, want := range []string{"Over 20 years", "more", "for each m2 of floor, of which it frees 0.40 (valued at 108)", "for each of 400 litres", "unit rates at"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q does not name %q", text, want)
		}
	}
	if reasons := strings.Join(lifeReasons(&c, cmp), "\n"); !strings.Contains(reasons, "Safety check: that of the cylinder, GBP 110 a year") {
		t.Errorf("no word on the safety check in\n%s", reasons)
	}
	c.Money.Cylinder.SafetyCheckPerYear = 10
	if reasons := strings.Join(lifeReasons(&c, cmp), "\n"); strings.Contains(reasons, "Safety check") {
		t.Errorf("a check that outweighs nothing in\n%s", reasons)
	}
}

func TestPlaceholdersAreCalledThat(t *testing.T) {
	c := Default()
	if n := len(moneyWarnings(&c)); n != 3 {
		t.Errorf("%d warnings of a case as it comes, want 3", n)
	}
	c.Currency = "EUR"
	if list := moneyWarnings(&c); len(list) != 4 || !strings.Contains(list[0].Text, "taken as EUR without conversion") || !strings.Contains(list[1].Text, "British electricity") {
		t.Errorf("warnings of a case in another currency: %v", list)
	}
	c = publishedOptions()
	c.Money.FloorValuePerM2Year = 0
	c.Tariffs = []tariffs.Tariff{*tariffs.Flat("stated", 0.25, 0.5)}
	if list := moneyWarnings(&c); len(list) != 0 {
		t.Errorf("warnings of a case with stated prices: %v", list)
	}
}

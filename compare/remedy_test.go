package compare

import (
	"strings"
	"testing"
)

// cold is a comparison of two ordinary bills in which the compact store runs cold, and
// would serve at a bill of so much.
func cold(t *testing.T, c *Case, remedied float64) *Comparison {
	t.Helper()
	c.Money.HorizonYears, c.Money.DiscountPercent, c.Money.EnergyGrowthPercent = 20, 0, 0
	c.Money.Compact = Outlay{Purchase: 2000, LifeYears: 20}
	c.Money.Cylinder = Outlay{Purchase: 2000, SafetyCheckPerYear: 100, LifeYears: 20}
	cmp := weighed(t, c, []float64{900, 900}, []float64{800, 800})
	cmp.Options.Cylinder.MeetsServiceRule, cmp.Options.Compact.FailingShowers = true, 3
	if remedied > 0 {
		cmp.Options.Compact.EqualService = EqualService{Meets: true, SetpointC: 63, Trial: &Trial{Cost: remedied}}
	}
	if err := cmp.priceRemedies(c); err != nil {
		t.Fatal(err)
	}
	return cmp
}

// Without discount an even yearly payment is a year's bill, a twentieth of the
// purchase, and the check.
func TestRemedyIsPriced(t *testing.T) {
	c := Default()
	cmp := cold(t, &c, 925)
	r := cmp.Options.Compact.Remedy().Remedied
	closeTo(t, "above the store as stated", r.AboveStated, 25, 1e-9)
	closeTo(t, "above the cylinder", r.AboveOther, 125, 1e-9)
	closeTo(t, "all in", r.EquivalentAnnualCost, 925+100, 1e-9)
	closeTo(t, "all in, above the cylinder", r.AllInAboveOther(), 925+100-(800+100+100), 1e-9)
	if cmp.Options.Cylinder.Remedy() != nil {
		t.Error("an option that serves has a remedy")
	}
	cmp.Options.Compact.SetpointC = 64
	if cmp.Options.Compact.Remedy() != nil {
		t.Error("a store is to serve by being kept colder")
	}
	cmp.Options.Compact.SetpointC = 60
	cmp.Options.Compact.Fit = &Fit{Fits: false}
	if cmp.Options.Compact.Remedy() != nil {
		t.Error("a setting is to help a store that does not fit")
	}
}

func TestVerdictSaysWhatItWouldTake(t *testing.T) {
	serves := "Kept at 63 C the compact store would serve too: GBP 125 more a year to run than the cylinder, and GBP 25 more with purchase, service and replacement. As set up, over 20 years"
	for name, test := range map[string]struct {
		remedied float64
		change   func(*Comparison)
		want     string
		not      string
	}{
		"hotter":               {925, func(*Comparison) {}, serves, ""},
		"cheaper than thought": {780, func(*Comparison) {}, "would serve too: GBP 20 less a year to run than the cylinder, and GBP 120 less with", ""},
		"with a limiter": {925, func(cmp *Comparison) { cmp.Options.Compact.EqualService.ShowerLimit = 7 },
			"Kept at 63 C, with a 7 l/min limiter on the showers, the compact store would serve too", ""},
		"never": {0, func(cmp *Comparison) { cmp.Options.Compact.EqualService.Note = "none" },
			"The compact store would serve at no setting that its heat pump allows. Over 20 years", "Kept at"},
		"nobody has looked": {0, func(*Comparison) {}, " Over 20 years", "serve at"},
		"it serves":         {925, func(cmp *Comparison) { cmp.Options.Compact.MeetsServiceRule = true }, " Over 20 years", "Kept at"},
		"neither serves": {925, func(cmp *Comparison) {
			cmp.Options.Cylinder.MeetsServiceRule, cmp.Options.Cylinder.EqualService.Note = false, "none"
			cmp.Options.Cylinder.FailingShowers = 4
		}, "Change the size or the settings before choosing. Kept at 63 C the compact store would serve, at GBP 925 a year. The cylinder would serve at no setting that its heat pump allows.", "Over 20 years"},
		"neither for certain": {925, func(cmp *Comparison) {
			cmp.Options.Cylinder.MeetsServiceRule, cmp.Options.Cylinder.FailingShowers = false, 1.2
		}, "Neither option as set up is sure to give this home enough hot water: the compact store as set up leaves 3 showers a year too cold; the cylinder is not certain to keep within 2 cold showers a year. Simulate more years, or", "Over 20 years"},
	} {
		t.Run(name, func(t *testing.T) {
			c := Default()
			cmp := cold(t, &c, test.remedied)
			test.change(cmp)
			v := verdict(&c, cmp)
			if !strings.Contains(v.Text, test.want) || test.not != "" && strings.Contains(v.Text, test.not) {
				t.Errorf("got %s\nwant %s\nnot %q", v.Text, test.want, test.not)
			}
			if !strings.HasPrefix(v.Text, v.Short) || strings.Contains(v.Short, "replacement, the compact store costs") {
				t.Errorf("short: %s", v.Short)
			}
		})
	}
}

package compare

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
	"dhwcompare/compare/money"
	"dhwcompare/tariffs"
)

// closeTo fails unless two values agree to an absolute tolerance.
func closeTo(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.12g, want %.12g within %g", what, got, want, tolerance)
	}
}

// publishedOptions is a case with options A (here the cylinder) and B of a
// published life-cycle comparison; see lcc_check_values.csv.
func publishedOptions() Case {
	c := Default()
	c.Money.HorizonYears, c.Money.DiscountPercent, c.Money.EnergyGrowthPercent = 20, 3.5, 0
	c.Money.Cylinder = Outlay{Purchase: 1500, Installation: 1000, SafetyCheckPerYear: 110, LifeYears: 20}
	c.Money.Compact = Outlay{Purchase: 1800, Installation: 1000, LifeYears: 25}
	return c
}

// weighed makes a comparison of years that differ in nothing but their bills, on
// one tariff.
func weighed(t *testing.T, c *Case, compact, cylinder []float64) *Comparison {
	t.Helper()
	cmp := &Comparison{Years: len(compact), Currency: c.Currency, Tariffs: []TariffCost{{Name: "flat"}}}
	cmp.Difference.Spread = map[string]DifferenceSpread{}
	k := &collector{weight: 1 / float64(len(compact))}
	for side, costs := range [][]float64{compact, cylinder} {
		o := cmp.Options.Of(Side(side))
		o.Name, o.Spread = Side(side).String(), map[string]Spread{}
		for _, cost := range costs {
			k.years[side] = append(k.years[side], record{totals: Totals{CostPerYear: cost}})
		}
		o.CostPerYear = SpreadOf(costs).Mean
		cmp.Tariffs[0].Of(Side(side)).Cost = o.CostPerYear
	}
	cmp.Options.Compact.FloorAreaM2, cmp.Options.Cylinder.FloorAreaM2 = 0.5, 0.9
	cmp.Options.Compact.SpaceL, cmp.Options.Cylinder.SpaceL = 400, 800
	cmp.Difference = k.difference(&cmp.Options)
	if err := cmp.weigh(c, k); err != nil {
		t.Fatal(err)
	}
	return cmp
}

// Totals, replacement, residual and break-even as worked independently to the penny.
func TestWholeLifeOfThePublishedOptions(t *testing.T) {
	c := publishedOptions()
	cmp := weighed(t, &c, []float64{270}, []float64{250})
	const penny = 0.00501
	a, b := &cmp.Options.Cylinder, &cmp.Options.Compact
	closeTo(t, "A, present", a.NetPresentCost, 7616.47, penny)
	closeTo(t, "A, a year", a.EquivalentAnnualCost, 535.90, penny)
	closeTo(t, "B, present", b.NetPresentCost, 6355.91, penny)
	closeTo(t, "B, a year", b.EquivalentAnnualCost, 447.21, penny)
	closeTo(t, "B, residual", b.WholeLife.Present.Residual, -281.44, penny)
	closeTo(t, "saving", -cmp.Difference.NetPresentCost, 1260.55, 2*penny)
	if cmp.BreakEven.Ratio == nil {
		t.Fatal("no break-even")
	}
	closeTo(t, "break-even", *cmp.BreakEven.Ratio, 5.435, 0.0005)

	c.Money.Cylinder.LifeYears = 15
	cmp = weighed(t, &c, []float64{270}, []float64{250})
	closeTo(t, "A with a life of 15 years, present", cmp.Options.Cylinder.NetPresentCost, 8271.08, penny)
	closeTo(t, "its replacement", cmp.Options.Cylinder.WholeLife.Present.Replacement, 1492.23, penny)
}

func TestPartsAndFlowsAddUp(t *testing.T) {
	c := Default()
	c.Money.HorizonYears, c.Money.EnergyGrowthPercent = 27, 1.5
	c.Money.Compact.LifeYears = 11
	cmp := weighed(t, &c, []float64{310, 330}, []float64{260, 250})
	for side := range sides {
		o := cmp.Options.Of(side)
		closeTo(t, o.Name+", parts", o.WholeLife.Present.Sum(), o.NetPresentCost, 1e-9) // rounding of sums of some thousands
		present, energy := 0.0, 0.0
		for _, f := range o.WholeLife.Flows {
			closeTo(t, o.Name+", year", f.Sum(), f.Total, 0)
			present += f.Present
			energy += f.Discount * f.Energy
		}
		closeTo(t, o.Name+", flows", present, o.NetPresentCost, 1e-9)
		closeTo(t, o.Name+", energy", energy, o.WholeLife.Present.Energy, 1e-9)
		terms := c.Money.Terms()
		closeTo(t, o.Name+", even payments", o.EquivalentAnnualCost*money.PresentValueFactor(terms.Rate, terms.Years), o.NetPresentCost, 1e-9)
		closeTo(t, o.Name+", mean of the spread", o.Spread[annualCostName].Mean, o.EquivalentAnnualCost, 1e-9)
	}
	closeTo(t, "spread of the difference", cmp.Difference.Spread[presentCostName].Mean, cmp.Difference.NetPresentCost, 1e-9)
}

// Without growth of prices a pound more of electricity a year is a pound more of
// equivalent annual cost, so the spreads of both are the same.
func TestAnnualCostSpreadsAsTheBillsDo(t *testing.T) {
	c := Default()
	cmp := weighed(t, &c, []float64{310, 330, 305}, []float64{260, 250, 300})
	bills, annual := cmp.Difference.Spread["cost_per_year"], cmp.Difference.Spread[annualCostName]
	closeTo(t, "standard error", annual.SE, bills.SE, 1e-10)
	closeTo(t, "interval", annual.CIHigh-annual.CILow, bills.CIHigh-bills.CILow, 1e-10)
}

// randomProfile is a year of half hours, most of them without electricity.
func randomProfile(seed uint64) []float64 {
	rng := rand.New(rand.NewPCG(seed, 7))
	p := make([]float64, calendar.HalfHours)
	for i := range p {
		if rng.Float64() < 0.1 {
			p[i] = rng.ExpFloat64()
		}
	}
	return p
}

// banded is an invented tariff whose unit rates are all scaled.
func banded(scale float64) tariffs.Tariff {
	return tariffs.Tariff{
		Name: "three bands, invented", PricesIncludeTax: true,
		Bands: []tariffs.Band{
			{Label: "cheap", StartMin: 3 * 60, EndMin: 6 * 60, PerKWh: 0.15 * scale},
			{Label: "peak", StartMin: 16 * 60, EndMin: 19 * 60, PerKWh: 0.39 * scale},
		},
		Remaining: &tariffs.Remaining{Label: "day", PerKWh: 0.26 * scale},
	}
}

func energyCost(t *testing.T, c *Case, tariff tariffs.Tariff, profile []float64) float64 {
	t.Helper()
	rates, err := tariff.Compile(c.Climate.Year())
	if err != nil {
		t.Fatal(err)
	}
	bill, err := rates.Bill(profile)
	if err != nil {
		t.Fatal(err)
	}
	return bill.Year.EnergyCost
}

// With all unit rates at the break-even ratio, both options cost the same when the
// profiles are priced anew.
func TestBreakEvenHoldsWhenPricedAnew(t *testing.T) {
	c := publishedOptions()
	c.Money.EnergyGrowthPercent = 2
	compact, cylinder := randomProfile(1), randomProfile(2)
	for i := range cylinder {
		cylinder[i] *= 0.8
	}
	cost := func(scale float64) *Comparison {
		return weighed(t, &c, []float64{energyCost(t, &c, banded(scale), compact)}, []float64{energyCost(t, &c, banded(scale), cylinder)})
	}
	ratio := cost(1).BreakEven.Ratio
	if ratio == nil {
		t.Fatal("no break-even")
	}
	met := cost(*ratio)
	closeTo(t, "difference at the break-even", met.Difference.NetPresentCost, 0, 1e-9*met.Options.Compact.NetPresentCost)
	below, above := cost(*ratio*0.9).Difference.NetPresentCost, cost(*ratio*1.1).Difference.NetPresentCost
	if below >= 0 || above <= 0 {
		t.Errorf("the difference is %g below and %g above the break-even, want the compact store cheaper below", below, above)
	}
}

// A higher rate in any band never makes an option cheaper over its life.
func TestDearerBandsMakeNothingCheaper(t *testing.T) {
	c := Default()
	profile := randomProfile(3)
	base := weighed(t, &c, []float64{energyCost(t, &c, banded(1), profile)}, []float64{100}).Options.Compact.EquivalentAnnualCost
	for band := range banded(1).Bands {
		dearer := banded(1)
		dearer.Bands[band].PerKWh += 0.05
		if got := weighed(t, &c, []float64{energyCost(t, &c, dearer, profile)}, []float64{100}).Options.Compact.EquivalentAnnualCost; got <= base {
			t.Errorf("band %d: %g with a higher rate, %g before", band, got, base)
		}
	}
}

func TestNoBreakEvenSaysWhoCostsLess(t *testing.T) {
	for _, c := range []struct {
		compact, cylinder float64 // electricity a year
		checkup           float64 // of the cylinder a year
		says              string
	}{
		{300, 250, 0, "the cylinder costs less"},
		{200, 250, 200, "the compact store costs less"},
		{250, 250, 200, "the compact store costs less"},
		{250, 250, 0, "both cost the same"},
	} {
		k := Default()
		k.Money.Compact = Outlay{Purchase: 1000, LifeYears: 20}
		k.Money.Cylinder = Outlay{Purchase: 1000, SafetyCheckPerYear: c.checkup, LifeYears: 20}
		if c.says == "the cylinder costs less" {
			k.Money.Compact.Purchase = 1500
		}
		cmp := weighed(t, &k, []float64{c.compact}, []float64{c.cylinder})
		if cmp.BreakEven.Ratio != nil || !strings.Contains(cmp.BreakEven.Note, c.says) {
			t.Errorf("%+v: ratio %v, note %q", c, cmp.BreakEven.Ratio, cmp.BreakEven.Note)
		}
	}
}

func TestUnusableMoneyIsAnError(t *testing.T) {
	c := Default()
	c.Money.HorizonYears = 0
	if _, err := c.lifeCost(SideCompact, 1); err == nil {
		t.Error("a horizon of no years has a cost")
	}
	c = Default()
	c.Money.Cylinder.LifeYears = 0
	if _, err := c.wholeLife(SideCylinder, 1); err == nil {
		t.Error("a vessel without a life has a cost")
	}
}

// The published monthly factors are the default, and a load that is flat through
// the year averages 0.1387 kg/kWh by days (worked independently).
func TestCarbonFactorsArePublished(t *testing.T) {
	published := checkvalues.Published(t, "carbon_monthly.csv")[0]
	m := defaultMoney()
	mean := 0.0
	for month, factor := range m.CarbonByMonth() {
		if want := published.Number(t, strconv.Itoa(month+1)); want != factor {
			t.Errorf("month %d: %g, published %g", month+1, factor, want)
		}
		mean += factor * float64(calendar.DaysIn(month)) / calendar.Days
	}
	closeTo(t, "flat load", mean, 0.1387, 0.00005)
	m.CarbonYearKgPerKWh = 0.2
	for month, factor := range m.CarbonByMonth() {
		closeTo(t, strconv.Itoa(month+1), factor, 0.2, 0)
	}
}

// Four starts a day are 29,200 in 20 years, 29.2 % of 100,000 (worked by hand).
func TestStartsAgainstADesignCount(t *testing.T) {
	c := Default()
	totals := Totals{StartsPerYear: 1000, HeatingStarts: 460}
	if startBudget(&c, &totals) != nil {
		t.Error("a design count that nobody stated")
	}
	c.HeatPump.DesignStarts = 100_000
	b := startBudget(&c, &totals)
	closeTo(t, "starts a year", b.StartsPerYear, 1460, 0)
	closeTo(t, "share", b.ShareOverHorizon, 0.292, 1e-12)
	closeTo(t, "years", *b.YearsToDesign, 100_000.0/1460, 1e-9)
	if startBudget(&c, &Totals{}).YearsToDesign != nil {
		t.Error("a compressor that never starts wears out")
	}
}

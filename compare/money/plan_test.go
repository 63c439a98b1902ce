package money

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func costOf(t interface {
	Helper()
	Fatal(...any)
}, p Plan, terms Terms,
) Cost {
	t.Helper()
	c, err := p.PresentCost(terms)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// a and b are options A and B of lcc_check_values.csv.
func a() Plan { return Plan{Capital: 2500, LifeYears: 20, ServicePerYear: 110, EnergyPerYear: 250} }
func b() Plan { return Plan{Capital: 2800, LifeYears: 25, EnergyPerYear: 270} }

func terms() Terms { return Terms{Years: 20, Rate: 0.035} }

// The difference of the two options at five rates, worked independently to the
// penny.
func TestDifferenceAtSeveralRates(t *testing.T) {
	for rate, want := range map[float64]float64{0: 2060.00, 0.02: 1548.49, 0.035: 1260.55, 0.05: 1032.66, 0.07: 798.18} {
		at := Terms{Years: 20, Rate: rate}
		near(t, fmt.Sprint(rate), costOf(t, a(), at).Net()-costOf(t, b(), at).Net(), want, 0.00501)
	}
}

func TestRealRate(t *testing.T) {
	near(t, "6 % less 2.5 % of inflation", RealRate(0.06, 0.025), 0.03414634, 0.5e-8) // worked independently
	near(t, "inflation alone", RealRate(0.025, 0.025), 0, 0)
}

// Worked independently: the inspection fee and the factor on both energy costs at
// which A and B cost the same.
func TestBreakEvenOfThePublishedOptions(t *testing.T) {
	x, ok := BreakEven(costOf(t, a(), terms()), costOf(t, b(), terms()))
	if !ok {
		t.Fatal("the options never meet")
	}
	near(t, "factor on energy prices", x, 5.435, 0.0005)

	fee := a()
	fee.ServicePerYear = 21.31
	gap := costOf(t, fee, terms()).Net() - costOf(t, b(), terms()).Net()
	near(t, "gap at the break-even inspection fee", gap, 0, 0.005*PresentValueFactor(0.035, 20)) // the fee is printed to the penny
}

func TestBreakEvenIsSignSafe(t *testing.T) {
	for _, c := range []struct {
		name string
		a, b Cost
		want float64
		ok   bool
	}{
		{"dearer to buy, cheaper to run", Cost{Capital: 100, Energy: 10}, Cost{Energy: 60}, 2, true},
		{"the other way round", Cost{Energy: 60}, Cost{Capital: 100, Energy: 10}, 2, true},
		{"dearer in both", Cost{Capital: 100, Energy: 60}, Cost{Energy: 10}, 0, false},
		{"the same energy", Cost{Capital: 100, Energy: 10}, Cost{Energy: 10}, 0, false},
		{"the same all over", Cost{Capital: 100, Energy: 10}, Cost{Capital: 100, Energy: 10}, 0, false},
		{"energy alone differs", Cost{Capital: 100, Energy: 10}, Cost{Capital: 100, Energy: 20}, 0, true},
		{"paid to use energy", Cost{Capital: 100, Energy: -60}, Cost{Energy: -10}, 2, true},
		{"gap beyond all numbers", Cost{Capital: 1e300, Energy: 1e-20}, Cost{Energy: 2e-20}, 0, false},
	} {
		x, ok := BreakEven(c.a, c.b)
		if ok != c.ok || math.Abs(x-c.want) > 1e-12 || math.Signbit(x) {
			t.Errorf("%s: got %g, %v, want %g, %v", c.name, x, ok, c.want, c.ok)
		}
	}
}

func TestReplacementAtTheHorizonIsNotBought(t *testing.T) {
	for _, c := range []struct {
		life, years    int
		replaced, left float64 // in units of the capital, undiscounted
	}{
		{20, 20, 0, 0},
		{10, 20, 1, 0},
		{19, 20, 1, 18.0 / 19},
		{21, 20, 0, 1.0 / 21},
		{1, 20, 19, 0},
		{7, 1, 0, 6.0 / 7},
	} {
		cost := costOf(t, Plan{Capital: 1, LifeYears: c.life}, Terms{Years: c.years})
		name := fmt.Sprintf("life %d in %d years", c.life, c.years)
		near(t, name+", replaced", cost.Replacement, c.replaced, 1e-12)
		near(t, name+", left", cost.Residual, c.left, 1e-12)
	}
}

func anyTerms() *rapid.Generator[Terms] {
	return rapid.Custom(func(t *rapid.T) Terms {
		return Terms{
			Years:        rapid.IntRange(1, 60).Draw(t, "years"),
			Rate:         rapid.Float64Range(-0.05, 0.2).Draw(t, "rate"),
			EnergyGrowth: rapid.Float64Range(-0.1, 0.1).Draw(t, "growth"),
		}
	})
}

func anyPlan() *rapid.Generator[Plan] {
	return rapid.Custom(func(t *rapid.T) Plan {
		return Plan{
			Capital:        rapid.Float64Range(0, 1e4).Draw(t, "capital"),
			LifeYears:      rapid.IntRange(1, 80).Draw(t, "life"),
			ServicePerYear: rapid.Float64Range(0, 1e3).Draw(t, "service"),
			EnergyPerYear:  rapid.Float64Range(-1e2, 1e4).Draw(t, "energy"),
		}
	})
}

func TestFlowsAddUpToThePresentCost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, terms := anyPlan().Draw(t, "plan"), anyTerms().Draw(t, "terms")
		cost := costOf(t, p, terms)
		flows, err := p.Flows(terms)
		if err != nil {
			t.Fatal(err)
		}
		sum, size := 0.0, 0.0
		for _, f := range flows {
			sum += f.Discount * (f.Capital + f.Replacement + f.Service + f.Energy - f.Residual)
			size += f.Discount * (f.Capital + f.Replacement + f.Service + math.Abs(f.Energy) + f.Residual)
		}
		if math.Abs(sum-cost.Net()) > 1e-11*size { // some hundred roundings and powers
			t.Fatalf("flows add up to %.12g, the present cost is %.12g", sum, cost.Net())
		}
	})
}

// An even payment of the equivalent annual cost is worth the present cost, and
// every cost that rises makes the whole dearer.
func TestDearerPartsMakeADearerWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, terms := anyPlan().Draw(t, "plan"), anyTerms().Draw(t, "terms")
		base := costOf(t, p, terms).Net()
		even := terms.PerYear(base) * PresentValueFactor(terms.Rate, terms.Years)
		if math.Abs(even-base) > 1e-12*math.Abs(base) {
			t.Fatalf("the annual cost is worth %g, not %g", even, base)
		}
		for _, dearer := range []Plan{
			{p.Capital + 1, p.LifeYears, p.ServicePerYear, p.EnergyPerYear},
			{p.Capital, p.LifeYears, p.ServicePerYear + 1, p.EnergyPerYear},
			{p.Capital, p.LifeYears, p.ServicePerYear, p.EnergyPerYear + 1},
		} {
			// Replacing with a negative rate can leave a residual that is worth more
			// than it cost, but never the whole capital.
			if terms.Rate >= 0 && costOf(t, dearer, terms).Net() < base {
				t.Fatalf("%+v costs less than %+v", dearer, p)
			}
		}
	})
}

func TestUnusableTermsAndPlansAreRefused(t *testing.T) {
	for name, use := range map[string]func() (Plan, Terms){
		"no horizon":         func() (Plan, Terms) { return a(), Terms{Rate: 0.03} },
		"rate of -100 %":     func() (Plan, Terms) { return a(), Terms{Years: 20, Rate: -1} },
		"rate not a number":  func() (Plan, Terms) { return a(), Terms{Years: 20, Rate: math.NaN()} },
		"growth of -100 %":   func() (Plan, Terms) { return a(), Terms{Years: 20, EnergyGrowth: -1} },
		"no life":            func() (Plan, Terms) { return Plan{Capital: 1}, terms() },
		"cost not a number":  func() (Plan, Terms) { return Plan{Capital: math.NaN(), LifeYears: 1}, terms() },
		"cost without bound": func() (Plan, Terms) { return Plan{EnergyPerYear: math.Inf(1), LifeYears: 1}, terms() },
	} {
		p, at := use()
		if _, err := p.PresentCost(at); err == nil {
			t.Errorf("%s: a cost is given", name)
		}
		if _, err := p.Flows(at); err == nil {
			t.Errorf("%s: flows are given", name)
		}
	}
}

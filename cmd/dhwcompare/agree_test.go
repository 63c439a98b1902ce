package main

import (
	"encoding/json"
	"math"

	"github.com/rogpeppe/go-internal/testscript"

	"dhwcompare/compare"
)

// scriptAgrees takes a comparison.json apart as a suspicious reader would: what
// should add up does.
func scriptAgrees(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: agrees file")
	}
	var cmp compare.Comparison
	ts.Check(json.Unmarshal([]byte(ts.ReadFile(args[0])), &cmp))
	cold := false
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		o := cmp.Options.Of(side)
		optionAgrees(ts, o)
		same(ts, o.Name+": cost on the first tariff", o.CostPerYear, cmp.Tariffs[0].Of(side).Cost)
		cold = cold || o.UnmetHeatKWh > 0.01*o.WantedHeatKWh
	}
	for _, f := range compare.Figures() {
		a, b := *f.Of(&cmp.Options.Compact.Totals), *f.Of(&cmp.Options.Cylinder.Totals)
		same(ts, "difference of "+f.Name, *f.Of(&cmp.Difference.Totals), a-b)
	}
	if notCompared := cmp.Verdict.Cost == compare.CostNotCompared; cold != notCompared {
		ts.Fatalf("an option leaves more than 1 %% of the wanted heat unmet: %t; the finding on cost: %s", cold, cmp.Verdict.Cost)
	}
}

// optionAgrees checks what one option's figures say of each other.
func optionAgrees(ts *testscript.TestScript, o *compare.Option) {
	const largestResidual = 1e-6 // of the heat put in, in any month
	if o.FirstLawResidual > largestResidual {
		ts.Fatalf("%s: first-law residual %.2g", o.Name, o.FirstLawResidual)
	}
	same(ts, o.Name+": heat that came and heat that did not", o.HeatToTapsKWh+o.UnmetHeatKWh, o.WantedHeatKWh)
	same(ts, o.Name+": electricity by cause", o.ElectricityByCause.Sum(), o.ElectricityKWh)
	same(ts, o.Name+": efficiency", o.SystemEfficiency, o.HeatToTapsKWh/o.ElectricityKWh)
	same(ts, o.Name+": mean of the years", o.Spread["electricity_kwh"].Mean, o.ElectricityKWh)
	var months float64
	for m := range o.Months {
		months += o.Months[m].ElectricityKWh
	}
	same(ts, o.Name+": electricity of the months", months, o.ElectricityKWh)
}

// same expects two numbers to differ by no more than the rounding of a few
// hundred sums in another order.
func same(ts *testscript.TestScript, what string, got, want float64) {
	const rounding = 1e-9
	if !(math.Abs(got-want) <= rounding*max(1, math.Abs(want))) {
		ts.Fatalf("%s: %.12g is not %.12g", what, got, want)
	}
}

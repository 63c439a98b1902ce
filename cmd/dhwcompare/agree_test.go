package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"dhwcompare/compare"
)

// printed runs the embedded case and reads what is printed as JSON.
func printed(t *testing.T) *compare.Comparison {
	t.Helper()
	t.Chdir(t.TempDir())
	var out, message strings.Builder
	if code := run([]string{"run", "--years", "2", "--json"}, strings.NewReader(""), &out, &message); code != exitDone {
		t.Fatalf("exit code %d: %s", code, message.String())
	}
	var cmp compare.Comparison
	decoder := json.NewDecoder(strings.NewReader(out.String()))
	if err := decoder.Decode(&cmp); err != nil {
		t.Fatal(err)
	}
	if decoder.More() {
		t.Error("there is more than one JSON value")
	}
	return &cmp
}

// TestPrintedFiguresAgree takes the printed comparison apart as a suspicious
// reader would: what should add up does.
func TestPrintedFiguresAgree(t *testing.T) {
	cmp := printed(t)
	cold := false
	// Sums of a few hundred terms in another order: rounding, and no more.
	const rounding = 1e-9
	same := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > rounding*max(1, math.Abs(want)) {
			t.Errorf("%s: %.12g is not %.12g", what, got, want)
		}
	}
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		o := cmp.Options.Of(side)
		const largestResidual = 1e-6 // of the heat put in, in any month
		if o.FirstLawResidual > largestResidual {
			t.Errorf("%v: first-law residual %.2g", side, o.FirstLawResidual)
		}
		same(o.Name+": heat that came and heat that did not", o.HeatToTapsKWh+o.UnmetHeatKWh, o.WantedHeatKWh)
		same(o.Name+": electricity by cause", o.ElectricityByCause.Sum(), o.ElectricityKWh)
		same(o.Name+": efficiency", o.SystemEfficiency, o.HeatToTapsKWh/o.ElectricityKWh)
		var months float64
		for m := range o.Months {
			months += o.Months[m].ElectricityKWh
		}
		same(o.Name+": electricity of the months", months, o.ElectricityKWh)
		same(o.Name+": cost on the first tariff", o.CostPerYear, cmp.Tariffs[0].Of(side).Cost)
		cold = cold || o.UnmetHeatKWh > 0.01*o.WantedHeatKWh
		same(o.Name+": mean of the years", o.Spread["electricity_kwh"].Mean, o.ElectricityKWh)
	}
	for _, f := range compare.Figures() {
		a, b := *f.Of(&cmp.Options.Compact.Totals), *f.Of(&cmp.Options.Cylinder.Totals)
		same("difference of "+f.Name, *f.Of(&cmp.Difference.Totals), a-b)
	}
	if notCompared := cmp.Verdict.Cost == compare.CostNotCompared; cold != notCompared {
		t.Errorf("an option leaves more than 1 %% unmet: %t; the finding on cost: %s", cold, cmp.Verdict.Cost)
	}
}

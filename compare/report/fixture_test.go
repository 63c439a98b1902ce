package report

import (
	"dhwcompare/compare"
)

// document makes a small comparison with figures that are easy to follow. It is
// invented.
func document() *compare.Document {
	compact, cylinder := compactTotals(), cylinderTotals()
	cmp := &compare.Comparison{
		Schema: compare.Schema, Title: "A terraced house (invented)", CaseDigest: "00ff", Seed: 7, Years: 20, Currency: "GBP",
		CostBoundary: "hot water only, without standing charge",
		Options: compare.Options{
			Compact:  option("compact store", 100, 58, compact, 3.25),
			Cylinder: option("cylinder", 210, 48, cylinder, 0.5),
		},
		Difference: compare.Difference{Totals: difference(compact, cylinder), Spread: map[string]compare.DifferenceSpread{
			"electricity_kwh":             gap(250, 10),
			"whole_house_electricity_kwh": gap(180, 200),
			"changeovers_per_year":        gap(600, 50),
			"system_efficiency":           gap(-0.5, 0.1),
			"heat_pump_cop":               gap(-1, 0.1),
			"starts_per_day":              gap(5, 0.5),
			"failing_showers_per_year":    gap(2.75, 1),
			"unmet_heat_kwh":              gap(1, 2),
		}},
		Tariffs: []compare.TariffCost{
			tariff("flat", 325, 260, 65, 5),
			tariff("two-rate", 210, 205, 5, 2),
		},
		Verdict: compare.Verdict{
			Recommend: compare.RecommendCylinder, Cost: compare.CostCylinderLess,
			Short:   "Take the cylinder: the compact store as set up leaves 3 showers a year too cold. The cylinder costs GBP 65 a year less to run.",
			Text:    "Take the cylinder: the compact store as set up leaves 3 showers a year too cold. The cylinder costs GBP 65 a year less to run. Over 20 years the compact store costs GBP 10 a year more.",
			Reasons: []string{"Service: the rule is at most 2 failing showers a year.", "Space: 0.49 against 0.85 m2 of floor with clearances, 310 against 640 litres of cupboard, and a good deal more to say."},
		},
		Warnings: []compare.Warning{{About: "minutes_per_run", Text: "compact store: runs of 7 minutes on average are short; the performance data are of steady running"}},
	}
	cmp.Options.Cylinder.MeetsServiceRule = true
	cmp.Options.Compact.EquivalentAnnualCost, cmp.Options.Cylinder.EquivalentAnnualCost = 510, 482
	cmp.Difference.EquivalentAnnualCost, cmp.Difference.Spread["equivalent_annual_cost"] = 28, gap(28, 5)
	return &compare.Document{
		Case:       &compare.Case{Money: compare.Money{MaterialityPerYear: 20, HorizonYears: 20}, Service: compare.Service{FailuresPerYear: 2}},
		Comparison: cmp,
	}
}

func compactTotals() compare.Totals {
	return compare.Totals{
		ElectricityKWh: 1250, WholeHouseKWh: 5180, Changeovers: 1000, SystemEfficiency: 1.5, HeatPumpCOP: 2.5, StartsPerDay: 6.5,
		FailingShowers: 3.25, UnmetHeatKWh: 4, FloorAreaM2: 0.49, SpaceL: 310,
	}
}

func cylinderTotals() compare.Totals {
	return compare.Totals{
		ElectricityKWh: 1000, WholeHouseKWh: 5000, Changeovers: 400, SystemEfficiency: 2, HeatPumpCOP: 3.5, StartsPerDay: 1.5,
		FailingShowers: 0.5, UnmetHeatKWh: 3, FloorAreaM2: 0.85, SpaceL: 640,
	}
}

func option(name string, volumeL, setpointC float64, t compare.Totals, failures float64) compare.Option {
	return compare.Option{
		Name: name, VolumeL: volumeL, SetpointC: setpointC, Totals: t, FirstLawResidual: 2.4e-12,
		Spread: map[string]compare.Spread{"failing_showers_per_year": spread(failures, 0.5)},
	}
}

func difference(a, b compare.Totals) compare.Totals {
	var d compare.Totals
	for _, f := range compare.Figures() {
		*f.Of(&d) = *f.Of(&a) - *f.Of(&b)
	}
	return d
}

func spread(mean, half float64) compare.Spread {
	return compare.Spread{Mean: mean, CILow: mean - half, CIHigh: mean + half}
}

func gap(mean, half float64) compare.DifferenceSpread {
	return compare.DifferenceSpread{Spread: spread(mean, half)}
}

func tariff(name string, compact, cylinder, mean, half float64) compare.TariffCost {
	return compare.TariffCost{
		Name: name, Compact: compare.TariffBill{Cost: compact}, Cylinder: compare.TariffBill{Cost: cylinder},
		Difference: mean, DifferenceOver: gap(mean, half),
	}
}

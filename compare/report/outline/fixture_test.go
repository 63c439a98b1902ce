package outline

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// invented makes a document with every kind of data, by formula and not by
// simulation: the compact store runs cold in three showers a year and costs 60 more.
func invented() *compare.Document {
	c := compare.Default()
	c.Title, c.Household.HasBath, c.Years = "A terraced house (invented)", true, 20
	cmp := &compare.Comparison{
		Schema: compare.Schema, Title: c.Title, CaseDigest: "00ff", Seed: 7, Years: 20, Currency: "GBP",
		CostBoundary: "the whole house",
		Options:      compare.Options{Compact: inventedOption("compact store", 120, 60, 1.5, 3), Cylinder: inventedOption("cylinder", 250, 50, 1, 0.25)},
		Verdict: compare.Verdict{
			Recommend: compare.RecommendCylinder, Cost: compare.CostCylinderLess,
			Text: "Take the cylinder.", Reasons: []string{"Space: 0.49 against 0.85 m2 of floor."},
		},
		Warnings: []compare.Warning{{About: "net_present_cost", Text: "purchase is a placeholder"}},
		ByCause:  compare.DifferenceByCause{Years: 2, KWh: 240, Parts: []compare.CauseOfDifference{{Name: "starts", Label: "starting up", KWh: 250}, {Name: "interaction", Label: "all else", KWh: -10}}},
		Spells:   []compare.Spell{{Name: "design cold spell", Days: 5, OutdoorC: -3, MainsC: 8, RHPercent: 90, Samples: 10, Compact: compare.SpellResult{Showers: 10, FailingShowers: 0.5, WorstDipK: 0.4, CatchUpMin: 30}, Cylinder: compare.SpellResult{Showers: 10, WorstDipK: 0.8, CatchUpMin: -1}}},
		Alternatives: []compare.Alternative{
			{Name: "as it is", Years: 5, Compact: &compare.Trial{Cost: 360, Failing: compare.Spread{Mean: 3}}, Cylinder: &compare.Trial{Cost: 300}},
			{Name: "a flow limiter", Years: 5, Compact: &compare.Trial{Cost: 350}},
		},
		Shown: compare.Shown{Year: 1},
	}
	cmp.Options.Cylinder.MeetsServiceRule, cmp.Options.Cylinder.NeedsFloorCheck = true, true
	cmp.Difference.Spread = map[string]compare.DifferenceSpread{}
	for _, f := range compare.Figures() {
		d := *f.Of(&cmp.Options.Compact.Totals) - *f.Of(&cmp.Options.Cylinder.Totals)
		*f.Of(&cmp.Difference.Totals) = d
		if f.Varies {
			cmp.Difference.Spread[f.Name] = around(d, 5)
		}
	}
	cmp.Difference.EquivalentAnnualCost, cmp.Difference.Spread["equivalent_annual_cost"] = 12, around(12, 5)
	ratio := 0.9
	for _, name := range []string{"flat", "two-rate"} {
		cmp.Tariffs = append(cmp.Tariffs, compare.TariffCost{
			Name: name, StandingAYear: 200, Difference: 60, DifferenceOver: around(60, 5), AnnualDifference: 12,
			Compact:   compare.TariffBill{KWh: 1440, Cost: 360, Bands: []compare.BandBill{{Name: "all hours", KWh: 1440, Cost: 360}}},
			Cylinder:  compare.TariffBill{KWh: 1200, Cost: 300, Bands: []compare.BandBill{{Name: "all hours", KWh: 1200, Cost: 300}}},
			BreakEven: compare.BreakEven{Ratio: &ratio, Note: "at lower unit rates the compact store costs less"},
		})
	}
	price := 30.0
	cmp.PriceOfSpace = compare.PriceOfSpace{FreedM2: 0.36, FreedL: 330, PerM2: &price, PerM2Low: &price, PerM2High: &price, PerL: &ratio, ValuePerM2: 108, TurnsAtPerM2: &price, TurnsNote: "where floor is worth more a year, the compact store is the better buy"}
	return &compare.Document{
		Case: &c, Comparison: cmp, Draws: inventedDraws(), Settings: inventedSettings(), CaseYAML: []byte("title: invented\n"),
		Sizing: inventedSizing(), Sensitivity: inventedSensitivity(),
		Inputs: []compare.Input{
			{Key: "title", Text: c.Title, Origin: compare.Stated, Source: "stated in the case", Help: "what the results are headed with"},
			{Key: "household.people", Number: 2.4, Numeric: true, Origin: compare.Assumed, Source: "memory", Help: "people who live there"},
			{Key: "household.showers_per_day", Number: 1.73, Numeric: true, Unit: "a day", Origin: compare.Derived, Source: "from household.people", Help: "showers of all people"},
		},
	}
}

// inventedOption uses so many times the electricity of the least.
func inventedOption(name string, volumeL, setpointC, times, failing float64) compare.Option {
	o := compare.Option{Name: name, VolumeL: volumeL, SetpointC: setpointC, FirstLawResidual: 2e-13}
	o.ElectricityKWh, o.WholeHouseKWh, o.CostPerYear = 800*times, 800*times+400, 120*times+180
	o.WantedHeatKWh, o.HeatToTapsKWh, o.Showers, o.FailingShowers = 2000, 2000-failing, 700, failing
	o.StartsPerYear, o.StartsPerDay, o.Changeovers, o.MinutesPerRun = 365*times, times, 365*times, 40/times
	o.FloorAreaM2, o.SpaceL, o.WeightFullKg = 0.85/times, 640/times, 1.3*volumeL
	o.EquivalentAnnualCost, o.NetPresentCost = 700, 9900
	o.WholeLife.Present = compare.CostParts{Purchase: 1450, Installation: 1050, Energy: 7400}
	o.Spread = map[string]compare.Spread{
		"failing_showers_per_year": around(failing, failing/2).Spread, "cost_per_year": around(o.CostPerYear, 9).Spread,
	}
	for m := range calendar.MonthsInAYear {
		o.Months[m].Month, o.Months[m].ElectricityKWh, o.Months[m].FailingShowers = m+1, o.ElectricityKWh/12, failing/12
	}
	for i, cause := range compare.CauseList() {
		*cause.Of(&o.ElectricityByCause) = float64(10 * i)
	}
	o.Risk = compare.Risk{
		Chances:  []compare.Chance{{MoreThan: 2, Share: 0.5, Low: 0.3, High: 0.7}},
		BadDays:  around(failing, 1).Spread,
		WorstDay: around(1, 0).Spread, LongestSpell: around(1, 0).Spread,
		ByQueue: []compare.QueueShare{{Position: 0, Showers: 600, Failing: failing / 4}, {Position: 1, Showers: 100, Failing: failing * 3 / 4}},
	}
	o.Risk.ByHour[7] = failing
	o.ShowerTime = compare.ShowerTime{WantC: 40, LeastC: 38, Minutes: 4000, Colder: []compare.TimeColder{
		{C: 34}, {C: 38, Minutes: 3 * failing, Share: 3 * failing / 4000}, {C: 40, Minutes: 5 * failing, Share: 5 * failing / 4000}, {C: 40.1, Minutes: 4000, Share: 1},
	}}
	o.EqualService = compare.EqualService{Meets: true, SetpointC: setpointC + 3, Trial: &compare.Trial{Cost: o.CostPerYear + 20, RunsADay: 6}}
	o.SpaceItems = []compare.SpaceItem{{Name: name, WidthMM: 500, DepthMM: 500, HeightMM: 8 * volumeL}, {Name: "valve", WidthMM: 100, DepthMM: 100, HeightMM: 100, Hangs: true}}
	return o
}

func around(mean, half float64) compare.DifferenceSpread {
	return compare.DifferenceSpread{Spread: compare.Spread{Mean: mean, CILow: mean - half, CIHigh: mean + half, P05: mean - 2*half, P95: mean + 2*half}}
}

// inventedDraws last 12 minutes in January from the compact store and a minute more
// in each month after it; from the cylinder they never run cold.
func inventedDraws() *compare.Drawoff {
	d := &compare.Drawoff{FlowsLPerMin: []float64{6, 10}, States: []string{"full output", "off"}, LongestMin: 30, PauseMin: 4}
	for side, r := range []*compare.DrawoffResults{&d.Compact, &d.Cylinder} {
		for m := range calendar.MonthsInAYear {
			minutes := 12 + float64(m) + 30*float64(side)
			r.ShowerMin[m] = [][]float64{{minutes, minutes / 2}, {minutes / 2, minutes / 4}}
			r.BackToBack[m] = compare.SecondShower{Minutes: minutes / 2, Serves: side == 1, ShortestPauseMin: 9}
			r.Bath[m] = compare.BathTest{FlowLPerMin: 10, Minutes: 7, MeanC: 41, Serves: true}
			r.SteadyFlow[m], r.RechargeMin[m], r.FromColdMin[m] = 5, 10*float64(1-side), 70
		}
		r.Rule = compare.DesignRule{NeedMin: 8, Month: 1, HaveMin: 10, Holds: true, SetpointC: 55, FlowLPerMin: 9}
	}
	return d
}

func inventedSettings() *compare.Settings {
	return &compare.Settings{
		Years: 2,
		Steps: []compare.SettingStep{
			{Name: "uncommissioned example", WinterMin: 5, SummerMin: 9, Trial: compare.Trial{Failing: compare.Spread{Mean: 300}, Cost: 310}},
			{Name: "commissioned", Change: "all together", WinterMin: 12, SummerMin: 30, Trial: compare.Trial{Failing: compare.Spread{Mean: 3}, Cost: 360}},
		},
		List: []compare.Commission{{Option: "compact store", Setting: "setpoint", Value: "60 C", Reason: "sets how long a shower lasts"}},
	}
}

func inventedSizing() *compare.Sizing {
	s := &compare.Sizing{ScreenYears: 3, ConfirmYears: 20, Tried: 40, HeadToHead: &compare.HeadToHead{Text: "The best compact store frees 0.3 m2."}}
	for _, cost := range []float64{350, 370} {
		s.Compact.Sizes = append(s.Compact.Sizes, compare.Size{VolumeL: 120, SetpointC: cost / 6, SummerC: 55, HysteresisK: 3, OutputCap: 1, Trial: compare.Trial{Cost: cost}, NonDominated: cost < 360})
	}
	s.Compact.Cheapest, s.Compact.Smallest = &s.Compact.Sizes[0], &s.Compact.Sizes[0]
	s.Cylinder.Note = "no size serves"
	return s
}

func inventedSensitivity() *compare.Sensitivity {
	return &compare.Sensitivity{
		Years: 5, Base: compare.SensitivityPoint{Recommend: compare.RecommendCylinder, CostDifference: 60},
		Inputs: []compare.SensitivityInput{{
			Label: "people", BaseValue: 3, LowValue: 2, HighValue: 4, Turns: "turns to either at about 2.2",
			Low: compare.SensitivityPoint{Recommend: compare.RecommendEither, CostDifference: -5}, High: compare.SensitivityPoint{Recommend: compare.RecommendCylinder, CostDifference: 90},
		}},
	}
}

package workbook

import (
	"dhwcompare/compare"
)

// trialWith makes a trial of some years from hand-picked figures.
func trialWith(years int, failing, se, cost float64, meets bool) compare.Trial {
	return compare.Trial{Years: years, Failing: compare.Spread{Mean: failing, SE: se, CILow: failing - 2*se, CIHigh: failing + 2*se},
		Cost: cost, KWh: 4 * cost, HotWater: 3 * cost, RunsADay: 4.25, UnmetShare: 0.0021, Meets: meets}
}

// fillBeside fills in by hand all that lies beside the years of a comparison. The
// figures differ from each other, and some do not exist.
func fillBeside(doc *compare.Document) {
	c := doc.Comparison
	whole := c.Difference.WholeHouseKWh
	c.ByCause = compare.DifferenceByCause{Years: 1, KWh: whole, Parts: []compare.CauseOfDifference{
		{Name: "water_temperature", Label: "hotter water from the heat pump", KWh: 0.75 * whole},
		{Name: "vessel_loss", Label: "heat lost from the vessel", KWh: -0.125 * whole},
		{Name: "interaction", Label: "all else, and what these do to each other", KWh: 0.375 * whole},
	}}
	c.Spells = someSpells()
	addAlternatives(c)
	doc.Draws, doc.Settings = someDraws(), someSettings()
	addSized(doc)
}

func someSpells() []compare.Spell {
	result := func(k float64) compare.SpellResult {
		return compare.SpellResult{Showers: 10.5, FailingShowers: 4 * k, UnmetKWh: 1.4 * k, Defrosts: 107, InterruptedHours: 11.2 * k, LongestGapMin: 76 * k,
			WorstDipK: 0.5 * k, WholeHouseKWh: 157 + k, CatchUpMin: 15 * k, FellBehind: 3}
	}
	list := []compare.Spell{
		{Name: "design cold spell", Days: 5, OutdoorC: -3, MainsC: 8, RHPercent: 90, Samples: 10, Compact: result(1), Cylinder: result(0.25)},
		{Name: "cold humid day", Days: 1, MainsC: 5, RHPercent: 95, Samples: 10, Compact: result(0.5), Cylinder: result(0)},
	}
	list[0].Compact.CatchUpMin = -1
	return list
}

// addAlternatives fills in trials, equal service and windows that were tried.
func addAlternatives(c *compare.Comparison) {
	as, limited, equal := trialWith(3, 148, 2.9, 784.4, false), trialWith(3, 0.5, 0.1, 776.4, true), trialWith(6, 1.17, 0.4, 749.9, true)
	other := trialWith(3, 17.5, 2.2, 701.8, false)
	c.Alternatives = []compare.Alternative{
		{Name: "as it is", Years: 3, Compact: &as, Cylinder: &other},
		{Name: "a 6 l/min flow limiter on the showers", Years: 3, Compact: &limited},
	}
	c.Options.Compact.EqualService = compare.EqualService{Note: "no setpoint keeps the rule"}
	c.Options.Cylinder.EqualService = compare.EqualService{Meets: true, SetpointC: 61, ShowerLimit: 7, Trial: &equal}
	c.Options.Cylinder.CheapestWindows = &compare.WindowChoice{Tariff: "flat", Windows: []string{"02:00-05:00"}, HoursADay: 3, Years: 3, SavedPerYear: 41.5, Tried: []compare.WindowTrial{
		{HoursADay: 24, Cost: 700, Failing: 1.5, Unmet: 0.002, Serves: true},
		{Windows: []string{"02:00-05:00"}, HoursADay: 3, Cost: 658.5, Failing: 1.75, Unmet: 0.003, Serves: true},
	}}
}

// someDraws gives each test its own figure in each month.
func someDraws() *compare.Drawoff {
	d := &compare.Drawoff{FlowsLPerMin: []float64{6, 8, 12}, States: []string{"full output", stateOff}, LongestMin: 30, PauseMin: 5}
	for side := range sideOrder() {
		r, k := d.Of(compare.Side(side)), float64(side)
		for m := range r.ShowerMin {
			v := float64(m) / 4
			r.ShowerMin[m] = [][]float64{{30, 12 + v + k, 5 + v}, {14 + v + 9*k, 9 + v, 4.5 + v}}
			r.BackToBack[m] = compare.SecondShower{Minutes: 5 + v, Serves: 5+v >= compare.Default().Household.ShowerMinutes, ShortestPauseMin: 5 - float64(m)}
			r.SteadyFlow[m] = 4.5 + v + k
			r.Bath[m] = compare.BathTest{FlowLPerMin: 14, Minutes: 5.3 + v, MeanC: 39 + v, Serves: m > 3}
			r.RechargeMin[m], r.FromColdMin[m] = 12-2*v-k, 57+v+100*k
		}
		r.Rule = compare.DesignRule{NeedMin: 8, Month: 1, HaveMin: 7.5 + 9*k, Holds: side == 1, SetpointC: 61 - 61*k, FlowLPerMin: 6.5 + k}
	}
	return d
}

func someSettings() *compare.Settings {
	return &compare.Settings{Years: 1, Steps: []compare.SettingStep{
		{Name: "uncommissioned example", WinterMin: 6.2, SummerMin: 8.2, Trial: trialWith(1, 488, 0, 685.7, false)},
		{Name: "setpoint", Change: "setpoint 50 to 58 C", WinterMin: 8.6, SummerMin: 12.3, Trial: trialWith(1, 340, 0, 718.1, false)},
		{Name: "commissioned", Change: "all together", WinterMin: 9.8, SummerMin: 25.5, Trial: trialWith(1, 1, 0, 782.4, true)},
	}, List: []compare.Commission{
		{Option: "compact store", Setting: "setpoint", Value: "58 C", Reason: "sets how long a shower lasts, and the COP"},
		{Option: "cylinder", Setting: "sensor height", Value: "40 % of the height from the bottom", Reason: "a high sensor sees cold water late"},
	}}
}

// addSized fills in a search of sizes and the sensitivities, by hand: what these
// sheets show does not depend on a simulation.
func addSized(doc *compare.Document) {
	size := func(volume, setpoint, cost, litres float64, best bool) compare.Size {
		return compare.Size{VolumeL: volume, SetpointC: setpoint, SummerC: setpoint - 4, HysteresisK: 5, OutputCap: 1, FloorAreaM2: 0.004 * litres, SpaceL: litres,
			Trial: trialWith(5, 1.2, 0.2, cost, true), NonDominated: best}
	}
	s := &compare.Sizing{ScreenYears: 3, ConfirmYears: 5, Tried: 84}
	s.Compact.Sizes = []compare.Size{size(80, 60, 310.5, 190, true), size(100, 58, 301.2, 230, true), size(150, 56, 305, 320, false)}
	s.Compact.Sizes[0].ShowerLimit = 7
	s.Compact.Smallest, s.Compact.Cheapest = &s.Compact.Sizes[0], &s.Compact.Sizes[1]
	s.Compact.Failing = []float64{50, 60}
	s.Cylinder.Sizes = []compare.Size{size(150, 50, 280, 520, true), size(180, 48, 271.4, 610, true)}
	s.Cylinder.Smallest, s.Cylinder.Cheapest = &s.Cylinder.Sizes[0], &s.Cylinder.Sizes[1]
	s.Cylinder.TooLarge = []float64{250, 300}
	s.HeadToHead = &compare.HeadToHead{CompactVolumeL: 100, CylinderVolumeL: 180, SpaceFreedL: 380, FloorFreedM2: 0.21,
		Cost: compare.DifferenceSpread{Spread: compare.Spread{Mean: 29.8, CILow: 25.1, CIHigh: 34.5}}}
	doc.Sizing = s
	doc.Sensitivity = someSensitivity()
}

func someSensitivity() *compare.Sensitivity {
	at := func(take compare.Recommendation, cost, compact, cylinder float64) compare.SensitivityPoint {
		return compare.SensitivityPoint{Recommend: take, CostDifference: cost, FailingCompact: compact, FailingCylinder: cylinder}
	}
	return &compare.Sensitivity{Years: 3, Base: at(compare.RecommendCylinder, 40, 3, 0.5), Inputs: []compare.SensitivityInput{
		{Name: "tariffs", Label: "unit rates times", BaseValue: 1, LowValue: 0.75, HighValue: 1.25,
			Low: at(compare.RecommendCylinder, 30, 3, 0.5), High: at(compare.RecommendCylinder, 50, 3, 0.5), Turns: "does not turn"},
		{Name: "household.people", Label: "people", BaseValue: 3, LowValue: 2, HighValue: 4,
			Low: at(compare.RecommendEither, 31, 0.2, 0), High: at(compare.RecommendNeither, 43, 9, 5), Turns: "turns at about 2.4",
			Turn: &compare.Turn{At: 2.4, Kept: 2.5, Turned: 2.3, To: compare.RecommendEither}},
		{Name: "climate.outdoor_c", Label: "outdoor air warmer by", Unit: "K", LowValue: -2, HighValue: 2,
			Low: at(compare.RecommendCylinder, 44, 4, 0.6), High: at(compare.RecommendCylinder, 41, 2, 0.4), Turns: "does not turn"},
	}}
}

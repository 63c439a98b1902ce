package workbook

import (
	"dhwcompare/compare"
)

// trialWith makes a trial of some years from hand-picked figures.
func trialWith(years int, failing, se, cost float64, meets bool) compare.Trial {
	return compare.Trial{Years: years, Failing: compare.Spread{Mean: failing, SE: se, CILow: failing - 2*se, CIHigh: failing + 2*se},
		Cost: cost, KWh: 4 * cost, HotWater: 3 * cost, RunsADay: 4.25, UnmetShare: 0.0021, Meets: meets}
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

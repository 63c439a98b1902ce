package compare

import (
	"fmt"

	"dhwcompare/compare/wording"
)

// LeastYearsForInterval is the number of years below which no interval is worth
// stating.
const LeastYearsForInterval = 5

// meetsServiceRule reports whether failing showers stay within the rule: the
// upper end of the one-sided interval of their yearly mean, at the rule's
// confidence, is no higher than the rule allows.
func meetsServiceRule(s *Service, failures Spread, years int) bool {
	if years < 2 {
		return failures.Mean <= s.FailuresPerYear
	}
	const percent = 100
	upper := failures.Mean + failures.SE*studentQuantile(s.ConfidencePercent/percent, float64(years-1))
	return upper <= s.FailuresPerYear
}

// warnings lists what a reader must know beside the figures.
func warnings(c *Case, cmp *Comparison) []Warning {
	list := []Warning{}
	if _, estimated := c.Climate.Mains(); estimated {
		list = append(list, Warning{"climate.mains_c", "mains temperatures are not stated; they are estimated from outdoor air by a relation that is fitted to the United States and about 3 K too warm for a British January"})
	}
	if c.Years < LeastYearsForInterval {
		few := "1 simulated year is"
		if c.Years > 1 {
			few = fmt.Sprintf("%d simulated years are", c.Years)
		}
		list = append(list, Warning{"years", few + " too few for an interval; use 20 or more"})
	}
	list = append(list, Unusual(c)...)
	list = append(list, placeWarnings(c)...)
	list = append(list, fileWarnings(c)...)
	list = append(list, moneyWarnings(c)...)
	for side := range sides {
		list = append(list, optionWarnings(cmp.Options.Of(side))...)
		list = append(list, resultWarnings(cmp.Options.Of(side))...)
	}
	return list
}

func optionWarnings(o *Option) []Warning {
	var list []Warning
	const notable = 0.1
	if share := ratio(o.ExtrapolatedHours, o.RunHours); share > notable {
		list = append(list, Warning{"heat_pump_cop", wording.Sprintf("%s: %.0f %% of the compressor's hours lie outside the range of the performance data (5 to 10 %% more uncertain there)", o.Name, share*100)})
	}
	if share := o.unmetShare(); share > LargestUnmetShare {
		list = append(list, Warning{"unmet_heat_kwh", wording.Sprintf("%s: %.1f %% of the wanted heat is not delivered, so its cost is too low to compare", o.Name, share*100)})
	}
	if o.NeedsFloorCheck {
		list = append(list, Warning{"weight_full_kg", wording.Sprintf("%s: %.0f kg when full, more than floors of homes are usually designed for on one place; have the floor checked by somebody qualified", o.Name, o.WeightFullKg)})
	}
	const briefMinutes = 10
	if o.MinutesPerRun > 0 && o.MinutesPerRun < briefMinutes {
		list = append(list, Warning{"minutes_per_run", wording.Sprintf("%s: runs of %.0f minutes on average are short; the performance data are of steady running", o.Name, o.MinutesPerRun)})
	}
	return list
}

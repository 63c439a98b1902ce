package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// Constants that have a name in the workbook.
const (
	minutesInAnHour = 60.0
	secondsAMinute  = 60.0
	hundredths      = 100.0
)

// constants writes the numbers that formulas need and nobody changes, so that no
// number hides in a formula.
func (w *assumptionsWriter) constants(refs *inputRefs) {
	w.section("Constants and rules of the comparison")
	for _, c := range []struct {
		ref                 *term
		name, meaning, unit string
		value               float64
		source              string
	}{
		{&refs.days, "Days_a_year", "days in the simulated year", "d", calendar.Days, "the simulated year has no leap day"},
		{&refs.minutesAnHour, "Minutes_an_hour", "minutes in an hour", "min", minutesInAnHour, ""},
		{&refs.secondsAMinute, "Seconds_a_minute", "seconds in a minute", "s", secondsAMinute, ""},
		{&refs.percent, "Percent", "hundredths in a whole", "%", hundredths, ""},
		{&refs.mm2PerM2, "Mm2_per_square_metre", "square millimetres in a square metre", "mm²", 1e6, ""},
		{&refs.mm3PerL, "Mm3_per_litre", "cubic millimetres in a litre", "mm³", 1e6, ""},
		{&refs.level, "Interval_level", "level of the interval of a mean", "share", compare.IntervalLevel, "Student's interval over the simulated years"},
		{&refs.lowPercentile, "Low_percentile", "share of years below the low percentile, and above the high one", "share", compare.LowPercentile, ""},
		{&refs.leastYears, "Least_years", "with fewer years, no interval is worth stating", "years", compare.LeastYearsForInterval, ""},
		{&refs.unmetLimit, "Largest_unmet_share", "with a larger share of wanted heat unmet, cost is not compared", "share", compare.LargestUnmetShare, "an option that runs cold only looks cheap"},
		{&refs.tolerance, "Tolerance", "largest relative difference that a check lets pass", "share", 1e-9, "rounding of sums is about 1e-13"},
		{&refs.balance, "Balance_tolerance", "largest share of a month's heat that its balance may miss", "share", 1e-6, "the program's own limit for its first-law residual"},
	} {
		p := w.at
		w.text(p, label, c.name)
		w.text(p.right(meaningCol-1), label, c.meaning)
		v := w.number(p.right(valueCol-1), style{locked, formatAny}, c.value)
		w.text(p.right(unitCol-1), unit, c.unit)
		w.text(p.right(sourceCol-1), label, c.source)
		w.grow(p.row, c.source, c.meaning, "")
		*c.ref = w.named(c.name, p.right(valueCol-1), v)
		w.at.row++
	}
	w.at.row++
}

// minutesAnHour and hundred refer to constants by their names.
func minutesAnHour() term { return term{text: "Minutes_an_hour", value: minutesInAnHour} }
func hundred() term       { return term{text: "Percent", value: hundredths} }

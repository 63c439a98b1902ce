package workbook

import (
	"fmt"
	"math"
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// Results of a check.
const (
	passWord    = "pass"
	failWord    = "FAIL"
	changedWord = "inputs changed"
)

// check holds two figures of the workbook against each other.
type check struct {
	words           string
	found, expected term
	scale           term // what the tolerance is a share of; the expected figure if empty
	tolerance       term
	simulated       bool // holds only for the inputs as simulated
}

// checkWriter fills the sheet from the top.
type checkWriter struct {
	*sheet
	at place
}

// Columns of the sheet.
const (
	checkFoundCol = iota + 2
	checkExpectedCol
	checkToleranceCol
	checkResultCol
)

func (b *book) writeChecks() {
	w := &checkWriter{sheet: b.sheet(checksName), at: place{1, 6}}
	w.text(place{1, 1}, title, "Checks")
	w.text(place{1, 2}, label, "Each check holds two figures of this workbook against each other by formula. \"As simulated\" checks hold formulas against the program's own values and rest while an input is changed.")
	w.tops(place{1, 5}, 30, "Check", "Found", "Expected", "Allowed difference", "Result")
	for _, group := range []struct {
		title string
		list  []check
	}{
		{"Energy balance of each month: heat from the heat pump = taps + losses + kept", b.balanceChecks()},
		{"Electricity of each month = sum of its causes", b.causeChecks()},
		{"Months, years, bands and half-hours agree", b.sumChecks()},
		{"Draws that fail: table = count of the shown year", b.drawChecks()},
		{"As simulated: formulas = the program's values", b.programChecks()},
	} {
		w.text(w.at, heading, group.title)
		w.at = w.at.down(1)
		for _, c := range group.list {
			w.check(c)
		}
		w.at = w.at.down(1)
	}
	w.overall()
	w.widths(74, 16, 16, 14, 16)
	w.lay(page{portrait: true, freeze: place{1, 6}, titleRows: 5, last: place{checkResultCol, w.at.row - 2}})
}

// check writes one check.
func (w *checkWriter) check(c check) {
	w.foreignAs(w.at, style{look: label}, c.words)
	found := w.live(w.at.right(1), style{derived, "#,##0.000000"}, c.found)
	expected := w.expected(c.expected)
	scale := c.scale
	if scale.text == "" {
		scale = expected
	}
	// One unit is added to the scale, so that figures near nothing are not held
	// to a share of nothing.
	allowed := w.live(w.at.right(3), style{derived, formatTiny}, times(c.tolerance, plus(one(), call("ABS", math.Abs(scale.num()), scale.text))))
	ok := math.Abs(found.num()-expected.num()) <= allowed.num()
	same := term{text: "ABS(" + found.text + "-" + expected.text + ")<=" + allowed.text, value: ok, loose: true}
	result := choose(same, words(passWord), words(failWord))
	if c.simulated {
		changed := w.book.inputs.changed
		result = choose(compared(changed, ">", term{text: "0", value: 0.0}, changed.num() > 0), words(changedWord), result)
	}
	w.live(w.at.right(4), style{look: outcome}, result)
	w.at = w.at.down(1)
}

// expected writes a formula, or the program's own value where there is none.
func (w *checkWriter) expected(t term) term {
	const format = "#,##0.000000"
	if t.text == "" {
		return w.number(w.at.right(2), style{simulated, format}, t.num())
	}
	return w.live(w.at.right(2), style{derived, format}, t)
}

// overall counts what failed.
func (w *checkWriter) overall() {
	results := w.span(place{checkResultCol, 6}, place{checkResultCol, w.at.row})
	failed := 0.0
	for cell, v := range w.caches {
		if v == failWord && cell[0] == 'E' {
			failed++
		}
	}
	w.text(place{1, 3}, label, "Checks that fail:")
	count := w.live(place{2, 3}, style{outcome, formatWhole}, call("COUNTIF", failed, results.text, words(failWord).text))
	count = w.named("Checks_failed", place{2, 3}, count)
	none := compared(count, "=", term{text: "0", value: 0.0}, failed == 0)
	w.book.overall = w.live(place{checkResultCol, 3}, style{look: outcome}, choose(none, words("all pass"), words("some FAIL")))
}

func (b *book) balanceChecks() []check {
	var list []check
	s := b.sheet(monthsName)
	for side := range sideOrder() {
		for m := range calendar.MonthsInAYear {
			at := func(name string) term { return s.monthOf(side, name, m) }
			list = append(list, check{
				words: fmt.Sprintf("%s, %s", capital(blockName(side)), time.Month(m+1)), tolerance: b.inputs.balance,
				found:    at("heat_pump_heat_kwh"),
				expected: plus(at("heat_to_taps_kwh"), at("dead_leg_loss_kwh"), at("vessel_loss_kwh"), at("loop_loss_kwh"), at("store_gain_kwh")),
			})
		}
	}
	return list
}

func (b *book) causeChecks() []check {
	var list []check
	s := b.sheet(monthsName)
	for side := range sideOrder() {
		for m := range calendar.MonthsInAYear {
			list = append(list, check{
				words: fmt.Sprintf("%s, %s", capital(blockName(side)), time.Month(m+1)), tolerance: b.inputs.tolerance,
				found: s.monthOf(side, "cause.sum", m), expected: s.monthOf(side, "electricity_kwh", m),
			})
		}
	}
	return list
}

// sumChecks hold sums along different ways against each other.
func (b *book) sumChecks() []check {
	var list []check
	add := func(words string, found, expected term) {
		list = append(list, check{words: words, found: found, expected: expected, tolerance: b.inputs.tolerance})
	}
	days := b.sheet(monthsName).monthOf(0, daysColumn, calendar.MonthsInAYear)
	add("Days of the months = days of the year", days, b.inputs.days)
	for side := range sideOrder() {
		name := capital(blockName(side))
		electricity, _ := b.yearOf(side, "electricity_kwh")
		for _, f := range []string{"electricity_kwh", "heat_to_taps_kwh", "heat_pump_heat_kwh", "failing_showers_per_year"} {
			year, _ := b.yearOf(side, f)
			add(name+": sum of months = mean of years, "+f, year, b.risk.rows[f][side].mean)
		}
		add(name+": sum of half-hours = electricity of the months", b.halves.total[side], electricity)
		for i, t := range b.bills.tariffs {
			add(fmt.Sprintf("%s: sum of bands = electricity of the months, tariff %d", name, i+1), t.kWh[side], electricity)
			add(fmt.Sprintf("%s: bill of the mean year = mean of the years' bills, tariff %d", name, i+1), t.cost[side], b.risk.rows[costKey(i)][side].mean)
		}
	}
	return list
}

// drawChecks hold the counts of the table of draws against the shown year.
func (b *book) drawChecks() []check {
	var list []check
	shown := b.comparison().Shown.Year - 1
	figures := map[string]string{"shower": "failing_showers_per_year", "bath": "failing_baths_per_year", "tap": "failing_tap_draws_per_year"}
	for side := range sideOrder() {
		for _, kind := range drawKinds() {
			list = append(list, check{
				words: capital(blockName(side)) + ": " + kind, tolerance: b.inputs.tolerance, found: b.draws.counts[kind][side],
				expected: b.sheet(yearsName).yearRef(b.yearColumn(figures[kind]), side, shown),
			})
		}
	}
	return list
}

// programChecks hold the formulas against the program's own values, which stand
// on the sheet as numbers.
func (b *book) programChecks() []check {
	var list []check
	add := func(words string, found term, value float64) {
		list = append(list, check{words: words, found: found, expected: term{value: value}, tolerance: b.inputs.tolerance, simulated: true})
	}
	c := b.comparison()
	for side := range sideOrder() {
		o := c.Options.Of(compare.Side(side))
		for _, f := range compare.Figures() {
			if found, ok := b.figure(side, f.Name); ok {
				add(capital(blockName(side))+": "+f.Name, found, *f.Of(&o.Totals))
			}
		}
	}
	for i := range c.Tariffs {
		for side := range sideOrder() {
			add(fmt.Sprintf("%s: cost on tariff %d", capital(blockName(side)), i+1), b.bills.tariffs[i].cost[side], c.Tariffs[i].Of(compare.Side(side)).Cost)
		}
	}
	spread, cost := b.risk.rows["cost_per_year"][differenceBlock], c.Difference.Spread["cost_per_year"]
	add("Difference in cost: standard error", spread.se, cost.SE)
	add("Difference in cost: 90 % interval, low", spread.low, cost.CILow)
	add("Difference in cost: 90 % interval, high", spread.high, cost.CIHigh)
	add("Difference in cost: 5th percentile", spread.p05, cost.P05)
	add("Difference in cost: 95th percentile", spread.p95, cost.P95)
	return list
}

// figure finds a figure of an option's year wherever it is worked out.
func (b *book) figure(side int, name string) (term, bool) {
	switch name {
	case "cost_per_year":
		return b.bills.tariffs[0].cost[side], true
	case "floor_area_m2":
		return b.space.floor[side], true
	case "space_l":
		return b.space.litres[side], true
	}
	return b.yearOf(side, name)
}

package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"
)

// eachMonth makes one check for each month of each option.
func (b *book) eachMonth(tolerance term, sides func(at func(string) term) (found, expected term)) []check {
	var list []check
	s := b.sheet(monthsName)
	for side := range sideOrder() {
		for m := range calendar.MonthsInAYear {
			found, expected := sides(func(name string) term { return s.monthOf(side, name, m) })
			words := fmt.Sprintf("%s, %s", capital(blockName(side)), calendar.ShortMonth(m))
			list = append(list, check{words: words, tolerance: tolerance, found: found, expected: expected})
		}
	}
	return list
}

// balanceChecks hold the heat that went in against where it went.
func (b *book) balanceChecks() []check {
	return b.eachMonth(b.inputs.balance, func(at func(string) term) (found, expected term) {
		return plus(at("heat_pump_heat_kwh"), at("immersion_electricity_kwh")),
			plus(at("heat_to_taps_kwh"), at("dead_leg_loss_kwh"), at("vessel_loss_kwh"), at("loop_loss_kwh"),
				at("defrost_heat_kwh"), at("loop_heat_to_house_kwh"), at("store_gain_kwh"))
	})
}

func (b *book) causeChecks() []check {
	return b.eachMonth(b.inputs.tolerance, func(at func(string) term) (found, expected term) {
		return at(allCauses), at("electricity_kwh")
	})
}

// sumChecks hold sums along different ways against each other.
func (b *book) sumChecks() []check {
	days := b.sheet(monthsName).monthOf(0, daysColumn, calendar.MonthsInAYear)
	list := []check{{words: "Days of the months = days of the year", found: days, expected: b.inputs.days, tolerance: b.inputs.tolerance}}
	for side := range sideOrder() {
		list = append(list, b.yearSums(side)...)
		list = append(list, b.billSums(side)...)
	}
	return list
}

// yearSums hold the sum of the months against the mean of the years, for figures
// that add up.
func (b *book) yearSums(side int) []check {
	var list []check
	for _, f := range compare.Figures() {
		_, works := workOf(f.Name)
		if year, ok := b.yearOf(side, f.Name); ok && !works && !f.Largest {
			words := fmt.Sprintf("%s, sum of months = mean of years: %s", capital(blockName(side)), wording.InPrint(f.Label))
			list = append(list, check{words: words, found: year, expected: b.risk.rows[f.Name][side].mean, tolerance: b.inputs.tolerance})
		}
	}
	return list
}

// billSums hold bills, half-hours and electricity against each other.
func (b *book) billSums(side int) []check {
	var list []check
	name := capital(blockName(side))
	add := func(words string, found, expected term) {
		list = append(list, check{words: name + ", " + words, found: found, expected: expected, tolerance: b.inputs.tolerance})
	}
	electricity, _ := b.yearOf(side, "whole_house_electricity_kwh")
	add("sum of half-hours = electricity of the months", b.halves.total[side], electricity)
	add("present cost by part = sum of the discounted years", b.costs.present[side], b.costs.flows[side])
	for i := range b.bills.tariffs {
		t := &b.bills.tariffs[i]
		add(fmt.Sprintf("tariff %d: sum of bands = electricity of the months", i+1), t.kWh[side], electricity)
		add(fmt.Sprintf("tariff %d: bill of the year = sum of the months' bills", i+1), t.cost[side], t.monthSum[side])
		add(fmt.Sprintf("tariff %d: bill of the year = mean of the years' bills", i+1), t.cost[side], b.risk.rows[costKey(i)][side].mean)
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
				expected: b.yearValue(figures[kind], side, shown),
			})
		}
	}
	return list
}

// programChecks hold the formulas against the program's own values, which stand
// on the sheet as they are.
func (b *book) programChecks() []check {
	c := b.comparison()
	var list []check
	for side := range sideOrder() {
		list = append(list, b.optionChecks(side)...)
	}
	spread, cost := b.risk.rows["cost_per_year"][differenceBlock], c.Difference.Spread["cost_per_year"]
	for _, v := range []struct {
		words string
		found term
		value any
	}{
		{"Difference in cost: mean", spread.mean, cost.Mean},
		{"Difference in cost: standard error", spread.se, cost.SE},
		{"Difference in cost: 90 % interval, low", spread.low, cost.CILow},
		{"Difference in cost: 90 % interval, high", spread.high, cost.CIHigh},
		{"Difference in cost: 5th percentile", spread.p05, cost.P05},
		{"Difference in cost: 95th percentile", spread.p95, cost.P95},
		{"Difference in annual cost: 90 % interval, low", b.costs.low, c.Difference.Spread["equivalent_annual_cost"].CILow},
		{"Difference in annual cost: 90 % interval, high", b.costs.high, c.Difference.Spread["equivalent_annual_cost"].CIHigh},
		{"Break-even factor on unit rates, tariff 1", b.costs.breakEven[0], orNone(c.BreakEven.Ratio)},
		{"Price of a square metre freed", b.spacePrice.perM2, orNone(c.PriceOfSpace.PerM2)},
		{"Price of a litre freed", b.spacePrice.perL, orNone(c.PriceOfSpace.PerL)},
		{"Worth of a square metre at which both are worth the same", b.spacePrice.turns, orNone(c.PriceOfSpace.TurnsAtPerM2)},
		{"Difference with the floor's worth", b.spacePrice.withSpace, c.PriceOfSpace.DifferenceWithSpace},
		{"Finding on running cost", b.finding.cost, string(c.Verdict.Cost)},
		{"Recommendation", b.finding.recommend, string(c.Verdict.Recommend)},
	} {
		list = append(list, check{words: v.words, found: v.found, expected: term{value: v.value}, tolerance: b.inputs.tolerance, simulated: true})
	}
	return list
}

// orNone is a figure of the program, or the word for one that does not exist.
func orNone(v *float64) any {
	if v == nil {
		return noneWord
	}
	return *v
}

// optionChecks hold every figure of an option's year against the program.
func (b *book) optionChecks(side int) []check {
	var list []check
	o, name := b.comparison().Options.Of(compare.Side(side)), capital(blockName(side))
	add := func(words string, found term, value any) {
		list = append(list, check{words: name + ": " + words, found: found, expected: term{value: value}, tolerance: b.inputs.tolerance, simulated: true})
	}
	for _, f := range compare.Figures() {
		if found, ok := b.figure(side, f.Name); ok {
			add(wording.InPrint(f.Label), found, *f.Of(&o.Totals))
		}
	}
	for i := range b.comparison().Tariffs {
		add(fmt.Sprintf("cost on tariff %d", i+1), b.bills.tariffs[i].cost[side], b.comparison().Tariffs[i].Of(compare.Side(side)).Cost)
	}
	add("net present cost", b.costs.present[side], o.NetPresentCost)
	add("equivalent annual cost", b.costs.annual[side], o.EquivalentAnnualCost)
	met := noWord
	if o.MeetsServiceRule {
		met = yesWord
	}
	add("service rule met", b.finding.meets[side], met)
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

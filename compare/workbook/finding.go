package workbook

import (
	"dhwcompare/compare"

	"gonum.org/v1/gonum/stat/distuv"
)

// findingRefs are the judgements as they follow from the workbook's inputs.
type findingRefs struct {
	meets     [2]term // "yes" or "no"
	cost      term
	recommend term
}

// Answers within formulas.
const (
	yesWord = "yes"
	noWord  = "no"
)

// writeFinding works the judgements out step by step, so that they follow the
// inputs and can be checked.
func (s *sheet) writeFinding(at *place) {
	f := &findingRefs{}
	s.book.finding = f
	s.text(*at, heading, "How the recommendation follows")
	*at = at.down(1)
	for side := range sideOrder() {
		f.meets[side] = s.serviceSteps(side, at)
	}
	f.cost = s.costSteps(at)
	f.recommend = s.recommendSteps(f, at)
}

// step writes one line: words and a formula.
func (s *sheet) step(at *place, words, format string, t term) term {
	s.text(*at, label, words)
	ref := s.live(at.right(2), style{derived, format}, t)
	*at = at.down(1)
	return ref
}

// serviceSteps holds the upper end of the one-sided interval of failing showers
// against the rule.
func (s *sheet) serviceSteps(side int, at *place) term {
	spread, in := s.book.risk.rows["failing_showers_per_year"][side], s.book.inputs
	name := capital(blockName(side))
	upper := s.step(at, name+": failing showers a year, upper end at the stated confidence", formatTwo,
		plus(spread.mean, times(spread.se, oneSided(in, s.book.risk.years))))
	met := compared(upper, "<=", in.failures, upper.num() <= in.failures.num())
	return s.step(at, name+": service rule met?", formatAny, choose(met, words(yesWord), words(noWord)))
}

// oneSided is the quantile of the one-sided interval.
func oneSided(in *inputRefs, years term) term {
	quantile, n := 0.0, years.num()
	if n > 1 {
		quantile = distuv.StudentsT{Sigma: 1, Nu: n - 1}.Quantile(in.confidence.num() / in.percent.num())
	}
	outside := minus(one(), quotient(in.confidence, in.percent))
	// TINV takes the probability of both tails together.
	t := call("TINV", quantile, plus(outside, outside).text, minus(years, one()).text)
	return choose(compared(years, ">", one(), n > 1), t, term{text: "0", value: 0.0})
}

// costSteps holds the interval of the mean difference in cost against the band
// in which a difference is not material. The first rule that applies decides.
func (s *sheet) costSteps(at *place) term {
	in, spread := s.book.inputs, s.book.risk.rows["cost_per_year"][differenceBlock]
	band, low, high := in.materiality, spread.low, spread.high
	unmet := s.step(at, "Largest share of wanted heat that is not delivered", "0.00 %", s.largestUnmet())
	minusBand := term{text: "-" + band.text, value: -band.num(), loose: true}
	// A spreadsheet cannot see how near an end lies to the band, so each is a step of its own.
	rules := []struct {
		words, finding string
		holds          term
	}{
		{"Does an option leave too much heat unmet?", string(compare.CostNotCompared), compared(unmet, ">", in.unmetLimit, unmet.num() > in.unmetLimit.num())},
		{"Too few years for an interval?", string(compare.CostUndecided), compared(s.book.risk.years, "<", in.leastYears, s.book.risk.years.num() < in.leastYears.num())},
		{"Interval within the band of no real difference?", string(compare.CostNoDifference), call("AND", low.num() >= -band.num() && high.num() <= band.num(), low.text+">="+minusBand.text, high.text+"<="+band.text)},
		{"Interval above the band: the cylinder costs less?", string(compare.CostCylinderLess), compared(low, ">", band, low.num() > band.num())},
		{"Interval below the band: the compact store costs less?", string(compare.CostCompactLess), compared(high, "<", minusBand, high.num() < -band.num())},
		{"Otherwise", string(compare.CostUndecided), call("TRUE", true)},
	}
	first := *at
	for _, r := range rules {
		s.step(at, r.words, formatAny, r.holds)
		s.text(at.down(-1).right(3), label, r.finding)
	}
	last := at.down(-1)
	finding := ""
	for _, r := range rules {
		if holds, _ := r.holds.value.(bool); holds {
			finding = r.finding
			break
		}
	}
	holds, findings := s.span(first.right(2), last.right(2)), s.span(first.right(3), last.right(3))
	return s.step(at, "Finding on running cost: that of the first rule which holds", formatAny,
		call("INDEX", finding, findings.text, "MATCH(TRUE(),"+holds.text+",0)"))
}

func (s *sheet) largestUnmet() term {
	var shares []string
	largest := 0.0
	for side := range sideOrder() {
		unmet, _ := s.book.yearOf(side, "unmet_heat_kwh")
		wanted, _ := s.book.yearOf(side, "wanted_heat_kwh")
		r := ratio(unmet, wanted)
		shares = append(shares, r.text)
		largest = max(largest, r.num())
	}
	return call("MAX", largest, shares...)
}

// recommendSteps puts service before cost.
func (s *sheet) recommendSteps(f *findingRefs, at *place) term {
	outcomes := []struct {
		key  string
		then compare.Recommendation
	}{
		{noWord + "/" + noWord, compare.RecommendNeither},
		{yesWord + "/" + noWord, compare.RecommendCompact},
		{noWord + "/" + yesWord, compare.RecommendCylinder},
		{string(compare.CostCompactLess), compare.RecommendCompact},
		{string(compare.CostCylinderLess), compare.RecommendCylinder},
		{string(compare.CostNoDifference), compare.RecommendEither},
		{string(compare.CostUndecided), compare.RecommendEither},
		{string(compare.CostNotCompared), compare.RecommendEither},
	}
	services := term{text: f.meets[0].text + `&"/"&` + f.meets[1].text, value: f.meets[0].value.(string) + "/" + f.meets[1].value.(string)}
	both := call("AND", services.value == yesWord+"/"+yesWord, f.meets[0].text+`="`+yesWord+`"`, f.meets[1].text+`="`+yesWord+`"`)
	key := s.step(at, "What decides: service of both (compact store/cylinder), or cost if both serve", formatAny, choose(both, f.cost, services))
	s.text(*at, label, "If this decides ...")
	s.text(at.right(2), label, "... then take")
	first := at.down(1)
	then := ""
	for _, o := range outcomes {
		*at = at.down(1)
		s.text(*at, label, o.key)
		s.text(at.right(2), label, string(o.then))
		if o.key == key.value {
			then = string(o.then)
		}
	}
	last := *at
	*at = at.down(1)
	return s.step(at, "Recommendation", formatAny, call("INDEX", then,
		s.span(first.right(2), last.right(2)).text, "MATCH("+key.text+","+s.span(first, last).text+",0)"))
}

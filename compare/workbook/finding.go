package workbook

import (
	"dhwcompare/compare"
)

// findingRefs are the judgements as they follow from the workbook's inputs.
type findingRefs struct {
	meets     [2]term // yes or no
	usable    [2]term // yes or no: serves and fits
	cost      term
	recommend term
	unmet     term // largest share of wanted heat that an option leaves unmet
}

// Columns of the sheet: words, result, and what follows from it.
const (
	resultCol = 2
	thenCol   = 3
)

// findingWriter fills the sheet from the top.
type findingWriter struct {
	*sheet
	at place
}

// writeFinding works the judgements out step by step, so that they follow the
// inputs and can be checked.
func (b *book) writeFinding() {
	w := &findingWriter{sheet: b.sheet(findingName), at: place{1, 4}}
	w.head("How the recommendation follows", "Step by step from the figures and from the judgements of the sheet Assumptions; service and the place come before cost.")
	w.widths(66, 24, 46)
	f := &findingRefs{}
	b.finding = f
	w.section("Service: failing showers against the rule")
	for side := range sideOrder() {
		f.meets[side] = w.service(side)
	}
	w.section("Place: what serves has to fit, too")
	for side := range sideOrder() {
		f.usable[side] = w.usable(side, f.meets[side])
	}
	f.cost = w.cost(f)
	f.recommend = w.recommend(f)
	w.lay(page{portrait: true, onePage: true, last: place{thenCol, w.at.row - 1}})
}

func (w *findingWriter) section(name string, more ...string) {
	if w.at.row > 4 {
		w.at.row++
	}
	w.tops(w.at, 20, append([]string{name}, more...)...)
	w.at.row++
}

// step writes one line: words and a formula.
func (w *findingWriter) step(words, format string, t term) term {
	w.text(w.at, label, words)
	ref := w.live(place{resultCol, w.at.row}, style{answer, format}, t)
	w.at.row++
	return ref
}

// service holds the upper end of the one-sided interval of failing showers
// against the rule.
func (w *findingWriter) service(side int) term {
	spread, in := w.book.risk.rows["failing_showers_per_year"][side], w.book.inputs
	name := capital(blockName(side))
	upper := w.step(name+": failing showers a year, upper end at the stated confidence", formatTwo, w.book.upperFailures(spread.mean, spread.se, w.book.risk.years))
	allowed := w.step(name+": failing showers a year that are acceptable", formatTwo, in.failures)
	return w.step(name+": rule met?", formatAny, yesOrNo(compared(upper, "<=", allowed, upper.num() <= allowed.num())))
}

// usable says whether an option can be taken: it keeps the rule, and fits the place
// as far as one is stated.
func (w *findingWriter) usable(side int, meets term) term {
	name := capital(blockName(side))
	fits := w.step(name+": fits the place?", formatAny, w.book.space.fits[side])
	can := call("AND", meets.value == yesWord && fits.value != noWord, sameWord(meets, yesWord).text, fits.text+"<>"+words(noWord).text)
	return w.step(name+": serves and fits?", formatAny, yesOrNo(can))
}

// costRule is one rule of the finding on running cost.
type costRule struct {
	words   string
	holds   term
	finding compare.CostFinding
}

// cost holds the interval of the mean difference against the band in which a
// difference is not material. The first rule that holds decides.
func (w *findingWriter) cost(f *findingRefs) term {
	w.section("Running cost: figures")
	unmet := w.step("Largest share of wanted heat that an option leaves unmet", "0.00 %", w.largestUnmet())
	f.unmet = unmet
	spread := w.book.risk.rows["cost_per_year"][differenceBlock]
	low := w.step("Difference in cost, 90 % interval of the mean, low", signed(formatTwo), spread.low)
	high := w.step("Difference in cost, 90 % interval of the mean, high", signed(formatTwo), spread.high)
	w.section("Running cost: the first rule that holds decides", "Holds?", "Finding")
	first := w.at.row
	rules := w.costRules(unmet, low, high)
	finding := compare.CostUndecided
	for i := len(rules) - 1; i >= 0; i-- {
		if rules[i].holds.value == true {
			finding = rules[i].finding
		}
	}
	for _, r := range rules {
		w.step(r.words, formatAny, yesOrNo(r.holds))
		w.text(place{thenCol, w.at.row - 1}, label, string(r.finding))
	}
	holds, findings := w.span(place{resultCol, first}, place{resultCol, w.at.row - 1}), w.span(place{thenCol, first}, place{thenCol, w.at.row - 1})
	return w.step("Finding on running cost", formatAny, call("INDEX", string(finding), findings.text, "MATCH("+words(yesWord).text+","+holds.text+",0)"))
}

func (w *findingWriter) costRules(unmet, low, high term) []costRule {
	in, years := w.book.inputs, w.book.risk.years
	band := in.materiality
	below := term{text: "-" + band.text, value: -band.num()}
	within := call("AND", low.num() >= below.num() && high.num() <= band.num(), low.text+">="+below.text, high.text+"<="+band.text)
	return []costRule{
		{"An option leaves too much heat unmet", compared(unmet, ">", in.unmetLimit, unmet.num() > in.unmetLimit.num()), compare.CostNotCompared},
		{"Too few years for an interval", compared(years, "<", in.leastYears, years.num() < in.leastYears.num()), compare.CostUndecided},
		{"The interval lies within the band of no real difference", within, compare.CostNoDifference},
		{"The interval lies above the band", compared(low, ">", band, low.num() > band.num()), compare.CostCylinderLess},
		{"The interval lies below the band", compared(high, "<", below, high.num() < below.num()), compare.CostCompactLess},
		{"None of these", call("TRUE", true), compare.CostUndecided},
	}
}

func (w *findingWriter) largestUnmet() term {
	var shares []string
	most := 0.0
	for side := range sideOrder() {
		unmet, _ := w.book.yearOf(side, "unmet_heat_kwh")
		wanted, _ := w.book.yearOf(side, "wanted_heat_kwh")
		r := ratio(unmet, wanted)
		shares = append(shares, r.text)
		most = max(most, r.num())
	}
	return call("MAX", most, shares...)
}

// Keys of the table that leads from findings to recommendations.
func serviceKey(compact, cylinder string) string {
	return "serves and fits: " + compact + ", " + cylinder
}

// recommend puts service, and the place that there is, before cost. Where both serve and cost does not decide,
// either will do.
func (w *findingWriter) recommend(f *findingRefs) term {
	outcomes := []struct {
		key  string
		then compare.Recommendation
	}{
		{serviceKey(noWord, noWord), compare.RecommendNeither},
		{serviceKey(yesWord, noWord), compare.RecommendCompact},
		{serviceKey(noWord, yesWord), compare.RecommendCylinder},
		{string(compare.CostCompactLess), compare.RecommendCompact},
		{string(compare.CostCylinderLess), compare.RecommendCylinder},
		{string(compare.CostNoDifference), compare.RecommendEither},
		{string(compare.CostUndecided), compare.RecommendEither},
		{string(compare.CostNotCompared), compare.RecommendEither},
	}
	w.section("Recommendation: what decides", "Then take")
	first, then, key := w.at.row, "", f.deciding()
	for _, o := range outcomes {
		w.text(w.at, label, o.key)
		w.text(place{resultCol, w.at.row}, label, string(o.then))
		if o.key == key.value {
			then = string(o.then)
		}
		w.at.row++
	}
	keys, thens := w.span(place{1, first}, place{1, w.at.row - 1}), w.span(place{resultCol, first}, place{resultCol, w.at.row - 1})
	w.at.row++
	decides := w.step("What decides here", formatAny, key)
	return w.step("Recommendation", formatAny, call("INDEX", then, thens.text, "MATCH("+decides.text+","+keys.text+",0)"))
}

// deciding is what can be taken (compact store first), or the finding on cost where
// both can.
func (f *findingRefs) deciding() term {
	compact, _ := f.usable[0].value.(string)
	cylinder, _ := f.usable[1].value.(string)
	service := term{text: `"serves and fits: "&` + f.usable[0].text + `&", "&` + f.usable[1].text, value: serviceKey(compact, cylinder)}
	both := allOf(sameWord(f.usable[0], yesWord), sameWord(f.usable[1], yesWord))
	return choose(both, f.cost, service)
}

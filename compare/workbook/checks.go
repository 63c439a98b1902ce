package workbook

import (
	"math"
)

// Results of a check.
const (
	passWord    = "pass"
	failWord    = "FAIL"
	changedWord = "inputs changed"
)

// check holds two figures, or two words, of the workbook against each other.
type check struct {
	words           string
	found, expected term // an expected value without formula is the program's own
	tolerance       term
	simulated       bool // holds only for the inputs as simulated
}

// checkWriter fills the sheet from the top.
type checkWriter struct {
	*sheet
	at     place
	failed float64
}

// Columns and rows of the sheet.
const (
	checkFoundCol = iota + 2
	checkExpectedCol
	checkAllowedCol
	checkResultCol

	checkCountRow = 4
	checkTopRow   = 6
)

func (b *book) writeChecks() {
	w := &checkWriter{sheet: b.sheet(checksName), at: place{1, checkTopRow + 1}}
	w.head("Checks", "Each check holds two figures of this workbook against each other by formula.")
	w.text(place{1, 3}, sentence, "Checks against the program's own values hold for the inputs as simulated, and rest while an input is changed.")
	w.tops(place{1, checkTopRow}, 30, "Check", "Found", "Expected", "Allowed difference", "Result")
	for _, group := range []struct {
		title string
		list  []check
	}{
		{"Energy balance of each month: heat put in = taps + losses + kept in the store", b.balanceChecks()},
		{"Electricity of each month = sum of its causes", b.causeChecks()},
		{"Months, years, bands and half-hours agree", b.sumChecks()},
		{"Draws that fail: table = count of the shown year", b.drawChecks()},
		{"Draw-offs, alternatives, settings, sizes and the place", b.extra},
		{"As simulated: formulas = the program's values", b.programChecks()},
	} {
		if len(group.list) == 0 {
			continue
		}
		w.text(w.at, heading, group.title)
		w.at = w.at.down(1)
		for _, c := range group.list {
			w.check(c)
		}
		w.at = w.at.down(1)
	}
	w.overall()
	w.widths(74, 19, 19, 13, 15)
	w.lay(page{portrait: true, freeze: place{1, checkTopRow + 1}, titleRows: checkTopRow, last: place{checkResultCol, w.at.row - 2}})
}

// check writes one check.
func (w *checkWriter) check(c check) {
	w.foreignAs(w.at, style{look: label}, c.words)
	found := w.live(place{checkFoundCol, w.at.row}, style{rightFigure, formatFine}, c.found)
	expected := w.expected(c.expected)
	same := compared(found, "=", expected, found.value == expected.value)
	if _, number := c.expected.value.(float64); number {
		same = w.near(found, expected, c.tolerance)
	}
	result := choose(same, words(passWord), words(failWord))
	if c.simulated {
		changed := w.book.inputs.changed
		result = choose(compared(changed, ">", zero(), changed.num() > 0), words(changedWord), result)
	}
	if result.value == failWord {
		w.failed++
	}
	w.live(place{checkResultCol, w.at.row}, style{look: outcome}, result)
	w.at = w.at.down(1)
}

// near allows a share of the expected figure. One unit is added to the figure, so
// that one near nothing is not held to a share of nothing.
func (w *checkWriter) near(found, expected, tolerance term) term {
	scale := plus(one(), call("ABS", math.Abs(expected.num()), expected.text))
	allowed := w.live(place{checkAllowedCol, w.at.row}, style{derived, formatTiny}, times(tolerance, scale))
	ok := math.Abs(found.num()-expected.num()) <= allowed.num()
	return term{text: "ABS(" + found.text + "-" + expected.text + ")<=" + allowed.text, value: ok, loose: true}
}

// expected writes a formula, or the program's own value.
func (w *checkWriter) expected(t term) term {
	p := place{checkExpectedCol, w.at.row}
	if t.text != "" {
		return w.live(p, style{derived, formatFine}, t)
	}
	if word, is := t.value.(string); is {
		w.text(p, rightText, word)
		return w.ref(p, word)
	}
	return w.number(p, style{simulated, formatFine}, t.num())
}

// overall counts what failed.
func (w *checkWriter) overall() {
	results := w.span(place{checkResultCol, checkTopRow + 1}, place{checkResultCol, w.at.row})
	p := place{checkFoundCol, checkCountRow}
	w.text(place{1, p.row}, label, "Checks that fail")
	count := w.live(p, style{outcome, formatWhole}, call("COUNTIF", w.failed, results.text, words(failWord).text))
	count = w.named("Checks_failed", p, count)
	none := compared(count, "=", zero(), w.failed == 0)
	w.book.overall = w.live(place{checkResultCol, p.row}, style{look: outcome}, choose(none, words("all pass"), words("some FAIL")))
}

package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/calendar"

	"github.com/xuri/excelize/v2"
)

// inputRefs are the assumptions that formulas refer to.
type inputRefs struct {
	tariffs      []tariffRefs
	materiality  term
	life         lifeRefs
	carbon       [calendar.MonthsInAYear]term
	carbonMonths span
	surplus      term // payment that is lost for own surplus electricity, a kWh
	room         roomRefs
	designStarts term
	failures     term // failing showers a year that are acceptable
	confidence   term // percent
	changed      term // number of inputs that differ from those simulated

	days, minutesAnHour, percent term
	secondsAMinute               term
	mm2PerM2, mm3PerL            term
	level, lowPercentile         term // shares
	leastYears, unmetLimit       term
	tolerance, balance           term // shares
}

// Columns of the sheet.
const (
	keyCol = iota + 1
	meaningCol
	valueCol
	unitCol
	simulatedCol
	changedCol
	originCol
	sourceCol
)

// assumptionsWriter fills the sheet from the top.
type assumptionsWriter struct {
	*sheet
	at    place
	known map[string]*compare.Input
	used  map[string]bool
}

func (b *book) writeAssumptions() {
	w := &assumptionsWriter{sheet: b.sheet(assumptionsName), at: place{1, 1}, known: map[string]*compare.Input{}, used: map[string]bool{}}
	for i := range b.doc.Inputs {
		w.known[b.doc.Inputs[i].Key] = &b.doc.Inputs[i]
	}
	b.inputs = &inputRefs{}
	w.widths(42, keyChars, textChars, 15, 13, 11, 11, sourceChars)
	w.top()
	top := w.at.row
	w.editable(b.inputs)
	w.at.row++
	w.constants(b.inputs)
	w.rest()
	w.countChanges(b.inputs, top)
	w.protect()
	w.lay(page{freeze: place{3, 6}, titleRows: 5, last: place{sourceCol, w.at.row}})
}

// Rows of the head.
const (
	changesRow = 2
	legendRow  = 3
	headRow    = 5
)

func (w *assumptionsWriter) top() {
	w.head("Assumptions", "")
	w.text(place{1, legendRow}, label, "How values are shown:")
	w.text(place{2, legendRow}, input, "may be changed: everything follows")
	w.text(place{3, legendRow}, simulated, "simulated")
	w.text(place{4, legendRow}, unit, "formula")
	w.text(place{5, legendRow}, locked, "locked")
	w.text(place{6, legendRow}, unit, "Locked values need a new simulation: change the case file and run it again.")
	w.tops(place{1, headRow}, 30, "Key", "Meaning", "Value", "Unit", "As simulated", "Changed", "Origin", "Source")
	w.at.row = headRow + 1
}

// countChanges says at the top how many inputs differ from those simulated.
func (w *assumptionsWriter) countChanges(refs *inputRefs, top int) {
	w.text(place{1, changesRow}, label, "Inputs changed since the simulation:")
	flags := w.span(place{changedCol, top}, place{changedCol, w.at.row})
	p := place{2, changesRow}
	count := w.live(p, style{answer, formatWhole}, call("COUNTIF", 0.0, flags.text, words("changed").text))
	refs.changed = w.named("Inputs_changed", p, count)
}

func (w *assumptionsWriter) section(text string) {
	w.text(w.at, heading, text)
	w.height(w.at.row, 20)
	w.at.row++
}

func (w *assumptionsWriter) editable(refs *inputRefs) {
	w.section("Prices, judgements and the place: may be changed here")
	c := w.book.doc.Case
	w.surplus(refs)
	for i := range c.Tariffs {
		refs.tariffs = append(refs.tariffs, w.tariff(i, refs))
	}
	w.money(refs)
	refs.failures = w.put(row{key: "service.failures_per_year", name: "Failing_showers_allowed", meaning: "failing showers a year that are acceptable",
		unit: "a year", value: c.Service.FailuresPerYear, format: formatAny, most: mostMoney})
	refs.confidence = w.put(row{key: "service.confidence_percent", name: "Service_confidence_percent", meaning: "confidence with which the service rule must be met",
		unit: "%", value: c.Service.ConfidencePercent, format: formatAny, least: 50, most: 99.9})
	w.room(refs)
	w.carbon(refs)
}

// protect locks the sheet but for its inputs, without a password: it guards
// against slips, not against the owner of the file.
func (w *assumptionsWriter) protect() {
	w.book.keep(w.book.file.ProtectSheet(w.name, &excelize.SheetProtectionOptions{
		SelectLockedCells: true, SelectUnlockedCells: true, FormatColumns: true, FormatRows: true,
	}))
}

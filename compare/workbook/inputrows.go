package workbook

import (
	"math"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// row is one input that may be changed in the workbook: it takes part in prices
// and judgements only, not in the simulation.
type row struct {
	key, name   string // of the case file; of the cell
	meaning     string
	foreign     bool // the meaning holds a text that somebody else wrote
	unit        string
	value       float64
	format      string
	least, most float64
	whole       bool   // whole numbers only
	of          string // key of the case that holds this value among others; the row's own if empty
}

// mostMoney is the most that validation lets through: currencies differ by a
// factor of a thousand and more, so this only catches slips.
const mostMoney = 1e6

// put writes an input that may be changed and gives it its name.
func (w *assumptionsWriter) put(r row) term {
	p := w.at
	w.text(p, label, r.key)
	w.meaning(p, r.key, r.foreign, &r.meaning)
	v := w.number(p.right(valueCol-1), style{input, r.format}, r.value)
	w.text(p.right(unitCol-1), unit, r.unit)
	was := w.number(p.right(simulatedCol-1), style{locked, r.format}, r.value)
	same := compared(v, "=", was, true)
	w.live(p.right(changedCol-1), style{look: outcome}, choose(same, words(""), words("changed")))
	if r.of == "" {
		r.of = r.key
	}
	w.grow(p.row, "", r.meaning, "")
	w.origin(p, w.known[r.of], r.meaning)
	w.used[r.of] = true
	w.validate(p.right(valueCol-1), r)
	ref := w.named(r.name, p.right(valueCol-1), v)
	w.at.row++
	return ref
}

// meaning writes what an input means, and what there is to beware of.
func (w *assumptionsWriter) meaning(p place, key string, foreign bool, text *string) {
	for _, beware := range w.book.comparison().About(key) {
		*text += compare.WarningMark + " " + wording.InPrint(beware)
		foreign = true
	}
	w.textAs(p.right(meaningCol-1), foreign, *text)
}

// origin writes where the value comes from, beside what it means.
func (w *assumptionsWriter) origin(p place, in *compare.Input, meaning string) {
	if in == nil {
		return
	}
	w.text(p.right(originCol-1), label, string(in.Origin))
	w.foreign(p.right(sourceCol-1), in.Source)
	w.grow(p.row, in.Source, meaning, "")
}

func (w *assumptionsWriter) validate(p place, r row) {
	v := excelize.NewDataValidation(true)
	v.Sqref = p.String()
	kind := excelize.DataValidationTypeDecimal
	if r.whole {
		kind = excelize.DataValidationTypeWhole
	}
	w.book.keep(v.SetRange(r.least, r.most, kind, excelize.DataValidationOperatorBetween))
	v.SetError(excelize.DataValidationErrorStyleStop, "Out of range", "Give a number within the range of this input.")
	v.SetInput("May be changed", "Everything that follows from it is worked out anew.")
	w.book.keep(w.book.file.AddDataValidation(w.name, v))
}

// rest lists every other input. They take part in the simulation, so a changed
// cell here would change nothing: they are locked.
func (w *assumptionsWriter) rest() {
	w.section("The home and its two options: locked, a change needs a new simulation (change the case file and run it again)")
	group := ""
	for i := range w.book.doc.Inputs {
		in := &w.book.doc.Inputs[i]
		if w.used[in.Key] {
			continue
		}
		if g, _, _ := strings.Cut(in.Key, "."); g != group && group != "" {
			w.at.row++
		}
		group, _, _ = strings.Cut(in.Key, ".")
		w.fixed(in)
	}
}

func (w *assumptionsWriter) fixed(in *compare.Input) {
	p := w.at
	w.foreignAs(p, style{look: given}, in.Key)
	help := wording.InPrint(in.Help)
	w.meaning(p, in.Key, true, &help)
	if in.Numeric {
		w.number(p.right(valueCol-1), style{locked, inputFormat(in)}, in.Number)
	} else {
		w.foreignAs(p.right(valueCol-1), style{look: lockedText}, in.Text)
	}
	w.foreignAs(p.right(unitCol-1), style{look: unit}, in.Unit)
	w.origin(p, in, help)
	w.grow(p.row, in.Source, help, in.Text)
	w.at.row++
}

// inputFormat shows a stated value as it is, and a derived one to a few digits.
func inputFormat(in *compare.Input) string {
	const large, medium = 100, 10
	switch v := math.Abs(in.Number); {
	case in.Origin != compare.Derived || v == math.Trunc(v):
		return formatAny
	case v >= large:
		return formatWhole
	case v >= medium:
		return formatTwo
	default:
		return "0.000"
	}
}

// Widths of the columns that hold long texts, in characters.
const (
	keyChars    = 50
	textChars   = 22
	sourceChars = 56
)

// grow makes a row high enough for its longest text.
func (w *assumptionsWriter) grow(row int, source, help, value string) {
	// Letters are narrower than the digits by which widths are counted.
	const perWidth, of = 12, 10
	fit := func(text string, width int) float64 { return linesOf(clean(text), width*perWidth/of) }
	lines := max(1, fit(source, sourceChars), fit(help, keyChars), fit(value, textChars))
	w.height(row, lines*lineHeight)
}

package workbook

// numberOrNone writes a simulated number, or a word in place of one that does not
// exist.
func (s *sheet) numberOrNone(p place, format string, v float64, exists bool) term {
	if exists {
		return s.number(p, style{simulated, format}, v)
	}
	s.text(p, rightText, noneWord)
	return s.ref(p, noneWord)
}

// yesNo writes an outcome of the simulation.
func (s *sheet) yesNo(p place, yes bool) term {
	word := noWord
	if yes {
		word = yesWord
	}
	s.text(p, rightText, word)
	return s.ref(p, word)
}

// gap is a difference that exists where both figures do.
func gap(a, b term) term {
	_, isA := a.value.(float64)
	_, isB := b.value.(float64)
	both := call("AND", isA && isB, "ISNUMBER("+a.text+")", "ISNUMBER("+b.text+")")
	return choose(both, minus(a, b), words(noneWord))
}

// sameWord compares a cell with a word.
func sameWord(a term, word string) term {
	return compared(a, "=", words(word), a.value == word)
}

// bothLine is a figure of both options, side by side with the difference.
type bothLine struct {
	words, unit, format string
	of                  [2]float64
	gapFormat           string // of the difference; the same if empty
	negativeIsNone      bool
}

// bothTops heads a table of such lines.
func (s *sheet) bothTops(p place, first string) {
	s.tops(p, 20, first, "Unit", "Compact store", "Cylinder", "Difference")
}

// both writes a simulated figure of both options and their difference.
func (s *sheet) both(p place, l bothLine) [3]term {
	s.text(p, label, l.words)
	s.text(p.right(1), unit, l.unit)
	var out [3]term
	for side, v := range l.of {
		out[side] = s.numberOrNone(p.right(2+side), l.format, v, !l.negativeIsNone || v >= 0)
	}
	if l.gapFormat == "" {
		l.gapFormat = l.format
	}
	out[2] = s.live(p.right(4), style{rightFigure, signed(l.gapFormat)}, gap(out[0], out[1]))
	return out
}

// bothLive writes a figure of both options that follows from others.
func (s *sheet) bothLive(p place, words, unitText, format string, of func(side int) term) [3]term {
	s.text(p, label, words)
	s.text(p.right(1), unit, unitText)
	var out [3]term
	for side := range sideOrder() {
		out[side] = s.live(p.right(2+side), style{rightFigure, format}, of(side))
	}
	out[2] = s.live(p.right(4), style{rightFigure, signed(format)}, gap(out[0], out[1]))
	return out
}

// expect adds a check to the sheet Checks. An expected value without formula is
// the program's own, and holds for the inputs as simulated.
func (b *book) expect(words string, found, expected term) {
	b.extra = append(b.extra, check{words: words, found: found, expected: expected, tolerance: b.inputs.tolerance, simulated: expected.text == ""})
}

// programWord is the program's own answer to a question.
func programWord(yes bool) term {
	if yes {
		return term{value: yesWord}
	}
	return term{value: noWord}
}

// frozenNote says that costs of a sheet stay as simulated, and warns once inputs
// have been changed.
func (s *sheet) frozenNote(p place) {
	s.text(p, sentence, "Italic figures, costs among them, are simulated: they are at the prices as simulated and need a new run to change. Differences and the service rule are formulas.")
	changed := s.book.inputs.changed
	is := compared(changed, ">", zero(), changed.num() > 0)
	s.live(p.down(1), style{look: answer}, choose(is, words("Inputs were changed: costs on this sheet are still those of the inputs as simulated."), words("")))
}

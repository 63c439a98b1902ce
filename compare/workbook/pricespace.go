package workbook

// spacePriceRefs are the price of the space that the compact store frees.
type spacePriceRefs struct{ perM2, perL, value, withSpace, turns term }

// writeSpacePrice adds the price of space below the tables of the sheet Space.
func (b *book) writeSpacePrice() {
	s, c, l := b.sheet(spaceName), b.costs, &b.inputs.life
	at := b.space.next
	b.spacePrice = &spacePriceRefs{}
	money := b.currency()
	s.text(at, heading, "Price of the space that the compact store frees")
	row := func(n int, words, format string, t term) term {
		s.text(at.down(n), label, words)
		return s.live(at.down(n).right(1), style{rightFigure, format}, t)
	}
	m2 := row(1, "Floor freed, m²", signed(formatTwo), negative(b.space.floorGap))
	litres := row(2, "Cupboard freed, l", signed(formatOne), negative(b.space.litresGap))
	extra := row(3, "Extra equivalent annual cost, "+money+" a year", signed(formatTwo), c.annualGap)
	unmet := row(4, "Largest share of wanted heat left unmet", "0.00 %", b.finding.unmet)
	p := b.spacePrice
	p.perM2 = row(5, "Price of a square metre freed, "+money+" a year", formatTwo, b.spacePriceOf(unmet, extra, m2))
	p.perL = row(6, "Price of a litre freed, "+money+" a year", formatRate, b.spacePriceOf(unmet, extra, litres))
	p.value = row(7, "Worth of a square metre of cupboard, "+money+" a year", formatTwo, times(l.floorValue, l.floorShare))
	p.withSpace = row(8, "Difference a year with the floor's worth, "+money, signed(formatTwo), minus(extra, times(p.value, m2)))
	p.turns = row(9, "Worth of a square metre that evens both out, "+money+" a year", formatTwo, b.turningValue(unmet, extra, m2))
	s.text(at.down(10), sentence, "\"none\": an option leaves too much heat unmet to compare costs, no space is freed, or the compact store costs no more.")
	s.lay(page{freeze: place{2, 3}, last: place{10, at.row + 10}})
}

// spacePriceOf is the extra cost for each unit of space freed.
func (b *book) spacePriceOf(unmet, extra, freed term) term {
	limit := b.inputs.unmetLimit
	exists := call("AND", unmet.num() <= limit.num() && extra.num() > 0 && freed.num() > 0,
		unmet.text+"<="+limit.text, extra.text+">0", freed.text+">0")
	return choose(exists, safeQuotient(extra, freed), words(noneWord))
}

// turningValue is the worth of floor at which the decision turns.
func (b *book) turningValue(unmet, extra, freed term) term {
	limit := b.inputs.unmetLimit
	e, f := extra.num(), freed.num()
	turns := call("AND", unmet.num() <= limit.num() && (e <= 0 && f < 0 || e > 0 && f > 0), unmet.text+"<="+limit.text,
		"OR(AND("+extra.text+"<=0,"+freed.text+"<0),AND("+extra.text+">0,"+freed.text+">0))")
	return choose(turns, safeQuotient(extra, freed), words(noneWord))
}

// safeQuotient is a quotient that is used only where its divisor is not zero.
func safeQuotient(a, b term) term {
	t := term{text: a.tight() + "/" + b.tight(), value: 0.0}
	if b.num() != 0 {
		t.value = a.num() / b.num()
	}
	return t
}

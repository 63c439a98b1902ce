package workbook

import "dhwcompare/compare"

// startTable sets the compressor's starts against those that it is designed for.
func (s *sheet) startTable(at place) place {
	in, b := s.book.inputs, s.book
	s.text(at, heading, "Compressor starts against the number that it is designed for (no forecast of its life)")
	s.tops(at.down(1), 30, "Figure", "Compact store", "Cylinder", "Difference")
	starts := func(name string) func(side int) term {
		return func(side int) term {
			t, _ := b.yearOf(side, name)
			return t
		}
	}
	hot := s.pairRow(at.down(2), label, "Starts a year for hot water", formatWhole, starts("starts_per_year"))
	heat := s.pairRow(at.down(3), label, "Starts a year for heating", formatWhole, starts("heating_starts_per_year"))
	all := s.pairRow(at.down(4), total, "Starts a year", formatWhole, func(side int) term { return plus(hot[side], heat[side]) })
	stated := compared(in.designStarts, ">", zero(), in.designStarts.num() > 0)
	s.text(at.down(5), label, "Share of the design starts that the horizon uses up")
	s.text(at.down(6), label, "Years in which they are used up")
	for side := range sideOrder() {
		used := safeQuotient(times(all[side], in.life.horizon), in.designStarts)
		share := s.live(at.down(5).right(1+side), style{rightFigure, formatPercent}, choose(stated, used, words(noneWord)))
		some := call("AND", stated.value == true && all[side].num() > 0, stated.text, all[side].text+">0")
		years := s.live(at.down(6).right(1+side), style{rightFigure, formatOne}, choose(some, safeQuotient(in.designStarts, all[side]), words(noneWord)))
		s.expectBudget(side, share, years)
	}
	s.text(at.down(7), sentence, "\"none\": no number of design starts is stated.")
	return at.down(9)
}

// expectBudget holds the formulas against the program's own figures.
func (s *sheet) expectBudget(side int, share, years term) {
	budget := s.book.comparison().Options.Of(compare.Side(side)).StartBudget
	if budget == nil {
		return
	}
	name := capital(blockName(side))
	s.book.expect(name+": share of design starts over the horizon", share, term{value: budget.ShareOverHorizon})
	s.book.expect(name+": years to the design starts", years, term{value: orNone(budget.YearsToDesign)})
}

package workbook

import "dhwcompare/compare"

// waterTable sets the heating water that stands open to the heat pump against what
// that needs.
func (s *sheet) waterTable(at place) place {
	s.text(at, heading, "Heating water that stands open to the heat pump, l")
	s.tops(at.down(1), 30, "Water", "Compact store", "Cylinder")
	p := at.down(1)
	figures := func(words string, of func(w *compare.SystemWater) float64) (cells [2]term) {
		p = p.down(1)
		s.text(p, label, words)
		for side := range sideOrder() {
			cells[side] = s.number(p.right(1+side), style{simulated, formatOne}, of(s.book.waterOf(side)))
		}
		return cells
	}
	least := figures("Needed for defrosts and least runs", func(w *compare.SystemWater) float64 { return w.LeastL })
	loop := figures("In the unit and its loop", func(w *compare.SystemWater) float64 { return w.LoopL })
	heating := figures("In heating that no valve shuts off", func(w *compare.SystemWater) float64 { return w.HeatingL })
	store := figures("In a store of the defrost circuit", func(w *compare.SystemWater) float64 { return w.StoreL })
	p = p.down(1)
	s.text(p, label, "Missing")
	for side := range sideOrder() {
		gap := minus(least[side], plus(loop[side], heating[side], store[side]))
		short := s.live(p.right(1+side), style{derived, formatOne}, call("MAX", max(0, gap.num()), "0", gap.text))
		s.book.expect(capital(blockName(side))+": heating water missing", short, term{value: s.book.waterOf(side).ShortL})
	}
	figures("Volumiser", func(w *compare.SystemWater) float64 { return w.VolumiserL })
	for side := range sideOrder() {
		p = p.down(1)
		s.text(p, sentence, told(s.book.waterOf(side).Text))
	}
	return p.down(2)
}

func (b *book) waterOf(side int) *compare.SystemWater {
	return &b.comparison().Options.Of(compare.Side(side)).SystemWater
}

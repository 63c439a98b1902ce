package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/space"
)

// spaceRefs are what each option takes.
type spaceRefs struct {
	floor, litres       [2]term
	floorGap, litresGap term
	envelope            [2]envelopeRefs
	fits                [2]term // yes, no or that there is no place to fit
	next                place   // below the tables
}

func (b *book) writeSpace() {
	s := b.sheet(spaceName)
	b.space = &spaceRefs{}
	s.head("Space", "Outer dimensions with insulation, from the case; areas and volumes are formulas. Small things hang above the vessel and take no floor.")
	at := place{1, 4}
	for side := range sideOrder() {
		at = s.spaceTable(side, at)
	}
	s.spaceSums(at)
	s.widths(54, 15, 15, 11, 13, 13, 13, 10, 13, 13)
	at = s.fitTable(at.down(4))
	b.space.next = s.startTable(s.waterTable(at))
}

// spaceTable lists the things of an option and the room that they take.
func (s *sheet) spaceTable(side int, at place) place {
	things, err := s.book.doc.Case.Things(compare.Side(side))
	s.book.keep(err)
	taken, err := space.Measure(things)
	s.book.keep(err)
	s.text(at, heading, capital(blockName(side)))
	s.tops(at.down(1), 42, "Thing", "Width, mm", "Depth, mm", "Height, mm", "Clear at each side, mm", "Clear in front, mm", "Clear above, mm", "Hangs above", "Own floor, m²", "Own volume, l")
	first := at.down(2)
	for i := range things {
		s.thing(&things[i], first.down(i))
	}
	last := first.down(len(things) - 1)
	s.book.space.envelope[side].list = things
	return s.envelope(side, &taken, first, last)
}

func (s *sheet) thing(t *space.Item, p place) {
	in := s.book.inputs
	s.foreign(p, capital(t.Name))
	var cells []term
	for i, v := range []float64{t.WidthMM, t.DepthMM, t.HeightMM, t.ClearSideMM, t.ClearFrontMM, t.ClearAboveMM} {
		cells = append(cells, s.number(p.right(1+i), style{simulated, formatWhole}, v))
	}
	hangs := noWord
	if t.Above {
		hangs = yesWord
	}
	s.text(p.right(7), outcome, hangs)
	floor := quotient(times(cells[0], cells[1]), in.mm2PerM2)
	onFloor := term{text: p.right(7).String() + `="` + noWord + `"`, value: !t.Above, loose: true}
	s.live(p.right(8), style{derived, formatTwo}, choose(onFloor, floor, zero()))
	s.live(p.right(9), style{derived, formatOne}, quotient(times(cells[0], cells[1], cells[2]), in.mm3PerL))
}

// envelope gives the room that all things take together. Its width and height
// come from the arrangement, side by side on the floor and in rows above; depth
// and free space in front are the largest of all.
func (s *sheet) envelope(side int, taken *space.Footprint, first, last place) place {
	in, p := s.book.inputs, last.down(1)
	s.text(p, total, "Envelope, clearances included")
	width := s.number(p.right(1), style{simulated, formatWhole}, taken.WidthMM)
	depth := s.live(p.right(2), style{total, formatWhole}, call("MAX", taken.DepthMM, s.span(first.right(2), last.right(2)).text))
	height := s.number(p.right(3), style{simulated, formatWhole}, taken.HeightMM)
	front := s.live(p.right(5), style{total, formatWhole}, call("MAX", taken.FrontMM, s.span(first.right(5), last.right(5)).text))
	e := &s.book.space.envelope[side]
	e.width, e.depth, e.height, e.front, e.things = width, depth, height, front, [2]place{first, last}
	s.text(p.down(1), label, "Share of the floor that is lost to other use")
	share := s.number(p.down(1).right(8), style{simulated, formatTwo}, s.book.comparison().Options.Of(compare.Side(side)).FloorShare)
	s.text(p.down(2), total, "Floor that counts, m²")
	s.book.space.floor[side] = s.live(p.down(2).right(8), style{total, formatTwo}, times(quotient(times(width, plus(depth, front)), in.mm2PerM2), share))
	s.book.space.litres[side] = s.live(p.right(9), style{total, formatOne}, quotient(times(width, depth, height), in.mm3PerL))
	return p.down(4)
}

// spaceSums sets the options side by side.
func (s *sheet) spaceSums(at place) {
	s.text(at, heading, "Difference: compact store minus cylinder")
	r := s.book.space
	s.text(at.down(1), label, "Floor area with clearances, m²")
	r.floorGap = s.live(at.down(1).right(1), style{total, signed(formatTwo)}, minus(r.floor[0], r.floor[1]))
	s.text(at.down(2), label, "Cupboard volume, l")
	r.litresGap = s.live(at.down(2).right(1), style{total, signed(formatOne)}, minus(r.litres[0], r.litres[1]))
}

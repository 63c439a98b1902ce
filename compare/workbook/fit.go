package workbook

import (
	"dhwcompare/compare/space"
	"dhwcompare/compare/wording"
)

// roomRefs are the inner dimensions of the place that there is, mm; 0 is not
// stated and limits nothing.
type roomRefs struct{ width, depth, height, doorWidth, doorHeight, front term }

// room writes the place that there is. It takes no part in the simulation.
func (w *assumptionsWriter) room(refs *inputRefs) {
	r := &w.book.doc.Case.Room
	put := func(key, name, meaning string, value float64) term {
		const most = 20_000
		return w.put(row{key: "room." + key, name: "Room_" + name, meaning: meaning + "; 0: not stated", unit: "mm", value: value, format: formatWhole, most: most})
	}
	refs.room = roomRefs{
		width:      put("width_mm", "width_mm", "place for the hot water: inner width", r.WidthMM),
		depth:      put("depth_mm", "depth_mm", "place for the hot water: inner depth", r.DepthMM),
		height:     put("height_mm", "height_mm", "place for the hot water: inner height", r.HeightMM),
		doorWidth:  put("door_width_mm", "door_width_mm", "width of the opening that a vessel passes upright", r.DoorWidthMM),
		doorHeight: put("door_height_mm", "door_height_mm", "height of that opening", r.DoorHeightMM),
		front:      put("front_free_mm", "front_free_mm", "free floor before the opening, which serves as space in front", r.FrontFreeMM),
	}
	refs.designStarts = w.put(row{key: "heat_pump.design_starts", name: "Design_starts", meaning: "starts that the compressor is designed for; 0: not stated",
		value: w.book.doc.Case.HeatPump.DesignStarts, format: formatWhole, most: 10 * mostMoney})
}

// envelopeRefs are the dimensions of all that an option needs room for.
type envelopeRefs struct {
	width, depth, height, front term
	things                      [2]place // first and last of the things
	list                        []space.Item
}

// Columns of the things that a fit looks at.
const (
	thingWidthCol  = 2
	thingDepthCol  = 3
	thingHeightCol = 4
	thingHangsCol  = 8
)

// fitTable works out whether each option fits the place: as it stands, or turned
// by a quarter, and all that stands through the opening.
func (s *sheet) fitTable(at place) place {
	r := s.book.space
	s.breakBefore(at)
	s.text(at, heading, "Does it fit the place stated on the sheet Assumptions?")
	s.tops(at.down(1), 30, "Question", "Compact store", "Cylinder")
	answers := []struct {
		words string
		of    func(e *envelopeRefs) term
	}{
		{"Fits facing the opening", s.fitsStraight},
		{"Fits turned, facing a side wall", s.fitsTurned},
		{"Things that stand and do not pass the opening", s.stuck},
	}
	p := at.down(1)
	var found [3][2]term
	for i, a := range answers {
		p = p.down(1)
		s.text(p, label, a.words)
		for side := range sideOrder() {
			t := a.of(&r.envelope[side])
			if _, yes := t.value.(bool); yes {
				t = yesOrNo(t)
			}
			found[i][side] = s.live(p.right(1+side), style{rightFigure, formatWhole}, t)
		}
	}
	p = p.down(1)
	s.text(p, total, "Fits?")
	for side := range sideOrder() {
		r.fits[side] = s.live(p.right(1+side), style{look: strongRight}, s.fits(found[0][side], found[1][side], found[2][side]))
		s.fitWords(side, p.down(1+side))
	}
	return p.down(4)
}

// fits puts the answers together. Without a place there is nothing to answer.
func (s *sheet) fits(straight, turned, stuck term) term {
	in := &s.book.inputs.room
	dimensions := []term{in.width, in.depth, in.height, in.doorWidth, in.doorHeight}
	stated := compared(plus(dimensions[0], dimensions[1:]...), ">", zero(), plus(dimensions[0], dimensions[1:]...).num() > 0)
	either := straight.value == yesWord || turned.value == yesWord
	yes := words(yesWord).text
	ok := call("AND", either && stuck.num() == 0, "OR("+straight.text+"="+yes+","+turned.text+"="+yes+")", stuck.text+"=0")
	return choose(stated, yesOrNo(ok), words(noPlaceWord))
}

// noPlaceWord is the answer where no dimension of the place is stated.
const noPlaceWord = "no place stated"

// fitWords says as simulated what stands in the way.
func (s *sheet) fitWords(side int, p place) {
	f := s.book.comparison().Options.Of(sideOrder()[side]).Fit
	if f == nil {
		return
	}
	s.foreignAs(p, style{look: sentence}, "As simulated: the "+blockName(side)+" "+wording.InPrint(f.Text)+".")
	s.book.expect(capital(blockName(side))+": fits the place", s.book.space.fits[side], programWord(f.Fits))
}

// within holds a length against one of the place.
func within(need, have term) term {
	ok := have.num() == 0 || need.num() <= have.num()
	return call("OR", ok, have.text+"=0", need.text+"<="+have.text)
}

func allOf(list ...term) term {
	yes, texts := true, make([]string, len(list))
	for i, t := range list {
		yes, texts[i] = yes && t.value == true, t.text
	}
	return call("AND", yes, texts...)
}

// fitsStraight counts free floor before the opening as space in front.
func (s *sheet) fitsStraight(e *envelopeRefs) term {
	in := &s.book.inputs.room
	ahead := minus(e.front, in.front)
	inFront := call("MAX", max(0, ahead.num()), "0", ahead.text)
	return allOf(within(e.width, in.width), within(plus(e.depth, inFront), in.depth), within(e.height, in.height))
}

// fitsTurned needs the space in front inside.
func (s *sheet) fitsTurned(e *envelopeRefs) term {
	in := &s.book.inputs.room
	return allOf(within(plus(e.depth, e.front), in.width), within(e.width, in.depth), within(e.height, in.height))
}

// stuck counts what stands and does not pass the opening upright, narrow side
// ahead.
func (s *sheet) stuck(e *envelopeRefs) term {
	in := &s.book.inputs.room
	column := func(c int) string { return s.span(place{c, e.things[0].row}, place{c, e.things[1].row}).text }
	n := 0.0
	for i := range e.list {
		t := &e.list[i]
		tooWide := in.doorWidth.num() > 0 && min(t.WidthMM, t.DepthMM) > in.doorWidth.num()
		tooHigh := in.doorHeight.num() > 0 && t.HeightMM > in.doorHeight.num()
		if !t.Above && (tooWide || tooHigh) {
			n++
		}
	}
	wide := "(" + in.doorWidth.text + ">0)*(" + column(thingWidthCol) + ">" + in.doorWidth.text + ")*(" + column(thingDepthCol) + ">" + in.doorWidth.text + ")"
	high := "(" + in.doorHeight.text + ">0)*(" + column(thingHeightCol) + ">" + in.doorHeight.text + ")"
	standing := "(" + column(thingHangsCol) + "=" + words(noWord).text + ")"
	return call("SUMPRODUCT", n, standing+"*(("+wide+"+"+high+")>0)")
}

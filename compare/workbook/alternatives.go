package workbook

import (
	"slices"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// hasAlternatives reports whether alternatives or equal service were looked at.
func hasAlternatives(c *compare.Comparison) bool {
	return len(c.Alternatives) > 0 || hasEqualService(c) || c.Options.Compact.CheapestWindows != nil || c.Options.Cylinder.CheapestWindows != nil
}

func hasEqualService(c *compare.Comparison) bool {
	for _, side := range sideOrder() {
		if e := &c.Options.Of(side).EqualService; e.Trial != nil || e.Note != "" {
			return true
		}
	}
	return false
}

// Columns of the sheet: words, the trial, then settings or changes.
const (
	altTrialCol  = 2
	altChangeCol = altTrialCol + trialCols
	altCols      = altChangeCol + 3
)

func (b *book) writeAlternatives() {
	s, c := b.sheet(alternativesName), b.comparison()
	s.head("Alternatives: the same home with one thing changed, and what equal service takes", "Difference is compact store minus cylinder; a change is against the case as it is, over the same few years.")
	s.frozenNote(place{1, 3})
	s.widths(52)
	s.columnWidth(2, altCols, 11)
	at := place{1, 6}
	if hasEqualService(c) {
		at = s.equalService(at)
	}
	if len(c.Alternatives) > 0 {
		at = s.alternatives(at)
	}
	for side := range sideOrder() {
		if w := c.Options.Of(compare.Side(side)).CheapestWindows; w != nil {
			at = s.windowsTried(side, w, at)
		}
	}
	s.lay(page{onePage: true, last: place{altCols, at.row - 2}})
}

// equalService sets the cheapest ways to keep the service rule side by side.
func (s *sheet) equalService(at place) place {
	s.text(at, heading, "Equal service: the cheapest setting at which each option keeps the service rule")
	s.tops(at.down(1), 44, slices.Concat([]string{"Option"}, s.book.trialTops(), []string{"Setpoint as set up, °C", "Setpoint, °C", "Change, K", "Shower limiter, l/min"})...)
	var refs [2]trialRef
	p := at.down(2)
	for side := range sideOrder() {
		refs[side] = s.equalOption(side, p)
		p = p.down(1)
	}
	s.text(p, total, "Difference")
	q := place{altTrialCol, p.row}
	s.live(q.right(1), style{rightFigure, signed(formatTwo)}, gap(refs[0].failing, refs[1].failing))
	s.live(q.right(4), style{rightFigure, signed(formatTwo)}, gap(refs[0].cost, refs[1].cost))
	s.live(q.right(5), style{rightFigure, signed(formatWhole)}, gap(refs[0].electricity, refs[1].electricity))
	s.live(q.right(7), style{rightFigure, signed(formatOne)}, gap(refs[0].runs, refs[1].runs))
	for side := range sideOrder() {
		if note := s.book.comparison().Options.Of(compare.Side(side)).EqualService.Note; note != "" {
			p = p.down(1)
			s.foreignAs(p, style{look: sentence}, capital(blockName(side))+": "+wording.InPrint(note)+".")
		}
	}
	return p.down(2)
}

func (s *sheet) equalOption(side int, p place) trialRef {
	o := s.book.comparison().Options.Of(compare.Side(side))
	e := &o.EqualService
	s.text(p, label, capital(blockName(side)))
	q := place{altChangeCol, p.row}
	stands := s.number(q, style{simulated, formatOne}, o.SetpointC)
	if e.Trial == nil {
		none := s.numberOrNone(q.right(1), formatOne, 0, false)
		return trialRef{failing: none, cost: none, electricity: none, runs: none}
	}
	setpoint := s.number(q.right(1), style{simulated, formatOne}, e.SetpointC)
	s.live(q.right(2), style{derived, signed(formatOne)}, minus(setpoint, stands))
	s.numberOrNone(q.right(3), formatOne, e.ShowerLimit, e.ShowerLimit > 0)
	return s.trial(place{altTrialCol, p.row}, e.Trial, capital(blockName(side))+" at equal service")
}

// alternatives writes a table for each option, and one for the difference.
func (s *sheet) alternatives(at place) place {
	list := s.book.comparison().Alternatives
	refs := make([][2]trialRef, len(list))
	for side := range sideOrder() {
		at = s.alternativesOf(side, refs, at)
	}
	s.text(at, heading, "Alternatives: difference")
	s.tops(at.down(1), 44, "Alternative", "", "Failing showers a year", "", "", "Cost a year, "+s.book.currency(), "Electricity, kWh a year", "", "Runs for hot water a day")
	p := at.down(2)
	for i := range list {
		s.text(p, label, capital(list[i].Name))
		q, a, b := place{altTrialCol, p.row}, &refs[i][0], &refs[i][1]
		s.live(q.right(1), style{rightFigure, signed(formatTwo)}, gap(a.failing, b.failing))
		s.live(q.right(4), style{rightFigure, signed(formatTwo)}, gap(a.cost, b.cost))
		s.live(q.right(5), style{rightFigure, signed(formatWhole)}, gap(a.electricity, b.electricity))
		s.live(q.right(7), style{rightFigure, signed(formatOne)}, gap(a.runs, b.runs))
		p = p.down(1)
	}
	return p.down(1)
}

// alternativesOf writes one option's trials and what each changes.
func (s *sheet) alternativesOf(side int, refs [][2]trialRef, at place) place {
	s.text(at, heading, "Alternatives: "+blockName(side))
	heads := append([]string{"Alternative"}, s.book.trialTops()...)
	s.tops(at.down(1), 44, append(heads, "Change of failing showers", "Change of cost, "+s.book.currency())...)
	p := at.down(2)
	for i := range s.book.comparison().Alternatives {
		refs[i][side] = s.alternativeOf(side, i, p)
		was, is := &refs[0][side], &refs[i][side]
		q := place{altChangeCol, p.row}
		s.live(q, style{rightFigure, signed(formatTwo)}, gap(is.failing, was.failing))
		s.live(q.right(1), style{rightFigure, signed(formatTwo)}, gap(is.cost, was.cost))
		p = p.down(1)
	}
	return p.down(1)
}

func (s *sheet) alternativeOf(side, i int, p place) trialRef {
	a := &s.book.comparison().Alternatives[i]
	s.text(p, label, capital(a.Name))
	t := a.Compact
	if side == int(compare.SideCylinder) {
		t = a.Cylinder
	}
	q := place{altTrialCol, p.row}
	if t == nil {
		none := s.numberOrNone(q.right(1), formatOne, 0, false)
		return trialRef{failing: none, cost: none, electricity: none, runs: none}
	}
	return s.trial(q, t, capital(blockName(side))+", "+a.Name)
}

// windowsTried lists the hours of heating that were tried on the first tariff.
func (s *sheet) windowsTried(side int, w *compare.WindowChoice, at place) place {
	s.text(at, heading, "Hours of heating that were tried on the first tariff: "+blockName(side))
	s.tops(at.down(1), 44, "Hours (wall clock)", "Hours a day", "Cost a year, "+s.book.currency(), "Failing showers a year", "Heat left unmet", "Serves?", "Saved a year, "+s.book.currency(), "More failing showers")
	p := at.down(2)
	var stated [2]term
	for i := range w.Tried {
		t := &w.Tried[i]
		hours := "at any time"
		if len(t.Windows) > 0 {
			hours = strings.Join(t.Windows, ", ")
		}
		if i == 0 {
			hours += " (as stated)"
		}
		s.foreign(p, hours)
		s.number(p.right(1), style{simulated, formatOne}, t.HoursADay)
		now := [2]term{s.number(p.right(2), style{simulated, formatTwo}, t.Cost), s.number(p.right(3), style{simulated, formatTwo}, t.Failing)}
		s.number(p.right(4), style{simulated, "0.00 %"}, t.Unmet)
		s.yesNo(p.right(5), t.Serves)
		if i == 0 {
			stated = now
		}
		s.live(p.right(6), style{derived, signed(formatTwo)}, minus(stated[0], now[0]))
		s.live(p.right(7), style{derived, signed(formatTwo)}, minus(now[1], stated[1]))
		p = p.down(1)
	}
	return p.down(1)
}

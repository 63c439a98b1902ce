package workbook

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// summaryRow is one deciding figure and the sheet on which it is worked out.
type summaryRow struct{ figure, where string }

func summaryRows() []summaryRow {
	return []summaryRow{
		{"cost_per_year", billsName}, {"carbon_kg_per_year", monthsName}, {"electricity_kwh", monthsName}, {"whole_house_electricity_kwh", monthsName},
		{"system_efficiency", monthsName}, {"heat_pump_cop", monthsName}, {"heat_to_taps_kwh", monthsName}, {"unmet_heat_kwh", monthsName},
		{"failing_showers_per_year", monthsName}, {"too_cold_minutes_per_year", monthsName}, {"wait_minutes_per_year", monthsName},
		{"starts_per_day", monthsName}, {"minutes_per_run", monthsName}, {"floor_area_m2", spaceName}, {"space_l", spaceName},
	}
}

// The sheet's last column, and the characters of body text that a line across
// all columns holds: a little fewer than fit, as fonts differ between programs.
const (
	summaryCols  = 8
	summaryChars = 142
)

func (b *book) writeSummary() {
	s := b.sheet(summaryName)
	s.widths(38, 8, 13, 13, 13, 12, 12, 16)
	s.head("Hot water from a heat pump: compact store or cylinder", "")
	at := s.lines(place{1, 2}, given, b.titleLine())
	at = s.lines(at.down(1), verdict, wording.InPrint(b.comparison().Verdict.Text))
	at = s.pointToReasons(at)
	at = s.liveFinding(at.down(1))
	at = s.deciding(at.down(1))
	at = s.tariffLines(at.down(1))
	at = s.cautions(at.down(1))
	at = s.whereToLook(at.down(1))
	s.lay(page{portrait: true, onePage: true, last: place{summaryCols, at.row}})
}

// pointToReasons says where the reasons stand: they are too long for one page.
func (s *sheet) pointToReasons(at place) place {
	s.link(at, reasonsName)
	s.text(at.right(1), sentence, fmt.Sprintf("gives %d reasons for this verdict, of the inputs as simulated.", len(s.book.comparison().Verdict.Reasons)))
	return at.down(1)
}

// titleLine names the case and its two options.
func (b *book) titleLine() string {
	c := b.comparison()
	line := wording.Sprintf("Compact store of %.0f l at %.0f °C against a cylinder of %.0f l at %.0f °C; mean of %d simulated years.",
		c.Options.Compact.VolumeL, c.Options.Compact.SetpointC, c.Options.Cylinder.VolumeL, c.Options.Cylinder.SetpointC, c.Years)
	if c.Title != "" {
		line = c.Title + ". " + line
	}
	return line
}

// lines writes paragraphs across the page, one below the other.
func (s *sheet) lines(at place, l look, texts ...string) place {
	for _, text := range texts {
		s.paragraph(at, summaryCols, summaryChars, l, text)
		at = at.down(1)
	}
	return at
}

// liveFinding says what follows from the inputs as they stand in the workbook.
func (s *sheet) liveFinding(at place) place {
	b := s.book
	s.text(at, heading, "With the prices and judgements as they stand on the sheet Assumptions")
	rows := []liveRow{
		{"Take", b.finding.recommend},
		{"Running cost", b.finding.cost},
		{"Inputs changed since the simulation", b.inputs.changed},
		{"Checks of this workbook", b.overall},
	}
	s.liveRows(at, 1, rows)
	s.liveRows(at.right(5), 2, []liveRow{
		{"Service, compact store", b.finding.meets[0]},
		{"Service, cylinder", b.finding.meets[1]},
		{"Fits, compact store", b.space.fits[0]},
		{"Fits, cylinder", b.space.fits[1]},
	})
	none := compared(b.inputs.changed, "=", zero(), b.inputs.changed.num() == 0)
	at = at.down(1 + len(rows))
	s.live(at, style{look: sentence}, choose(none, words("No input has been changed: the verdict above holds."), words("Inputs have been changed: the verdict above, and its reasons, are of the inputs as simulated.")))
	return at.down(1)
}

// liveRow is one finding in words.
type liveRow struct {
	words string
	value term
}

// liveRows writes findings below each other, so many columns from their words.
func (s *sheet) liveRows(at place, columns int, rows []liveRow) {
	for i, r := range rows {
		p := at.down(1 + i)
		s.text(p, sentence, r.words)
		s.live(p.right(columns), style{look: answer}, r.value)
	}
}

// deciding sets the deciding figures side by side.
func (s *sheet) deciding(at place) place {
	s.text(at, heading, "Deciding figures, mean year")
	s.tops(at.down(1), 30, "Figure", "Unit", "Compact store", "Cylinder", "Difference", "90 % interval, low", "90 % interval, high", "Worked out on")
	p := at.down(2)
	for _, r := range summaryRows() {
		for _, f := range compare.Figures() {
			if f.Name == r.figure {
				s.decidingRow(p, f, r.where)
				p = p.down(1)
			}
		}
	}
	p = s.spellLines(s.lifeLines(p))
	s.paragraph(p, summaryCols, summaryChars+10, note, "Difference is compact store minus cylinder. The interval is of the mean difference over the simulated years: it covers "+s.book.doc.Case.WhatVaries()+", not all that is uncertain. Costs are of "+s.book.comparison().CostBoundary+".")
	return p.down(1)
}

func (s *sheet) decidingRow(p place, f compare.Figure, where string) {
	var option [2]term
	for side := range sideOrder() {
		option[side], _ = s.book.figure(side, f.Name)
	}
	spread := s.book.risk.rows[f.Name][differenceBlock]
	s.text(p, label, s.book.comparison().Marked(labelOf(f), f.Name))
	s.pair(p, pairLine{unit: s.book.unitOf(f), format: decimals(f.Decimals), option: option, low: spread.low, high: spread.high, where: where})
}

// pairLine sets a figure of both options side by side, with the interval of the
// difference if there is one.
type pairLine struct {
	unit, format string
	option       [2]term
	low, high    term
	where        string
}

// pair writes a line beside its words.
func (s *sheet) pair(p place, l pairLine) {
	s.text(p.right(1), unit, l.unit)
	a := s.live(p.right(2), style{derived, l.format}, l.option[0])
	b := s.live(p.right(3), style{derived, l.format}, l.option[1])
	s.live(p.right(4), style{strong, signed(l.format)}, minus(a, b))
	if l.low.text != "" {
		s.live(p.right(5), style{derived, signed(l.format)}, l.low)
		s.live(p.right(6), style{derived, signed(l.format)}, l.high)
	}
	s.link(p.right(7), l.where)
}

// lifeLines adds the cost over the whole life, and the price of the space that
// the compact store frees.
func (s *sheet) lifeLines(p place) place {
	b := s.book
	s.text(p, label, "Whole-life cost as an even yearly payment")
	s.pair(p, pairLine{unit: b.currency(), format: formatWhole, option: b.costs.annual, low: b.costs.low, high: b.costs.high, where: lifeName})
	for _, l := range []struct {
		words, unit string
		value       term
		where       string
	}{
		{"Price of a square metre freed, a year", b.currency(), b.spacePrice.perM2, spaceName},
		{"Break-even factor on unit rates", "", b.costs.breakEven[0], lifeName},
	} {
		p = p.down(1)
		s.text(p, label, l.words)
		s.text(p.right(1), unit, l.unit)
		s.live(p.right(4), style{strongRight, formatTwo}, l.value)
		s.link(p.right(7), l.where)
	}
	return p.down(1)
}

// spellLines adds what hard weather does.
func (s *sheet) spellLines(p place) place {
	for i := range s.book.spells {
		w := &s.book.spells[i]
		s.text(p, label, w.words)
		s.pair(p, pairLine{format: formatOne, option: w.failing, where: spellsName})
		p = p.down(1)
	}
	return p
}

// tariffLines sets the costs on every tariff side by side.
func (s *sheet) tariffLines(at place) place {
	b := s.book
	s.text(at, heading, "Cost of a year on each tariff, without standing charge")
	s.tops(at.down(1), 30, "Tariff", "Unit", "Compact store", "Cylinder", "Difference", "90 % interval, low", "90 % interval, high", "Worked out on")
	p := at.down(2)
	for i, t := range b.comparison().Tariffs {
		spread := b.risk.rows[costKey(i)][differenceBlock]
		s.foreign(p, t.Name)
		s.pair(p, pairLine{unit: b.currency(), format: formatWhole, option: b.bills.tariffs[i].cost, low: spread.low, high: spread.high, where: billsName})
		p = p.down(1)
	}
	return p
}

// link leads to a sheet of this workbook.
func (s *sheet) link(p place, name string) {
	s.text(p, jump, name)
	s.book.keep(s.book.file.SetCellHyperLink(s.name, p.String(), s.book.sheet(name).prefix()+"A1", "Location"))
}

// cautions lists what a reader must know.
func (s *sheet) cautions(at place) place {
	s.text(at, heading, "Cautions; those about a figure above stand with its mark,"+compare.WarningMark)
	at = at.down(1)
	for _, w := range s.book.comparison().Warnings {
		at = s.lines(at, given, told(w.Text))
	}
	return s.lines(at, prose, "A comparison by simulation, not a design. Scald, legionella, pressure and electricity can hurt people: follow local codes and have the work done by licensed people (see About).")
}

// whereToLook says what stands where, in two columns.
func (s *sheet) whereToLook(at place) place {
	s.text(at, heading, "Where to look")
	list := contents(s.book.doc)[1:] // all but this sheet
	rows := (len(list) + 1) / 2
	for i, e := range list {
		p := at.down(1 + i%rows)
		words := p.right(1)
		if i >= rows {
			p.col = secondListCol
			words.col = secondListCol + 2 // a name is wider than one column there
		}
		s.link(p, e.name)
		s.text(words, sentence, e.words)
	}
	return at.down(rows)
}

// secondListCol is where the second column of the list of sheets begins.
const secondListCol = 4

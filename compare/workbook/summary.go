package workbook

import (
	"fmt"

	"dhwcompare/compare"
)

// summaryRow is one deciding figure.
type summaryRow struct {
	figure string // as in the comparison
	where  string // the sheet on which it is worked out
}

func summaryRows() []summaryRow {
	return []summaryRow{
		{"cost_per_year", billsName}, {"electricity_kwh", monthsName}, {"system_efficiency", monthsName}, {"heat_pump_cop", monthsName},
		{"heat_to_taps_kwh", monthsName}, {"unmet_heat_kwh", monthsName}, {"failing_showers_per_year", monthsName}, {"too_cold_minutes_per_year", monthsName},
		{"wait_minutes_per_year", monthsName}, {"starts_per_day", monthsName}, {"minutes_per_run", monthsName},
		{"floor_area_m2", spaceName}, {"space_l", spaceName},
	}
}

// summaryCols is the last column; summaryChars the characters that a line across
// all columns holds.
const (
	summaryCols  = 8
	summaryChars = 112
)

func (b *book) writeSummary() {
	s := b.sheet(summaryName)
	s.widths(35, 9, 12, 12, 12, 11, 11, 15)
	s.text(place{1, 1}, title, "Hot water from a heat pump: compact store or cylinder")
	s.height(1, 24)
	at := place{1, 2}
	at = s.lines(at, style{look: given}, b.titleLine())
	at = s.lines(at.down(1), style{look: verdict}, b.comparison().Verdict.Text)
	at = s.lines(at, style{look: prose}, b.comparison().Verdict.Reasons...)
	at = s.liveFinding(at.down(1))
	at = s.deciding(at.down(1))
	at = s.cautions(at.down(1))
	at = s.whereToLook(at.down(1))
	s.lay(page{portrait: true, onePage: true, last: place{summaryCols, at.row - 1}})
}

// titleLine names the case and its two options.
func (b *book) titleLine() string {
	c := b.comparison()
	line := fmt.Sprintf("Compact store of %.0f l at %.0f °C against a cylinder of %.0f l at %.0f °C, mean of %d simulated years.",
		c.Options.Compact.VolumeL, c.Options.Compact.SetpointC, c.Options.Cylinder.VolumeL, c.Options.Cylinder.SetpointC, c.Years)
	if name := clean(c.Title); name != "" {
		line = name + ". " + line
	}
	return line
}

// lines writes paragraphs across the page, one below the other.
func (s *sheet) lines(at place, st style, texts ...string) place {
	for _, text := range texts {
		s.paragraph(at, summaryCols, summaryChars, st, clean(text))
		at = at.down(1)
	}
	return at
}

// liveFinding says what follows from the inputs as they stand in the workbook.
func (s *sheet) liveFinding(at place) place {
	b := s.book
	s.text(at, heading, "With the prices and judgements of the sheet Assumptions")
	rows := []struct {
		words string
		value term
	}{
		{"Take", b.finding.recommend},
		{"Running cost", b.finding.cost},
		{"Service rule met by the compact store", b.finding.meets[0]},
		{"Service rule met by the cylinder", b.finding.meets[1]},
		{"Inputs changed since the simulation (0: the words above hold)", b.inputs.changed},
		{"Checks of this workbook", b.overall},
	}
	for i, r := range rows {
		p := at.down(1 + i)
		s.text(p, label, r.words)
		s.live(p.right(2), style{look: answer}, r.value)
	}
	return at.down(1 + len(rows))
}

// deciding sets the deciding figures side by side.
func (s *sheet) deciding(at place) place {
	b := s.book
	s.text(at, heading, "Deciding figures, mean year")
	s.tops(at.down(1), 42, "Figure", "Unit", "Compact store", "Cylinder", "Difference", "90 % interval, low", "90 % interval, high", "Worked out on")
	p := at.down(2)
	for _, r := range summaryRows() {
		for _, f := range compare.Figures() {
			if f.Name == r.figure {
				s.decidingRow(p, f, r.where)
			}
		}
		p = p.down(1)
	}
	s.paragraph(p, summaryCols, summaryChars+10, style{look: note}, "Difference is compact store minus cylinder. The interval is of the mean difference over the simulated years: it covers weather and habits, not all that is uncertain. Costs: "+b.comparison().CostBoundary+".")
	return p.down(1)
}

func (s *sheet) decidingRow(p place, f compare.Figure, where string) {
	unit := f.Unit
	if unit == "money" {
		unit = s.book.comparison().Currency
	}
	format := decimals(f.Decimals)
	s.text(p, label, capital(f.Label))
	s.foreign(p.right(1), unit)
	var cells [2]term
	for side := range sideOrder() {
		t, _ := s.book.figure(side, f.Name)
		cells[side] = s.live(p.right(2+side), style{derived, format}, t)
	}
	s.live(p.right(4), style{total, signed(format)}, minus(cells[0], cells[1]))
	if spread, ok := s.book.risk.rows[f.Name]; ok {
		s.live(p.right(5), style{derived, signed(format)}, spread[differenceBlock].low)
		s.live(p.right(6), style{derived, signed(format)}, spread[differenceBlock].high)
	}
	s.link(p.right(7), where)
}

// link leads to a sheet of this workbook.
func (s *sheet) link(p place, name string) {
	s.text(p, jump, name)
	s.book.keep(s.book.file.SetCellHyperLink(s.name, p.String(), s.book.sheet(name).prefix()+"A1", "Location"))
}

// cautions lists what a reader must know.
func (s *sheet) cautions(at place) place {
	s.text(at, heading, "Cautions")
	at = at.down(1)
	for _, w := range s.book.comparison().Warnings {
		at = s.lines(at, style{look: given}, capital(w.Text)+".")
	}
	return s.lines(at, style{look: prose}, "This is a comparison by simulation, not a design. Scald, legionella, pressure and electricity can hurt people: follow local codes and have the work done by licensed people (see About).")
}

// whereToLook says what stands where.
func (s *sheet) whereToLook(at place) place {
	s.text(at, heading, "Where to look")
	at = at.down(1)
	for _, l := range []struct{ name, words string }{
		{assumptionsName, "every input; prices and judgements may be changed there"},
		{monthsName, "heat, electricity, starts and service by month; drawn on the sheet Charts"},
		{billsName, "what the electricity costs on each tariff"},
		{riskName, "spread over the years, and how the recommendation follows"},
		{drawsName, "each draw-off that fails in the shown year"},
		{checksName, "sums and balances, held against each other"},
	} {
		s.link(at, l.name)
		s.text(at.right(1), label, l.words)
		at = at.down(1)
	}
	return at
}

package workbook

import (
	"dhwcompare/compare"
	"dhwcompare/compare/wording"

	"github.com/xuri/excelize/v2"
)

// Columns of the ladder: step and change, minutes of shower, then the trial and
// what the step changes.
const (
	winterCol     = 3
	ladderTrial   = 5
	ladderChange  = ladderTrial + trialCols
	ladderCols    = ladderChange + 2
	ladderTop     = 7
	ladderTopHigh = 58
	changeChars   = 30 // width of the column of changes
)

// writeSettings shows what each setting buys, and the list for the installer.
func (b *book) writeSettings() {
	s, d := b.sheet(settingsName), b.doc.Settings
	s.head("Settings: what each setting of the compact store is worth, and the list for commissioning", "From an uncommissioned example to the case: each change alone, then all together. A change is against the example.")
	s.frozenNote(place{1, 3})
	s.widths(21, changeChars)
	s.columnWidth(winterCol, ladderCols, 9.5)
	last := s.ladder(d)
	s.ladderChart(last, last.down(2))
	const chartSpace = 20 // rows
	site := last.down(chartSpace)
	s.breakBefore(site)
	at := s.commissioning(d.List, s.measured(last, site))
	s.book.keep(b.file.ProtectSheet(s.name, &excelize.SheetProtectionOptions{SelectLockedCells: true, SelectUnlockedCells: true, FormatColumns: true, FormatRows: true}))
	s.lay(page{titleRows: 2, last: place{ladderCols, at.row}})
}

// ladder writes the steps and gives the place of the last.
func (s *sheet) ladder(d *compare.Settings) place {
	s.text(place{1, ladderTop - 1}, heading, "What each setting is worth")
	heads := append([]string{"Step", "Change", "Shower in winter, min", "Shower in summer, min"}, s.book.trialTops()...)
	s.tops(place{1, ladderTop}, ladderTopHigh, append(heads, "Change of winter shower, min", "Change of failing showers", "Change of cost, "+s.book.currency())...)
	p := place{1, ladderTop}
	var first [3]term
	for i := range d.Steps {
		step := &d.Steps[i]
		p = p.down(1)
		s.text(p, label, capital(step.Name))
		change := wording.InPrint(step.Change)
		s.text(p.right(1), label, change)
		winter := s.number(place{winterCol, p.row}, style{simulated, formatOne}, step.WinterMin)
		s.number(place{winterCol + 1, p.row}, style{simulated, formatOne}, step.SummerMin)
		t := s.trial(place{ladderTrial, p.row}, &step.Trial, "Settings, "+step.Name)
		now := [3]term{winter, t.failing, t.cost}
		if i == 0 {
			first = now
		}
		for j, format := range []string{formatOne, formatTwo, formatTwo} {
			s.live(place{ladderChange + j, p.row}, style{derived, signed(format)}, minus(now[j], first[j]))
		}
		s.height(p.row, lineHeight*linesOf(change, changeChars))
	}
	return p
}

// measured leaves room for the minutes that are measured on site.
func (s *sheet) measured(last, at place) place {
	s.text(at, heading, "Check on site: a shower at the household's flow until it is too cold, from a charged store")
	s.tops(at.down(1), 44, "Shower", "", "Expected, min", "Measured, min", "Measured less expected")
	for i, words := range []string{"In winter", "In summer"} {
		p := at.down(2 + i)
		s.text(p, label, words)
		from := place{winterCol + i, last.row}
		expected := s.live(p.right(2), style{derived, formatOne}, s.ref(from, s.numbers[from]))
		s.blank(p.right(3), "Minutes from when the water is warm until it is too cold.")
		empty := compared(s.ref(p.right(3), ""), "=", words0(), true)
		s.live(p.right(4), style{rightFigure, signed(formatOne)}, choose(empty, words0(), minus(s.ref(p.right(3), 0.0), expected)))
	}
	return at.down(5)
}

// words0 is the empty text.
func words0() term { return words("") }

// longestMeasured is the most minutes that a cell for a measurement takes: a slip
// of the keyboard is caught, not a long test.
const longestMeasured = 600

// blank is a cell for a number that is measured on site.
func (s *sheet) blank(p place, help string) {
	s.styled(p, style{input, formatAny})
	v := excelize.NewDataValidation(true)
	v.Sqref = p.String()
	s.book.keep(v.SetRange(0, longestMeasured, excelize.DataValidationTypeDecimal, excelize.DataValidationOperatorBetween))
	v.SetError(excelize.DataValidationErrorStyleStop, "Out of range", "Give minutes as a number.")
	v.SetInput("Measured on site", help)
	s.book.keep(s.book.file.AddDataValidation(s.name, v))
}

// Columns of the list: a value runs on over empty cells.
const (
	siteValueCol = 3
	siteLeftCol  = 7
)

// commissioning lists what an installer sets, with room for what was found.
func (s *sheet) commissioning(list []compare.Commission, at place) place {
	s.text(at, heading, "List for commissioning: framed cells are for the site, and may be filled in")
	s.tops(at.down(1), 32, "Option", "Setting")
	for c := siteValueCol; c <= ladderCols; c++ {
		s.text(place{c, at.row + 1}, columnTop, "")
	}
	s.text(place{siteValueCol, at.row + 1}, topLeft, "Value")
	s.tops(place{siteLeftCol, at.row + 1}, 32, "Left at", "Measured, min")
	s.text(place{siteLeftCol + 2, at.row + 1}, topLeft, "Why")
	p := at.down(2)
	for _, c := range list {
		s.text(p, label, capital(c.Option))
		s.text(p.right(1), label, capital(c.Setting))
		s.text(place{siteValueCol, p.row}, answer, wording.InPrint(c.Value))
		q := place{siteLeftCol, p.row}
		s.styled(q, style{input, "@"})
		s.blank(q.right(1), "Minutes, where the setting is checked by a test.")
		s.text(q.right(2), unit, capital(wording.InPrint(c.Reason)))
		p = p.down(1)
	}
	return p.down(1)
}

// ladderChart draws the minutes of shower of each step.
func (s *sheet) ladderChart(last, at place) {
	const winterColour, summerColour = "2F6690", "E0A030"
	first := place{1, ladderTop + 1}
	var series []excelize.ChartSeries
	for i, colour := range []string{winterColour, summerColour} {
		p := place{winterCol + i, first.row}
		series = append(series, excelize.ChartSeries{Name: s.absolute(p.down(-1), p.down(-1)), Categories: s.absolute(first, last),
			Values: s.absolute(p, place{p.col, last.row}), Fill: solid(colour)})
	}
	s.drawChart(at, chart{title: "Shower until it is too cold at each step, min", kind: excelize.Col, width: 900, height: 310,
		description: "Minutes of shower in winter and summer at each step of the settings"}, series)
}

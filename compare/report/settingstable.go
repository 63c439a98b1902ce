package report

import (
	"fmt"
	"io"

	"dhwcompare/compare"
)

// Ladder writes what each setting of the compact store buys, and what an installer
// must set. No line is longer than 80 columns, the folder's name excepted.
func Ladder(w io.Writer, doc *compare.Document, folder string) error {
	s := doc.Settings
	return study(w, doc, folder, func(p *page) {
		p.text(fmt.Sprintf("The compact store from an uncommissioned example (common practice, no source) to the settings of the case: each change alone, then all together, over %s.",
			years(s.Years)))
		p.grid(ladderColumns(Plain(doc.Comparison.Currency)), ladderRows(s))
		p.gap()
		p.commissioning(s)
	})
}

func ladderColumns(currency string) []column {
	return []column{
		{[2]string{"", "change"}, 32, true}, {[2]string{"winter", "shower, min"}, 12, false}, {[2]string{"summer", "shower, min"}, 12, false},
		{[2]string{"fail", "/a"}, 8, false}, {[2]string{"runs", "/day"}, 7, false}, {[2]string{"cost", cut(currency, 4) + "/a"}, 9, false},
	}
}

func ladderRows(s *compare.Settings) [][]string {
	var rows [][]string
	for i := range s.Steps {
		step := &s.Steps[i]
		name := step.Change
		if name == "" || i == len(s.Steps)-1 {
			name = step.Name
		}
		rows = append(rows, []string{
			name, fixed(step.WinterMin, 1), fixed(step.SummerMin, 1), fixed(step.Trial.Failing.Mean, 1),
			fixed(step.Trial.RunsADay, 1), fixed(step.Trial.Cost, 0),
		})
	}
	return rows
}

// inset stands before the points of a list under an option.
const inset = "  "

// commissioning lists the settings of each option.
func (p *page) commissioning(s *compare.Settings) {
	p.line("To be set and checked by the installer:")
	option := ""
	for i := range s.List {
		c := &s.List[i]
		if c.Option != option {
			option = c.Option
			p.line(option)
		}
		for _, line := range wrap(fmt.Sprintf("[ ] %s: %s; %s", c.Setting, c.Value, c.Reason), columns-len(inset), "    ") {
			p.line(inset + line)
		}
	}
}

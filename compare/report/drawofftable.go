package report

import (
	"fmt"
	"io"
	"time"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

// Drawoffs writes the minutes of shower by month and state of the heat pump at the
// household's flow, and the other timed tests. No line is longer than 80 columns,
// the folder's name excepted.
func Drawoffs(w io.Writer, doc *compare.Document, folder string) error {
	d := doc.Draws
	flow := d.NearestFlow(doc.Case.Household.ShowerFlowLPerMin)
	return study(w, doc, folder, func(p *page) {
		p.text(fmt.Sprintf("Minutes of shower at %s l/min until it is too cold, from a vessel charged to its setpoint; %s+ is as long as the test lasts.",
			brief(d.FlowsLPerMin[flow]), brief(d.LongestMin)))
		p.grid(stateColumns(d), stateRows(d, flow))
		p.gap()
		p.text(fmt.Sprintf("Other tests. Second: a second shower after a pause of %s minutes. Flow: the largest that never runs cold while the heat pump runs.%s Reheat: after a mean shower.",
			brief(d.PauseMin), bathWords(doc)))
		p.grid(otherGrid(doc))
		p.gap()
		p.rule(doc)
	})
}

const monthWidth, stateWidth = 5, 9

func stateColumns(d *compare.Drawoff) []column {
	short := map[string]string{"full output": "full", "in defrost": "defrost"}
	list := []column{{[2]string{"", "month"}, monthWidth, true}}
	for _, option := range []string{"store,", "cyl.,"} {
		for _, state := range d.States {
			if s, ok := short[state]; ok {
				state = s
			}
			list = append(list, column{[2]string{option, state}, stateWidth, false})
		}
	}
	return list
}

func stateRows(d *compare.Drawoff, flow int) [][]string {
	var rows [][]string
	for m := range d.Compact.ShowerMin {
		row := []string{calendar.ShortMonth(m)}
		for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
			for state := range d.States {
				row = append(row, upTo(d.Of(side).ShowerMin[m][state][flow], d.LongestMin))
			}
		}
		rows = append(rows, row)
	}
	return rows
}

// upTo marks minutes that a test did not outlast.
func upTo(minutes, longest float64) string {
	if minutes >= longest {
		return fixed(longest, 0) + "+"
	}
	return fixed(minutes, 1)
}

// bathWords explain the columns on the bath, where the home has one.
func bathWords(doc *compare.Document) string {
	if !doc.Case.Household.HasBath {
		return ""
	}
	return " Bath: minutes to fill, or - if it ends too cold."
}

// timedTest is one test beside the minutes of shower.
type timedTest struct {
	name string
	of   func(r *compare.DrawoffResults, month int) string
}

func timedTests(doc *compare.Document) []timedTest {
	d := doc.Draws
	list := []timedTest{
		{"second", func(r *compare.DrawoffResults, m int) string { return upTo(r.BackToBack[m].Minutes, d.LongestMin) }},
		{"flow", func(r *compare.DrawoffResults, m int) string { return fixed(r.SteadyFlow[m], 1) }},
	}
	if doc.Case.Household.HasBath {
		list = append(list, timedTest{"bath", bathMinutes})
	}
	return append(list, timedTest{"reheat", func(r *compare.DrawoffResults, m int) string { return fixed(r.RechargeMin[m], 0) }})
}

func bathMinutes(r *compare.DrawoffResults, m int) string {
	if !r.Bath[m].Serves {
		return "-"
	}
	return fixed(r.Bath[m].Minutes, 1)
}

// otherGrid gives the columns and the rows of the other tests.
func otherGrid(doc *compare.Document) ([]column, [][]string) {
	d, tests := doc.Draws, timedTests(doc)
	heads := []column{{[2]string{"", "month"}, monthWidth, true}}
	for _, test := range tests {
		for _, option := range []string{"store", "cyl."} {
			heads = append(heads, column{[2]string{test.name, option}, stateWidth, false})
		}
	}
	var rows [][]string
	for m := range d.Compact.ShowerMin {
		row := []string{calendar.ShortMonth(m)}
		for _, test := range tests {
			row = append(row, test.of(&d.Compact, m), test.of(&d.Cylinder, m))
		}
		rows = append(rows, row)
	}
	return heads, rows
}

// rule says whether the options meet the design rule.
func (p *page) rule(doc *compare.Document) {
	for _, side := range []compare.Side{compare.SideCompact, compare.SideCylinder} {
		r := &doc.Draws.Of(side).Rule
		if r.NeedMin <= 0 {
			continue
		}
		holds := "meets"
		if !r.Holds {
			holds = "does not meet"
		}
		p.text(fmt.Sprintf("Design rule, common practice: at least %s minutes without the heat pump. The %s %s it: %s minutes in %s.",
			brief(r.NeedMin), side, holds, upTo(r.HaveMin, doc.Draws.LongestMin), time.Month(r.Month)))
	}
}

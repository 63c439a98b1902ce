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
		p.text(fmt.Sprintf("Other tests. Second: a second shower after a pause of %s minutes. Flow: the largest that never runs cold while the heat pump runs. Bath: minutes to fill, or - if it ends too cold. Reheat: after a mean shower.",
			brief(d.PauseMin)))
		p.grid(otherColumns(), otherRows(d))
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

func otherColumns() []column {
	list := []column{{[2]string{"", "month"}, monthWidth, true}}
	for _, test := range []string{"second", "flow", "bath", "reheat"} {
		for _, option := range []string{"store", "cyl."} {
			list = append(list, column{[2]string{test, option}, stateWidth, false})
		}
	}
	return list
}

func otherRows(d *compare.Drawoff) [][]string {
	var rows [][]string
	for m := range d.Compact.ShowerMin {
		row := []string{calendar.ShortMonth(m)}
		for _, of := range []func(r *compare.DrawoffResults) string{
			func(r *compare.DrawoffResults) string { return upTo(r.BackToBack[m].Minutes, d.LongestMin) },
			func(r *compare.DrawoffResults) string { return fixed(r.SteadyFlow[m], 1) },
			func(r *compare.DrawoffResults) string {
				if !r.Bath[m].Serves {
					return "-"
				}
				return fixed(r.Bath[m].Minutes, 1)
			},
			func(r *compare.DrawoffResults) string { return fixed(r.RechargeMin[m], 0) },
		} {
			row = append(row, of(&d.Compact), of(&d.Cylinder))
		}
		rows = append(rows, row)
	}
	return rows
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

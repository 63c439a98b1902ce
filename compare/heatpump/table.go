package heatpump

import (
	"fmt"
	"slices"
)

// Row is one line of a unit's own performance table, as measured at full
// output by the method of EN 14511 (means that include defrosting).
type Row struct {
	OutdoorC    float64
	LeavingC    float64
	MaxOutputKW float64
	FullCOP     float64
}

// Limits of a table row: generous round figures (common practice, no source)
// that catch a slipped decimal point or swapped columns.
const (
	tableOutdoorMinC, tableOutdoorMaxC = -30, 45
	tableLeavingMinC, tableLeavingMaxC = 20, 85
	tableOutputMinKW, tableOutputMaxKW = 0.5, 50
	tableCOPMin, tableCOPMax           = 1, 15
)

// tableProblems lists what is wrong with the rows. The grid is looked at once
// every row is sound, and the run of its values once it is complete.
func tableProblems(rows []Row) []Problem {
	for _, check := range []func([]Row) []Problem{rowProblems, gridProblems, orderProblems} {
		if problems := check(rows); len(problems) > 0 {
			return problems
		}
	}
	return nil
}

func rowProblems(rows []Row) []Problem {
	var problems []Problem
	for i, r := range rows {
		for _, n := range r.numbers(i) {
			problems = append(problems, n.problems()...)
		}
	}
	return problems
}

func (r Row) numbers(i int) []Number {
	field := func(name string) string { return fmt.Sprintf("Table[%d].%s", i, name) }
	return []Number{
		{field("OutdoorC"), "C", r.OutdoorC, tableOutdoorMinC, tableOutdoorMaxC, "check the outdoor temperature of this row"},
		{field("LeavingC"), "C", r.LeavingC, tableLeavingMinC, tableLeavingMaxC, "give leaving water, not return water"},
		{field("MaxOutputKW"), "kW", r.MaxOutputKW, tableOutputMinKW, tableOutputMaxKW, "give the output in kilowatts"},
		{field("FullCOP"), "", r.FullCOP, tableCOPMin, tableCOPMax, "give the COP at full output, not in percent"},
	}
}

// gridProblems asks for each outdoor temperature with each leaving temperature, once.
func gridProblems(rows []Row) []Problem {
	outdoorC, waterC := axes(rows)
	if len(outdoorC) < 2 || len(waterC) < 2 {
		return []Problem{{"Table", fmt.Sprintf("has %d outdoor and %d leaving temperatures; two of each are needed to interpolate: add rows",
			len(outdoorC), len(waterC))}}
	}
	var problems []Problem
	for _, a := range outdoorC {
		for _, w := range waterC {
			if text := countProblem(rows, a, w); text != "" {
				problems = append(problems, Problem{"Table", text})
			}
		}
	}
	return problems
}

func countProblem(rows []Row, outdoorC, leavingC float64) string {
	count := 0
	for _, r := range rows {
		if r.OutdoorC == outdoorC && r.LeavingC == leavingC {
			count++
		}
	}
	switch count {
	case 0:
		return fmt.Sprintf("has no row for outdoor %g C with leaving %g C: add it, or drop the other rows at one of these temperatures", outdoorC, leavingC)
	case 1:
		return ""
	default:
		return fmt.Sprintf("has %d rows for outdoor %g C with leaving %g C: keep one", count, outdoorC, leavingC)
	}
}

// orderProblems finds a COP that rises with hotter water: a slip of the pen,
// as no unit makes hotter water for less. Equal COPs come from rounding.
func orderProblems(rows []Row) []Problem {
	g := newGrid(rows)
	width := len(g.waterC)
	var problems []Problem
	for at := range g.fullCOP {
		j := at % width
		if j == 0 || g.fullCOP[at] <= g.fullCOP[at-1] {
			continue
		}
		problems = append(problems, Problem{"Table", fmt.Sprintf(
			"has COP %g at leaving %g C, above COP %g at leaving %g C (outdoor %g C): check both rows, hotter water costs more",
			g.fullCOP[at], g.waterC[j], g.fullCOP[at-1], g.waterC[j-1], g.outdoorC[at/width])})
	}
	return problems
}

// marginProblems finds margins over which the table falls to nonsense.
func (g *grid) marginProblems(outdoorMarginK, leavingMarginK float64) []Problem {
	e := g.extended(outdoorMarginK, leavingMarginK)
	leastW, leastCOP := slices.Min(e.maxW), slices.Min(e.fullCOP)
	if leastW > 0 && leastCOP >= tableCOPMin {
		return nil
	}
	return []Problem{{"Table", fmt.Sprintf(
		"carried on by %g K of outdoor air and %g K of leaving water falls to %.2f kW and COP %.2f: make the margins smaller, or add rows further out",
		outdoorMarginK, leavingMarginK, leastW/1000, leastCOP)}}
}

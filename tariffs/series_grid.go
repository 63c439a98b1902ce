package tariffs

import (
	"slices"

	"dhwcompare/compare/datafile"
)

// place puts every row on the grid of its year and notes rows that are off it,
// double or out of order, and the gaps between them.
func (t *table) place(p *datafile.Problems) []float64 {
	g := newGrid(t)
	for _, r := range t.rows {
		g.put(r, p)
	}
	g.gaps(p)
	return g.values
}

// chooseGrid finds the step and the calendar year of the rows: the step that
// occurs most often, and the year of the row in the middle, so that one wrong row
// at either end does not condemn all others. It leaves the step zero if it finds
// none.
func (t *table) chooseGrid(p *datafile.Problems) {
	if len(t.rows) < 2 {
		p.AddIfNone(1, "%d rows: the file must hold a year of quarter hours, half hours or hours", len(t.rows))
		return
	}
	best, most, others := 0, 0, len(t.rows)-1
	for _, step := range steps {
		n := t.countSteps(int64(step))
		others -= n
		if n > most {
			best, most = step, n
		}
	}
	if most == 0 || others > most {
		i := t.firstOddStep()
		p.Add(t.rows[i].line, "rows are %d minutes apart here: they must be 15, 30 or 60 minutes apart throughout",
			(t.rows[i].atS-t.rows[i-1].atS)/secondsAMinute)
		return
	}
	t.stepS = best
	t.year = t.rows[len(t.rows)/2].yearOf()
}

// firstOddStep gives the first row whose distance to the one before is none of the
// steps.
func (t *table) firstOddStep() int {
	for i := 1; i < len(t.rows); i++ {
		if !slices.Contains(steps[:], int(t.rows[i].atS-t.rows[i-1].atS)) {
			return i
		}
	}
	return 1
}

func (t *table) countSteps(step int64) int {
	n := 0
	for i := 1; i < len(t.rows); i++ {
		if t.rows[i].atS-t.rows[i-1].atS == step {
			n++
		}
	}
	return n
}

// grid is the year of a file, step by step.
type grid struct {
	t          *table
	start, end int64 // seconds since 1970, standard time
	lines      []int // line that filled each step, zero if none
	values     []float64
	last       row // latest row in time so far
}

func newGrid(t *table) *grid {
	g := &grid{t: t, start: yearStart(t.year).Unix(), end: yearStart(t.year + 1).Unix()}
	n := (g.end - g.start) / int64(t.stepS)
	g.lines, g.values = make([]int, n), make([]float64, n)
	return g
}

func (g *grid) put(r row, p *datafile.Problems) {
	step := int64(g.t.stepS)
	i := (r.atS - g.start) / step
	switch {
	case r.atS < g.start || r.atS >= g.end:
		p.Add(r.line, "%s lies outside %d, the year of the file: keep rows from %s to %s",
			g.t.utcText(r.atS), g.t.year, g.t.utcText(g.start), g.t.utcText(g.end-step))
	case (r.atS-g.start)%step != 0:
		p.Add(r.line, "%s is off the %d-minute grid: start each row at a full step", g.t.utcText(r.atS), step/secondsAMinute)
	case g.lines[i] != 0:
		p.Add(r.line, "%s was given on line %d already: keep one (after the clocks go back, local times occur twice; UTC does not)",
			g.t.utcText(r.atS), g.lines[i])
	default:
		if g.last.line != 0 && r.atS < g.last.atS {
			p.Add(r.line, "%s comes after %s on line %d: sort the rows by time", g.t.utcText(r.atS), g.t.utcText(g.last.atS), g.last.line)
		} else {
			g.last = r
		}
		g.lines[i], g.values[i] = r.line, r.value
		return
	}
	g.t.unplaced = append(g.t.unplaced, r.line)
}

// gaps notes each run of missing steps, unless unreadable lines in that very
// place explain it.
func (g *grid) gaps(p *datafile.Problems) {
	slices.Sort(g.t.unplaced)
	before := 0 // line of the last step that is there
	for i := 0; i < len(g.lines); i++ {
		if g.lines[i] != 0 {
			before = g.lines[i]
			continue
		}
		first := i
		for i+1 < len(g.lines) && g.lines[i+1] == 0 {
			i++
		}
		g.noteGap(first, i, before, p)
	}
}

func (g *grid) noteGap(first, last, before int, p *datafile.Problems) {
	after := g.t.lastLine() + 1
	line, n := g.t.lastLine(), last-first+1
	if last+1 < len(g.lines) {
		after = g.lines[last+1]
		line = after
	}
	if g.t.unplacedBetween(before, after) >= n {
		return
	}
	step := int64(g.t.stepS)
	p.Add(line, "%d of %d values are missing near here, %s to %s: add the rows",
		n, len(g.lines), g.t.utcText(g.start+int64(first)*step), g.t.utcText(g.start+int64(last)*step))
}

func (t *table) lastLine() int {
	line := t.rows[len(t.rows)-1].line
	if n := len(t.unplaced); n > 0 {
		line = max(line, t.unplaced[n-1])
	}
	return line
}

func (t *table) unplacedBetween(before, after int) int {
	n := 0
	for _, line := range t.unplaced {
		if line > before && line < after {
			n++
		}
	}
	return n
}

package outline

import (
	"strings"

	"dhwcompare/compare"
)

// Table is figures and words in rows. The first cell of a row is its head.
type Table struct {
	ID, Caption string
	Over        []Over // heads that span several columns, above the others
	Heads       []string
	Words, Tail int // so many columns from the left and from the right hold words, those between figures
	Groups      []Group
	Note        string
}

// Over is a head that spans columns.
type Over struct {
	Text string
	Span int
}

// Group is rows that belong together, under a name of their own, if any.
type Group struct {
	Name string
	Rows [][]string
}

// Columns is how many columns the table has.
func (t *Table) Columns() int { return len(t.Heads) }

// Figures reports whether a column, counted from 0, holds figures.
func (t *Table) Figures(column int) bool {
	return column >= max(t.Words, 1) && column < len(t.Heads)-t.Tail
}

// Begins reports whether a column stands first below a head that spans several,
// the first such head excepted.
func (t *Table) Begins(column int) bool {
	at := 0
	for _, o := range t.Over {
		if at == column {
			return at > 0
		}
		at += o.Span
	}
	return false
}

// FlatHeads gives one head for each column, with the words of the head above it in
// front.
func (t *Table) FlatHeads() []string {
	heads := append([]string(nil), t.Heads...)
	at := 0
	for _, o := range t.Over {
		for i := range o.Span {
			if o.Text != "" {
				heads[at+i] = o.Text + " " + heads[at+i]
			}
		}
		at += o.Span
	}
	return heads
}

// fewRows go on one printed page together.
const fewRows = 16

// Short reports whether the table may be kept on one page.
func (t *Table) Short() bool {
	rows := 0
	for _, g := range t.Groups {
		rows += len(g.Rows) + 1
	}
	return rows <= fewRows
}

// explainMark adds to the note what the mark behind a label means, if there is one.
func (t *Table) explainMark() {
	for _, g := range t.Groups {
		for _, r := range g.Rows {
			if strings.HasSuffix(r[0], compare.WarningMark) {
				t.Note = strings.TrimSpace(t.Note + " What is marked" + compare.WarningMark + " has a warning under Limits.")
				return
			}
		}
	}
}

// add puts a row under the group of a name, which it opens if it is not the last.
func (t *Table) add(name string, row []string) {
	if n := len(t.Groups); n == 0 || t.Groups[n-1].Name != name {
		t.Groups = append(t.Groups, Group{Name: name})
	}
	g := &t.Groups[len(t.Groups)-1]
	g.Rows = append(g.Rows, row)
}

// rowsOf is rows that need no name.
func rowsOf(r [][]string) []Group { return []Group{{Rows: r}} }

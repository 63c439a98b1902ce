package report

import (
	"html/template"
	"strings"
)

// outline is the report before it takes a form. HTML and Markdown are both made
// from it, so that nothing is said twice. Every text in it is plain: it holds no
// markup, and a form must write it so that it cannot become any.
type outline struct {
	Home     string // what the case calls the home; a stranger's words
	Customer []part
	Parts    []part
}

// part is a heading with what stands below it.
type part struct {
	ID, Title string // ID is of this program's making, and occurs once
	Number    string // of a part of the consultant's document; empty for none
	Blocks    []block
	Parts     []part
}

// block is one of the things that a part is made of: the field that is set.
type block struct {
	Text     *paragraph
	Points   []paragraph
	Table    *table
	Picture  *picture
	Pictures []picture // beside each other
	Listing  string    // lines to be kept as they are
}

// paragraph is a text, with words before it that stand out, if any.
type paragraph struct{ Lead, Text string }

// picture is a drawing with what it shows.
type picture struct {
	Name    string        // of the chart; empty for one that exists on the page alone
	Title   string        // for a picture of the page's own
	Alt     string        // the figures in it, for those who do not see it
	Caption string        // below it
	SVG     template.HTML // made by this program, every text in it escaped
}

// table is figures in rows. The first cell of a row is its head.
type table struct {
	ID, Caption string
	Over        []over // heads that span several columns, above the others
	Heads       []string
	Words, Tail int // so many columns from the left and from the right hold words, those between figures
	Groups      []group
	Note        string
}

// over spans columns.
type over struct {
	Text string
	Span int
}

// group is rows that belong together, under a name of their own, if any.
type group struct {
	Name string
	Rows [][]string
}

// Columns is the width of the table.
func (t *table) Columns() int { return len(t.Heads) }

// Figures reports whether a column holds figures.
func (t *table) Figures(column int) bool {
	return column >= max(t.Words, 1) && column < len(t.Heads)-t.Tail
}

// Begins reports whether a column stands first below a head that spans several.
func (t *table) Begins(column int) bool {
	at := 0
	for _, o := range t.Over {
		if at == column {
			return at > 0
		}
		at += o.Span
	}
	return false
}

// Class is what a cell of a column is styled by.
func (t *table) Class(column int) string {
	var list []string
	if t.Figures(column) {
		list = append(list, "figure")
	}
	if t.Begins(column) {
		list = append(list, "begins")
	}
	return strings.Join(list, " ")
}

// fewRows go on one printed page together.
const fewRows = 16

// Short reports whether the table may be kept together in print.
func (t *table) Short() bool {
	rows := 0
	for _, g := range t.Groups {
		rows += len(g.Rows) + 1
	}
	return rows <= fewRows
}

func text(s string) block         { return block{Text: &paragraph{Text: s}} }
func lead(l, s string) block      { return block{Text: &paragraph{l, s}} }
func tabled(t *table) block       { return block{Table: t} }
func drawn(p picture) block       { return block{Picture: &p} }
func listed(s ...string) block    { return block{Points: points(s)} }
func rowsOf(r [][]string) []group { return []group{{Rows: r}} }

func points(list []string) []paragraph {
	out := make([]paragraph, len(list))
	for i, s := range list {
		out[i] = paragraph{Text: s}
	}
	return out
}

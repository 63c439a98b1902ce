package report

import "strings"

// column is a column of a grid: its heading, which may be two lines, and its
// width; left says that text begins at the left edge.
type column struct {
	head  [2]string
	width int
	left  bool
}

// grid writes headings, a rule and rows of cells. Cells are cut where they do not
// fit.
func (p *page) grid(columns []column, rows [][]string) {
	total := 0
	for _, c := range columns {
		total += c.width
	}
	for line := range 2 {
		var heads []string
		for _, c := range columns {
			heads = append(heads, c.head[line])
		}
		if strings.Join(heads, "") != "" {
			p.cells(columns, heads)
		}
	}
	p.line(strings.Repeat("-", total))
	for _, row := range rows {
		p.cells(columns, row)
	}
	p.line(strings.Repeat("-", total))
}

func (p *page) cells(columns []column, row []string) {
	var line strings.Builder
	for i, c := range columns {
		text := cut(row[i], c.width)
		if c.left {
			text = padRight(text, c.width)
		} else {
			text = padLeft(text, c.width)
		}
		line.WriteString(text)
	}
	p.line(line.String())
}

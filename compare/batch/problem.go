package batch

import (
	"fmt"
	"strings"
)

// Problem is one thing that is wrong with a table.
type Problem struct {
	File         string
	Line, Column int    // of the file, from 1; the column is that of the table; 0 if it is none in particular
	Name         string // of the column; empty for none
	Text         string // what was seen, what is allowed, what to do
}

// Error gives the problem on one line, its place first.
func (p Problem) Error() string {
	text := fmt.Sprintf("%s:%d: ", p.File, p.Line)
	if p.Column > 0 {
		text += fmt.Sprintf("column %d", p.Column)
		if p.Name != "" {
			text += fmt.Sprintf(" (%s)", p.Name)
		}
		text += ": "
	}
	return text + p.Text
}

// Problems is everything that is wrong with a table, by line.
type Problems []Problem

// mostShown is how many problems a message lists: a file of the wrong kind has one
// in each line.
const mostShown = 50

// Error gives one line for each problem.
func (ps Problems) Error() string {
	var lines []string
	for i, p := range ps {
		if i == mostShown {
			lines = append(lines, fmt.Sprintf("%s: and %d more", p.File, len(ps)-mostShown))
			break
		}
		lines = append(lines, p.Error())
	}
	return strings.Join(lines, "\n")
}

package casefile

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Problem is one thing that is wrong with a case.
type Problem struct {
	File         string // as the caller named it; empty outside a file
	Line, Column int    // from 1; 0 outside a file
	Key          string // dotted, with list items counted from 1: tariffs[2].name; empty for the whole file
	Text         string // what was seen, what is allowed, what to do
}

// Error gives the problem on one line, its place first.
func (p Problem) Error() string {
	text := p.Text
	if p.Key != "" {
		text = p.Key + " " + text
	}
	if p.File == "" {
		return text
	}
	return fmt.Sprintf("%s:%d: %s", p.File, p.Line, text)
}

// Problems is everything that is wrong with a case, by line.
type Problems []Problem

// Error gives one line for each problem.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

func (ps Problems) sort() {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
}

package datafile

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// MaxProblems is how many problems of one file are listed; the rest are counted. A
// wrong separator would otherwise print a line for every row.
const MaxProblems = 20

// Problem is one thing that is wrong with a file.
type Problem struct {
	Line int // 1 is the first line of the file
	Text string
}

// Error lists what is wrong with a file, in order of lines.
type Error struct {
	File     string
	Problems []Problem
	More     int // problems beyond those listed
}

// Error gives one line per problem, each with file and line.
func (e *Error) Error() string {
	lines := make([]string, 0, len(e.Problems)+1)
	for _, p := range e.Problems {
		lines = append(lines, fmt.Sprintf("%s:%d: %s", e.File, p.Line, p.Text))
	}
	if e.More > 0 {
		lines = append(lines, fmt.Sprintf("%s: and %d more problems", e.File, e.More))
	}
	return strings.Join(lines, "\n")
}

// Problems gathers what is wrong with one file while it is read.
type Problems struct {
	File string // as errors name it
	list []Problem
}

// Add notes a problem of a line.
func (p *Problems) Add(line int, format string, args ...any) {
	p.list = append(p.list, Problem{Line: line, Text: fmt.Sprintf(format, args...)})
}

// AddIfNone notes a problem that may only follow from others, unless there are some.
func (p *Problems) AddIfNone(line int, format string, args ...any) {
	if p.None() {
		p.Add(line, format, args...)
	}
}

// None reports whether nothing is wrong so far.
func (p *Problems) None() bool { return len(p.list) == 0 }

// Err gives an *Error, or nil where nothing is wrong.
func (p *Problems) Err() error {
	if p.None() {
		return nil
	}
	slices.SortStableFunc(p.list, func(a, b Problem) int { return cmp.Compare(a.Line, b.Line) })
	listed := p.list[:min(len(p.list), MaxProblems)]
	return &Error{File: p.File, Problems: listed, More: len(p.list) - len(listed)}
}

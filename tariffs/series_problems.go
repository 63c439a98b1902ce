package tariffs

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// MaxSeriesProblems is how many problems of one file are listed; the rest are
// counted. A wrong separator would otherwise print a line for every row.
const MaxSeriesProblems = 20

// SeriesProblem is one thing that is wrong with a series file.
type SeriesProblem struct {
	Line int // 1 is the first line of the file
	Text string
}

// SeriesError lists what is wrong with a series file, in order of lines.
type SeriesError struct {
	File     string
	Problems []SeriesProblem
	More     int // problems beyond those listed
}

// Error gives one line per problem, each with file and line.
func (e *SeriesError) Error() string {
	lines := make([]string, 0, len(e.Problems)+1)
	for _, p := range e.Problems {
		lines = append(lines, fmt.Sprintf("%s:%d: %s", e.File, p.Line, p.Text))
	}
	if e.More > 0 {
		lines = append(lines, fmt.Sprintf("%s: and %d more problems", e.File, e.More))
	}
	return strings.Join(lines, "\n")
}

type seriesProblems struct {
	file string
	list []SeriesProblem
}

func (p *seriesProblems) add(line int, format string, args ...any) {
	p.list = append(p.list, SeriesProblem{Line: line, Text: fmt.Sprintf(format, args...)})
}

// addIfNone adds a problem that only follows from others, if there are others.
func (p *seriesProblems) addIfNone(line int, format string, args ...any) {
	if p.none() {
		p.add(line, format, args...)
	}
}

func (p *seriesProblems) none() bool { return len(p.list) == 0 }

func (p *seriesProblems) err() error {
	if p.none() {
		return nil
	}
	slices.SortStableFunc(p.list, func(a, b SeriesProblem) int { return cmp.Compare(a.Line, b.Line) })
	listed := p.list[:min(len(p.list), MaxSeriesProblems)]
	return &SeriesError{File: p.file, Problems: listed, More: len(p.list) - len(listed)}
}

package climate

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// MaxFileProblems is how many problems of one file are listed; the rest are
// counted. A wrong separator would otherwise print a line for every row.
const MaxFileProblems = 20

// FileProblem is one thing that is wrong with a weather file.
type FileProblem struct {
	Line int // 1 is the first line of the file
	Text string
}

// FileError lists what is wrong with a weather file, in order of lines.
type FileError struct {
	File     string
	Problems []FileProblem
	More     int // problems beyond those listed
}

// Error gives one line per problem, each with file and line.
func (e *FileError) Error() string {
	lines := make([]string, 0, len(e.Problems)+1)
	for _, p := range e.Problems {
		lines = append(lines, fmt.Sprintf("%s:%d: %s", e.File, p.Line, p.Text))
	}
	if e.More > 0 {
		lines = append(lines, fmt.Sprintf("%s: and %d more problems", e.File, e.More))
	}
	return strings.Join(lines, "\n")
}

type fileProblems struct {
	file string
	list []FileProblem
}

func (p *fileProblems) add(line int, format string, args ...any) {
	p.list = append(p.list, FileProblem{Line: line, Text: fmt.Sprintf(format, args...)})
}

func (p *fileProblems) none() bool { return len(p.list) == 0 }

func (p *fileProblems) err() error {
	if p.none() {
		return nil
	}
	slices.SortStableFunc(p.list, func(a, b FileProblem) int { return cmp.Compare(a.Line, b.Line) })
	listed := p.list[:min(len(p.list), MaxFileProblems)]
	return &FileError{File: p.file, Problems: listed, More: len(p.list) - len(listed)}
}

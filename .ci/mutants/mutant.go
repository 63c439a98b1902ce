package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// mutant is one change of a file: some of its bytes replaced.
type mutant struct {
	file     string // path from the top of the module
	source   []byte // of the file as it is
	from, to int    // bytes that are replaced
	by       string
}

// changed gives the whole file with the change made.
func (m *mutant) changed() []byte {
	return slices.Concat(m.source[:m.from], []byte(m.by), m.source[m.to:])
}

// line gives the number of the line where the change begins, from 1.
func (m *mutant) line() int { return 1 + strings.Count(string(m.source[:m.from]), "\n") }

// lines gives the lines that the change touches, before and after it.
func (m *mutant) lines() (was, is string) {
	text := string(m.source)
	start := strings.LastIndexByte(text[:m.from], '\n') + 1
	end := m.to + strings.IndexByte(text[m.to:]+"\n", '\n')
	return text[start:end], text[start:m.from] + m.by + text[m.to:end]
}

// String shows the change as a difference of lines.
func (m *mutant) String() string {
	was, is := m.lines()
	return fmt.Sprintf("%s:%d\n%s\n%s", m.file, m.line(), marked("-", was), marked("+", is))
}

func marked(by, lines string) string {
	return by + strings.ReplaceAll(lines, "\n", "\n"+by)
}

// mutantsOf lists every change that can be made in the code of a folder, in the
// order of the files.
func mutantsOf(folder string) ([]*mutant, error) {
	paths, err := filepath.Glob(filepath.Join(folder, "*.go"))
	if err != nil {
		return nil, err
	}
	var list []*mutant
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		found, err := mutantsIn(path)
		if err != nil {
			return nil, err
		}
		list = append(list, found...)
	}
	return list, nil
}

func mutantsIn(path string) ([]*mutant, error) {
	source, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, path, source, parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	f := finder{path: path, source: source, file: files.File(file.Pos())}
	ast.Inspect(file, func(n ast.Node) bool {
		f.look(n)
		call, is := n.(*ast.CallExpr)
		return !is || f.text(call.Fun) != "math.Inf" // its number is a sign
	})
	return f.found, nil
}

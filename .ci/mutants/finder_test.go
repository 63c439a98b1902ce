package main

import (
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// Every kind of change is found in a line that has it, and what comes out is Go.
func TestChangesOfALine(t *testing.T) {
	for line, want := range map[string][]string{
		"if a < b { }":              {"if a <= b { }", "if a > b { }", "if !(a < b) { }"},
		"a = b - c":                 {"a = b + c", "if false { a = b - c }"},
		"a := b / c":                {"a := b * c"},
		"a += 2":                    {"a -= 2", "a += 3", "a += (1)", "if false { a += 2 }"},
		"a = -1.5":                  {"a = 1.5", "a = -(1.1 * 1.5 + 1e-9)", "a = -(0.9 * 1.5 - 1e-9)", "if false { a = -1.5 }"},
		"a++":                       {"a--", "if false { a++ }"},
		"f(b && !c)":                {"f(b || !c)", "f(b && c)", "if false { f(b && !c) }"},
		"return max(a, b)":          {"return min(a, b)"},
		"return math.Inf(1)":        nil,
		"for { break }":             {"for { if false { break } }"},
		`a := "1 < 2" // no change`: nil,
	} {
		path := filepath.Join(t.TempDir(), "a.go")
		if err := os.WriteFile(path, []byte("package p\n\nfunc g() {\n\t"+line+"\n}\n"), 0o600); err != nil {
			t.Fatal(err)
		}
		found, err := mutantsIn(path)
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, m := range found {
			was, is := m.lines()
			if was != "\t"+line || m.line() != 4 {
				t.Errorf("%q is found as line %d, %q", line, m.line(), was)
			}
			got = append(got, strings.TrimSpace(is))
			if _, err := parser.ParseFile(token.NewFileSet(), path, m.changed(), 0); err != nil {
				t.Errorf("%v: %v", m, err)
			}
		}
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s\ngives %q\nwant  %q", line, got, want)
		}
	}
}

// A reason stands for a line that is there: else the code has moved on, and the reason
// speaks of nothing.
func TestReasonsSpeakOfTheCode(t *testing.T) {
	t.Chdir("../..")
	for _, r := range reasons() {
		found, err := mutantsIn(r.file)
		if err != nil {
			t.Fatal(err)
		}
		if !slices.ContainsFunc(found, func(m *mutant) bool { return argument(m) == r.why }) {
			t.Errorf("%s has no line that turns %q into %q", r.file, r.was, r.is)
		}
	}
}

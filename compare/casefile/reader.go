package casefile

import (
	"fmt"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

// reader gathers what is found on the way through a file.
type reader struct {
	file     string
	problems Problems
	stands   map[string]position // where each stated key and section stands
	bad      map[string]bool     // keys with a problem
	more     bool                // there are more problems than are worth listing
}

// mostProblems is where listing ends: a file with as many is no case at all.
const mostProblems = 50

type position struct{ line, column int }

func newReader(file string) *reader {
	return &reader{file: file, stands: map[string]position{}, bad: map[string]bool{}}
}

// add notes a problem at a position.
func (r *reader) add(at position, key, text string) {
	r.bad[key] = true
	if len(r.problems) == mostProblems {
		r.more = true
		return
	}
	r.problems = append(r.problems, Problem{File: r.file, Line: at.line, Column: at.column, Key: key, Text: text})
}

// refuse notes that a value is not what its key takes. Advice is what to do; if
// there is none, the key knows. It gives false, for the caller to pass on.
func (r *reader) refuse(p place, advice string) bool {
	if advice == "" {
		advice = p.key.remedy()
	}
	r.say(p, fmt.Sprintf("is %s, allowed %s: %s", seen(p.node), p.key.allowed(), advice))
	return false
}

// outOfRange notes a number outside the range of its key.
func (r *reader) outOfRange(p place, x float64) bool {
	advice := guess(x, p.key)
	if advice == "" {
		advice = p.key.remedy()
	}
	r.say(p, fmt.Sprintf("is %s, allowed %s: %s", seen(p.node), p.key.limits(), advice))
	return false
}

func (r *reader) say(p place, text string) { r.add(positionOf(p.node), p.path, text) }

func positionOf(n *yaml.Node) position { return position{n.Line, n.Column} }

// err gives the problems by line, or nil.
func (r *reader) err() error {
	if len(r.problems) == 0 {
		return nil
	}
	r.problems.sort()
	if r.more {
		last := r.problems[len(r.problems)-1]
		r.problems = append(r.problems, Problem{File: last.File, Line: last.Line, Column: last.Column, Text: "there are more problems than these: mend them first"})
	}
	return r.problems
}

// seen describes a value in a file.
func seen(n *yaml.Node) string {
	switch n.Kind {
	case yaml.SequenceNode:
		return fmt.Sprintf("a list of %d", len(n.Content))
	case yaml.MappingNode:
		return "a group of keys"
	case yaml.AliasNode:
		return "a reference"
	}
	if quoted(n) || hasOddRunes(n.Value) {
		return "the text " + shown(n.Value)
	}
	return shortened(n.Value)
}

func quoted(n *yaml.Node) bool {
	const styles = yaml.SingleQuotedStyle | yaml.DoubleQuotedStyle | yaml.LiteralStyle | yaml.FoldedStyle
	return n.Style&styles != 0
}

// shown quotes foreign text for a message: one line, nothing that a terminal acts
// on.
func shown(text string) string { return strconv.Quote(shortened(text)) }

func shortened(text string) string {
	const longest = 60
	runes := []rune(text)
	if len(runes) <= longest {
		return text
	}
	return string(runes[:longest]) + "..."
}

func hasOddRunes(text string) bool {
	return strings.ContainsFunc(text, func(c rune) bool { return !strconv.IsPrint(c) })
}

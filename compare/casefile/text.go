package casefile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// lineForm is how the form of a line of text begins.
const lineForm = "one line of text"

// line is a key that is one line of text.
func line[T any](path string, longest int, at func(*T) *string, source, help string) field[T] {
	return field[T]{
		Key:  Key{Path: path, Form: fmt.Sprintf("%s, at most %d characters", lineForm, longest), Source: source, Help: help},
		bind: func(t *T) value { return lineValue{at: at(t), longest: longest} },
	}
}

type lineValue struct {
	stated
	at      *string
	longest int
}

func (v lineValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	text := p.node.Value
	switch {
	case strings.ContainsFunc(text, isHidden):
		r.refuse(p, "leave out line breaks, control characters and marks that turn the direction of writing")
	case utf8.RuneCountInString(text) > v.longest:
		r.say(p, fmt.Sprintf("has %d characters, allowed are %d: shorten it", utf8.RuneCountInString(text), v.longest))
	case p.key.Required && strings.TrimSpace(text) == "":
		r.refuse(p, "")
	default:
		*v.at = text
	}
}

func (v lineValue) yaml(string) string { return quote(*v.at) }

// isHidden reports what does not show as a character of one line: controls, line
// and paragraph separators, and marks that turn the direction of writing.
func isHidden(c rune) bool {
	return unicode.IsControl(c) || unicode.In(c, unicode.Zl, unicode.Zp, unicode.Bidi_Control) || c == '\uFEFF'
}

// quote writes text so that YAML gives it back unchanged: the escapes of Go are
// among those of YAML's double quotes.
func quote(text string) string { return strconv.Quote(text) }

// choice is a key with a few words to choose from.
func choice[T any](path string, choices []string, get func(*T) string, set func(*T, string), source, help string) field[T] {
	return field[T]{
		Key: Key{Path: path, Form: "a word", Choices: choices, Source: source, Help: help},
		bind: func(t *T) value {
			return choiceValue{get: func() string { return get(t) }, set: func(s string) { set(t, s) }}
		},
	}
}

type choiceValue struct {
	stated
	get func() string
	set func(string)
}

func (v choiceValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	if !slices.Contains(p.key.Choices, p.node.Value) {
		advice := ""
		if near := nearest(p.node.Value, p.key.Choices); near != "" {
			advice = "did you mean " + near + "?"
		}
		r.refuse(p, advice)
		return
	}
	v.set(p.node.Value)
}

func (v choiceValue) yaml(string) string { return v.get() }

// flag is a key that is true or false.
func flag[T any](path string, at func(*T) *bool, source, help string) field[T] {
	return field[T]{
		Key:  Key{Path: path, Form: "true or false", Source: source, Help: help, Remedy: "write true or false"},
		bind: func(t *T) value { return flagValue{at: at(t)} },
	}
}

type flagValue struct {
	stated
	at *bool
}

func (v flagValue) read(r *reader, p place) {
	if !r.scalar(p) {
		return
	}
	text := p.node.Value
	if quoted(p.node) || text != "true" && text != "false" {
		r.refuse(p, flagAdvice(text))
		return
	}
	*v.at = text == "true"
}

func (v flagValue) yaml(string) string { return strconv.FormatBool(*v.at) }

// flagAdvice knows the words for which true and false stand elsewhere.
func flagAdvice(text string) string {
	switch strings.ToLower(text) {
	case "yes", "y", "on", "1", "true":
		return "write true"
	case "no", "n", "off", "0", "false":
		return "write false"
	default:
		return ""
	}
}

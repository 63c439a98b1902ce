package casefile

import (
	"strings"

	"gopkg.in/yaml.v3"
)

// field is a key together with the place in a T where its value lives.
type field[T any] struct {
	Key
	bind func(*T) value
	idle func(*T) string // why the key plays no part in this T; empty if it does
}

// value is a place in a case that a key reads and writes.
type value interface {
	// read takes what a file states, or reports why it cannot and changes nothing.
	read(r *reader, p place)
	// yaml gives the value as a file states it; lines after the first begin with
	// indent.
	yaml(indent string) string
	// derived reports whether the value is not stated but follows from others.
	derived() bool
}

// place is a value in a file.
type place struct {
	key  *Key
	path string // of the key, list items included
	node *yaml.Node
}

// stated is the part of a value that always stands for itself.
type stated struct{}

func (stated) derived() bool { return false }

// within lifts the fields of a part to those of the whole, under a section name.
func within[T, P any](section string, part func(*T) *P, fields ...field[P]) []field[T] {
	prefix := ""
	if section != "" {
		prefix = section + "."
	}
	lifted := make([]field[T], len(fields))
	for i, f := range fields {
		key := f.Key
		key.Path = prefix + key.Path
		key.From = make([]string, len(f.From))
		for j, from := range f.From {
			key.From[j] = prefix + from
		}
		lifted[i] = field[T]{Key: key, bind: func(t *T) value { return f.bind(part(t)) }}
		if f.idle != nil {
			lifted[i].idle = func(t *T) string { return f.idle(part(t)) }
		}
	}
	return lifted
}

// common marks a key that a new case shows.
func (f field[T]) common() field[T] {
	f.Common = true
	return f
}

// required marks a key that has no default.
func (f field[T]) required() field[T] {
	f.Required = true
	return f
}

// advise says what to do about a refused value.
func (f field[T]) advise(remedy string) field[T] {
	f.Remedy = remedy
	return f
}

// atMost limits the items of a list.
func (f field[T]) atMost(items int) field[T] {
	f.Most = items
	return f
}

// orZero allows 0 beside the range.
func (f field[T]) orZero(meaning string) field[T] {
	f.Zero = meaning
	return f
}

// idleIf says when the key plays no part.
func (f field[T]) idleIf(idle func(*T) string) field[T] {
	f.idle = idle
	return f
}

// defaultText writes the default as a file would state it.
func (f *field[T]) defaultText(standard *T) string {
	v := f.bind(standard)
	if f.Required || v.derived() {
		return ""
	}
	text := v.yaml("")
	if strings.Contains(text, "\n") {
		return ""
	}
	return text
}

// why gives the reason for which the key plays no part; empty if it does.
func (f *field[T]) why(t *T) string {
	if f.idle == nil {
		return ""
	}
	return f.idle(t)
}

package casefile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"dhwcompare/compare"
)

// Set states one key of a case, given by its dotted path, as if the text stood in
// a case file: 48, true, [13:00-16:00]. Texts such as title need no quotes. A key
// of a list item is reached by its number, as in tariffs[1].rate_per_kwh. On an
// error, Problems without a place in a file, the case is unchanged. Set looks at
// one key alone; call Check when all are set, and Attach before it if a file was
// named.
func Set(c *compare.Case, path, text string) error {
	r := newReader("")
	fields := table()
	tried := *c
	if !setKey(r, &tried, fields, setting{path: path, text: text}) {
		r.noSuchKey(path, fields)
	}
	if len(r.problems) == 0 && movesSeries(path) {
		r.layAgain(&tried)
	}
	if len(r.problems) == 0 {
		*c = tried
	}
	return r.unplaced()
}

// movesSeries reports a key on which depends how the times of files meet the year.
func movesSeries(path string) bool {
	switch path {
	case "climate.utc_offset_min", "climate.first_weekday":
		return true
	default:
		return false
	}
}

// layAgain lays the files that have been read over a changed case.
func (r *reader) layAgain(c *compare.Case) {
	c.Tariffs = slices.Clone(c.Tariffs)
	for _, a := range attachments(c) {
		if a.file.Read() {
			r.lay(a)
		}
	}
}

// setting is a value for a key somewhere in a T.
type setting struct {
	base       string // path of the T, such as "tariffs[2]."; empty for the case
	path, text string // of the key in the T
}

// setKey sets a key, or reports that there is none of that path.
func setKey[T any](r *reader, t *T, fields []field[T], s setting) bool {
	for i := range fields {
		f := &fields[i]
		v := f.bind(t)
		if f.Path == s.path {
			if node := r.valueNode(s, v); node != nil {
				v.read(r, place{&f.Key, s.base + s.path, node})
			}
			return true
		}
		rest, inside := strings.CutPrefix(s.path, f.Path+"[")
		number, name, found := strings.Cut(rest, "].")
		items, isList := v.(interface {
			setItem(r *reader, number string, s setting) bool
		})
		if inside && found && isList {
			return items.setItem(r, number, setting{s.base + f.Path, name, s.text})
		}
	}
	return false
}

// setItem sets a key of one item; s.base is the path of the list.
func (v listValue[E]) setItem(r *reader, number string, s setting) bool {
	list := slices.Clone(v.get())
	i, err := strconv.Atoi(number)
	if err != nil || i < 1 || i > len(list) {
		r.add(position{}, s.base, fmt.Sprintf("has %d items, so there is none of the number %s: count from 1", len(list), printable(number)))
		return true
	}
	s.base = fmt.Sprintf("%s[%d].", s.base, i)
	found := setKey(r, &list[i-1], v.items, s)
	if found && len(r.problems) == 0 {
		v.set(list)
	}
	return found
}

// valueNode makes a value of a text as a file would hold it; nil after noting why
// there is none.
func (r *reader) valueNode(s setting, v value) *yaml.Node {
	switch v.(type) {
	case lineValue, fileValue, digestValue:
		return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: s.text}
	}
	root := r.parse([]byte("value: " + s.text))
	if root == nil {
		r.problems[0].Key = s.base + s.path
		return nil
	}
	const one = 2 // a key and its value
	if len(root.Content) > one {
		r.add(position{}, s.base+s.path, "holds more than one value: give one")
		return nil
	}
	return root.Content[1]
}

func (r *reader) noSuchKey(path string, fields []field[compare.Case]) {
	last := strings.LastIndexByte(path, '.') + 1
	section, name := path[:last], path[last:]
	key := section + printable(name)
	if hasOddRunes(section) {
		key = shown(path)
	}
	r.add(position{}, key, unknown(name, section, fields))
}

// unplaced gives the problems without their places, which mean nothing outside a
// file.
func (r *reader) unplaced() error {
	for i := range r.problems {
		r.problems[i].Line, r.problems[i].Column = 0, 0
	}
	return r.err()
}

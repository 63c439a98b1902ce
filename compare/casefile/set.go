package casefile

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"dhwcompare/compare"
)

// Set states one key of a case, given by its dotted path, as if the text stood in
// a case file: 48, true, [13:00-16:00]. Texts such as title need no quotes. On an
// error, Problems without a place in a file, the case is unchanged. Set looks at
// one key alone; call Check when all are set.
func Set(c *compare.Case, path, text string) error {
	r := newReader("")
	fields := table()
	i := slices.IndexFunc(fields, func(f field[compare.Case]) bool { return f.Path == path })
	if i < 0 {
		return r.noSuchKey(path, fields)
	}
	f := &fields[i]
	v := f.bind(c)
	node := &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: text}
	if _, isText := v.(lineValue); !isText {
		if node = r.parse([]byte(valueHead + text)); node == nil {
			return r.unplaced(path)
		}
		if len(node.Content) > 2 {
			r.add(position{}, path, "holds more than one value: give one")
			return r.err()
		}
		node = node.Content[1]
	}
	v.read(r, place{&f.Key, path, node})
	return r.unplaced("")
}

// valueHead makes a file of a value alone.
const valueHead = "value: "

// unplaced gives the problems without their places, which mean nothing outside a
// file; those without a key get one.
func (r *reader) unplaced(key string) error {
	for i := range r.problems {
		p := &r.problems[i]
		p.Line, p.Column = 0, 0
		if p.Key == "" {
			p.Key = key
		}
	}
	return r.err()
}

func (r *reader) noSuchKey(path string, fields []field[compare.Case]) error {
	last := strings.LastIndexByte(path, '.') + 1
	section, name := path[:last], path[last:]
	key := section + printable(name)
	if hasOddRunes(section) {
		key = shown(path)
	}
	r.add(position{}, key, unknown(name, section, fields))
	return r.err()
}

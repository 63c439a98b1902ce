package casefile

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// mapping is a group of keys in a file: those of t whose path begins with section.
type mapping[T any] struct {
	base    string // path of t itself, such as "tariffs[2]."; empty for the case
	section string // within t, with its final point; empty at the top
	node    *yaml.Node
}

// readMapping reads a group of keys into t and notes every problem.
func readMapping[T any](r *reader, m mapping[T], t *T, fields []field[T]) {
	lines := map[string]int{}
	for i := 0; i+1 < len(m.node.Content) && !r.more; i += 2 {
		key, node := m.node.Content[i], m.node.Content[i+1]
		if !r.keyName(m.base+m.section, key) {
			continue
		}
		path := m.base + m.section + key.Value
		if first, again := lines[key.Value]; again {
			r.add(positionOf(key), m.base+m.section+printable(key.Value), fmt.Sprintf("stands twice, first in line %d: keep one of the two", first))
			continue
		}
		lines[key.Value] = key.Line
		r.stands[path] = positionOf(key)
		m.readKey(r, key, node, t, fields)
	}
}

// keyName refuses a key that is no plain word.
func (r *reader) keyName(prefix string, key *yaml.Node) bool {
	parent := strings.TrimSuffix(prefix, ".")
	switch {
	case key.Kind != yaml.ScalarNode || key.Anchor != "" || key.Style&yaml.TaggedStyle != 0:
		r.add(positionOf(key), parent, "has a key that is no plain word: write a name and a colon")
	case key.Tag == "!!merge":
		r.add(positionOf(key), parent, "merges keys from elsewhere (<<): write the keys themselves")
	default:
		return true
	}
	return false
}

func (m mapping[T]) readKey(r *reader, key, node *yaml.Node, t *T, fields []field[T]) {
	name := m.section + key.Value
	isSection := false
	for i := range fields {
		f := &fields[i]
		if f.Path == name {
			f.bind(t).read(r, place{&f.Key, m.base + name, node})
			return
		}
		isSection = isSection || strings.HasPrefix(f.Path, name+".")
	}
	if !isSection {
		r.add(positionOf(key), m.base+m.section+printable(key.Value), unknown(key.Value, m.section, fields))
		return
	}
	if isBlank(node) || !r.usable(m.base+name, node) {
		return
	}
	if node.Kind != yaml.MappingNode {
		r.add(positionOf(node), m.base+name, fmt.Sprintf("is %s, allowed a group of keys: put them below it, indented by two spaces", seen(node)))
		return
	}
	readMapping(r, mapping[T]{m.base, name + ".", node}, t, fields)
}

// isBlank reports a heading with nothing below it, which states nothing.
func isBlank(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Tag == "!!null" && n.Value == "" && n.Anchor == "" && n.Style&yaml.TaggedStyle == 0
}

// printable gives a foreign name as it is if that does no harm, else quoted.
func printable(name string) string {
	if name == "" || hasOddRunes(name) || strings.ContainsAny(name, " .:") || shortened(name) != name {
		return shown(name)
	}
	return name
}

// readItem reads a list item that is a group of keys; required ones must be there.
func readItem[T any](r *reader, path string, node *yaml.Node, t *T, fields []field[T]) bool {
	if !r.usable(path, node) {
		return false
	}
	if node.Kind != yaml.MappingNode {
		r.add(positionOf(node), path, fmt.Sprintf("is %s, allowed a group of keys: %s", seen(node), strings.Join(names(fields), ", ")))
		return false
	}
	r.stands[path] = positionOf(node)
	before := len(r.problems)
	readMapping(r, mapping[T]{base: path + ".", node: node}, t, fields)
	r.missing(path+".", positionOf(node), requiredKeys(fields))
	checkIdle(r, path+".", t, fields)
	return len(r.problems) == before
}

func requiredKeys[T any](fields []field[T]) []*Key {
	var keys []*Key
	for i := range fields {
		if fields[i].Required {
			keys = append(keys, &fields[i].Key)
		}
	}
	return keys
}

// missing notes required keys that are not stated, and that nothing stated stands
// in for, at the group they belong in.
func (r *reader) missing(base string, at position, keys []*Key) {
	for _, k := range keys {
		path := base + k.Path
		if _, is := r.stands[path]; is || r.bad[base+k.section()] || r.anyStands(base, k.From) {
			continue
		}
		where := at
		if section, is := r.stands[base+k.section()]; is && k.section() != "" {
			where = section
		}
		r.add(where, path, "is missing: "+k.remedy())
	}
}

func (r *reader) anyStands(base string, paths []string) bool {
	return slices.ContainsFunc(paths, func(path string) bool {
		_, is := r.stands[base+path]
		return is
	})
}

func names[T any](fields []field[T]) []string {
	list := make([]string, len(fields))
	for i := range fields {
		list[i] = fields[i].Path
	}
	return list
}

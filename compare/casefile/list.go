package casefile

import (
	"fmt"
	"strings"
)

// list is a key with any number of items that have keys of their own.
func list[T, E any](path, help string, get func(*T) []E, set func(*T, []E), fresh E, items []field[E], source string) field[T] {
	return field[T]{
		Key: Key{Path: path, Form: "a list of items with the keys " + strings.Join(names(items), ", "), Source: source, Help: help, Items: keysOf(items)},
		bind: func(t *T) value {
			return listValue[E]{get: func() []E { return get(t) }, set: func(e []E) { set(t, e) }, fresh: fresh, items: items}
		},
	}
}

func keysOf[E any](items []field[E]) []Key {
	keys := make([]Key, len(items))
	for i := range items {
		keys[i] = items[i].Key
	}
	return keys
}

type listValue[E any] struct {
	stated
	get   func() []E
	set   func([]E)
	fresh E // what an item is before its keys are read
	items []field[E]
}

func (v listValue[E]) read(r *reader, p place) {
	nodes, ok := r.list(p)
	if !ok {
		return
	}
	var read []E
	for i, node := range nodes {
		if r.more {
			return
		}
		e := v.fresh
		path := fmt.Sprintf("%s[%d]", p.path, i+1)
		if !readItem(r, path, node, &e, v.items) {
			r.bad[p.path], r.bad[path] = true, true
			ok = false
		}
		read = append(read, e)
	}
	if ok {
		v.set(read)
	}
}

// yaml writes an item to a line if all its values are short, else a key to a line.
func (v listValue[E]) yaml(indent string) string {
	var b strings.Builder
	for _, e := range v.get() {
		pairs := v.pairs(&e, indent+"  ")
		const widest = 100
		if text := strings.Join(pairs, ", "); len(text) <= widest && !strings.Contains(text, "\n") {
			fmt.Fprintf(&b, "\n%s- {%s}", indent, text)
			continue
		}
		fmt.Fprintf(&b, "\n%s- %s", indent, strings.Join(pairs, "\n"+indent+"  "))
	}
	if b.Len() == 0 {
		return "[]"
	}
	return b.String()
}

func (v listValue[E]) pairs(e *E, indent string) []string {
	var pairs []string
	for i := range v.items {
		if f := &v.items[i]; f.why(e) == "" {
			text := f.bind(e).yaml(indent + "  ")
			gap := " "
			if strings.HasPrefix(text, "\n") {
				gap = ""
			}
			pairs = append(pairs, f.Path+":"+gap+text)
		}
	}
	return pairs
}

// entries gives the values of all items, those that play no part left out.
func (v listValue[E]) entries(path string) []entry {
	var all []entry
	for i, e := range v.get() {
		for j := range v.items {
			if f := &v.items[j]; f.why(&e) == "" {
				all = append(all, entriesOf(fmt.Sprintf("%s[%d].%s", path, i+1, f.Path), &f.Key, f.bind(&e))...)
			}
		}
	}
	return all
}

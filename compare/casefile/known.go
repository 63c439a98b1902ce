package casefile

import (
	"strings"

	"dhwcompare/compare"
)

// Known gives nil for the path of a key that Set takes, and otherwise Problems
// without a place that say which key may be meant. That a list has the item which
// a path names is for Set to find out.
func Known(path string) error {
	r := newReader("")
	fields := table()
	c := compare.Default()
	if !knows(&c, fields, path) {
		r.noSuchKey(path, fields)
	}
	return r.unplaced()
}

func knows[T any](t *T, fields []field[T], path string) bool {
	for i := range fields {
		f := &fields[i]
		if f.Path == path {
			return true
		}
		rest, inside := strings.CutPrefix(path, f.Path+"[")
		_, name, found := strings.Cut(rest, "].")
		list, isList := f.bind(t).(interface{ knowsItem(name string) bool })
		if inside && found && isList {
			return list.knowsItem(name)
		}
	}
	return false
}

func (v listValue[E]) knowsItem(name string) bool { return knows(&v.fresh, v.items, name) }

package casefile

import (
	"cmp"
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// Inputs lists every key of a case with the value that is used and where it comes
// from. It depends on the case alone, not on how its file was written: a value
// that equals the documented default counts as that default, whether somebody
// stated it or not, so that a case and its filled-in form give the same list.
func Inputs(c *compare.Case) []compare.Input {
	standard := compare.Default()
	fields := table()
	var inputs []compare.Input
	for i := range fields {
		f := &fields[i]
		origin := originOf(f, c, &standard)
		for _, e := range entriesOf(f.Path, &f.Key, f.bind(c)) {
			in := e.input(c.Currency)
			in.Origin, in.Source = origin, source(&f.Key, origin)
			inputs = append(inputs, in)
		}
	}
	return inputs
}

func originOf(f *field[compare.Case], c, standard *compare.Case) compare.Origin {
	v := f.bind(c)
	switch {
	case v.derived():
		return compare.Derived
	case !f.Required && v.yaml("") == f.bind(standard).yaml(""):
		return compare.Assumed
	default:
		return compare.Stated
	}
}

// entry is a value under its full path.
type entry struct {
	path string
	key  *Key
	value
}

// entriesOf gives a value, or those of all items if it is a list that has any.
func entriesOf(path string, k *Key, v value) []entry {
	if l, is := v.(interface{ entries(path string) []entry }); is {
		if items := l.entries(path); len(items) > 0 {
			return items
		}
	}
	return []entry{{path, k, v}}
}

func (e *entry) input(currency string) compare.Input {
	in := compare.Input{Key: e.path, Unit: e.key.unitIn(currency), Help: e.key.Help}
	switch v := e.value.(type) {
	case numberValue:
		in.Number, in.Numeric = *v.at, true
	case autoValue:
		in.Number, in.Numeric = v.number(), true
	case countValue:
		in.Number, in.Numeric = float64(*v.at), true
	case lineValue:
		in.Text = *v.at
		return in
	default:
		in.Text = forPeople(e.yaml(""))
		return in
	}
	in.Text = plain(in.Number)
	if e.derived() {
		in.Text = rounded(in.Number)
	}
	return in
}

// forPeople takes the marks of YAML from a value.
func forPeople(yaml string) string {
	text := strings.ReplaceAll(strings.Trim(yaml, "[]"), `"`, "")
	if text == "" {
		return "none"
	}
	return text
}

func source(k *Key, o compare.Origin) string {
	switch o {
	case compare.Derived:
		return fmt.Sprintf("from %s: %s", strings.Join(k.From, ", "), cmp.Or(k.FromSource, k.Source))
	case compare.Assumed:
		return k.Source
	default:
		return "stated in the case"
	}
}

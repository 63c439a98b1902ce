package casefile

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
)

// Key describes one key of a case file.
type Key struct {
	Path     string   // dotted, such as household.people
	Unit     string   // empty for a plain number or text; "currency" in it stands for that of the case
	Min, Max float64  // of a number, or of each number of a list
	Zero     string   // what 0 means where it is allowed beside the range, such as "no frost"
	Form     string   // what a value looks like, such as "a number" or "twelve numbers, January first"
	Choices  []string // what can be chosen, for a choice
	Required bool     // has no default
	Default  string   // as a file states it; empty if it follows from other keys or is a list of items
	From     []string // keys that it follows from unless stated
	Source   string   // where the default comes from
	// FromSource says how it follows from others, if not as Source says.
	FromSource string
	Help       string // what it means, in one line
	Remedy     string // what to do when a value is refused
	Common     bool   // worth showing to somebody who starts a case
	Most       int    // items that a list may have
	Items      []Key  // keys of each item, for a list of such

	fallback func() string // gives Default when it is needed
}

// Keys lists the keys of a case in the order of the file. Those of list items,
// such as the bands of a tariff, stand in the key of the list.
func Keys() []Key {
	fields := table()
	keys := make([]Key, len(fields))
	for i, f := range fields {
		keys[i] = f.Key
		keys[i].Default = f.fallback()
	}
	return keys
}

// FreeText reports whether anybody's words may stand there: a line of text, or the
// name of a file.
func (k *Key) FreeText() bool { return strings.HasPrefix(k.Form, lineForm) || k.Form == fileForm }

// allowed says which values a key takes.
func (k *Key) allowed() string {
	switch {
	case len(k.Choices) > 0:
		return "one of " + strings.Join(k.Choices, ", ")
	case k.Min == 0 && k.Max == 0:
		return k.Form
	default:
		return k.Form + " from " + k.limits()
	}
}

// limits writes the range of a number.
func (k *Key) limits() string {
	text := span(k.Min, k.Max, k.Unit)
	if k.Zero != "" {
		text += fmt.Sprintf(", or 0 for %s", k.Zero)
	}
	return text
}

// holds reports whether a number is allowed.
func (k *Key) holds(x float64) bool { return x >= k.Min && x <= k.Max || x == 0 && k.Zero != "" }

// shareUnit marks a part of one. It is the unit of no quantity and not shown with
// a range.
const shareUnit = "share"

// unitIn gives the unit with the currency of a case in it.
func (k *Key) unitIn(currency string) string { return strings.Replace(k.Unit, "currency", currency, 1) }

// span writes a range with its unit.
func span(low, high float64, unit string) string {
	if unit == shareUnit {
		unit = ""
	}
	return strings.TrimSpace(fmt.Sprintf("%s to %s %s", plain(low), plain(high), unit))
}

// remedy says what to do about a refused value.
func (k *Key) remedy() string {
	switch {
	case k.Remedy != "":
		return k.Remedy
	case k.Required:
		return "give " + k.Help
	case len(k.From) > 0:
		return "leave it out, and it follows from " + strings.Join(k.From, " and ")
	case k.fallback != nil && k.fallback() != "":
		return "leave it out for the default, " + k.fallback()
	default:
		return "leave it out to use the default"
	}
}

// name is the last part of the path.
func (k *Key) name() string { return k.Path[strings.LastIndexByte(k.Path, '.')+1:] }

// section is the path without the name.
func (k *Key) section() string { return strings.TrimSuffix(strings.TrimSuffix(k.Path, k.name()), ".") }

// table lists every key of a case with the field it belongs to, in the order of
// the file.
func table() []field[compare.Case] {
	var all []field[compare.Case]
	for _, section := range [][]field[compare.Case]{
		generalKeys(), householdKeys(), mainsKeys(), climateKeys(), dwellingKeys(), heatPumpKeys(), pipesKeys(),
		compactKeys(), cylinderKeys(), tariffKeys(), surplusKeys(), moneyKeys(), roomKeys(), serviceKeys(),
	} {
		all = append(all, section...)
	}
	standard := compare.Default()
	for i := range all {
		f := all[i]
		all[i].fallback = func() string { return f.defaultText(&standard) }
	}
	return all
}

package wording

import (
	"regexp"
	"strings"
)

// CurrencySign gives the sign that stands before an amount of money, if the currency
// has one.
func CurrencySign(currency string) (sign string, known bool) {
	for _, c := range currencies() {
		if c.code == currency {
			return c.sign, true
		}
	}
	return "", false
}

// namedSign is a currency by its code and its sign.
type namedSign struct{ code, sign string }

func currencies() []namedSign { return []namedSign{{"GBP", "£"}, {"EUR", "€"}, {"USD", "$"}} }

// Unit writes a unit that stands alone as print does.
func Unit(unit string) string {
	switch unit {
	case "C":
		return "°C"
	case "m2":
		return "m²"
	case "W/m2K":
		return "W/m²K"
	}
	return unit
}

// dressing is a pattern of plain text and what print has in its place.
type dressing struct {
	plain   *regexp.Regexp
	printed string
}

// dressings are made once: patterns are dear to compile and free to share.
var dressings = makeDressings()

func makeDressings() []dressing {
	list := []dressing{
		{regexp.MustCompile(`\bm2\b`), "m²"},
		{regexp.MustCompile(`(\d) C\b`), "$1 °C"},
		{regexp.MustCompile(`([ (])-(\d)`), "$1" + Minus + "$2"},
	}
	for _, c := range currencies() {
		pattern := regexp.MustCompile(`\b` + c.code + ` ([+` + Minus + `]?)(\d)`)
		list = append(list, dressing{pattern, "${1}" + strings.ReplaceAll(c.sign, "$", "$$") + "$2"})
	}
	return list
}

// InPrint writes the units and signs of a sentence as print does: °C, m², £ and the
// true minus. Sentences are made without them, for a terminal has to do so.
func InPrint(s string) string {
	for _, d := range dressings {
		s = d.plain.ReplaceAllString(s, d.printed)
	}
	return s
}

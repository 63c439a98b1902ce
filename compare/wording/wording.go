// Package wording writes figures and words as people read them, the same in charts,
// reports and workbooks.
package wording

import (
	"math"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Minus is the true minus sign, which stands before figures that people read.
const Minus = "−"

// Amount writes a figure: commas at the thousands, a true minus, and no sign before
// what rounds to zero.
func Amount(v float64, decimals int) string {
	text := Fixed(math.Abs(v), decimals)
	whole, fraction, pointed := strings.Cut(text, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if pointed {
		whole += "." + fraction
	}
	if v < 0 && tells(whole) {
		return Minus + whole
	}
	return whole
}

// Signed puts a plus before the text of a positive figure, unless the text says
// zero. The text of a negative one has its sign already.
func Signed(v float64, text string) string {
	if v > 0 && tells(text) {
		return "+" + text
	}
	return text
}

// tells reports whether a text says anything but zero.
func tells(text string) bool { return strings.ContainsAny(text, "123456789") }

// Capital makes the first letter of plain words a capital.
func Capital(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	if first == utf8.RuneError {
		return s
	}
	return string(unicode.ToUpper(first)) + s[size:]
}

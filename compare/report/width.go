package report

import (
	"strings"
	"unicode"
)

// width gives the columns that text takes on a terminal: none for marks that
// combine with the character before, two for the wide characters of East Asia
// and for pictures, one for all others.
func width(s string) int {
	sum := 0
	for _, r := range s {
		sum += runeWidth(r)
	}
	return sum
}

func runeWidth(r rune) int {
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		return 0
	case isWide(r):
		return 2
	default:
		return 1
	}
}

// isWide knows the blocks whose characters take two columns (Unicode Standard
// Annex 11, the large blocks only, from memory).
func isWide(r rune) bool {
	if r < 0x1100 {
		return false // the common case, quickly
	}
	for _, block := range [...][2]rune{
		{0x1100, 0x115f},   // Hangul beginnings
		{0x3000, 0x303e},   // signs of Chinese, Japanese and Korean
		{0xff01, 0xff60},   // full-width forms
		{0xffe0, 0xffe6},   // full-width signs
		{0x1f300, 0x1faff}, // pictures
	} {
		if r >= block[0] && r <= block[1] {
			return true
		}
	}
	return unicode.In(r, unicode.Han, unicode.Hangul, unicode.Hiragana, unicode.Katakana)
}

// cut shortens text to a number of columns and shows with dots that it did.
func cut(s string, columns int) string {
	const dots = "..."
	if width(s) <= columns {
		return s
	}
	return fit(s, columns-len(dots)) + dots
}

// fit gives the longest beginning of text that fits, at least one character.
func fit(s string, columns int) string {
	for i, r := range s {
		columns -= runeWidth(r)
		if columns < 0 && i > 0 {
			return s[:i]
		}
	}
	return s
}

// padRight fills text up to a number of columns, on the right.
func padRight(s string, columns int) string { return s + strings.Repeat(" ", max(0, columns-width(s))) }

// padLeft fills text up to a number of columns, on the left.
func padLeft(s string, columns int) string { return strings.Repeat(" ", max(0, columns-width(s))) + s }

// wrap breaks text into lines of a number of columns. Lines after the first
// are indented.
func wrap(s string, columns int, indent string) []string {
	var lines []string
	line := ""
	for _, word := range words(s, columns-width(indent)) {
		switch {
		case line == "":
			line = word
		case width(line)+1+width(word) <= columns:
			line += " " + word
		default:
			lines = append(lines, line)
			line = indent + word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// words splits text at spaces, and words that are too long wherever they must.
func words(s string, longest int) []string {
	var list []string
	for _, word := range strings.Fields(s) {
		for width(word) > longest {
			head := fit(word, longest)
			list = append(list, head)
			word = word[len(head):]
		}
		list = append(list, word)
	}
	return list
}

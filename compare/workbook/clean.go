package workbook

import (
	"regexp"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"
)

// longestText is the most characters that are written of a text that somebody
// else wrote; a cell can hold 32,767.
const longestText = 2000

// clean makes a text that somebody else wrote fit for a cell: one line, no
// control characters, no marks that turn the direction of writing, not endless.
// A text that begins like a formula stays as it is: it is written as text, under
// a style that keeps it text.
func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case r == '\t' || r == '\n' || r == '\r':
			return ' '
		case r == utf8.RuneError || unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) || unicode.Is(unicode.Noncharacter_Code_Point, r):
			return -1
		}
		return r
	}, s)
	if runes := []rune(s); len(runes) > longestText {
		return string(runes[:longestText]) + " (cut)"
	}
	return s
}

// literal writes a text so that readers see it as it is: the format reads
// _x003D_ as the character with that code, which the library does not guard.
func literal(s string) string {
	return codedSign().ReplaceAllString(s, "_x005F$0")
}

var codedSign = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`_x[0-9A-Fa-f]{4}_`) })

package report

import (
	"strings"
	"unicode"
)

// Plain makes text from a stranger safe for a terminal, on one line. Control
// and formatting characters go, escape and text-direction codes among them; line
// breaks and tabs become spaces. Joiners stay: some scripts need them to be
// readable.
func Plain(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t' || r == '\r' || unicode.In(r, unicode.Zl, unicode.Zp):
			return ' '
		case r == zeroWidthJoiner || r == zeroWidthNonJoiner:
			return r
		case unicode.In(r, unicode.Cc, unicode.Cf):
			return -1
		default:
			return r
		}
	}, strings.ToValidUTF8(s, "\ufffd"))
}

const (
	zeroWidthNonJoiner = '\u200c'
	zeroWidthJoiner    = '\u200d'
)

// PlainLines is Plain for text of several lines.
func PlainLines(s string) string {
	lines := strings.Split(s, "\n")
	for i := range lines {
		lines[i] = Plain(lines[i])
	}
	return strings.Join(lines, "\n")
}

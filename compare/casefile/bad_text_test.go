package casefile

import (
	"strings"
	"testing"
)

func TestBadText(t *testing.T) {
	refused(t, []badInput{
		{"title of two lines", with("title: |\n  a\n  b\n"),
			`case.yaml:5: title is the text "a\nb\n", allowed one line of text, at most 120 characters: leave out line breaks, control characters and marks that turn the direction of writing`},
		{"long title", with("title: " + strings.Repeat("x", 121) + "\n"),
			"case.yaml:5: title has 121 characters, allowed are 120: shorten it"},
		{"control in title", with("title: \"a\\e[31mb\"\n"),
			`case.yaml:5: title is the text "a\x1b[31mb", allowed one line of text, at most 120 characters: leave out line breaks, control characters and marks that turn the direction of writing`},
		{"turned title", with("title: \"a\\u202Eb\"\n"),
			`case.yaml:5: title is the text "a\u202eb", allowed one line of text, at most 120 characters: leave out line breaks, control characters and marks that turn the direction of writing`},
		{"title as list", with("title: [a]\n"),
			`case.yaml:5: title is a list of 1, allowed one line of text, at most 120 characters: leave it out for the default, ""`},
		{"lower currency", with("currency: gbp\n"),
			"case.yaml:5: currency is gbp, allowed three capital letters, such as GBP or EUR: write GBP"},
		{"currency sign", with("currency: £\n"),
			"case.yaml:5: currency is £, allowed three capital letters, such as GBP or EUR: give the code of ISO 4217"},
		{"negative seed", with("seed: -1\n"),
			"case.yaml:5: seed is -1, allowed 0 to 9007199254740991: leave it out for the default, 1"},
		{"large seed", with("seed: 18446744073709551615\n"),
			"case.yaml:5: seed is 18446744073709551615, allowed 0 to 9007199254740991: leave it out for the default, 1"},
		{"no years", with("years: 0\n"),
			"case.yaml:5: years is 0, allowed 1 to 1000: leave it out for the default, 20"},
		{"half a year", with("years: 0.5\n"),
			"case.yaml:5: years is 0.5, allowed 1 to 1000: leave it out for the default, 20"},
	})
}

package main

import (
	"regexp"
	"slices"
	"strings"
	"testing"
)

func TestNearest(t *testing.T) {
	names := []string{"out", "seed", "years", "quiet", "json", "trace"}
	for word, want := range map[string]string{
		"yeers": "years", "year": "years", "output": "out", "o": "out", "sede": "seed", "qiet": "quiet", "Json": "json",
		"tracefile": "trace", "verbose": "", "x": "",
	} {
		if got := nearest(word, names); got != want {
			t.Errorf("nearest(%q) = %q, want %q", word, got, want)
		}
	}
}

func TestSlips(t *testing.T) {
	for _, test := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"", "abc", 3}, {"abc", "", 3}, {"abc", "abc", 0}, {"abc", "abd", 1}, {"abc", "ac", 1}, {"ac", "abc", 1}, {"ab", "ba", 2},
	} {
		if got := slips(test.a, test.b); got != test.want {
			t.Errorf("slips(%q, %q) = %d, want %d", test.a, test.b, got, test.want)
		}
	}
}

// TestHintsKnowEveryFlag keeps the list behind the hints in step with the flags.
func TestHintsKnowEveryFlag(t *testing.T) {
	var help, message strings.Builder
	if code := run([]string{"run", "--help"}, strings.NewReader(""), &help, &message); code != exitDone || message.Len() > 0 {
		t.Fatalf("exit code %d, message %q", code, message.String())
	}
	var got []string
	for _, m := range regexp.MustCompile(`(?m)^ .*--(\w+)`).FindAllStringSubmatch(help.String()[strings.Index(help.String(), "Flags:"):], -1) {
		got = append(got, m[1])
	}
	if want := append(flagNames(), "help"); !slices.Equal(got, want) {
		t.Errorf("the help lists %q, the hints %q", got, want)
	}
}

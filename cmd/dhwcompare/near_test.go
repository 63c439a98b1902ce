package main

import "testing"

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

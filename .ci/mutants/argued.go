package main

import "strings"

// reason is why a change of a line cannot be noticed: what it does is the same.
type reason struct{ file, was, is, why string }

// reasons lists the changes that are argued away.
func reasons() []reason {
	return []reason{}
}

// argument gives the reason for which a change cannot be noticed, or nothing.
func argument(m *mutant) string {
	was, is := m.lines()
	for _, r := range reasons() {
		if r.file == m.file && r.was == strings.TrimSpace(was) && r.is == strings.TrimSpace(is) {
			return r.why
		}
	}
	return ""
}

package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// TestLicencesCoverEveryModule holds the list of licences against go.mod: the same
// modules in the same versions.
func TestLicencesCoverEveryModule(t *testing.T) {
	mod, err := os.ReadFile(filepath.Join(repository, "go.mod"))
	if err != nil {
		t.Fatal(err)
	}
	required := pairs(string(mod), `(?m)^\t(\S+) (v\S+)`)
	listed := pairs(licencesText, `(?m)^  (\S+) (v[^:\s]+): [A-Z].*$`)
	if len(required) < 20 || !slices.Equal(required, listed) {
		t.Errorf("go.mod requires\n%s\nand the licences are of\n%s\nput right by: go run .ci/licences.go", strings.Join(required, "\n"), strings.Join(listed, "\n"))
	}
}

// pairs gives what a pattern finds in a text, sorted.
func pairs(text, pattern string) []string {
	var found []string
	for _, m := range regexp.MustCompile(pattern).FindAllStringSubmatch(text, -1) {
		found = append(found, m[1]+" "+m[2])
	}
	slices.Sort(found)
	return found
}

// TestLicencesHoldTheTexts looks for the terms of modules and fonts.
func TestLicencesHoldTheTexts(t *testing.T) {
	var out, message strings.Builder
	if code := run([]string{"licences"}, nil, &out, &message); code != exitDone || message.Len() > 0 {
		t.Fatalf("exit code %d, message %q", code, message.String())
	}
	for _, words := range []string{
		"SIL OPEN FONT LICENSE Version 1.1", "Reserved Font Name Liberation", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
		"The FreeType Project LICENSE", "Redistributions in binary form must reproduce the above copyright", "Creative Commons Attribution 4.0 International Public",
		"Additional IP Rights Grant (Patents)", "Copyright 2011-2016 Canonical Ltd.", "Copyright 2009 The Go Authors.",
	} {
		if !strings.Contains(out.String(), words) {
			t.Errorf("the licences do not say %q", words)
		}
	}
}

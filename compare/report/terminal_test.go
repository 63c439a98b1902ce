package report

import (
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"

	"dhwcompare/compare"
)

var update = flag.Bool("update", false, "write the golden files anew")

// printed gives what a page for the terminal says.
func printed(t *testing.T, page func(io.Writer, *compare.Document, string) error, doc *compare.Document) string {
	t.Helper()
	var b strings.Builder
	if err := page(&b, doc, "dhwcompare-out"); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestTerminalGolden shows both pages of four comparisons, the full and the short: the ordinary one,
// one in which costs are not compared, one that heats the house, and one of a
// single year.
func TestTerminalGolden(t *testing.T) {
	tests := map[string]func(*compare.Document){
		"ordinary": func(*compare.Document) {},
		"runs_cold": func(doc *compare.Document) {
			doc.Comparison.Verdict.Cost = compare.CostNotCompared
			doc.Comparison.Verdict.Text = "Neither option as set up gives this home enough hot water."
			doc.Comparison.Verdict.Short = doc.Comparison.Verdict.Text
			doc.Comparison.Options.Cylinder.MeetsServiceRule = false
		},
		"heats_the_house": func(doc *compare.Document) {
			doc.Case.Dwelling.HeatLossWPerK = 150
			doc.Comparison.CostBoundary = "the whole house, without standing charge"
		},
		"one_year": func(doc *compare.Document) {
			doc.Comparison.Years = 1
			doc.Comparison.Title = ""
			doc.Comparison.Warnings = nil
		},
	}
	for name, change := range tests {
		t.Run(name, func(t *testing.T) {
			doc := document()
			change(doc)
			for file, page := range map[string]func(io.Writer, *compare.Document, string) error{name: Full, name + "_short": Terminal} {
				got := printed(t, page, doc)
				golden(t, filepath.Join("testdata", file+".golden"), got)
				for line := range strings.SplitSeq(got, "\n") {
					if width(line) > columns {
						t.Errorf("%d columns: %q", width(line), line)
					}
				}
			}
		})
	}
}

func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o666); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("differs from %s (run with -update if it is meant to):\n%s", path, diff)
	}
}

// TestTerminalHoldsBackStrangersText checks that nothing that a case file says
// can steer the terminal or break the table.
func TestTerminalHoldsBackStrangersText(t *testing.T) {
	const nasty = "\x1b[2J\x1b]0;x\a\u202eevil\u2066\r\n\x9b31m\u009b\u00ad tariff \u5bbf\u6cca " + "a-name-without-any-space-that-goes-on-for-more-than-one-line-of-the-terminal-and-then-some"
	doc := document()
	doc.Comparison.Title = nasty
	doc.Comparison.Currency = "G\x1bBP"
	doc.Comparison.Tariffs[0].Name = nasty
	doc.Comparison.Verdict.Text, doc.Comparison.Verdict.Short = nasty, nasty
	doc.Comparison.Verdict.Reasons[0] = nasty
	doc.Comparison.Warnings[0].Text = nasty
	for line := range strings.SplitSeq(printed(t, Full, doc)+printed(t, Terminal, doc), "\n") {
		if width(line) > columns {
			t.Errorf("%d columns: %q", width(line), line)
		}
		if i := strings.IndexFunc(line, func(r rune) bool { return !unicode.IsPrint(r) }); i >= 0 {
			t.Errorf("unprintable at %d: %q", i, line)
		}
	}
}

func TestTerminalReportsAFailedWrite(t *testing.T) {
	for _, page := range []func(io.Writer, *compare.Document, string) error{Full, Terminal} {
		if err := page(brokenWriter{}, document(), ""); !errors.Is(err, os.ErrClosed) {
			t.Errorf("error is %v", err)
		}
	}
}

type brokenWriter struct{}

func (brokenWriter) Write([]byte) (int, error) { return 0, os.ErrClosed }

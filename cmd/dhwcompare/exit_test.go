package main

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"syscall"
	"testing"

	"dhwcompare/compare/casefile"
	"dhwcompare/compare/outdir"
)

func TestExitCodes(t *testing.T) {
	ended, cancel := context.WithCancel(t.Context())
	cancel()
	tests := map[string]struct {
		ctx  context.Context
		err  error
		want int
	}{
		"done":                     {t.Context(), nil, 0},
		"done before the signal":   {ended, nil, 0},
		"failure":                  {t.Context(), errors.New("disk full"), 1},
		"folder":                   {t.Context(), &outdir.TargetError{}, 1},
		"command line":             {t.Context(), &usageError{}, 2},
		"case file":                {t.Context(), fmt.Errorf("wrapped: %w", casefile.Problems{{}}), 2},
		"interrupted":              {ended, errors.New("whatever came of it"), 130},
		"reader gone":              {t.Context(), fmt.Errorf("write: %w", syscall.EPIPE), 0},
		"reader gone, interrupted": {ended, syscall.EPIPE, 0},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			if got := exitCode(test.ctx, test.err); got != test.want {
				t.Errorf("exit code %d, want %d", got, test.want)
			}
		})
	}
}

// TestMessagesAreSafe checks that a file's name cannot steer the terminal.
func TestMessagesAreSafe(t *testing.T) {
	var out, message strings.Builder
	if code := run([]string{"run", "no\x1b[2Jsuch\u202e.yaml"}, strings.NewReader(""), &out, &message); code != exitUsage {
		t.Errorf("exit code %d", code)
	}
	if got := message.String(); out.Len() > 0 || strings.ContainsAny(got, "\x1b\u202e") || !strings.HasPrefix(got, "dhwcompare: no[2Jsuch.yaml: there is no such file\nhint: ") {
		t.Errorf("printed %q and %q", out.String(), got)
	}
}

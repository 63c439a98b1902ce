package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strings"
	"syscall"
	"testing"
	"testing/iotest"

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

// TestFilesThatAreNoCase checks what no script can hold: bytes that are no text,
// and far too many of them.
func TestFilesThatAreNoCase(t *testing.T) {
	for name, test := range map[string]struct {
		input io.Reader
		want  string
	}{
		"binary":   {strings.NewReader("RIFF\x00\x01\xff"), "standard input:1: holds a zero byte"},
		"too long": {io.LimitReader(endless{}, 50<<20), "dhwcompare: standard input: is longer than a case file can be"},
		"broken":   {iotest.ErrReader(errors.New("broken")), "dhwcompare: standard input: cannot be read: broken"},
	} {
		t.Run(name, func(t *testing.T) {
			var out, message strings.Builder
			if code := run([]string{"check", "-"}, test.input, &out, &message); code != exitUsage {
				t.Errorf("exit code %d", code)
			}
			if out.Len() > 0 || !strings.HasPrefix(message.String(), test.want) {
				t.Errorf("printed %q and %q", out.String(), message.String())
			}
		})
	}
}

// endless is a stream of comment signs.
type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = '#'
	}
	return len(p), nil
}

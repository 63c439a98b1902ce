package main

import (
	"fmt"
	"io"
	"os"
	"strings"
	"time"
)

// progress shows how far long work has come. The engine knows only advance, as a
// plain function.
type progress interface {
	advance(done, of int)
	finish()
}

// silent shows nothing.
type silent struct{}

func (silent) advance(int, int) {}
func (silent) finish()          {}

// bar draws a line on a terminal, once the work has taken longer than patience,
// and wipes it out at the end.
type bar struct {
	out   io.Writer
	now   func() time.Time
	since time.Time
	drawn bool
}

// patience is how long work may take before a bar appears.
const patience = time.Second

func newBar(out io.Writer, now func() time.Time) *bar { return &bar{out: out, now: now, since: now()} }

func (b *bar) advance(done, of int) {
	if b.now().Sub(b.since) < patience {
		return
	}
	const cells = 30
	full := cells * done / of
	fmt.Fprintf(b.out, "\rsimulating [%s%s] %d of %d years", strings.Repeat("#", full), strings.Repeat(".", cells-full), done, of)
	b.drawn = true
}

func (b *bar) finish() {
	if b.drawn {
		const wipe = "\r\x1b[K" // to the start of the line, and clear it
		fmt.Fprint(b.out, wipe)
	}
}

// progressOn picks what suits where messages go.
func progressOn(stderr io.Writer, quiet bool) progress {
	if quiet || !isTerminal(stderr) {
		return silent{}
	}
	return newBar(stderr, time.Now)
}

// isTerminal reports whether a person watches w. The null device passes for a
// terminal by its mode, so it is asked for by name.
func isTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	if err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return false
	}
	null, err := os.Stat(os.DevNull)
	return err != nil || !os.SameFile(info, null)
}

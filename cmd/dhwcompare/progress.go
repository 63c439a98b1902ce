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
	unit  string // what is counted
	first int    // done before this work began
	begun bool
	drawn bool
}

// patience is how long work may take before a bar appears.
const patience = time.Second

func newBar(out io.Writer, now func() time.Time, unit string) *bar {
	return &bar{out: out, now: now, since: now(), unit: unit}
}

func (b *bar) advance(done, of int) {
	if !b.begun {
		b.begun, b.first = true, done
	}
	spent := b.now().Sub(b.since)
	if spent < patience || of <= 0 {
		return
	}
	const cells = 30
	full := cells * done / of
	fmt.Fprintf(b.out, "\rsimulating [%s%s] %d of %d %s%s", strings.Repeat("#", full), strings.Repeat(".", cells-full), done, of, b.unit, b.left(spent, done, of))
	b.drawn = true
}

// left says how long the rest will take if it goes on as it did, in a width that
// does not change.
func (b *bar) left(spent time.Duration, done, of int) string {
	if done <= b.first {
		return ""
	}
	const wide = 16
	rest := time.Duration(float64(spent) * float64(of-done) / float64(done-b.first))
	text := fmt.Sprintf(", %.0f s left", rest.Seconds())
	switch {
	case rest >= 2*time.Hour:
		text = fmt.Sprintf(", %.0f h left", rest.Hours())
	case rest >= 2*time.Minute:
		text = fmt.Sprintf(", %.0f min left", rest.Minutes())
	}
	return fmt.Sprintf("%-*s", wide, text)
}

func (b *bar) finish() {
	if b.drawn {
		const wipe = "\r\x1b[K" // to the start of the line, and clear it
		fmt.Fprint(b.out, wipe)
	}
}

// progressOn picks what suits where messages go, for work that counts years.
func progressOn(stderr io.Writer, quiet bool) progress { return progressOf(stderr, quiet, "years") }

// progressOf is progressOn for work that counts something else.
func progressOf(stderr io.Writer, quiet bool, unit string) progress {
	if quiet || !isTerminal(stderr) {
		return silent{}
	}
	return newBar(stderr, time.Now, unit)
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

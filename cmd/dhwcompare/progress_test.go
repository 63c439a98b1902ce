package main

import (
	"os"
	"strings"
	"testing"
	"time"
)

func TestBar(t *testing.T) {
	clock := time.Time{}
	var out strings.Builder
	b := newBar(&out, func() time.Time { return clock }, "years")
	b.advance(1, 4)
	clock = clock.Add(patience - 1)
	b.advance(2, 4)
	if out.Len() > 0 {
		t.Errorf("drew %q within its patience", out.String())
	}
	clock = clock.Add(1)
	b.advance(3, 4)
	b.finish()
	if got, want := out.String(), "\rsimulating [######################........] 3 of 4 years, 0 s left      \r\x1b[K"; got != want {
		t.Errorf("drew %q, want %q", got, want)
	}
}

// TestBarTellsWhatIsLeft takes up work of which a part was done before.
func TestBarTellsWhatIsLeft(t *testing.T) {
	for _, test := range []struct {
		spent time.Duration
		done  int
		want  string
	}{
		{10 * time.Second, 51, ", 8 min left"},  // 49 more at 10 s each
		{20 * time.Minute, 60, ", 80 min left"}, // 40 more at 2 min each
		{10 * time.Hour, 60, ", 40 h left"},     // 40 more at 1 h each
		{time.Second, 100, ", 0 s left"},        // all is done
	} {
		clock := time.Time{}
		var out strings.Builder
		b := newBar(&out, func() time.Time { return clock }, "homes")
		b.advance(50, 100)
		clock = clock.Add(test.spent)
		b.advance(test.done, 100)
		if !strings.Contains(out.String(), "of 100 homes"+test.want) {
			t.Errorf("after %v and %d homes drew %q, want %q", test.spent, test.done, out.String(), test.want)
		}
	}
}

func TestBarStaysAwayFromQuickWork(t *testing.T) {
	var out strings.Builder
	b := newBar(&out, time.Now, "years")
	b.finish()
	if out.Len() > 0 {
		t.Errorf("drew %q", out.String())
	}
}

func TestProgressOnlyOnATerminal(t *testing.T) {
	null, err := os.OpenFile(os.DevNull, os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	defer null.Close()
	file, err := os.Create(t.TempDir() + "/log")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	if isTerminal(&strings.Builder{}) || isTerminal(null) || isTerminal(file) {
		t.Error("taken for a terminal")
	}
	if terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0); err == nil {
		defer terminal.Close()
		if !isTerminal(terminal) {
			t.Error("a terminal is not known as one")
		}
		if _, isBar := progressOn(terminal, true).(*bar); isBar {
			t.Error("a bar although quiet")
		}
		if _, isBar := progressOn(terminal, false).(*bar); !isBar {
			t.Error("no bar")
		}
	}
}

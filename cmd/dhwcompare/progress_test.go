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
	b := newBar(&out, func() time.Time { return clock })
	b.advance(1, 4)
	clock = clock.Add(patience - 1)
	b.advance(2, 4)
	if out.Len() > 0 {
		t.Errorf("drew %q within its patience", out.String())
	}
	clock = clock.Add(1)
	b.advance(3, 4)
	b.finish()
	if got, want := out.String(), "\rsimulating [######################........] 3 of 4 years\r\x1b[K"; got != want {
		t.Errorf("drew %q, want %q", got, want)
	}
}

func TestBarStaysAwayFromQuickWork(t *testing.T) {
	var out strings.Builder
	b := newBar(&out, time.Now)
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

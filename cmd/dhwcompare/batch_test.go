//go:build unix

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// TestBatchInterrupted stops a batch, which says how to go on.
func TestBatchInterrupted(t *testing.T) {
	dir := t.TempDir()
	homes := &strings.Builder{}
	homes.WriteString("id\n")
	for i := range 1000 {
		fmt.Fprintf(homes, "home-%d\n", i)
	}
	writeFile(t, dir, "homes.csv", homes.String())
	writeFile(t, dir, "base.yaml", "household: {people: 2}\nclimate: {outdoor_c: [4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5]}\n")
	r := begin(t, dir, "batch", "homes.csv", "--base", "base.yaml", "--out", "out")
	journal := filepath.Join(dir, ".out.journal.jsonl")
	for t.Context().Err() == nil {
		if info, err := os.Stat(journal); err == nil && info.Size() > 0 {
			break
		}
		time.Sleep(time.Millisecond)
	}
	r.signal(t, syscall.SIGINT)
	code, stderr := r.end()
	if code != exitInterrupted || !strings.HasPrefix(stderr, "dhwcompare: interrupted; finished homes are kept in ") || !strings.Contains(stderr, "\nhint: the same command goes on from there\n") {
		t.Errorf("exit code %d, message %q", code, stderr)
	}
	if _, err := os.Stat(journal); err != nil {
		t.Errorf("no journal: %v", err)
	}
	if _, err := os.Stat(filepath.Join(dir, "out")); err == nil {
		t.Error("there is a folder of results")
	}
}

package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// BenchmarkDemo is the demo run as a user starts it, every file included.
func BenchmarkDemo(b *testing.B) {
	benchmark(b, "run")
}

// BenchmarkCheck is a case read and checked, the shortest job there is.
func BenchmarkCheck(b *testing.B) {
	b.ReportAllocs()
	home := filepath.Join(b.TempDir(), "home.yaml")
	runOrFail(b, "new", home)
	for b.Loop() {
		runOrFail(b, "check", home)
	}
}

// BenchmarkBatch is a portfolio of eight homes, five years each.
func BenchmarkBatch(b *testing.B) {
	dir := b.TempDir()
	homes := &strings.Builder{}
	homes.WriteString("id,household.people\n")
	for i := range 8 {
		fmt.Fprintf(homes, "home-%d,%d\n", i, 1+i%5)
	}
	list, base := filepath.Join(dir, "homes.csv"), filepath.Join(dir, "base.yaml")
	if err := os.WriteFile(list, []byte(homes.String()), 0o644); err != nil {
		b.Fatal(err)
	}
	runOrFail(b, "new", base)
	benchmark(b, "batch", list, "--base", base, "--years", "5")
}

// benchmark runs the program into a new folder each time.
func benchmark(b *testing.B, args ...string) {
	b.Helper()
	b.ReportAllocs()
	dir, n := b.TempDir(), 0
	for b.Loop() {
		n++
		runOrFail(b, append(args, "--quiet", "--out", filepath.Join(dir, fmt.Sprint(n)))...)
	}
}

func runOrFail(b *testing.B, args ...string) {
	b.Helper()
	complaints := &bytes.Buffer{}
	if code := run(args, strings.NewReader(""), io.Discard, complaints); code != 0 {
		b.Fatalf("%q ends with %d: %s", args, code, complaints)
	}
}

//go:build unix

package main

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"
)

// batchKills is how often TestBatchIsTakenUpAgain kills a batch; many times before
// a release.
var batchKills = flag.Int("batch-kills", 3, "how often a batch is killed in its test")

// TestBatchIsTakenUpAgain kills a batch at random moments until it has been killed
// often enough and comes to its end, and expects the bytes of one that was left
// alone. The moments differ from run to run, which is the point.
func TestBatchIsTakenUpAgain(t *testing.T) {
	dir := t.TempDir()
	homes := &strings.Builder{}
	homes.WriteString("id,cylinder.volume_l\n")
	for i := range 8 + *batchKills {
		fmt.Fprintf(homes, "home-%d,%d\n", i, 150+10*i%200)
	}
	writeFile(t, dir, "homes.csv", homes.String())
	writeFile(t, dir, "base.yaml", `household: {people: 2, load_profile: S}
climate: {outdoor_c: [4, 5, 7, 9, 12, 15, 17, 17, 14, 11, 7, 5]}
dwelling: {heat_loss_w_per_k: 0}
`)
	begun := time.Now()
	runBatch(t, dir, "alone", 0)
	whole := time.Since(begun)
	for range *batchKills {
		runBatch(t, dir, "killed", time.Duration(rand.Int64N(int64(whole)/2)))
	}
	runBatch(t, dir, "killed", 0)
	alone, killed := treeOf(t, filepath.Join(dir, "alone")), treeOf(t, filepath.Join(dir, "killed"))
	if len(alone) < 5 || len(alone) != len(killed) {
		t.Fatalf("%d files and %d files", len(alone), len(killed))
	}
	for name, data := range alone {
		if killed[name] != data {
			t.Errorf("%s differs", name)
		}
	}
	left, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, item := range left {
		names = append(names, item.Name())
	}
	if want := []string{".alone.journal.jsonl", ".killed.journal.jsonl", "alone", "base.yaml", "homes.csv", "killed"}; !slices.Equal(names, want) {
		t.Errorf("there are %q, want %q", names, want)
	}
}

// runBatch runs the batch, and kills it after a while unless that is zero.
func runBatch(t *testing.T, dir, out string, after time.Duration) {
	t.Helper()
	path, err := exec.LookPath("dhwcompare")
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.CommandContext(t.Context(), path, "batch", "homes.csv", "--base", "base.yaml", "--years", "1", "--out", out, "--quiet")
	cmd.Dir = dir
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	if after > 0 {
		time.Sleep(after)
		_ = cmd.Process.Kill() // it may have ended before
	}
	if err := cmd.Wait(); err != nil && after == 0 {
		t.Fatal(err)
	}
}

func writeFile(t *testing.T, dir, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

// treeOf reads the files of a folder.
func treeOf(t *testing.T, dir string) map[string]string {
	t.Helper()
	files := map[string]string{}
	items, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, item := range items {
		data, err := os.ReadFile(filepath.Join(dir, item.Name()))
		if err != nil {
			t.Fatal(err)
		}
		files[item.Name()] = string(data)
	}
	return files
}

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
	r.signal(t, syscall.SIGINT)
	code, stderr := r.end()
	journal := filepath.Join(dir, ".out.journal.jsonl")
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

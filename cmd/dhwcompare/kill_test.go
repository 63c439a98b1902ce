//go:build unix

package main

import (
	"flag"
	"maps"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"syscall"
	"testing"
	"time"
)

// kills is how often run and batch are killed in their tests; many times before a
// release.
var kills = flag.Int("kills", 5, "how often run and batch are each killed in their tests")

// victim is a command that is killed. It writes into the folder out, in place of
// earlier results.
type victim struct {
	dir   string
	args  []string // without seed and folder
	whole time.Duration
	// results are those of the seeds 1 and 2.
	results [2]map[string]string
}

// newVictim runs the command for either seed, and puts the results of seed 1 in the
// folder out.
func newVictim(t *testing.T, dir string, args ...string) *victim {
	t.Helper()
	v := &victim{dir: dir, args: args}
	for i, seed := range []string{"1", "2"} {
		begun := time.Now()
		v.run(t, seed, "whole-"+seed)
		v.whole = time.Since(begun)
		v.results[i] = filesIn(t, filepath.Join(dir, "whole-"+seed))
	}
	if maps.Equal(v.results[0], v.results[1]) {
		t.Fatal("the seed changes nothing, so that no mixture would be seen")
	}
	if err := os.CopyFS(filepath.Join(dir, "out"), os.DirFS(filepath.Join(dir, "whole-1"))); err != nil {
		t.Fatal(err)
	}
	return v
}

func (v *victim) command(t *testing.T, seed, out string) *exec.Cmd {
	t.Helper()
	path, err := exec.LookPath("dhwcompare")
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.CommandContext(t.Context(), path, append(slices.Clone(v.args), "--years", "1", "--quiet", "--seed", seed, "--out", out)...)
	cmd.Dir = v.dir
	return cmd
}

func (v *victim) run(t *testing.T, seed, out string) {
	t.Helper()
	if text, err := v.command(t, seed, out).CombinedOutput(); err != nil || len(text) > 0 {
		t.Fatalf("%v: %s", err, text)
	}
}

// inPlace tells whose results the folder out holds whole: those of seed 1 or 2; 0 if
// they are neither.
func (v *victim) inPlace(t *testing.T) int {
	t.Helper()
	got := filesIn(t, filepath.Join(v.dir, "out"))
	for i, whole := range v.results {
		if maps.Equal(got, whole) {
			return i + 1
		}
	}
	return 0
}

// killed starts the command and kills it at a random moment: every other time at
// one spread over its whole work, or else after a random number of files. It reports
// whether the kill came in time.
func (v *victim) killed(t *testing.T, seed string, byFiles bool) bool {
	t.Helper()
	cmd := v.command(t, seed, "out")
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	ended := make(chan struct{})
	go func() {
		_ = cmd.Wait() // its state says how it ended
		close(ended)
	}()
	if byFiles {
		files := len(v.results[0])
		v.waitForFiles(rand.IntN(files+files/4), ended)
	} else {
		waitFor(time.Duration(rand.Int64N(int64(v.whole))), ended)
	}
	_ = cmd.Process.Kill() // it may have ended before
	<-ended
	if !cmd.ProcessState.Exited() {
		return true
	}
	if !cmd.ProcessState.Success() {
		t.Fatalf("the program ended by itself: %v", cmd.ProcessState)
	}
	return false
}

// waitForFiles waits until so many files of new results are there, and a little
// more; for more files than there can be, until the new results are in place.
func (v *victim) waitForFiles(files int, ended <-chan struct{}) {
	out := filepath.Join(v.dir, "out")
	before, _ := os.Stat(out)
	for {
		select {
		case <-ended:
			return
		case <-time.After(200 * time.Microsecond):
		}
		count := 0
		for _, folder := range []string{"", "charts"} {
			items, _ := os.ReadDir(filepath.Join(v.dir, ".out.tmp-dhwcompare", "new", folder)) // it may not be there yet
			count += len(items)
		}
		now, err := os.Stat(out)
		if err == nil && !os.SameFile(before, now) {
			return
		}
		if count >= files {
			break
		}
	}
	waitFor(time.Duration(rand.IntN(3000))*time.Microsecond, ended)
}

func waitFor(d time.Duration, ended <-chan struct{}) {
	select {
	case <-ended:
	case <-time.After(d):
	}
}

// suffer kills the command again and again, each time with the seed whose results
// are not in place, and holds that the results are whole each time: the old or the
// new. Afterwards a run that is left alone gives the bytes of one that never saw a
// kill, and nothing else is left in the folder.
func (v *victim) suffer(t *testing.T, completed func(), left ...string) {
	t.Helper()
	now, old, fresh := 1, 0, 0
	for done := 0; done < *kills; {
		next := 3 - now
		inTime := v.killed(t, []string{"", "1", "2"}[next], done%2 == 1)
		switch v.inPlace(t) {
		case next:
			now = next
			completed()
			if inTime {
				fresh++
			}
		case now:
			if !inTime {
				t.Fatal("the program has ended and changed nothing")
			}
			old++
		default:
			t.Fatalf("kill %d leaves a mixture", done+1)
		}
		if inTime {
			done++
		}
	}
	t.Logf("%d kills: %d left the old results whole, %d the new ones", old+fresh, old, fresh)
	v.run(t, []string{"", "2", "1"}[now], "out")
	if v.inPlace(t) != 3-now {
		t.Error("after all kills the results are others")
	}
	items, err := os.ReadDir(v.dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, item := range items {
		names = append(names, item.Name())
	}
	slices.Sort(left)
	if !slices.Equal(names, left) {
		t.Errorf("there are %q, want %q", names, left)
	}
}

// TestResultsStayWhole lets a run meet with what can happen to it. Earlier results
// stay whole, or new ones are whole; the bytes are the same as ever.
func TestResultsStayWhole(t *testing.T) {
	dir := t.TempDir()
	writeFile(t, dir, "case.yaml", quickCase)
	v := newVictim(t, dir, "run", "case.yaml")
	for name, fault := range faultsOfSystem() {
		t.Run(name, func(t *testing.T) { fault(t, v) })
	}
	t.Run("interrupted", v.interrupted)
	t.Run("killed", func(t *testing.T) {
		v.suffer(t, func() {}, "case.yaml", "out", "whole-1", "whole-2")
	})
}

// interrupted stops a run of many years in the middle.
func (v *victim) interrupted(t *testing.T) {
	for _, s := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM} {
		r := begin(t, v.dir, "run", "case.yaml", "--years", "1000", "--seed", "2", "--out", "out")
		r.signal(t, s)
		if code, message := r.end(); code != exitInterrupted || message != "dhwcompare: interrupted; nothing was changed\n" {
			t.Errorf("%v: exit code %d, message %q", s, code, message)
		}
		if v.inPlace(t) != 1 {
			t.Errorf("%v: the old results are gone", s)
		}
	}
}

// TestBatchIsKilled kills a batch at random moments. The journal of finished homes
// makes each try begin where the last was killed; once one has come to its end, the
// next begins anew.
func TestBatchIsKilled(t *testing.T) {
	dir := t.TempDir()
	writeFile(t, dir, "case.yaml", quickCase)
	writeFile(t, dir, "homes.csv", "id,cylinder.volume_l\na,150\nb,170\nc,190\nd,210\ne,250\nf,300\n")
	v := newVictim(t, dir, "batch", "homes.csv", "--base", "case.yaml")
	anew := func() {
		if err := os.Remove(filepath.Join(dir, ".out.journal.jsonl")); err != nil {
			t.Fatal(err)
		}
	}
	v.suffer(t, anew, "case.yaml", "homes.csv", "out", "whole-1", "whole-2", ".out.journal.jsonl", ".whole-1.journal.jsonl", ".whole-2.journal.jsonl")
}

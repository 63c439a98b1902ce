//go:build unix

package main

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// TestInterrupt stops long runs in the middle. What was there before stays, and
// nothing else does.
func TestInterrupt(t *testing.T) {
	for name, args := range map[string][]string{
		"folder": {"run", "--years", "1000", "--out", "out"},
		"trace":  {"run", "--years", "1000", "--out", "out", "--trace", "trace.csv"},
	} {
		for _, signal := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM} {
			t.Run(name+" "+signal.String(), func(t *testing.T) {
				dir := t.TempDir()
				r := begin(t, dir, args...)
				r.signal(t, signal)
				code, stderr := r.end()
				if code != exitInterrupted || stderr != "dhwcompare: interrupted; nothing was changed\n" {
					t.Errorf("exit code %d, message %q", code, stderr)
				}
				left, err := os.ReadDir(dir)
				if err != nil || len(left) > 0 {
					t.Errorf("left behind: %v (%v)", left, err)
				}
			})
		}
	}
}

// TestTwoRunsAtOnce lets a second run meet a first one that is at work on the
// same folder.
func TestTwoRunsAtOnce(t *testing.T) {
	dir := t.TempDir()
	first := begin(t, dir, "run", "--years", "1000", "--out", "out")
	second := begin(t, dir, "run", "--years", "1", "--out", "out")
	if code, stderr := second.end(); code != exitFailure || !strings.Contains(stderr, "is being written by another run; wait until that run has ended") {
		t.Errorf("the second run ended with %d and %q", code, stderr)
	}
	first.signal(t, syscall.SIGINT)
	if code, stderr := first.end(); code != exitInterrupted {
		t.Errorf("the first run ended with %d and %q", code, stderr)
	}
}

// running is the program at work.
type running struct {
	cmd    *exec.Cmd
	stderr bytes.Buffer
}

// begin starts the program in dir and waits until somebody is at work on the
// folder out there.
func begin(t *testing.T, dir string, args ...string) *running {
	t.Helper()
	path, err := exec.LookPath("dhwcompare")
	if err != nil {
		t.Fatal(err)
	}
	// Far more than is needed, and far less than a thousand years take.
	ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	t.Cleanup(cancel)
	r := &running{cmd: exec.CommandContext(ctx, path, args...)}
	r.cmd.Dir, r.cmd.Stderr = dir, &r.stderr
	if err := r.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	for ctx.Err() == nil {
		if _, err := os.Stat(filepath.Join(dir, ".out.tmp-dhwcompare", "new")); err == nil {
			break
		}
		time.Sleep(time.Millisecond)
	}
	return r
}

func (r *running) signal(t *testing.T, s syscall.Signal) {
	t.Helper()
	if err := r.cmd.Process.Signal(s); err != nil {
		t.Fatal(err)
	}
}

// end waits for the program and gives its exit code and messages.
func (r *running) end() (code int, stderr string) {
	_ = r.cmd.Wait() // the exit code says it all
	return r.cmd.ProcessState.ExitCode(), r.stderr.String()
}

//go:build unix

package main

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
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
				code, stderr := interrupted(t, dir, signal, args)
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

// interrupted runs the program in dir, waits until it is at work there, sends it
// a signal, and gives its exit code and message.
func interrupted(t *testing.T, dir string, signal syscall.Signal, args []string) (int, string) {
	t.Helper()
	path, err := exec.LookPath("dhwcompare")
	if err != nil {
		t.Fatal(err)
	}
	// Far more than is needed, and far less than a thousand years take.
	ctx, cancel := context.WithTimeout(t.Context(), 20*time.Second)
	defer cancel()
	var stderr bytes.Buffer
	cmd := exec.CommandContext(ctx, path, args...)
	cmd.Dir, cmd.Stderr = dir, &stderr
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	for ctx.Err() == nil {
		if _, err := os.Stat(filepath.Join(dir, ".out.tmp-dhwcompare", "new")); err == nil {
			break
		}
		time.Sleep(time.Millisecond)
	}
	if err := cmd.Process.Signal(signal); err != nil {
		t.Fatal(err)
	}
	_ = cmd.Wait() // the exit code says it all
	return cmd.ProcessState.ExitCode(), stderr.String()
}

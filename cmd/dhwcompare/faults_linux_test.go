package main

import (
	"errors"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// faultsOfSystem lists the faults that this system can be made to have.
func faultsOfSystem() map[string]func(*testing.T, *victim) {
	return map[string]func(*testing.T, *victim){
		"far from all":   farFromAll,
		"full disk":      fullDisk,
		"read-only disk": readOnlyDisk,
		"deaf reader":    deafReader,
	}
}

// farFromAll runs the program where there is no network, not even one of the
// machine with itself, and where clock, language and the signs of numbers are
// others. The results are the same bytes.
func farFromAll(t *testing.T, v *victim) {
	out := filepath.Join(t.TempDir(), "out")
	cmd := v.command(t, "2", out)
	cmd.Env = []string{"PATH=" + os.Getenv("PATH"), "TZ=Pacific/Chatham", "LC_ALL=tr_TR.UTF-8", "LANG=de_DE@euro", "LANGUAGE=ar", "LC_NUMERIC=fr_FR", "GOMAXPROCS=1"}
	cut := &syscall.SysProcAttr{Cloneflags: syscall.CLONE_NEWNET}
	if os.Geteuid() != 0 {
		cut.Cloneflags |= syscall.CLONE_NEWUSER
	}
	look := exec.CommandContext(t.Context(), "cat", "/proc/net/dev", "/proc/net/route")
	look.SysProcAttr = cut
	seen, err := look.CombinedOutput()
	if errors.Is(err, syscall.EPERM) || errors.Is(err, syscall.EINVAL) || errors.Is(err, syscall.ENOSPC) {
		t.Skipf("no network namespace may be made here: %v", err)
	}
	if err != nil {
		t.Fatalf("%v: %s", err, seen)
	}
	if n := strings.Count(string(seen), ":"); n > 1 {
		t.Fatalf("there is a network: %s", seen)
	}
	cmd.SysProcAttr = cut
	if text, err := cmd.CombinedOutput(); err != nil || len(text) > 0 {
		t.Fatalf("%v: %s", err, text)
	}
	if got := filesIn(t, out); !maps.Equal(got, v.results[1]) {
		t.Error("the results are others than at home")
	}
}

// disk mounts a memory disk with the old results on it, and gives its folder.
func (v *victim) disk(t *testing.T, options string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "disk")
	if err := os.Mkdir(dir, 0o777); err != nil {
		t.Fatal(err)
	}
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, options); err != nil {
		t.Skipf("no memory disk may be mounted here: %v", err)
	}
	t.Cleanup(func() {
		if err := syscall.Unmount(dir, 0); err != nil {
			t.Error(err)
		}
	})
	if err := os.CopyFS(filepath.Join(dir, "out"), os.DirFS(filepath.Join(v.dir, "whole-1"))); err != nil {
		t.Fatal(err)
	}
	return dir
}

// fullDisk leaves no room for new results beside the old ones. Neither the folder
// nor a trace nor the journal of a batch is begun where it cannot be ended.
func fullDisk(t *testing.T, v *victim) {
	dir := v.disk(t, "size=8m")
	filler, err := os.Create(filepath.Join(dir, "filler"))
	if err != nil {
		t.Fatal(err)
	}
	defer filler.Close()
	block := make([]byte, 4096)
	for err == nil {
		_, err = filler.Write(block)
	}
	const room = 256 << 10 // far less than a folder of results takes
	info, statErr := filler.Stat()
	if !errors.Is(err, syscall.ENOSPC) || statErr != nil || filler.Truncate(info.Size()-room) != nil {
		t.Fatalf("the disk is not full: %v, %v", err, statErr)
	}
	v.fails(t, dir, "no space left on device", v.command(t, "2", filepath.Join(dir, "out")))
	homes := filepath.Join(dir, "homes.csv")
	if err := os.WriteFile(homes, []byte("id\n"+strings.Repeat("x", 90)+"\n"), 0o666); err != nil {
		t.Fatal(err)
	}
	for err = nil; err == nil; {
		_, err = filler.Write(block[:1])
	}
	batch := exec.CommandContext(t.Context(), v.command(t, "1", "").Path, "batch", homes, "--base", "case.yaml", "--years", "1", "--quiet", "--out", filepath.Join(dir, "portfolio"))
	batch.Dir = v.dir
	v.fails(t, dir, "no space left on device", batch)
	fresh := exec.CommandContext(t.Context(), batch.Path, "new", filepath.Join(dir, "home.yaml"))
	v.fails(t, dir, "no space left on device", fresh)
}

// readOnlyDisk allows nothing to be written.
func readOnlyDisk(t *testing.T, v *victim) {
	dir := v.disk(t, "size=8m")
	if err := syscall.Mount("", dir, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skipf("the disk cannot be made read-only here: %v", err)
	}
	run := v.command(t, "2", filepath.Join(dir, "out"))
	v.fails(t, dir, "read-only", run)
	v.fails(t, dir, "read-only", exec.CommandContext(t.Context(), run.Path, "run", "--trace", filepath.Join(dir, "t.csv"), "--out", filepath.Join(t.TempDir(), "out")))
	v.fails(t, dir, "read-only", exec.CommandContext(t.Context(), run.Path, "new", filepath.Join(dir, "home.yaml")))
}

// fails runs a command that cannot do its work on a disk: exit code 1, one message,
// the old results as they were, and nothing new.
func (v *victim) fails(t *testing.T, dir, words string, cmd *exec.Cmd) {
	t.Helper()
	text, _ := cmd.CombinedOutput() // the state says how it ended
	if cmd.ProcessState.ExitCode() != exitFailure || !strings.Contains(string(text), words) || strings.Count(string(text), "\n") > 2 {
		t.Errorf("%q: exit code %d, message %q", cmd.Args[1:], cmd.ProcessState.ExitCode(), text)
	}
	if got := filesIn(t, filepath.Join(dir, "out")); !maps.Equal(got, v.results[0]) {
		t.Errorf("%q: the old results are not what they were", cmd.Args[1:])
	}
	items, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, item := range items {
		switch item.Name() {
		case "out", "filler", "homes.csv":
		default:
			t.Errorf("%q: %s is left behind", cmd.Args[1:], item.Name())
		}
	}
}

// deafReader takes no standard output: the results are whole, and the exit code
// says that the table was not printed.
func deafReader(t *testing.T, v *victim) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip(err)
	}
	defer full.Close()
	homes := filepath.Join(t.TempDir(), "homes.csv")
	if err := os.WriteFile(homes, []byte("id\na\n"), 0o666); err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(t.TempDir(), "out")
	cmd := exec.CommandContext(t.Context(), v.command(t, "1", "").Path, "batch", homes, "--base", "case.yaml", "--years", "1", "--out", out)
	cmd.Dir, cmd.Stdout = v.dir, full
	err = cmd.Run()
	if cmd.ProcessState.ExitCode() != exitFailure {
		t.Errorf("exit code %d: %v", cmd.ProcessState.ExitCode(), err)
	}
	if files := filesIn(t, out); len(files) < 5 || files["manifest.json"] == "" {
		t.Errorf("there are %d files", len(files))
	}
}

package outdir

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// text returns a fill that writes a string.
func text(s string) func(io.Writer) error {
	return func(w io.Writer) error { _, err := io.WriteString(w, s); return err }
}

// wantFile requires the content of a file and that it stands alone.
func wantFile(t *testing.T, path, want string) {
	t.Helper()
	got, err := os.ReadFile(path)
	if err != nil || string(got) != want {
		t.Errorf("%s holds %q (%v), want %q", path, got, err, want)
	}
	wantAlone(t, path)
}

// wantTargetError requires a TargetError whose text holds a phrase.
func wantTargetError(t *testing.T, err error, phrase string) {
	t.Helper()
	if problem := (*TargetError)(nil); !errors.As(err, &problem) || !strings.Contains(err.Error(), phrase) {
		t.Errorf("error is %v, want a TargetError with %q", err, phrase)
	}
}

func TestWriteFileNew(t *testing.T) {
	path := filepath.Join(t.TempDir(), "case.yaml")
	must(t, WriteFileNew(path, []byte("one")))
	wantFile(t, path, "one")
	wantTargetError(t, WriteFileNew(path, []byte("two")), "exists already")
	wantFile(t, path, "one")
}

func TestWriteFileNewRefusals(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "file"), "x")
	must(t, os.Symlink("gone", filepath.Join(dir, "dangling")))
	put(t, filepath.Join(dir, ".taken.tmp-dhwcompare", "x"), "x")
	for name, phrase := range map[string]string{
		"":            "exists already", // the folder itself
		"dangling":    "exists already",
		"no/such/dir": "does not exist",
		"file/below":  "through a file",
		"taken":       "not this program's",
	} {
		wantTargetError(t, WriteFileNew(filepath.Join(dir, name), nil), phrase)
	}
	wantTargetError(t, WriteFileNew("", nil), "no name")
}

// TestLinkNewNeverReplaces lets the file appear after the first look.
func TestLinkNewNeverReplaces(t *testing.T) {
	path := filepath.Join(t.TempDir(), "case.yaml")
	err := viaTemporary(path, text("ours"), func(tmp *os.File) error {
		put(t, path, "theirs")
		return linkNew(tmp, path, []byte("ours"))
	})
	wantTargetError(t, err, "exists already")
	wantFile(t, path, "theirs")
}

// TestWriteExclusive covers disks without hard links.
func TestWriteExclusive(t *testing.T) {
	path := filepath.Join(t.TempDir(), "case.yaml")
	must(t, writeExclusive(path, []byte("one")))
	if err := writeExclusive(path, []byte("two")); !errors.Is(err, fs.ErrExist) {
		t.Errorf("error is %v", err)
	}
	wantFile(t, path, "one")
}

func TestWriteFileAtomic(t *testing.T) {
	path := filepath.Join(t.TempDir(), "trace.csv")
	must(t, WriteFileAtomic(path, text("a longer first version")))
	wantFile(t, path, "a longer first version")
	must(t, os.Chmod(path, 0o600))
	must(t, WriteFileAtomic(path, text("second")))
	wantFile(t, path, "second")
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("permissions became %v (%v)", info.Mode(), err)
	}
}

func TestWriteFileAtomicKeepsOldOnFailure(t *testing.T) {
	path := filepath.Join(t.TempDir(), "trace.csv")
	must(t, WriteFileAtomic(path, text("first")))
	broken := errors.New("broken")
	got := WriteFileAtomic(path, func(w io.Writer) error {
		// More than any buffer holds, so that some of it is on disk already.
		must(t, text(strings.Repeat("half ", 100000))(w))
		return broken
	})
	if got != broken {
		t.Errorf("error is %v", got)
	}
	wantFile(t, path, "first")
}

func TestWriteFileAtomicTakesOverDeadTemporary(t *testing.T) {
	path := filepath.Join(t.TempDir(), "trace.csv")
	put(t, siblingName(path), "what a killed run had written so far")
	must(t, WriteFileAtomic(path, text("whole")))
	wantFile(t, path, "whole")
}

func TestWriteFileAtomicRefusesSecondWriter(t *testing.T) {
	path := filepath.Join(t.TempDir(), "trace.csv")
	must(t, WriteFileAtomic(path, func(w io.Writer) error {
		wantTargetError(t, WriteFileAtomic(path, text("intruder")), "another run")
		return text("first")(w)
	}))
	wantFile(t, path, "first")
}

func TestWriteFileAtomicFollowsLink(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "disk", "trace.csv"), "old")
	link := filepath.Join(dir, "link.csv")
	must(t, os.Symlink(filepath.Join("disk", "trace.csv"), link))
	must(t, WriteFileAtomic(link, text("new")))
	wantFile(t, filepath.Join(dir, "disk", "trace.csv"), "new")
}

func TestWriteFileAtomicRefusals(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "file"), "x")
	must(t, os.Symlink("gone", filepath.Join(dir, "dangling")))
	for name, phrase := range map[string]string{
		"":           "not an ordinary file",
		"dangling":   "leads nowhere",
		"no/dir/f":   "does not exist",
		"file/below": "through a file",
	} {
		wantTargetError(t, WriteFileAtomic(filepath.Join(dir, name), text("x")), phrase)
	}
	wantTargetError(t, WriteFileAtomic(os.DevNull, text("x")), "not an ordinary file")
	wantTargetError(t, WriteFileAtomic("", text("x")), "no name")
}

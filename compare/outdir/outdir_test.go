package outdir

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
)

func TestWriteMakesAbsentAndEmptyTargets(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		for _, name := range []string{"absent", "empty", "deep/er/still"} {
			target := filepath.Join(t.TempDir(), name)
			if name == "empty" {
				must(t, os.Mkdir(target, 0o755))
			}
			must(t, write(t.Context(), target, results("v1"), swap))
			wantVersion(t, target, "v1")
		}
	})
}

func TestWriteReplacesEarlierResults(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		target := filepath.Join(t.TempDir(), "results")
		must(t, write(t.Context(), target, results("v1"), swap))
		must(t, write(t.Context(), target, results("v2"), swap))
		wantVersion(t, target, "v2")
	})
}

func TestWriteReplacesWhenListedFilesAreGone(t *testing.T) {
	target := filepath.Join(t.TempDir(), "results")
	must(t, Write(t.Context(), target, results("v1")))
	must(t, os.RemoveAll(filepath.Join(target, "charts")))
	must(t, Write(t.Context(), target, results("v2")))
	wantVersion(t, target, "v2")
}

func TestWriteKeepsPermissions(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		target := filepath.Join(t.TempDir(), "results")
		must(t, write(t.Context(), target, results("v1"), swap))
		must(t, os.Chmod(target, 0o700))
		must(t, write(t.Context(), target, results("v2"), swap))
		info, err := os.Stat(target)
		must(t, err)
		if got := info.Mode().Perm(); got != 0o700 {
			t.Errorf("a private folder became %v", got)
		}
	})
}

func TestWriteFollowsLinkToFolder(t *testing.T) {
	base := t.TempDir()
	target := filepath.Join(base, "disk", "results")
	must(t, os.MkdirAll(target, 0o755))
	link := filepath.Join(base, "link")
	must(t, os.Symlink(target, link))
	must(t, Write(t.Context(), link, results("v1")))
	wantVersion(t, target, "v1")
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link itself was replaced: %v, %v", info, err)
	}
}

func TestFailedFillLeavesEverythingAsItWas(t *testing.T) {
	broken := errors.New("the simulation broke")
	tests := map[string]struct {
		fill func(*Folder, context.CancelFunc) error
		want error
	}{
		"fill fails": {func(d *Folder, _ context.CancelFunc) error {
			return errors.Join(d.WriteFile("half.json", []byte("half")), broken)
		}, broken},
		"cancelled": {func(d *Folder, cancel context.CancelFunc) error {
			cancel()
			return d.WriteFile("half.json", []byte("half"))
		}, context.Canceled},
		"cancelled in the middle of a file": {func(d *Folder, cancel context.CancelFunc) error {
			w, err := d.Create("half.json")
			must(t, err)
			_, err = w.Write([]byte("half"))
			must(t, err)
			cancel()
			if _, err = w.Write([]byte("half")); !errors.Is(err, context.Canceled) {
				t.Errorf("writing goes on after the end: %v", err)
			}
			return errors.Join(err, w.Close())
		}, context.Canceled},
		"cancelled and overlooked": {func(d *Folder, cancel context.CancelFunc) error {
			defer cancel()
			return d.WriteFile("whole.json", []byte("whole"))
		}, context.Canceled},
		"failure overlooked": {func(d *Folder, _ context.CancelFunc) error {
			_ = d.WriteFile("../escape", nil)
			return nil
		}, nil},
		"file left open": {func(d *Folder, _ context.CancelFunc) error {
			_, err := d.Create("open.csv")
			return err
		}, nil},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			run := func(target string) error {
				ctx, cancel := context.WithCancel(t.Context())
				defer cancel()
				return Write(ctx, target, func(d *Folder) error { return test.fill(d, cancel) })
			}
			target := filepath.Join(t.TempDir(), "results")
			must(t, Write(t.Context(), target, results("v1")))
			err := run(target)
			if err == nil || test.want != nil && !errors.Is(err, test.want) {
				t.Errorf("error is %v, want %v", err, test.want)
			}
			wantVersion(t, target, "v1")

			absent := filepath.Join(t.TempDir(), "deep", "results")
			if err := run(absent); err == nil {
				t.Error("no error with an absent target")
			}
			if there, err := exists(filepath.Dir(absent)); there || err != nil {
				t.Errorf("a folder made for the results was left (%v)", err)
			}
		})
	}
}

func TestFillErrorIsReturnedAsItIs(t *testing.T) {
	broken := errors.New("the simulation broke")
	got := Write(t.Context(), filepath.Join(t.TempDir(), "results"), func(*Folder) error { return broken })
	if got != broken {
		t.Errorf("got %#v, want the error of fill itself", got)
	}
}

func TestPanicInFillLeavesNothing(t *testing.T) {
	target := filepath.Join(t.TempDir(), "results")
	must(t, Write(t.Context(), target, results("v1")))
	func() {
		defer func() {
			if recover() == nil {
				t.Error("the panic was swallowed")
			}
		}()
		_ = Write(t.Context(), target, func(*Folder) error { panic("broken") })
	}()
	wantVersion(t, target, "v1")
}

func TestStrangerThatArrivesDuringTheRunIsKept(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		target := filepath.Join(t.TempDir(), "results")
		must(t, write(t.Context(), target, results("v1"), swap))
		notes := filepath.Join(target, "notes.txt")
		err := write(t.Context(), target, func(*Folder) error {
			put(t, notes, "mine")
			return nil
		}, swap)
		if problem := (*TargetError)(nil); !errors.As(err, &problem) || !slices.Equal(problem.Names, []string{"notes.txt"}) {
			t.Errorf("error is %v", err)
		}
		must(t, os.Remove(notes))
		wantVersion(t, target, "v1")
	})
}

func TestSecondRunIntoOneFolderIsRefused(t *testing.T) {
	target := filepath.Join(t.TempDir(), "results")
	err := Write(t.Context(), target, func(d *Folder) error {
		inner := Write(t.Context(), target, results("intruder"))
		if problem := (*TargetError)(nil); !errors.As(inner, &problem) || !strings.Contains(inner.Error(), "another run") {
			t.Errorf("the second run got %v", inner)
		}
		return results("v1")(d)
	})
	must(t, err)
	wantVersion(t, target, "v1")
}

func TestManyRunsAtOnceNeverMix(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		target := filepath.Join(t.TempDir(), "results")
		written := make([]error, 16)
		var wg sync.WaitGroup
		for i := range written {
			wg.Go(func() {
				written[i] = write(t.Context(), target, results(fmt.Sprint("run", i)), swap)
			})
		}
		wg.Wait()
		won := 0
		for _, err := range written {
			if err == nil {
				won++
			} else if problem := (*TargetError)(nil); !errors.As(err, &problem) {
				t.Errorf("a run that lost got %v", err)
			}
		}
		if won == 0 {
			t.Fatal("no run won")
		}
		for i, err := range written {
			if there, _ := exists(filepath.Join(target, fmt.Sprint("run", i, ".txt"))); there {
				if err != nil {
					t.Errorf("run %d failed, but its results are in place", i)
				}
				wantVersion(t, target, fmt.Sprint("run", i))
			}
		}
	})
}

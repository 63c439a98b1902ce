package outdir

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// mount puts a memory disk on dir for one test, or skips it where that is not
// allowed.
func mount(t *testing.T, dir string, flags uintptr, options string) {
	t.Helper()
	must(t, os.MkdirAll(dir, 0o755))
	if err := syscall.Mount("tmpfs", dir, "tmpfs", flags, options); err != nil {
		t.Skipf("cannot mount a memory disk here: %v", err)
	}
	t.Cleanup(func() {
		if err := syscall.Unmount(dir, 0); err != nil {
			t.Error(err)
		}
	})
}

func TestFullDiskKeepsOldResults(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		disk := filepath.Join(t.TempDir(), "disk")
		mount(t, disk, 0, "size=128k")
		target := filepath.Join(disk, "results")
		must(t, write(t.Context(), target, results("v1"), swap))
		big := bytes.Repeat([]byte("x"), 1<<20)
		for _, overlook := range []bool{false, true} {
			err := write(t.Context(), target, func(d *Folder) error {
				err := d.WriteFile("big.bin", big)
				if overlook {
					return nil
				}
				return err
			}, swap)
			if problem := (*TargetError)(nil); !errors.Is(err, syscall.ENOSPC) || errors.As(err, &problem) {
				t.Errorf("error is %v", err)
			}
			wantVersion(t, target, "v1")
		}
		trace := filepath.Join(target, "comparison.json")
		err := WriteFileAtomic(trace, text(string(big)))
		if !errors.Is(err, syscall.ENOSPC) {
			t.Errorf("error is %v", err)
		}
		wantVersion(t, target, "v1")
	})
}

func TestReadOnlyDiskIsRefused(t *testing.T) {
	disk := filepath.Join(t.TempDir(), "disk")
	mount(t, disk, syscall.MS_RDONLY, "")
	for _, name := range []string{"results", "deep/results"} {
		wantTargetError(t, Write(t.Context(), filepath.Join(disk, name), results("v1")), "read-only")
	}
	wantTargetError(t, WriteFileNew(filepath.Join(disk, "case.yaml"), nil), "read-only")
}

func TestMountPointIsRefused(t *testing.T) {
	eachSwap(t, func(t *testing.T, swap swapper) {
		target := filepath.Join(t.TempDir(), "results")
		mount(t, target, 0, "size=128k")
		wantTargetError(t, write(t.Context(), target, results("v1"), swap), "mount point")
		if got := tree(t, target); len(got) != 0 {
			t.Errorf("the mount point holds %q", got)
		}
		wantAlone(t, target)
	})
}

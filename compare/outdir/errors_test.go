package outdir

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// TestFailuresAreToldApart holds which failures a user can cure with another
// path, and that the cause stays visible to callers either way.
func TestFailuresAreToldApart(t *testing.T) {
	tests := map[string]struct {
		cause error
		text  string // "" for a failure of the machine
	}{
		"permission": {syscall.EACCES, "may not be read or written"},
		"read-only":  {syscall.EROFS, "read-only disk"},
		"not a dir":  {syscall.ENOTDIR, "through a file"},
		"absent":     {syscall.ENOENT, "does not exist"},
		"long name":  {syscall.ENAMETOOLONG, "too long"},
		"busy":       {syscall.EBUSY, "mount point"},
		"other disk": {syscall.EXDEV, "mount point"},
		"disk full":  {syscall.ENOSPC, ""},
		"disk fault": {syscall.EIO, ""},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			for _, err := range []error{
				&fs.PathError{Op: "open", Path: ".hidden", Err: test.cause},
				&os.LinkError{Op: "rename", Old: ".hidden", New: "out", Err: test.cause},
			} {
				got := targetFailure("out", err)
				if !errors.Is(got, test.cause) {
					t.Errorf("the cause is lost: %v", got)
				}
				if strings.Contains(got.Error(), ".hidden") {
					t.Errorf("a temporary name shows: %v", got)
				}
				if test.text != "" {
					wantTargetError(t, got, test.text)
				} else if problem := (*TargetError)(nil); errors.As(got, &problem) {
					t.Errorf("a failure of the machine became %v", got)
				}
			}
		})
	}
}

func TestTooLongNameIsRefused(t *testing.T) {
	target := filepath.Join(t.TempDir(), strings.Repeat("x", 250))
	wantTargetError(t, Write(t.Context(), target, results("v1")), "too long")
}

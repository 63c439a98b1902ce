package outdir

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// swapper exchanges two names in one step or fails without having changed
// anything.
type swapper func(a, b string) error

// install puts the new folder in the place of the target. Afterwards the old one
// lies in the workspace under one of its names, for close to delete.
func (w *workspace) install(swap swapper) error {
	info, err := os.Lstat(w.target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		err = os.Rename(w.path(newName), w.target)
	case err == nil:
		err = w.replace(info.Mode().Perm(), swap)
	}
	if err != nil {
		return targetFailure(w.target, err)
	}
	return syncDir(filepath.Dir(w.target))
}

// replace exchanges an existing target with the new folder, in one step if the
// system can. The new folder takes over the permissions of the old one: who made
// it private wants it to stay so.
func (w *workspace) replace(perm fs.FileMode, swap swapper) error {
	if err := os.Chmod(w.path(newName), perm); err != nil {
		return err
	}
	if swap(w.path(newName), w.target) == nil {
		return nil
	}
	if err := w.setAside(); err != nil {
		return err
	}
	return w.moveIn()
}

// setAside is the first of two renames: the target becomes old.
func (w *workspace) setAside() error { return os.Rename(w.target, w.path(oldName)) }

// moveIn is the second: new becomes the target. If it fails, closing the
// workspace finds the target missing and puts old back.
func (w *workspace) moveIn() error { return os.Rename(w.path(newName), w.target) }

package outdir

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Names inside a workspace; the package comment says what each is for.
const (
	lockName  = "lock"
	newName   = "new"
	oldName   = "old"
	trashName = "trash"
)

// siblingName gives the hidden name beside path that a run works under.
func siblingName(path string) string {
	return filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".tmp-dhwcompare")
}

// workspace is the locked sibling of a target.
type workspace struct {
	target string
	dir    string
	lock   *os.File
}

// path gives the path of a name inside the workspace.
func (w *workspace) path(name string) string { return filepath.Join(w.dir, name) }

// openWorkspace creates the workspace of a target or takes over the one that a
// dead run left. The caller must close it.
func openWorkspace(target string) (*workspace, error) {
	w := &workspace{target: target, dir: siblingName(target)}
	for range maxLockTries {
		if err := w.claim(); err != nil {
			return nil, err
		}
		lock, err := lockFile(w.path(lockName))
		switch {
		case err == nil:
			w.lock = lock
			return w, nil
		case !errors.Is(err, fs.ErrNotExist): // else its owner removed it just now
			return nil, lockFailure(target, err)
		}
	}
	return nil, fmt.Errorf("cannot write %q: its workspace %q keeps vanishing", target, w.dir)
}

// claim makes sure that the workspace exists and holds nothing foreign, since
// everything in it will be deleted.
func (w *workspace) claim() error {
	err := os.Mkdir(w.dir, 0o700)
	if err == nil {
		return nil
	}
	if !errors.Is(err, fs.ErrExist) {
		return targetFailure(w.target, err)
	}
	items, err := os.ReadDir(w.dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil // gone already; locking fails and the caller tries again
	}
	foreign := err != nil
	for _, item := range items {
		switch item.Name() {
		case lockName, newName, oldName, trashName:
		default:
			foreign = true
		}
	}
	if foreign {
		return inTheWay(w.target, err)
	}
	return nil
}

// heal puts back the replaced folder if a run died between its two renames, and
// deletes whatever else a dead run left.
func (w *workspace) heal() error {
	orphaned, err := w.orphaned()
	if err != nil {
		return err
	}
	if orphaned {
		if err := os.Rename(w.path(oldName), w.target); err != nil {
			return fmt.Errorf("cannot put the earlier results back to %q; they are whole in %q: %w",
				w.target, w.path(oldName), bareCause(err))
		}
		if err := syncDir(filepath.Dir(w.target)); err != nil {
			return targetFailure(w.target, err)
		}
	}
	for _, name := range []string{oldName, newName} {
		if err := w.discard(name); err != nil {
			return fmt.Errorf("cannot delete %q: %w", w.path(name), bareCause(err))
		}
	}
	return nil
}

// orphaned tells whether the target is missing while its old folder lies here.
func (w *workspace) orphaned() (bool, error) {
	there, err := exists(w.target)
	if err != nil || there {
		return false, err
	}
	return exists(w.path(oldName))
}

// discard deletes a folder of the workspace. It is renamed first, so that what
// stands under the name old is always whole and safe to put back.
func (w *workspace) discard(name string) error {
	if err := os.RemoveAll(w.path(trashName)); err != nil {
		return err
	}
	err := os.Rename(w.path(name), w.path(trashName))
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	return os.RemoveAll(w.path(trashName))
}

// close deletes the workspace and lets the lock go. The lock file is removed
// before that, so that nobody can lock a file which is about to vanish; a run
// that moves in meanwhile keeps the folder.
func (w *workspace) close() error {
	err := w.heal()
	err = errors.Join(err, os.Remove(w.path(lockName)), w.lock.Close())
	if err != nil {
		return err
	}
	if err := os.Remove(w.dir); err != nil && !isNotEmpty(w.dir) {
		return fmt.Errorf("cannot delete %q: %w", w.dir, bareCause(err))
	}
	return nil
}

// isNotEmpty tells whether another run has moved into dir, or has removed it.
func isNotEmpty(dir string) bool {
	items, err := os.ReadDir(dir)
	return len(items) > 0 || errors.Is(err, fs.ErrNotExist)
}

// exists tells whether a path names anything at all.
func exists(path string) (bool, error) {
	_, err := os.Lstat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return false, nil
	}
	return err == nil, err
}

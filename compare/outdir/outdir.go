package outdir

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// Write builds a folder with fill and puts it in the place of target, whole or
// not at all. The target must be absent, empty or hold only files that its own
// manifest lists; otherwise the error is a *TargetError and fill is not called.
// Long work belongs inside fill: a target that cannot be used, or that another
// run is writing to, is then refused before the work begins.
//
// If fill fails, ctx ends or the disk fills up, the target keeps what it had and
// nothing else remains. Errors of fill are returned as they are.
func Write(ctx context.Context, target string, fill func(*Folder) error) error {
	return write(ctx, target, fill, exchange)
}

// write is Write with a choice of how names are exchanged.
func write(ctx context.Context, target string, fill func(*Folder) error, swap swapper) (err error) {
	if err := ctx.Err(); err != nil {
		return err
	}
	path, err := resolve(target)
	if err != nil {
		return err
	}
	if err := checkTarget(path); err != nil {
		return err
	}
	made, err := makeParents(path)
	defer func() {
		if err != nil {
			removeEmpty(made)
		}
	}()
	if err != nil {
		return targetFailure(path, err)
	}
	return writeLocked(ctx, path, fill, swap)
}

// writeLocked does the part of write that needs the workspace.
func writeLocked(ctx context.Context, path string, fill func(*Folder) error, swap swapper) (err error) {
	w, err := openWorkspace(path)
	if err != nil {
		return err
	}
	installed := false
	defer func() {
		closeErr := w.close()
		if closeErr != nil && installed {
			closeErr = fmt.Errorf("the new results are in place, but: %w", closeErr)
		}
		if closeErr != nil {
			err = errors.Join(err, closeErr)
		}
	}()
	if err := w.heal(); err != nil {
		return err
	}
	if err := w.build(ctx, fill); err != nil {
		return err
	}
	// Between the first check and now a file may have been put into the target.
	if err := checkTarget(path); err != nil {
		return err
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	err = w.install(swap)
	installed = err == nil
	return err
}

// build fills and seals the new folder.
func (w *workspace) build(ctx context.Context, fill func(*Folder) error) (err error) {
	folder, err := newFolder(ctx, w.path(newName))
	if err != nil {
		return targetFailure(w.target, err)
	}
	defer func() {
		if closeErr := folder.close(); err == nil {
			err = closeErr
		}
	}()
	if err := fill(folder); err != nil {
		return err
	}
	if err := folder.seal(); err != nil {
		return err
	}
	return syncDir(w.dir)
}

// makeParents creates the missing folders above path and names them, innermost
// first.
func makeParents(path string) (made []string, err error) {
	parent := filepath.Dir(path)
	for dir := parent; ; dir = filepath.Dir(dir) {
		there, err := exists(dir)
		if err != nil {
			return nil, err
		}
		if there || dir == filepath.Dir(dir) {
			break
		}
		made = append(made, dir)
	}
	return made, os.MkdirAll(parent, 0o777)
}

// removeEmpty removes folders, innermost first, as far as nobody uses them.
func removeEmpty(dirs []string) {
	for _, dir := range dirs {
		_ = os.Remove(dir) // not empty: somebody else has begun to use it
	}
}

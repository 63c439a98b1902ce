package outdir

import (
	"bufio"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// WriteFileNew writes a file that must not exist yet. It appears under its name
// complete; a file that stands there already is left alone and reported as a
// *TargetError.
func WriteFileNew(path string, data []byte) error {
	there, err := exists(path)
	if err != nil {
		return targetFailure(path, err)
	}
	if there {
		return takenError(path, nil)
	}
	path, err = resolve(path)
	if err != nil {
		return err
	}
	fill := func(w io.Writer) error { _, err := w.Write(data); return err }
	return viaTemporary(path, fill, func(tmp *os.File) error { return linkNew(tmp, path, data) })
}

// WriteFileAtomic writes a file through fill and then puts it under its name,
// replacing what was there. If fill fails, the earlier file stays and nothing
// else remains. Only ordinary files are replaced: renaming over a device such as
// /dev/null would destroy it. A link is followed.
func WriteFileAtomic(path string, fill func(io.Writer) error) error {
	target, err := resolve(path)
	if err != nil {
		return err
	}
	info, err := os.Lstat(target)
	if err == nil && !info.Mode().IsRegular() {
		return &TargetError{Target: path, Reason: "is not an ordinary file", Remedy: "name another file"}
	}
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return targetFailure(path, err)
	}
	return viaTemporary(target, fill, func(tmp *os.File) error {
		if info != nil {
			if err := tmp.Chmod(info.Mode().Perm()); err != nil {
				return err
			}
		}
		return os.Rename(tmp.Name(), target)
	})
}

// viaTemporary fills and syncs a locked temporary sibling of path, then lets
// publish give it its name. A temporary file that a dead run left is taken over.
func viaTemporary(path string, fill func(io.Writer) error, publish func(*os.File) error) (err error) {
	tmp, err := lockFile(siblingName(path))
	if err != nil {
		return lockFailure(path, err)
	}
	defer func() {
		if err != nil {
			_ = os.Remove(tmp.Name()) // the failure already being returned matters more
		}
		if closeErr := tmp.Close(); err == nil {
			err = closeErr
		}
	}()
	if err := fillSynced(path, tmp, fill); err != nil {
		return err
	}
	if err := publish(tmp); err != nil {
		return targetFailure(path, err)
	}
	return syncDir(filepath.Dir(path))
}

// fillSynced empties the temporary file, fills it and makes it durable.
func fillSynced(path string, tmp *os.File, fill func(io.Writer) error) error {
	if err := tmp.Truncate(0); err != nil {
		return targetFailure(path, err)
	}
	buffered := bufio.NewWriterSize(tmp, 1<<16)
	if err := fill(buffered); err != nil {
		return err
	}
	if err := buffered.Flush(); err != nil {
		return targetFailure(path, err)
	}
	if err := tmp.Sync(); err != nil {
		return targetFailure(path, err)
	}
	return nil
}

// linkNew gives the temporary file its final name by a hard link, which fails if
// the name is taken: unlike a rename, it can never replace anything. Disks
// without hard links, such as memory sticks, get a second, exclusive copy.
func linkNew(tmp *os.File, path string, data []byte) error {
	err := os.Link(tmp.Name(), path)
	if err != nil && !errors.Is(err, fs.ErrExist) {
		err = writeExclusive(path, data)
	}
	if errors.Is(err, fs.ErrExist) {
		return takenError(path, err)
	}
	if err != nil {
		return err
	}
	return os.Remove(tmp.Name())
}

// writeExclusive writes a file that must not exist, and removes it again if it
// cannot be completed.
func writeExclusive(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	if err = errors.Join(err, f.Close()); err != nil {
		return errors.Join(err, os.Remove(path))
	}
	return nil
}

// takenError reports a name that is in use.
func takenError(path string, err error) error {
	return &TargetError{Target: path, Reason: "exists already and is not overwritten",
		Remedy: "name another file, or move that one away", Err: err}
}

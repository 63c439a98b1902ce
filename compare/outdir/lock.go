package outdir

import (
	"errors"
	"io/fs"
	"os"
)

// errLocked reports that another run holds a lock.
var errLocked = errors.New("another run is writing there")

// errInTheWay reports that the name of a lock is taken by something else.
var errInTheWay = errors.New("something else has that name")

// maxLockTries bounds the race with owners that remove their lock file between
// our opening and locking it. Each try loses only against one run that ends.
const maxLockTries = 100

// lockFile opens path for writing, creating it if need be, and locks it for as
// long as the file stays open. A lock is worth something only while its name
// leads to the locked file: an owner removes the file before it lets go, and a
// run that opened it just before must try anew.
func lockFile(path string) (*os.File, error) {
	for range maxLockTries {
		f, err := openLocked(path)
		if err != nil {
			return nil, err
		}
		held, err := f.Stat()
		if err != nil {
			return nil, errors.Join(err, f.Close())
		}
		named, err := os.Lstat(path)
		if err == nil && !named.Mode().IsRegular() {
			return nil, errors.Join(errInTheWay, f.Close())
		}
		if err == nil && os.SameFile(held, named) {
			return f, nil
		}
		_ = f.Close() // nothing was written to it
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return nil, err
		}
	}
	return nil, errLocked
}

package outdir

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"hash"
	"os"
)

// file is one file of a Folder while it is written; it counts and digests what
// passes through.
type file struct {
	folder *Folder
	name   string
	out    *os.File
	digest hash.Hash
	size   int64
	err    error // the first failure; after it the file can only be closed
	closed bool
}

// newFile wraps a file just created.
func newFile(folder *Folder, name string, out *os.File) *file {
	return &file{folder: folder, name: name, out: out, digest: sha256.New()}
}

// Write appends to the file and stops when the folder's context has ended.
func (f *file) Write(p []byte) (int, error) {
	if f.err != nil {
		return 0, f.err
	}
	if f.err = f.folder.ctx.Err(); f.err != nil {
		return 0, f.err
	}
	n, err := f.out.Write(p)
	f.digest.Write(p[:n])
	f.size += int64(n)
	if err != nil {
		f.err = f.explain(err)
	}
	return n, f.err
}

// Close makes the file durable and takes it into the folder's list.
func (f *file) Close() error {
	if f.closed {
		return os.ErrClosed
	}
	f.closed = true
	if f.err == nil {
		f.err = f.explain(f.out.Sync())
	}
	if err := f.out.Close(); f.err == nil {
		f.err = f.explain(err)
	}
	e := entry{Name: f.name, SizeBytes: f.size, SHA256: hex.EncodeToString(f.digest.Sum(nil))}
	f.folder.finished(e, f.err)
	return f.err
}

// explain names the file as the user knows it in place of its temporary path.
func (f *file) explain(err error) error {
	if err == nil || errors.Is(err, os.ErrClosed) {
		return err
	}
	return fmt.Errorf("cannot write %q of the result folder: %w", f.name, bareCause(err))
}

package outdir

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
)

// errSealed reports a use of a Folder outside the call that it was made for.
var errSealed = errors.New("the folder is finished and takes no more files")

// Folder takes the files of one result. It may be used from several goroutines.
// The first failure sticks: a folder that lost a file is never put in place,
// even if the caller overlooked the error.
type Folder struct {
	ctx  context.Context // of the Write call that this folder lives in
	root *os.Root        // keeps every file below the folder, whatever its name

	mu      sync.Mutex
	claimed nameSet
	open    map[string]*file
	entries []entry
	err     error
	sealed  bool
}

// newFolder creates an empty folder at path, which must not exist.
func newFolder(ctx context.Context, path string) (*Folder, error) {
	if err := os.Mkdir(path, 0o777); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(path)
	if err != nil {
		return nil, err
	}
	return &Folder{ctx: ctx, root: root, claimed: nameSet{}, open: map[string]*file{},
		entries: []entry{}}, nil
}

// WriteFile writes a whole file. The name is relative to the folder, with "/"
// between its parts; folders on the way are created.
func (d *Folder) WriteFile(name string, data []byte) error {
	w, err := d.Create(name)
	if err != nil {
		return err
	}
	_, err = w.Write(data)
	return errors.Join(err, w.Close())
}

// Create opens a new file for writing. It counts once it has been closed without
// error; a file that is left open makes Write fail.
func (d *Folder) Create(name string) (io.WriteCloser, error) {
	if strings.EqualFold(name, ManifestName) {
		return nil, d.fail(fmt.Errorf("the name %q is reserved for the list of files", name))
	}
	return d.create(name)
}

// create is Create without the reservation of the manifest's name.
func (d *Folder) create(name string) (io.WriteCloser, error) {
	if err := d.ctx.Err(); err != nil {
		return nil, err
	}
	if err := d.claim(name); err != nil {
		return nil, d.fail(err)
	}
	f, err := d.openNew(filepath.FromSlash(name))
	if err != nil {
		return nil, d.fail(fmt.Errorf("cannot create %q in the result folder: %w", name, bareCause(err)))
	}
	return d.track(newFile(d, name, f)), nil
}

// openNew creates a file and the folders that it lies in.
func (d *Folder) openNew(path string) (*os.File, error) {
	if err := d.root.MkdirAll(filepath.Dir(path), 0o777); err != nil {
		return nil, err
	}
	return d.root.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
}

// claim reserves a name.
func (d *Folder) claim(name string) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.sealed {
		return errSealed
	}
	return d.claimed.claim(name)
}

// fail keeps the first failure and gives the present one back.
func (d *Folder) fail(err error) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.err == nil {
		d.err = err
	}
	return err
}

// track remembers an open file until it is closed.
func (d *Folder) track(f *file) *file {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.open[f.name] = f
	return f
}

// finished takes a closed file into the list, or its failure.
func (d *Folder) finished(e entry, err error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	delete(d.open, e.Name)
	if err == nil {
		d.entries = append(d.entries, e)
	} else if d.err == nil {
		d.err = err
	}
}

// seal ends the folder: it writes the manifest last and makes all names durable.
func (d *Folder) seal() error {
	if err := d.firstFailure(); err != nil {
		return err
	}
	data, err := manifest{Schema: manifestSchema, Files: d.entries}.encode()
	if err != nil {
		return err
	}
	w, err := d.create(ManifestName)
	if err != nil {
		return err
	}
	_, err = w.Write(data)
	if err := errors.Join(err, w.Close()); err != nil {
		return err
	}
	return syncTree(d.root.Name())
}

// firstFailure tells why the folder cannot be sealed, if it cannot.
func (d *Folder) firstFailure() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.err != nil {
		return d.err
	}
	names := make([]string, 0, len(d.open))
	for name := range d.open {
		names = append(names, name)
	}
	if len(names) > 0 {
		return fmt.Errorf("result file %q was not closed", slices.Min(names))
	}
	return nil
}

// close frees what the folder holds open; further use of it is an error.
func (d *Folder) close() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.sealed = true
	for _, f := range d.open {
		_ = f.out.Close() // abandoned: the folder it lies in is being deleted
	}
	return d.root.Close()
}

// syncTree makes the names in all folders of a tree durable.
func syncTree(root string) error {
	return filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() {
			return err
		}
		return syncDir(path)
	})
}

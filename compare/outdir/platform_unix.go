//go:build darwin || dragonfly || freebsd || linux || netbsd || openbsd

package outdir

import (
	"errors"
	"os"
	"syscall"
)

// openLocked opens or creates a file and takes its flock, which the kernel
// drops when the process ends in whatever way. It never waits.
func openLocked(path string) (*os.File, error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE|syscall.O_NOFOLLOW|syscall.O_NONBLOCK, 0o666)
	if errors.Is(err, syscall.ELOOP) || errors.Is(err, syscall.EISDIR) {
		return nil, errInTheWay
	}
	if err != nil {
		return nil, err
	}
	err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	if err == nil {
		return f, nil
	}
	_ = f.Close() // nothing was written to it
	if errors.Is(err, syscall.EWOULDBLOCK) {
		return nil, errLocked
	}
	return nil, err
}

// syncDir makes the names in a folder durable. File systems that cannot do so
// say EINVAL or ENOTSUP; there is nothing better to be had on them.
func syncDir(dir string) error {
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	err = f.Sync()
	if errors.Is(err, syscall.EINVAL) || errors.Is(err, errors.ErrUnsupported) {
		err = nil
	}
	return errors.Join(err, f.Close())
}

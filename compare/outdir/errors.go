package outdir

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"
	"syscall"
)

// maxNamesShown bounds the offending names in a message; the error holds all.
const maxNamesShown = 5

// TargetError says that a target cannot be used as it stands and what the user
// can do about it. Nothing has been changed when it is returned. Failures of the
// machine, such as a full disk, are errors of other types.
type TargetError struct {
	Target string   // the path concerned
	Reason string   // what is wrong with it
	Names  []string // what stands in the way, relative to Target, sorted
	Remedy string   // what to do
	Err    error    // the cause, if the system reported one
}

// Error puts path, reason, names and remedy in one line. Names are quoted, so
// that control characters in them cannot reach a terminal.
func (e *TargetError) Error() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%q %s", e.Target, e.Reason)
	if len(e.Names) > 0 {
		shown := e.Names[:min(len(e.Names), maxNamesShown)]
		for i, name := range shown {
			b.WriteString([]string{": ", ", "}[min(i, 1)])
			fmt.Fprintf(&b, "%q", name)
		}
		if more := len(e.Names) - len(shown); more > 0 {
			fmt.Fprintf(&b, " and %d more", more)
		}
	}
	fmt.Fprintf(&b, "; %s (nothing was changed)", e.Remedy)
	return b.String()
}

// Unwrap gives the cause that the system reported.
func (e *TargetError) Unwrap() error { return e.Err }

// userFixable pairs what the system reports with words and a remedy. Only what
// a different path or permission would cure belongs here.
func userFixable(err error) (reason, remedy string, ok bool) {
	switch {
	case errors.Is(err, fs.ErrPermission):
		return "may not be read or written", "choose a folder you may write to, or change its permissions", true
	case errors.Is(err, syscall.EROFS):
		return "is on a read-only disk", "choose a folder on a disk that can be written", true
	case errors.Is(err, syscall.ENOTDIR):
		return "leads through a file as if it were a folder", "choose another path", true
	case errors.Is(err, fs.ErrNotExist):
		return "lies in a folder that does not exist", "create that folder first, or choose another path", true
	case errors.Is(err, syscall.ENAMETOOLONG):
		return "has too long a name", "choose a shorter name", true
	case errors.Is(err, syscall.EBUSY), errors.Is(err, syscall.EXDEV):
		return "cannot be exchanged, probably because it is a mount point", "name a folder inside it", true
	}
	return "", "", false
}

// targetFailure turns a system error met on the way to target into a
// TargetError if the user can cure it, and into a plain failure otherwise.
func targetFailure(target string, err error) error {
	var already *TargetError
	if errors.As(err, &already) {
		return err
	}
	if reason, remedy, ok := userFixable(err); ok {
		return &TargetError{Target: target, Reason: reason, Remedy: remedy, Err: err}
	}
	return fmt.Errorf("cannot write %q: %w", target, bareCause(err))
}

// lockFailure explains why the lock of a target could not be taken.
func lockFailure(target string, err error) error {
	switch {
	case errors.Is(err, errLocked):
		return &TargetError{Target: target, Reason: "is being written by another run",
			Remedy: "wait until that run has ended or choose another name", Err: err}
	case errors.Is(err, errInTheWay):
		return inTheWay(target, err)
	}
	return targetFailure(target, err)
}

// inTheWay reports that the hidden name beside a target, under which its
// replacement is prepared, is taken by something that is not ours to delete.
func inTheWay(target string, err error) error {
	return &TargetError{Target: siblingName(target), Reason: "stands where the new results should be prepared, and is not this program's",
		Remedy: "move it away or choose another name", Err: err}
}

// bareCause strips the operation and the path of a temporary file from a system
// error, which would only puzzle the reader.
func bareCause(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	var link *os.LinkError
	if errors.As(err, &link) {
		return link.Err
	}
	return err
}

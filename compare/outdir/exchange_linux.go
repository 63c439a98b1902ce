package outdir

import (
	"errors"
	"os"
	"runtime"
	"syscall"
	"unsafe"
)

// From the Linux headers fcntl.h and fs.h.
const (
	atFDCWD        = -100
	renameExchange = 2
)

// renameat2Number is the number of the renameat2 system call, which package
// syscall does not name on every processor; from the kernel's tables. Zero means
// not known here: two renames are used instead.
func renameat2Number() uintptr {
	switch runtime.GOARCH {
	case "amd64":
		return 316
	case "arm64", "riscv64", "loong64":
		return 276
	}
	return 0
}

// exchange swaps two names of one file system in a single step.
func exchange(a, b string) error {
	number := renameat2Number()
	if number == 0 {
		return errors.ErrUnsupported
	}
	pa, err := syscall.BytePtrFromString(a)
	if err != nil {
		return err
	}
	pb, err := syscall.BytePtrFromString(b)
	if err != nil {
		return err
	}
	at := atFDCWD
	_, _, errno := syscall.Syscall6(number, uintptr(at), uintptr(unsafe.Pointer(pa)),
		uintptr(at), uintptr(unsafe.Pointer(pb)), renameExchange, 0)
	if errno != 0 {
		return &os.LinkError{Op: "exchange", Old: a, New: b, Err: errno}
	}
	return nil
}

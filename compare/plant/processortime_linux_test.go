package plant

import (
	"syscall"
	"time"
	"unsafe"
)

// processorTime is how long this thread has had a processor.
func processorTime() time.Duration {
	const ofThread = 3 // CLOCK_THREAD_CPUTIME_ID
	var t syscall.Timespec
	syscall.Syscall(syscall.SYS_CLOCK_GETTIME, ofThread, uintptr(unsafe.Pointer(&t)), 0)
	return time.Duration(t.Nano())
}

// Command dhwcompare settles, for one home, whether hot water from a heat pump
// should come from a compact store or from a cylinder. It reads flags and files,
// hands a case to package compare and puts what comes back into files; it knows
// no physics and does no sums.
package main

import (
	"os"
	"os/signal"
	"syscall"
)

func main() {
	// A reader that leaves early then makes a write fail instead of killing us.
	signal.Ignore(syscall.SIGPIPE)
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

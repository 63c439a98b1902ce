//go:build !linux

package plant

import "time"

var processStart = time.Now()

// processorTime is the time on the wall where no finer clock is known.
func processorTime() time.Duration { return time.Since(processStart) }

package compare

import "sync"

// each calls f(0) to f(n-1), each in its own goroutine, and waits for all. f
// writes only to its own place.
func each(n int, f func(i int)) {
	var running sync.WaitGroup
	for i := range n {
		running.Go(func() { f(i) })
	}
	running.Wait()
}

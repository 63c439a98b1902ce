package compare

import "sync"

// search is work in parts that do not need each other, and what is made of them.
type search struct {
	parts []func() error
	whole func() // once all parts are done; may be nil
}

// find does the parts of some searches, so many at a time, in their order.
func find(workers int, searches ...search) error {
	var parts []func() error
	for _, s := range searches {
		parts = append(parts, s.parts...)
	}
	if err := inParallel(workers, len(parts), func(i int) error { return parts[i]() }); err != nil {
		return err
	}
	for _, s := range searches {
		if s.whole != nil {
			s.whole()
		}
	}
	return nil
}

// inParallel calls f(0) to f(n-1), so many at a time, waits for all that began,
// and gives the first error in the order of the calls. f writes only to its own
// place. After an error no further call begins.
func inParallel(workers, n int, f func(i int) error) error {
	errs := make([]error, n)
	var mu sync.Mutex
	next, failed := 0, false
	take := func() (int, bool) {
		mu.Lock()
		defer mu.Unlock()
		if failed || next == n {
			return 0, false
		}
		next++
		return next - 1, true
	}
	var running sync.WaitGroup
	for range min(workers, n) {
		running.Go(func() {
			for i, ok := take(); ok; i, ok = take() {
				if errs[i] = f(i); errs[i] != nil {
					mu.Lock()
					failed = true
					mu.Unlock()
				}
			}
		})
	}
	running.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

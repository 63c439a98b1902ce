package main

import (
	"context"
	"sync"
	"sync/atomic"
)

// each calls do for every item, on the given number of workers, and takes no new
// item once the context has ended. It gives the error of the first item in order
// that failed.
func each[T any](ctx context.Context, workers int, items []T, do func(T) error) error {
	errs := make([]error, len(items))
	var next atomic.Int64
	var running sync.WaitGroup
	for range min(workers, len(items)) {
		running.Go(func() {
			for i := int(next.Add(1)) - 1; i < len(items); i = int(next.Add(1)) - 1 {
				if errs[i] = ctx.Err(); errs[i] == nil {
					errs[i] = do(items[i])
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

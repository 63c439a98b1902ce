package outdir

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"sync"
	"sync/atomic"
	"testing"
)

// TestLockHasOneHolder lets several goroutines take, remove and release one lock
// without pause. A file that was opened just before its owner removed it must
// not count as a lock; two holders at once betray it.
func TestLockHasOneHolder(t *testing.T) {
	path := filepath.Join(t.TempDir(), "lock")
	var holders, taken atomic.Int64
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 2000 {
				f, err := lockFile(path)
				if errors.Is(err, errLocked) {
					continue
				}
				if err != nil {
					t.Error(err)
					return
				}
				taken.Add(1)
				if n := holders.Add(1); n != 1 {
					t.Errorf("%d holders at once", n)
				}
				runtime.Gosched()
				holders.Add(-1)
				if err := errors.Join(os.Remove(path), f.Close()); err != nil {
					t.Error(err)
				}
			}
		})
	}
	wg.Wait()
	if taken.Load() == 0 {
		t.Error("nobody ever got the lock")
	}
}

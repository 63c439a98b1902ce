package compare

import "sync"

// meter turns work whose amount is only known roughly into progress that never
// goes back: within a stage it stops at the stage's share, and the end of the
// stage fills it.
type meter struct {
	mu       sync.Mutex
	progress Progress // may be nil
	done, of int
	until    int // share of the stage in hand
	counted  int // all that was done, foreseen or not
}

// stage begins the next stage, of so many steps, and ends the one before.
func (m *meter) stage(steps int) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.done = m.until
	m.until = min(m.until+steps, m.of)
	m.tell()
}

// tick counts one step. It may be called from several goroutines.
func (m *meter) tick() {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.counted++
	if m.done < m.until {
		m.done++
		m.tell()
	}
}

func (m *meter) tell() {
	if m.progress != nil {
		m.progress(m.done, m.of)
	}
}

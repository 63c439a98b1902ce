package compare

import (
	"context"
	"fmt"
	"sync"

	"dhwcompare/compare/plant"
)

// Pair is one year that both options have lived through. The ledgers are lent:
// they are used again once the sink has returned.
type Pair struct {
	World   World
	Ledgers [sides]*plant.Ledger
}

// Years lives n years through both options, on the given number of workers, and
// hands each pair to sink in the order of the years, one at a time. Memory does
// not grow with n, and what sink sees does not depend on the number of workers.
func Years(ctx context.Context, c *Case, n, workers int, sink func(year int, p Pair) error) error {
	return years(ctx, c, nil, n, workers, sink)
}

// years is Years in worlds that are used again; nil: in worlds of its own.
func years(ctx context.Context, c *Case, w *worlds, n, workers int, sink func(year int, p Pair) error) error {
	if workers < 1 {
		return fmt.Errorf("%d workers: at least 1 is needed", workers)
	}
	ctx, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	q := newQueue(n, sink)
	var running sync.WaitGroup
	for range min(workers, n) {
		running.Go(func() {
			if err := c.work(ctx, w, q); err != nil {
				cancel(err)
				q.stop()
			}
		})
	}
	running.Wait()
	if ctx.Err() != nil {
		return context.Cause(ctx)
	}
	return nil
}

// work takes years from the queue until none is left. Each year begins from the
// same fresh plants, so that no year knows which worker lived the one before.
func (c *Case) work(ctx context.Context, w *worlds, q *queue) error {
	var fresh [sides]*freshPlant
	for side := range sides {
		var err error
		if fresh[side], err = c.asStated(side).fresh(); err != nil {
			return err
		}
	}
	for {
		year, ok := q.take()
		if !ok {
			return nil
		}
		world, err := w.of(c, year)
		if err != nil {
			return err
		}
		pair := Pair{World: world}
		for side := range sides {
			pair.Ledgers[side] = q.ledger()
			if err := Live(ctx, fresh[side].again(), world, plant.Recorder{Ledger: pair.Ledgers[side]}); err != nil {
				return err
			}
		}
		if err := q.deliver(year, pair); err != nil {
			return err
		}
	}
}

// maker makes the parameters of a plant.
type maker func() (plant.Params, error)

// asStated makes an option as the case states it.
func (c *Case) asStated(side Side) maker {
	return func() (plant.Params, error) { return c.plantParams(side) }
}

func (m maker) fresh() (*freshPlant, error) {
	params, err := m()
	if err != nil {
		return nil, err
	}
	p := plant.New(params)
	return &freshPlant{p, p.State()}, nil
}

// freshPlant is a plant with the state that it was made in.
type freshPlant struct {
	plant *plant.Plant
	state plant.State
}

// again gives the plant as it was made.
func (f *freshPlant) again() *plant.Plant {
	f.plant.Restore(f.state)
	return f.plant
}

// queue gives out years and hands finished ones on in order. A worker that runs
// far ahead waits, so that few pairs are held at a time.
type queue struct {
	mu      sync.Mutex
	moved   sync.Cond
	n       int
	next    int // year to be given out
	due     int // year that the sink expects
	stopped bool
	waiting map[int]Pair
	spare   []*plant.Ledger
	sink    func(int, Pair) error
}

// lead is how far ahead of the sink a year may be given out.
const lead = 8

func newQueue(n int, sink func(int, Pair) error) *queue {
	q := &queue{n: n, waiting: map[int]Pair{}, sink: sink}
	q.moved.L = &q.mu
	return q
}

func (q *queue) take() (year int, ok bool) {
	q.mu.Lock()
	defer q.mu.Unlock()
	for q.next >= q.due+lead && !q.stopped {
		q.moved.Wait()
	}
	if q.stopped || q.next >= q.n {
		return 0, false
	}
	q.next++
	return q.next - 1, true
}

func (q *queue) stop() {
	q.mu.Lock()
	defer q.mu.Unlock()
	q.stopped = true
	q.moved.Broadcast()
}

// ledger gives an empty ledger.
func (q *queue) ledger() *plant.Ledger {
	q.mu.Lock()
	defer q.mu.Unlock()
	if len(q.spare) == 0 {
		return plant.NewLedger()
	}
	l := q.spare[len(q.spare)-1]
	q.spare = q.spare[:len(q.spare)-1]
	l.Reset()
	return l
}

// deliver hands on every pair that is due.
func (q *queue) deliver(year int, p Pair) error {
	q.mu.Lock()
	defer q.mu.Unlock()
	q.waiting[year] = p
	for {
		pair, ok := q.waiting[q.due]
		if !ok {
			return nil
		}
		delete(q.waiting, q.due)
		if err := q.sink(q.due, pair); err != nil {
			return err
		}
		q.spare = append(q.spare, pair.Ledgers[:]...)
		q.due++
		q.moved.Broadcast()
	}
}

package batch

import (
	"context"
	"sync"
)

// keyedRow is a row with what identifies it.
type keyedRow struct {
	*Row
	key string
}

// shift hands rows to workers until all are done or one cannot go on.
type shift struct {
	job  *Job
	log  *Journal
	mu   sync.Mutex
	rows []keyedRow
	done int
	of   int
	err  error
}

func (q *shift) work(ctx context.Context) error {
	var running sync.WaitGroup
	for range max(1, min(q.job.Workers, len(q.rows))) {
		running.Go(func() {
			for r, ok := q.take(ctx); ok; r, ok = q.take(ctx) {
				q.finish(q.one(ctx, r))
			}
		})
	}
	running.Wait()
	return q.err
}

func (q *shift) take(ctx context.Context) (keyedRow, bool) {
	q.mu.Lock()
	defer q.mu.Unlock()
	if err := ctx.Err(); err != nil && q.err == nil && len(q.rows) > 0 {
		q.err = context.Cause(ctx)
	}
	if q.err != nil || len(q.rows) == 0 {
		return keyedRow{}, false
	}
	r := q.rows[0]
	q.rows = q.rows[1:]
	return r, true
}

// one compares a home and puts it into the journal.
func (q *shift) one(ctx context.Context, r keyedRow) error {
	o := q.job.home(ctx, r.Row)
	if ctx.Err() != nil {
		return context.Cause(ctx) // what came of it is no result
	}
	return q.log.put(r.key, o)
}

func (q *shift) finish(err error) {
	q.mu.Lock()
	defer q.mu.Unlock()
	if err != nil {
		if q.err == nil {
			q.err = err
		}
		return
	}
	q.done++
	q.tell()
}

func (q *shift) tell() {
	if q.job.Progress != nil {
		q.job.Progress(q.done, q.of)
	}
}

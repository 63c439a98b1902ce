package household

// queue counts showers that follow each other closely, from day to day.
type queue struct {
	gapS     float64
	freeS    float64 // end of the latest shower so far
	position int
	running  bool
}

// number sets the queue positions of one day's draws, which must be in order. A
// shower stands behind another when it starts before that one ends or within the
// back-to-back gap afterwards, by wish or by chance: the vessel cannot tell.
func (q *queue) number(draws []Draw) {
	const roundingS = 1e-3
	for i := range draws {
		d := &draws[i]
		if d.Kind != Shower {
			continue
		}
		if q.running && d.StartS <= q.freeS+q.gapS+roundingS {
			q.position++
		} else {
			q.position = 0
		}
		d.QueuePos = q.position
		q.freeS = max(q.freeS, d.StartS+d.End.Amount)
		q.running = true
	}
}

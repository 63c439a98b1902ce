package compare

import (
	"context"
	"errors"
	"fmt"
	"reflect"
	"testing"
	"time"

	"dhwcompare/compare/plant"
)

// digestOf is all that a pair of ledgers holds, bit for bit.
func digestOf(p Pair) string {
	return fmt.Sprint(p.Ledgers[SideCompact].Months, p.Ledgers[SideCylinder].Months, len(p.World.Draws),
		p.Ledgers[SideCompact].Outcomes, p.Ledgers[SideCylinder].HalfHourKWh)
}

// Years come in order and are the same for any number of workers.
func TestYearsDoNotDependOnWorkers(t *testing.T) {
	const n = 3
	c := british(n)
	var seen [2][]string
	for i, workers := range []int{1, 3} {
		err := Years(context.Background(), &c, n, workers, func(year int, p Pair) error {
			if year != len(seen[i]) {
				t.Errorf("%d workers: year %d came as number %d", workers, year, len(seen[i]))
			}
			seen[i] = append(seen[i], digestOf(p))
			return nil
		})
		if err != nil || len(seen[i]) != n {
			t.Fatalf("%d workers: %d years, %v", workers, len(seen[i]), err)
		}
	}
	if !reflect.DeepEqual(seen[0], seen[1]) {
		t.Error("the years depend on the number of workers")
	}
	if seen[0][0] == seen[0][1] {
		t.Error("two years are alike")
	}
}

// An error of the sink stops the ensemble and comes back; no further year is handed on.
func TestYearsStopOnError(t *testing.T) {
	c := british(1)
	stop := errors.New("enough")
	for _, workers := range []int{1, 3} {
		handed := 0
		err := Years(context.Background(), &c, 1000, workers, func(year int, _ Pair) error {
			handed++
			if year == 1 {
				return stop
			}
			return nil
		})
		if !errors.Is(err, stop) || handed != 2 {
			t.Errorf("%d workers: %d years, %v", workers, handed, err)
		}
	}
}

// A cancelled ensemble ends with the reason, soon: a thousand years would take minutes.
func TestYearsStopWhenCancelled(t *testing.T) {
	c := british(1)
	reason := errors.New("asked to stop")
	ctx, cancel := context.WithCancelCause(context.Background())
	handed := 0
	err := Years(ctx, &c, 1000, 2, func(int, Pair) error {
		handed++
		cancel(reason)
		return nil
	})
	if !errors.Is(err, reason) || handed > 1+lead {
		t.Errorf("%d years, %v", handed, err)
	}

	timeout, end := context.WithTimeout(context.Background(), time.Millisecond)
	defer end()
	if err := Years(timeout, &c, 1000, 2, func(int, Pair) error { return nil }); !errors.Is(err, context.DeadlineExceeded) {
		t.Errorf("after its time: %v", err)
	}
}

// No workers is an error; no years are none.
func TestYearsAtTheEdges(t *testing.T) {
	c := british(1)
	if err := Years(context.Background(), &c, 1, 0, nil); err == nil {
		t.Error("no workers were taken")
	}
	if err := Years(context.Background(), &c, 0, 2, func(int, Pair) error { return errors.New("a year") }); err != nil {
		t.Error(err)
	}
}

// A plant that cannot be made is an error, not a wait.
func TestYearsReportABadPlant(t *testing.T) {
	c := british(1)
	c.HeatPump.LoadPenalty = 9
	if err := Years(context.Background(), &c, 3, 2, func(int, Pair) error { return nil }); err == nil {
		t.Error("a heat pump without efficiency was taken")
	}
	bad := maker(func() (plant.Params, error) { return plant.Params{}, errors.New("no store") })
	good := british(1)
	if _, err := scouting(t, &good).years(context.Background(), &good, bad, 3); err == nil || err.Error() != "no store" {
		t.Errorf("a bad plant: %v", err)
	}
}

package main

import (
	"context"
	"errors"
	"fmt"
	"sync/atomic"
	"testing"
)

func TestEachVisitsEveryItemOnce(t *testing.T) {
	for _, workers := range []int{1, 2, 7} {
		var visits [5]atomic.Int32
		items := []int{0, 1, 2, 3, 4}
		if err := each(t.Context(), workers, items, func(i int) error { visits[i].Add(1); return nil }); err != nil {
			t.Fatal(err)
		}
		for i := range visits {
			if n := visits[i].Load(); n != 1 {
				t.Errorf("%d workers: item %d visited %d times", workers, i, n)
			}
		}
	}
}

func TestEachGivesTheFirstErrorInOrder(t *testing.T) {
	for _, workers := range []int{1, 3} {
		err := each(t.Context(), workers, []int{0, 1, 2, 3}, func(i int) error {
			if i%2 == 1 {
				return fmt.Errorf("item %d", i)
			}
			return nil
		})
		if err == nil || err.Error() != "item 1" {
			t.Errorf("%d workers: error is %v", workers, err)
		}
	}
}

func TestEachStopsWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	visits := 0
	err := each(ctx, 1, []int{0, 1, 2}, func(int) error { visits++; cancel(); return nil })
	if !errors.Is(err, context.Canceled) || visits != 1 {
		t.Errorf("%d visits, error is %v", visits, err)
	}
}

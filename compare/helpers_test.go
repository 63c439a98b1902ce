package compare

import "testing"

// compared lives through the years of a case.
func compared(t *testing.T, c *Case) *Comparison {
	t.Helper()
	cmp, err := Compare(t.Context(), c, 2, nil)
	if err != nil {
		t.Fatal(err)
	}
	return cmp
}

// scouting is a scout for changes of a case.
func scouting(t *testing.T, c *Case) *scout {
	t.Helper()
	s, err := newScout(c, newWorlds(c))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// tried lives some years through one option of a case.
func tried(t *testing.T, c *Case, side Side, n int) Trial {
	t.Helper()
	trial, err := scouting(t, c).trial(t.Context(), c, side, n)
	if err != nil {
		t.Fatal(err)
	}
	return trial
}

// found does a search.
func found(t *testing.T, s search) {
	t.Helper()
	if err := find(2, s); err != nil {
		t.Fatal(err)
	}
}

// advancing is a progress report that must never go back or beyond its end.
func advancing(t *testing.T) func(done, of int) {
	last := 0
	return func(done, of int) {
		t.Helper()
		if done < last || done > of {
			t.Errorf("progress went from %d to %d of %d", last, done, of)
		}
		last = done
	}
}

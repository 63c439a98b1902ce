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

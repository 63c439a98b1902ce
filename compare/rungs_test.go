package compare

import (
	"errors"
	"math/rand/v2"
	"testing"
)

// firstThat finds the first of a rising property, whatever its place, in few questions.
func TestFirstThat(t *testing.T) {
	for n := range 20 {
		for first := range n + 1 {
			asked := 0
			got, err := firstThat(n, func(i int) (bool, error) { asked++; return i >= first, nil })
			if err != nil || got != first || asked > 5 {
				t.Errorf("%d of %d: found %d after %d questions, %v", first, n, got, asked, err)
			}
		}
	}
	if _, err := firstThat(4, func(int) (bool, error) { return false, errors.New("no") }); err == nil {
		t.Error("an error was lost")
	}
}

// confirmedFrom finds the first that is confirmed, near by or far above where few
// years pointed, and asks about none twice.
func TestConfirmedFrom(t *testing.T) {
	const n = 30
	for first := range n + 1 {
		for lowest := range n + 1 {
			asked := map[int]int{}
			got, err := confirmedFrom(first, n, func(i int) (bool, error) { asked[i]++; return i >= lowest, nil })
			if want := max(first, lowest); err != nil || got != want {
				t.Errorf("from %d, lowest %d: found %d, %v", first, lowest, got, err)
			}
			for i, times := range asked {
				if times > 1 || i < first {
					t.Errorf("from %d, lowest %d: asked %d times about %d", first, lowest, times, i)
				}
			}
			if most := confirmations + 5; len(asked) > most {
				t.Errorf("from %d, lowest %d: %d questions", first, lowest, len(asked))
			}
		}
	}
	if _, err := confirmedFrom(0, n, func(int) (bool, error) { return false, errors.New("no") }); err == nil {
		t.Error("an error was lost")
	}
}

// confirmedAbout finds the first that is confirmed wherever it begins, and asks about none
// twice.
func TestConfirmedAbout(t *testing.T) {
	const n = 12
	for first := range n {
		for start := first; start < n; start++ {
			for lowest := range n + 1 {
				asked := map[int]int{}
				got, err := confirmedAbout(first, start, n, func(i int) (bool, error) { asked[i]++; return i >= lowest, nil })
				if want := max(first, lowest); err != nil || got != want {
					t.Errorf("from %d, begun at %d, lowest %d: found %d, %v", first, start, lowest, got, err)
				}
				for i, times := range asked {
					if times > 1 || i < first {
						t.Errorf("from %d, begun at %d, lowest %d: asked %d times about %d", first, start, lowest, times, i)
					}
				}
			}
		}
	}
	for _, failing := range []int{3, 4} {
		if _, err := confirmedAbout(0, 4, 8, func(i int) (bool, error) {
			if i == failing {
				return false, errors.New("no")
			}
			return true, nil
		}); err == nil {
			t.Error("an error was lost")
		}
	}
}

// TestLowestRung: whatever rung is that of the case as stated, and with or without one,
// what is found keeps the rule in all years, and the rung below it does not, or fails in
// the few years that it is screened on.
func TestLowestRung(t *testing.T) {
	const n, years, screen = 9, 12, 3
	chance := rand.New(rand.NewPCG(7, 1))
	c := Default()
	found := map[int]int{}
	for range 300 {
		var hard [years]float64
		for y := range hard {
			hard[y] = float64(chance.IntN(7))
		}
		ease := 0.3 + chance.Float64()
		for asStated := none; asStated < n; asStated++ {
			r := &rungs{screen: screen, years: years, asStated: asStated}
			for i := range n {
				l := &lived{c: &c}
				for y := range hard {
					l.years = append(l.years, Totals{FailingShowers: max(0, hard[y]-ease*float64(i))})
				}
				r.at = append(r.at, l)
			}
			got, err := r.lowest(t.Context())
			if err != nil {
				t.Fatal(err)
			}
			found[got]++
			if got < n && !r.at[got].trial(years).Meets {
				t.Errorf("%v, as stated %d: rung %d does not keep the rule", hard, asStated, got)
			}
			if got > 0 && r.at[got-1].trial(years).Meets && r.at[got-1].trial(screen).Failing.Mean <= c.Service.FailuresPerYear {
				t.Errorf("%v, as stated %d: rung %d keeps the rule too", hard, asStated, got-1)
			}
		}
	}
	if len(found) < n/2 {
		t.Errorf("all cases are alike: %v", found)
	}
}

// TestRungsLiveFewYears: below a setting that keeps the rule one rung is asked when that
// fails, and above one that fails none is confirmed that promises too little.
func TestRungsLiveFewYears(t *testing.T) {
	c := Default() // at most two failing showers a year
	rungsOf := func(asStated int, perYear ...float64) *rungs {
		r := &rungs{screen: 3, years: 20, asStated: asStated}
		for i, failing := range perYear {
			l := &lived{c: &c}
			n := 9 // more would have to be lived, for which there is no scout
			if i == asStated {
				n = 20
			}
			for y := range n {
				l.years = append(l.years, Totals{FailingShowers: failing + 0.5*float64(y%2)})
			}
			r.at = append(r.at, l)
		}
		return r
	}
	well := rungsOf(2, 9, 3, 1)
	if got, err := well.lowest(t.Context()); err != nil || got != 2 {
		t.Errorf("a setting chosen well: rung %d, %v", got, err)
	}
	short := rungsOf(0, 5, 1.9, 0.5)
	if got, err := short.promising(t.Context(), 1, 3); err != nil || got != 2 {
		t.Errorf("a setting that fails: begins at rung %d, %v", got, err)
	}
	if unknown := rungsOf(none, 5, 1.9); !unknown.promises(1) {
		t.Error("without a case as stated there is nothing to go by")
	}
	if never := rungsOf(0, 0, 1); !never.promises(1) {
		t.Error("a case that never fails says nothing of others")
	}
}

package household

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func sameButQueue(t *testing.T, want, got []Draw) {
	t.Helper()
	if diff := cmp.Diff(want, got, cmpopts.IgnoreFields(Draw{}, "QueuePos")); diff != "" {
		t.Errorf("draws differ (-want +got):\n%s", diff)
	}
}

func same(t *testing.T, want, got []Draw) {
	t.Helper()
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("draws differ (-want +got):\n%s", diff)
	}
}

func TestSameSeedSameYear(t *testing.T) {
	p := Defaults(2.3, true)
	same(t, yearOf(p, 3), yearOf(p, 3))
	other := Draws(p, testYear, britishMainsC, testSeed+1, 3)
	if cmp.Equal(yearOf(p, 3), yearOf(p, 4)) || cmp.Equal(yearOf(p, 3), other) {
		t.Error("another year or another seed gives the same draws")
	}
}

// people lists who showers, in order.
func people(showers []Draw) []int {
	list := make([]int, len(showers))
	for i, d := range showers {
		list[i] = d.Person
	}
	return list
}

func TestLongerShowersLeaveTheRestAlone(t *testing.T) {
	p := Defaults(4, false)
	base := yearOf(p, 0)
	p.ShowerMinutes *= 1.5
	p.ShowerMinutesSpread = 0.3
	p.ShowerFlowLPerMin = 10
	longer := yearOf(p, 0)
	same(t, only(base, Tap), only(longer, Tap))
	if diff := cmp.Diff(people(only(base, Shower)), people(only(longer, Shower))); diff != "" {
		t.Errorf("another order of showers:\n%s", diff)
	}
}

func TestChangedTapsLeaveBathingAlone(t *testing.T) {
	p := Defaults(4, true)
	base := yearOf(p, 0)
	p.TapsPerDay *= 1.4
	p.TapLitresPerDay *= 0.7
	p.LongTapShare = 0.3
	changed := yearOf(p, 0)
	same(t, only(base, Shower), only(changed, Shower))
	same(t, only(base, Bath), only(changed, Bath))
	if len(only(changed, Tap)) <= len(only(base, Tap)) {
		t.Error("more tap draws a day gave no more of them")
	}
}

func TestMoreTapsKeepTheOldOnes(t *testing.T) {
	p := Defaults(3, true)
	base := starts(only(yearOf(p, 0), Tap))
	p.TapsPerDay *= 1.4
	more := starts(only(yearOf(p, 0), Tap))
	for startS := range base {
		if !more[startS] {
			t.Fatalf("the tap draw at %g is gone", startS)
		}
	}
}

func starts(draws []Draw) map[float64]bool {
	set := map[float64]bool{}
	for _, d := range draws {
		set[d.StartS] = true
	}
	return set
}

func TestBathsLeaveShowersAloneWhereThereIsRoom(t *testing.T) {
	p := Defaults(3, true)
	p.Bathrooms = 6
	with := yearOf(p, 0)
	p.BathsPerDay = 0
	without := yearOf(p, 0)
	ignore := cmpopts.IgnoreFields(Draw{}, "StartS", "Outlet", "QueuePos")
	a, b := byPerson(only(with, Shower)), byPerson(only(without, Shower))
	if diff := cmp.Diff(a, b, ignore); diff != "" {
		t.Errorf("showers differ:\n%s", diff)
	}
}

// byPerson groups draws by who makes them.
func byPerson(draws []Draw) map[int][]Draw {
	groups := map[int][]Draw{}
	for _, d := range draws {
		groups[d.Person] = append(groups[d.Person], d)
	}
	return groups
}

// With the same habits for each, a third person adds showers and moves nobody
// where there is a bathroom for each.
func TestMorePeopleAddShowersOnly(t *testing.T) {
	p := Defaults(2, false)
	p.ShowersPerDay, p.Bathrooms = 1.6, 6
	two := only(yearOf(p, 0), Shower)
	p.People, p.ShowersPerDay = 3, 2.4
	three := byPerson(only(yearOf(p, 0), Shower))
	if len(three[2]) < 250 {
		t.Errorf("the third person showers %d times a year, want about 290", len(three[2]))
	}
	for person, showers := range byPerson(two) {
		sameButQueue(t, showers, three[person])
	}
}

// In one bathroom the others may have to wait, but they take the same showers on
// the same days.
func TestMorePeopleInOneBathroom(t *testing.T) {
	p := Defaults(2, false)
	p.ShowersPerDay = 1.6
	two := byPerson(only(yearOf(p, 0), Shower))
	p.People, p.ShowersPerDay = 3, 2.4
	three := byPerson(only(yearOf(p, 0), Shower))
	for person := range two {
		a, b := two[person], three[person]
		if len(a) != len(b) {
			t.Fatalf("person %d takes %d showers with one other, %d with two", person, len(a), len(b))
		}
		for i := range a {
			if localDay(a[i]) != localDay(b[i]) || a[i].End != b[i].End || a[i].FlowLPerMin != b[i].FlowLPerMin {
				t.Fatalf("person %d, shower %d: %+v became %+v", person, i, a[i], b[i])
			}
		}
	}
}

// A visit leaves the residents' showers alone, on its own days and on all others.
func TestGuestsLeaveResidentsAlone(t *testing.T) {
	p := Defaults(2, false)
	p.Bathrooms = 6
	alone := byPerson(only(yearOf(p, 0), Shower))
	p.Guests = []Stay{{DayRange{100, 106}, 2}}
	visited := byPerson(only(yearOf(p, 0), Shower))
	for person := range alone {
		sameButQueue(t, alone[person], visited[person])
	}
	if len(visited[2])+len(visited[3]) == 0 {
		t.Error("guests never shower")
	}
}

func TestHotterWishesLeaveTimesAlone(t *testing.T) {
	p := Defaults(3, true)
	base := yearOf(p, 0)
	p.ShowerC, p.BathC, p.TapC = 42, 43, 45
	hotter := yearOf(p, 0)
	ignore := cmpopts.IgnoreFields(Draw{}, "WantC", "End")
	if diff := cmp.Diff(base, hotter, ignore); diff != "" {
		t.Errorf("draws differ:\n%s", diff)
	}
}

// More showers and baths a day add to the old ones. Starts are left out because
// one tub makes people wait; a turn put off beyond midnight may drop out.
func TestMoreBathingKeepsTheOldUses(t *testing.T) {
	type use struct {
		day, person     int
		amount, lPerMin float64
	}
	uses := func(draws []Draw) map[use]bool {
		set := map[use]bool{}
		for _, d := range draws {
			set[use{localDay(d), d.Person, d.End.Amount, d.FlowLPerMin}] = true
		}
		return set
	}
	p := Defaults(4, true)
	p.Bathrooms, p.BathsPerDay = 6, 1.6
	less := yearOf(p, 0)
	p.ShowersPerDay *= 1.3
	p.BathsPerDay *= 1.3
	more := yearOf(p, 0)
	for _, kind := range []Kind{Shower, Bath} {
		after, gone := uses(only(more, kind)), 0
		for before := range uses(only(less, kind)) {
			if !after[before] {
				gone++
			}
		}
		if gone > 3 {
			t.Errorf("%d uses of kind %s are gone", gone, kind)
		}
	}
}

// Guests have chances of their own: they do not do what the residents do.
func TestGuestsAreNotTheResidentsAgain(t *testing.T) {
	p := Defaults(2, true)
	p.BathsPerDay = 1
	p.Guests = []Stay{{DayRange{0, 364}, 2}}
	amounts := map[float64]int{}
	for _, d := range yearOf(p, 0) {
		if d.Kind != Tap {
			amounts[d.End.Amount]++
		}
	}
	for amount, n := range amounts {
		if n > 1 {
			t.Fatalf("%d showers or baths of exactly %g", n, amount)
		}
	}
}

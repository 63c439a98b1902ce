package household

import (
	"math"
	"testing"
	"time"

	"dhwcompare/compare/calendar"
)

// crowd is a home in which everybody wants the one bathroom.
func crowd() Params {
	p := Defaults(5, true)
	p.ShowersPerDay, p.BathsPerDay = 9, 3
	p.ShowerMinutes = 12
	return p
}

func TestDrawsAreSortedAndWithinTheYear(t *testing.T) {
	for name, p := range map[string]Params{"usual": Defaults(2.3, true), "crowd": crowd()} {
		draws := yearOf(p, 0)
		before := 0.0
		for i, d := range draws {
			if d.StartS < before || d.StartS >= calendar.YearS {
				t.Fatalf("%s: draw %d starts at %g, after %g", name, i, d.StartS, before)
			}
			before = d.StartS
		}
	}
}

// holdS is how long a draw keeps others out of the bathroom at the least.
func holdS(d Draw) float64 {
	if d.Kind == Bath {
		return 60 * d.End.Amount / d.FlowLPerMin
	}
	return d.End.Amount
}

func TestOneAtATimeInOneBathroom(t *testing.T) {
	p := crowd()
	for year := range 5 {
		freeS, pairs := 0.0, 0
		for _, d := range yearOf(p, year) {
			if d.Kind == Tap {
				continue
			}
			if d.StartS < freeS {
				t.Fatalf("year %d: a %s starts at %g, while the bathroom is in use until %g", year, d.Kind, d.StartS, freeS)
			}
			freeS = d.StartS + holdS(d) + 60*p.BackToBackGapMinutes - 1e-3
			pairs++
		}
		if pairs < 3000 {
			t.Errorf("year %d: only %d uses of the bathroom, the check is weak", year, pairs)
		}
	}
}

func TestTwoBathroomsServeTwoAtOnce(t *testing.T) {
	p := crowd()
	p.Bathrooms = 2
	freeS := make([]float64, p.Bathrooms)
	together := 0
	latestEndS := 0.0
	for _, d := range only(yearOf(p, 0), Shower) {
		if d.StartS < freeS[d.Outlet] {
			t.Fatalf("shower %d is in use until %g, and starts again at %g", d.Outlet, freeS[d.Outlet], d.StartS)
		}
		freeS[d.Outlet] = d.StartS + d.End.Amount
		if d.StartS < latestEndS {
			together++
		}
		latestEndS = max(latestEndS, freeS[d.Outlet])
	}
	if together == 0 {
		t.Error("two bathrooms and nobody ever showers at the same time as another")
	}
}

// Queue positions are checked against a plain reading of the definition.
func TestQueuePositions(t *testing.T) {
	p := crowd()
	gapS := 60 * p.BackToBackGapMinutes
	showers := only(yearOf(p, 0), Shower)
	longest := 0
	for i, d := range showers {
		want := 0
		if i > 0 && d.StartS-(showers[i-1].StartS+showers[i-1].End.Amount) <= gapS+0.01 {
			want = showers[i-1].QueuePos + 1
		}
		if d.QueuePos != want {
			t.Fatalf("shower %d: position %d, want %d", i, d.QueuePos, want)
		}
		longest = max(longest, d.QueuePos)
	}
	if longest < 3 {
		t.Errorf("longest queue has position %d, the check is weak", longest)
	}
}

// queueShare gives the share of showers behind another one, among those of a day
// that are not its first.
func queueShare(p Params) float64 {
	behind, later := 0, 0
	for year := range 10 {
		day := -1
		for _, d := range only(yearOf(p, year), Shower) {
			if localDay(d) == day {
				later++
				if d.QueuePos > 0 {
					behind++
				}
			}
			day = localDay(d)
		}
	}
	return float64(behind) / float64(later)
}

// With two people and at most one shower each a day, the share of followers is
// the key itself plus the few who come close by chance.
func TestBackToBackShareIsKept(t *testing.T) {
	p := Defaults(2, true)
	p.ShowersPerDay, p.BathsPerDay = 1.8, 0
	p.BackToBackShare = 0
	byChance := queueShare(p)
	for _, share := range []float64{0.3, 0.7, 1} {
		p.BackToBackShare = share
		got, want := queueShare(p), share+(1-share)*byChance
		t.Logf("share %.1f: %.3f of later showers stand behind another (%.3f by chance alone)", share, got, byChance)
		// About 2,900 later showers: one standard error is at most 0.0093.
		if math.Abs(got-want) > 0.04 {
			t.Errorf("share %.1f: %.3f of later showers stand behind another, want %.3f", share, got, want)
		}
	}
	if byChance > 0.1 {
		t.Errorf("%.3f of later showers come close by chance, too many to tell", byChance)
	}
}

func TestNobodyDrawsWhileAway(t *testing.T) {
	p := Defaults(3, true)
	p.Away = []DayRange{{0, 2}, {100, 113}, {364, 364}}
	p.Guests = []Stay{{DayRange{110, 120}, 2}}
	seen := map[int]bool{}
	for _, d := range yearOf(p, 0) {
		seen[localDay(d)] = true
	}
	for day := range calendar.Days {
		if away := p.isAway(day); seen[day] == away {
			t.Errorf("day %d: away %t, draws %t", day, away, seen[day])
		}
	}
}

func TestDaysAwayLeaveOtherDaysAlone(t *testing.T) {
	p := Defaults(3, true)
	p.Bathrooms = 6 // no waiting, so that nothing can carry over midnight
	home := yearOf(p, 0)
	p.Away = []DayRange{{100, 113}}
	var kept []Draw
	for _, d := range home {
		if !p.isAway(localDay(d)) {
			kept = append(kept, d)
		}
	}
	sameButQueue(t, kept, yearOf(p, 0))
}

func TestGuestsDrawAsMuchAsResidents(t *testing.T) {
	p := Defaults(2, true)
	p.Bathrooms = 6
	p.Guests = []Stay{{DayRange{0, calendar.Days - 1}, 3}}
	litres := map[bool]sample{}
	for year := range 20 {
		sum := map[bool]float64{}
		for _, d := range yearOf(p, year) {
			sum[d.Person >= 2] += hotLitres(d)
		}
		litres[true] = append(litres[true], sum[true]/3)
		litres[false] = append(litres[false], sum[false]/2)
	}
	resident, _ := litres[false].meanAndError()
	litres[true].expect(t, "hot litres a year of a guest against those of a resident", resident)
}

func TestGuestsStayOnTheirDays(t *testing.T) {
	p := Defaults(2, true)
	p.Guests = []Stay{{DayRange{200, 206}, 2}, {DayRange{205, 209}, 1}}
	most := 0
	for _, d := range yearOf(p, 0) {
		day := localDay(d)
		if d.Person >= 2+p.guestsOn(day) {
			t.Fatalf("day %d has %d guests, but person %d draws", day, p.guestsOn(day), d.Person)
		}
		most = max(most, d.Person)
	}
	if most != 4 {
		t.Errorf("two residents and up to three guests, but the last person to draw is %d", most)
	}
}

// Habits follow the wall clock: in summer they come an hour earlier by standard
// time.
func TestHabitsFollowTheWallClock(t *testing.T) {
	p := Defaults(2, false)
	p.BackToBackShare, p.Bathrooms = 0, 6
	plain := Draws(p, calendar.WithoutSummerTime(time.Thursday), britishMainsC, testSeed, 0)
	summer := yearOf(p, 0)
	if len(plain) != len(summer) {
		t.Fatalf("%d draws without and %d with summer time", len(plain), len(summer))
	}
	for i := range plain {
		if want := testYear.Standard(plain[i].StartS); summer[i].StartS != want {
			t.Fatalf("draw %d: starts at %g, want %g", i, summer[i].StartS, want)
		}
	}
}

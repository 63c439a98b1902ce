package household

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/checkvalues"
)

func TestProfilesKeepPublishedTotals(t *testing.T) {
	rows := checkvalues.Published(t, "load_profile_totals.csv")
	if len(rows) != len(ProfileNames()) {
		t.Errorf("%d profiles, %d published totals", len(ProfileNames()), len(rows))
	}
	for _, row := range rows {
		draws, err := Profile(row["profile"])
		if err != nil {
			t.Fatal(err)
		}
		if got, want := strconv.Itoa(len(draws)/calendar.Days), row["draws"]; got != want {
			t.Errorf("profile %s: %s draws a day, published %s", row["profile"], got, want)
		}
		sum := 0.0
		for _, d := range draws {
			sum += d.End.Amount / joulesPerKWh / calendar.Days
		}
		// Energies have three decimals, so only rounding of sums is left.
		if want := row.Number(t, "reference_kwh"); math.Abs(sum-want) > 1e-6 {
			t.Errorf("profile %s: %.6f kWh a day, published %g", row["profile"], sum, want)
		}
	}
}

func TestProfileRepeatsTheDay(t *testing.T) {
	draws, err := Profile("XL")
	if err != nil {
		t.Fatal(err)
	}
	day := len(draws) / calendar.Days
	outlets := Outlets(1)
	for i, d := range draws {
		want := draws[i%day]
		want.StartS += float64(i/day) * calendar.DayS
		if d != want {
			t.Fatalf("draw %d is %+v, want %+v", i, d, want)
		}
		if i > 0 && d.StartS < draws[i-1].StartS {
			t.Fatalf("draw %d is out of order", i)
		}
		if d.End.By != ByJoules || d.WantC < d.MinC || d.Outlet >= len(outlets) {
			t.Fatalf("draw %d: %+v", i, d)
		}
	}
}

// Three rows of the table, one for each way of stating temperatures.
func TestProfileReading(t *testing.T) {
	draws, err := Profile("L")
	if err != nil {
		t.Fatal(err)
	}
	for index, want := range map[int]Draw{
		0:  {StartS: 7 * 3600, Outlet: 3, Kind: Tap, FlowLPerMin: 3, WantC: 25, MinC: 25, End: End{ByJoules, 0.105 * 3.6e6}},
		1:  {StartS: 7*3600 + 300, Outlet: 0, Kind: Shower, FlowLPerMin: 6, WantC: 40, MinC: 40, End: End{ByJoules, 1.4 * 3.6e6}},
		4:  {StartS: 8*3600 + 300, Outlet: 1, Kind: Bath, FlowLPerMin: 10, WantC: 40, MinC: 10, End: End{ByJoules, 3.605 * 3.6e6}},
		13: {StartS: 12*3600 + 2700, Outlet: 2, Kind: Tap, FlowLPerMin: 4, WantC: 55, MinC: 10, End: End{ByJoules, 0.315 * 3.6e6}},
	} {
		if draws[index] != want {
			t.Errorf("draw %d of profile L: %+v, want %+v", index, draws[index], want)
		}
	}
}

func TestUnknownProfileNamesTheKnownOnes(t *testing.T) {
	_, err := Profile("XM")
	if err == nil || !strings.Contains(err.Error(), `"XM"`) || !strings.Contains(err.Error(), "3XS, XXS, XS, S, M, L, XL") {
		t.Errorf("error %v does not name the profile and its alternatives", err)
	}
}

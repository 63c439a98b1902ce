package charts

import (
	"strings"
	"testing"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
)

func TestNumber(t *testing.T) {
	for _, c := range []struct {
		v        float64
		decimals int
		want     string
	}{
		{0, 0, "0"}, {-0.2, 0, "0"}, {999, 0, "999"}, {1000, 0, "1,000"}, {1234567.891, 2, "1,234,567.89"},
		{-1234, 0, "−1,234"}, {0.05, 1, "0.1"}, {1e7, 0, "10 million"}, {2.5e9, 0, "2,500 million"},
		{1e13, 0, "1e+13"}, {-3.2e20, 0, "−3.2e+20"}, {100, 0, "100"}, {3e-9, 9, "3e−09"}, {2.65, 1, "2.7"}, {-0.95, 1, "−1.0"}, {1.25e7, 0, "13 million"},
	} {
		if got := number(c.v, c.decimals); got != c.want {
			t.Errorf("number(%v, %d) = %q, want %q", c.v, c.decimals, got, c.want)
		}
	}
}

func TestSensible(t *testing.T) {
	for v, want := range map[float64]string{0: "0", 0.04: "0", 0.05: "0.1", 0.95: "1", 2.04: "2", 2.65: "2.7", -2.65: "−2.7", 9.94: "9.9", 9.95: "10", 10.45: "10", 10.5: "11", 1234.5: "1,235"} {
		if got := sensible(v); got != want {
			t.Errorf("%v: %q, want %q", v, got, want)
		}
	}
}

func TestSigned(t *testing.T) {
	for v, want := range map[float64]string{3: "+3", -3: "−3", 0: "0", 0.2: "0"} {
		if got := signed(v, 0); got != want {
			t.Errorf("signed(%v) = %q, want %q", v, got, want)
		}
	}
}

func TestMoney(t *testing.T) {
	for code, want := range map[string]string{"GBP": "−£12", "EUR": "−€12", "USD": "−$12", "SEK": "−SEK 12"} {
		if got := money(&compare.Comparison{Currency: code}, -12.3); got != want {
			t.Errorf("%s: %q, want %q", code, got, want)
		}
	}
}

func TestDate(t *testing.T) {
	for day, want := range map[int]string{1: "1 January", 31: "31 January", 32: "1 February", 60: "1 March", 365: "31 December"} {
		if got := date(day); got != want {
			t.Errorf("day %d is %q, want %q", day, got, want)
		}
	}
}

func TestPlain(t *testing.T) {
	for in, want := range map[string]string{
		"  a\tb\nc ": "a b c", "a\x00b": "ab", "a\u202eb\u200b": "ab", "\xff": "\uFFFD", "<&>": "<&>", "\ufffe\uffffx": "x", "é£": "é£",
	} {
		if got := plain(in); got != want {
			t.Errorf("plain(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestFinding(t *testing.T) {
	for _, c := range []struct {
		name      string
		low, high float64
		want      finding
	}{
		{"inside one percent", -5, 9, same},
		{"nothing", 0, 0, same},
		{"above zero", 5, 30, more},
		{"below zero", -30, -5, less},
		{"across zero and wide", -30, 5, unsettled},
		{"touches zero and wide", 0, 30, unsettled},
	} {
		if got := find(spread(c.low, c.high), 1000); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

func TestElectricityTitle(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		want      string
	}{
		{150, 250, "The compact store uses 200 kWh more electricity a year"},
		{-5, 5, "No real difference in electricity for hot water"},
		{-50, 250, "The simulated years do not settle which option uses more electricity"},
	} {
		cmp := &compare.Comparison{}
		cmp.Difference.Spread = map[string]compare.DifferenceSpread{"electricity_kwh": spread(c.low, c.high)}
		if got := electricityTitle(cmp, 1200.4, 1000.4); got != c.want {
			t.Errorf("%v to %v: %q, want %q", c.low, c.high, got, c.want)
		}
	}
}

func TestCostTitle(t *testing.T) {
	cmp := &compare.Comparison{Currency: "GBP"}
	cmp.Difference.CostPerYear = -43.2
	for cost, want := range map[compare.CostFinding]string{
		compare.CostNoDifference: "No real difference in running cost",
		compare.CostCompactLess:  "Running costs are £43 a year lower with the compact store",
		compare.CostCylinderLess: "Running costs are £43 a year lower with the cylinder",
		compare.CostUndecided:    "The simulated years do not settle which option costs less to run",
		compare.CostNotCompared:  "Running costs cannot be compared: an option that runs cold only looks cheap",
	} {
		cmp.Verdict.Cost = cost
		if got := costTitle(cmp); got != want {
			t.Errorf("%s: %q, want %q", cost, got, want)
		}
	}
}

func TestFailuresTitle(t *testing.T) {
	for _, c := range []struct {
		a, b float64
		want string
	}{
		{0, 0, "No shower runs too cold with either option"},
		{3.21, 3.19, "3.2 showers a year run too cold with either option"},
		{12.3, 0, "Showers that run too cold: 12 a year with the compact store, none with the cylinder"},
		{0.01, 0, "Showers that run too cold: fewer than 0.1 a year with the compact store, none with the cylinder"},
	} {
		if got := failuresTitle(c.a, c.b); got != c.want {
			t.Errorf("%v, %v: %q, want %q", c.a, c.b, got, c.want)
		}
	}
}

func TestSpaceTitle(t *testing.T) {
	for _, c := range []struct {
		a, b float64
		want string
	}{
		{0.4949, 0.5251, "The compact store takes 0.03 m² less floor"},
		{0.6, 0.5, "The compact store takes 0.10 m² more floor"},
		{0.501, 0.499, "Both options take the same floor"},
	} {
		if got := spaceTitle(c.a, c.b); got != c.want {
			t.Errorf("%v, %v: %q, want %q", c.a, c.b, got, c.want)
		}
	}
}

func TestRuns(t *testing.T) {
	points := []compare.DayPoint{
		{Hour: 1}, {Hour: 2, ElectricW: 900}, {Hour: 3, ElectricW: 900}, {Hour: 4, ElectricW: 15}, {Hour: 5, ElectricW: 900},
	}
	got := runs(points)
	want := []span{{1, 3}, {4, 5}}
	if len(got) != 2 || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("runs %v, want %v", got, want)
	}
}

func TestRoundMarks(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		want      string
	}{
		{0, 126, "0 50 100"}, {0, 1, "0.0 0.2 0.4 0.6 0.8 1.0"}, {10, 60, "10 20 30 40 50 60"}, {0, 5e6, "0 1,000,000 2,000,000 3,000,000 4,000,000 5,000,000"},
		{-7, 8, "−5 0 5"},
	} {
		var got []string
		for _, m := range roundMarks(c.low, c.high) {
			got = append(got, m.Label)
		}
		if text := strings.Join(got, " "); text != c.want {
			t.Errorf("%v to %v: %s, want %s", c.low, c.high, text, c.want)
		}
	}
}

func TestFit(t *testing.T) {
	style := words(textSize, nil)
	const room vg.Length = 60
	text := "a text that is too long for it"
	got := fit(text, style, room)
	if !strings.HasSuffix(got, ellipsis) || style.Width(got) > room {
		t.Errorf("%q is %v wide, room %v", got, style.Width(got), room)
	}
	if fit("short", style, room) != "short" {
		t.Error("short text is cut")
	}
	lines := balanced(strings.Repeat("word ", 12), style, 4*room, mostLines)
	if len(lines) != 2 || len(lines[1]) < len(lines[0])/2 {
		t.Errorf("lines %q are not balanced", lines)
	}
}

func TestUnitsStayWithTheirNumbers(t *testing.T) {
	for in, want := range map[string]string{
		"at 19.8 °C or above": "at|19.8 °C|or|above", "uses 200 kWh, more": "uses|200 kWh,|more", "with l letters": "with|l|letters",
		"": "", "°C": "°C", "5 m² and 3": "5 m²|and|3",
	} {
		if got := strings.Join(unbroken(strings.Fields(in)), "|"); got != want {
			t.Errorf("%q: %s, want %s", in, got, want)
		}
	}
}

func TestArrange(t *testing.T) {
	g := arrange([]compare.SpaceItem{
		{Name: "store", WidthMM: 500, DepthMM: 510, HeightMM: 900},
		{Name: "valve", WidthMM: 150, DepthMM: 80, HeightMM: 160, Hangs: true},
		{Name: "pump", WidthMM: 200, DepthMM: 200, HeightMM: 300},
	})
	if g.width != 500+betweenMM+200 || g.height != 900+overMM+160 || g.depth != 510 {
		t.Errorf("spans %v x %v x %v", g.width, g.depth, g.height)
	}
	if g.things[1].x != 500+betweenMM || g.things[1].y != 0 || g.things[2].y != 900+overMM {
		t.Errorf("places %+v", g.things)
	}
	if want := "1  store, 500 × 510 × 900"; g.list()[0] != want {
		t.Errorf("listed as %q, want %q", g.list()[0], want)
	}
}

func TestWeekly(t *testing.T) {
	if weekly(make([]float64, 10)) != nil {
		t.Error("ten half hours are taken for a year")
	}
	profile := make([]float64, calendar.HalfHours)
	for i := range profile {
		profile[i] = 0.5 // kWh in half an hour: 1 kW
	}
	profile[17] = 4 // busiest half hour, from 08:30, on 1 January: 8 kW
	weeks := weekly(profile)
	if len(weeks) != weeksShown {
		t.Fatalf("%d weeks", len(weeks))
	}
	// Sums of a few halves are exact.
	if got := weeks[51][47]; got != 1000 {
		t.Errorf("the last week, of eight days, has %v W, want 1000", got)
	}
	if got, want := weeks[0][17], (6*1000.0+8000)/7; got != want {
		t.Errorf("the first week has %v W at 08:30, want %v", got, want)
	}
	if got := clock(busiest(profile)); got != "08:30" {
		t.Errorf("busiest at %s, want 08:30", got)
	}
}

func TestShades(t *testing.T) {
	s := shadesUpTo(480)
	for v, want := range map[float64]int{0: 0, 4: 0, 6: 1, 99: 1, 100: 2, 399: 4, 400: 5, 9e9: 5} {
		if got := s.of(v); got != want {
			t.Errorf("%v W has shade %d, want %d", v, got, want)
		}
	}
	before := 1.1
	for i, c := range s.colours() {
		l := luminance(c)
		if l >= before {
			t.Errorf("shade %d is not darker than the one before", i)
		}
		before = l
	}
}

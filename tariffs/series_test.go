package tariffs

import (
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
	"testing"
	"testing/iotest"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

// file writes a series of one year: value of row i, one row per step.
func file(year, stepMin int, column string, value func(i int) float64) []string {
	lines := []string{"start_utc," + column}
	at := yearStart(year)
	for i := 0; at.Year() == year; i++ {
		lines = append(lines, fmt.Sprintf("%s,%g", at.Format("2006-01-02T15:04Z"), value(i)))
		at = at.Add(time.Duration(stepMin) * time.Minute)
	}
	return lines
}

func count(i int) float64 { return float64(i) }

func options() SeriesOptions { return SeriesOptions{File: "prices.csv", Year: british()} }

func readPrices(lines []string, o SeriesOptions) (*Series, error) {
	return ReadPrices(strings.NewReader(strings.Join(lines, "\n")+"\n"), o)
}

func TestPricesByStep(t *testing.T) {
	tests := []struct {
		stepMin int
		want    func(half int) float64
	}{
		{30, func(h int) float64 { return float64(h) }},
		{60, func(h int) float64 { return float64(h / 2) }},
		{15, func(h int) float64 { return 2*float64(h) + 0.5 }},
	}
	for _, tt := range tests {
		s, err := readPrices(file(2026, tt.stepMin, "price", count), options())
		if err != nil {
			t.Fatal(err)
		}
		if len(s.HalfHours) != calendar.HalfHours || s.StepMinutes != tt.stepMin || s.CalendarYear != 2026 || len(s.Warnings) != 0 {
			t.Errorf("%d minutes: %d values, step %d, year %d, warnings %v", tt.stepMin, len(s.HalfHours), s.StepMinutes, s.CalendarYear, s.Warnings)
		}
		for h, got := range s.HalfHours {
			if got != tt.want(h) {
				t.Fatalf("%d minutes, half hour %d: %g, want %g", tt.stepMin, h, got, tt.want(h))
			}
		}
	}
}

// Energy of a step is shared out or added up, so that the year's total stays.
func TestSurplusByStepKeepsTheEnergy(t *testing.T) {
	for _, stepMin := range []int{15, 30, 60} {
		lines := file(2026, stepMin, "surplus_kwh", func(int) float64 { return 0.25 })
		s, err := ReadSurplus(strings.NewReader(strings.Join(lines, "\n")), options())
		if err != nil {
			t.Fatal(err)
		}
		if got, want := sum(s.HalfHours), 0.25*float64(len(lines)-1); got != want {
			t.Errorf("%d minutes: %g kWh, want %g", stepMin, got, want)
		}
	}
}

// Clock changes leave a UTC file without gaps and doubles: the half hour at which
// British clocks go forward stands where the calendar puts it.
func TestPricesLieInStandardTimeAcrossClockChanges(t *testing.T) {
	lines := file(2026, 30, "price", func(int) float64 { return 0 })
	mark := func(stamp string) {
		i := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, stamp) })
		lines[i] = stamp + ",-2.5"
	}
	mark("2026-03-29T01:00Z")
	mark("2026-10-25T01:00Z")
	s, err := readPrices(lines, options())
	if err != nil {
		t.Fatal(err)
	}
	y := british()
	for _, at := range []int{y.DSTStart, y.DSTEnd} {
		if got := s.HalfHours[at/calendar.HalfHourS]; got != -2.5 {
			t.Errorf("price at %d s is %g, want -2.5", at, got)
		}
	}
}

func TestAheadOfUTCTheYearBeginsBeforeNewYear(t *testing.T) {
	lines := []string{"# central Europe", "start_utc,price,note"}
	for i, l := range file(2026, 60, "price", count)[1:] {
		at, _ := time.Parse("2006-01-02T15:04Z", strings.Split(l, ",")[0])
		lines = append(lines, at.Add(-time.Hour).Format("2006-01-02T15:04:05Z")+fmt.Sprintf(",%d,x", i))
	}
	o := options()
	o.UTCOffsetMinutes = 60
	s, err := readPrices(lines, o)
	if err != nil {
		t.Fatal(err)
	}
	if s.HalfHours[0] != 0 || s.HalfHours[calendar.HalfHours-1] != calendar.Hours-1 {
		t.Errorf("first %g, last %g", s.HalfHours[0], s.HalfHours[calendar.HalfHours-1])
	}
	double := slices.Insert(slices.Clone(lines), 3, lines[2])
	if _, err := readPrices(double, o); err == nil || !strings.Contains(err.Error(), "prices.csv:4: 2025-12-31T23:00Z was given on line 3 already") {
		t.Errorf("the first row twice: %v", err)
	}
	o.UTCOffsetMinutes = 0
	if _, err := readPrices(lines, o); err == nil || !strings.Contains(err.Error(), "prices.csv:3: 2025-12-31T23:00Z lies outside 2026") {
		t.Errorf("without the offset: %v", err)
	}
}

func TestLeapDayIsLeftOutWithAWarning(t *testing.T) {
	s, err := readPrices(file(2024, 30, "price", count), options())
	if err != nil {
		t.Fatal(err)
	}
	const endOfFebruary = 59 * 48
	if s.HalfHours[endOfFebruary-1] != endOfFebruary-1 || s.HalfHours[endOfFebruary] != endOfFebruary+48 {
		t.Errorf("28 February ends with %g, 1 March begins with %g", s.HalfHours[endOfFebruary-1], s.HalfHours[endOfFebruary])
	}
	if len(s.HalfHours) != calendar.HalfHours {
		t.Errorf("%d values", len(s.HalfHours))
	}
	text := strings.Join(s.Warnings, "\n")
	for _, want := range []string{"29 February 2024 is left out", "2024 begins on a Monday, the simulated year on a Thursday"} {
		if !strings.Contains(text, want) {
			t.Errorf("warnings lack %q:\n%s", want, text)
		}
	}
}

func TestBadSeriesNameFileAndLine(t *testing.T) {
	good := file(2026, 30, "price", count)
	edit := func(change func(l []string) []string) []string { return change(slices.Clone(good)) }
	replace := func(i int, line string) []string {
		return edit(func(l []string) []string { l[i] = line; return l })
	}
	tests := []struct {
		name  string
		lines []string
		want  []string // one per problem
	}{
		{"gap", edit(func(l []string) []string { return slices.Delete(l, 10, 13) }),
			[]string{"prices.csv:11: 3 of 17520 values are missing near here, 2026-01-01T04:30Z to 2026-01-01T05:30Z: add the rows"}},
		{"starts late", edit(func(l []string) []string { return slices.Delete(l, 1, 3) }),
			[]string{"prices.csv:2: 2 of 17520 values are missing near here, 2026-01-01T00:00Z to 2026-01-01T00:30Z"}},
		{"ends early", edit(func(l []string) []string { return l[:len(l)-1] }),
			[]string{"prices.csv:17520: 1 of 17520 values are missing near here, 2026-12-31T23:30Z"}},
		{"double", edit(func(l []string) []string { return slices.Insert(l, 5, l[4]) }),
			[]string{"prices.csv:6: 2026-01-01T01:30Z was given on line 5 already"}},
		{"order", edit(func(l []string) []string { l[7], l[8] = l[8], l[7]; return l }),
			[]string{"prices.csv:9: 2026-01-01T03:00Z comes after 2026-01-01T03:30Z on line 8: sort"}},
		{"text", replace(20, "2026-01-01T09:30Z,dear"), []string{`prices.csv:21: price "dear" is not a number`}},
		{"not a number", replace(20, "2026-01-01T09:30Z,NaN"), []string{`prices.csv:21: price "NaN" is not a number`}},
		{"empty price", replace(20, "2026-01-01T09:30Z,"), []string{`prices.csv:21: price "" is not a number`}},
		{"local time", replace(20, "2026-01-01T09:30,1"), []string{`prices.csv:21: start_utc "2026-01-01T09:30" is not a UTC time: write it like`}},
		{"offset time", replace(20, "2026-01-01T10:30+01:00,1"), []string{"prices.csv:21: start_utc"}},
		{"decimal comma", replace(20, "2026-01-01T09:30Z,0,25"), []string{"prices.csv:21: 3 fields, the header has 2"}},
		{"off the grid", replace(20, "2026-01-01T09:37Z,1"), []string{"prices.csv:21: 2026-01-01T09:37Z is off the 30-minute grid"}},
		{"quotation marks", replace(20, `2026-01-01T09:30Z,1"2`), []string{"prices.csv:21: a quotation mark stands inside a value, or is never closed"}},
		{"next year", append(slices.Clone(good), "2027-01-01T00:00Z,1"), []string{"prices.csv:17522: 2027-01-01T00:00Z lies outside 2026"}},
		{"header", replace(0, "time,price"), []string{`prices.csv:1: header "time,price" lacks start_utc or price`}},
		{"empty", nil, []string{"prices.csv:1: the file has no header that can be read (it is empty)"}},
		{"header only", good[:1], []string{"prices.csv:1: 0 rows"}},
		{"days", []string{good[0], "2026-01-01T00:00Z,1", "2026-01-02T00:00Z,1", "2026-01-03T00:00Z,1"}, []string{"prices.csv:3: rows are 1440 minutes apart here"}},
		{"more odd steps than others", []string{good[0], "2026-01-01T00:00Z,1", "2026-01-01T00:30Z,1", "2026-01-01T01:20Z,1", "2026-01-01T02:30Z,1"},
			[]string{"prices.csv:4: rows are 50 minutes apart here: they must be 15, 30 or 60 minutes apart throughout"}},
		{"two at once", edit(func(l []string) []string { l[3] = "2026-01-01T01:00Z,x"; return slices.Delete(l, 100, 101) }),
			[]string{`prices.csv:4: price "x"`, "prices.csv:101: 1 of 17520 values"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			text := strings.Join(tt.lines, "\n")
			_, err := ReadPrices(strings.NewReader(text), options())
			var bad *datafile.Error
			if !errors.As(err, &bad) {
				t.Fatalf("error %v, want a datafile.Error", err)
			}
			lines := strings.Split(err.Error(), "\n")
			if len(lines) != len(tt.want) {
				t.Fatalf("%d problems, want %d:\n%v", len(lines), len(tt.want), err)
			}
			for i, want := range tt.want {
				if !strings.HasPrefix(lines[i], want) {
					t.Errorf("got  %s\nwant %s", lines[i], want)
				}
			}
		})
	}
}

func TestProblemsAreListedUpToALimit(t *testing.T) {
	lines := file(2026, 30, "price", count)
	for i := 1; i <= 50; i++ {
		lines[i] = strings.Replace(lines[i], ",", ",p", 1)
	}
	_, err := readPrices(lines, options())
	var bad *datafile.Error
	if !errors.As(err, &bad) || len(bad.Problems) != datafile.MaxProblems || bad.More != 30 {
		t.Fatalf("got %v", err)
	}
	if !strings.HasSuffix(err.Error(), "prices.csv: and 30 more problems") {
		t.Errorf("message ends with %q", err.Error()[len(err.Error())-60:])
	}
}

func TestNegativeSurplusAndOverlongFilesAreRefused(t *testing.T) {
	lines := file(2026, 60, "surplus_kwh", func(i int) float64 { return float64(-(i / 8759)) })
	_, err := ReadSurplus(strings.NewReader(strings.Join(lines, "\n")), SeriesOptions{File: "solar.csv", Year: british()})
	if err == nil || err.Error() != "solar.csv:8761: surplus_kwh -1 is below zero: give zero or more" {
		t.Errorf("negative surplus: %v", err)
	}
	long := strings.NewReader("start_utc,price\n" + strings.Repeat("2026-01-01T00:00Z,1\n", maxSeriesRows+1))
	if _, err := ReadPrices(long, options()); err == nil || !strings.Contains(err.Error(), "more than") {
		t.Error("an overlong file is read to its end")
	}
	broken := io.MultiReader(strings.NewReader("start_utc,price\n"), iotest.ErrReader(errors.New("disk gone")))
	if _, err := ReadPrices(broken, options()); err == nil || !strings.HasPrefix(err.Error(), "prices.csv:1: reading stopped: disk gone") {
		t.Errorf("a failing reader gives %v", err)
	}
}

func TestByteOrderMarkAndWindowsLinesAreRead(t *testing.T) {
	text := "\ufeff" + strings.Join(file(2025, 60, "price", count), "\r\n")
	s, err := ReadPrices(strings.NewReader(text), options())
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(s.HalfHours[3]-1) > 0 {
		t.Errorf("second hour %g, want 1", s.HalfHours[3])
	}
}

package climate

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"dhwcompare/compare/calendar"
)

// readSound reads a file that must be taken.
func readSound(t *testing.T, text string) *Outdoor {
	t.Helper()
	o, err := ReadEPW(strings.NewReader(text), "x.epw")
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// noValue keeps a row of an hour but for its three values.
func noValue(hour int) string { return rowOf(hour, "", "", "") }

func TestReadEPW(t *testing.T) {
	o := readSound(t, newInvented().text(nil))
	for hour := range calendar.Hours {
		if o.AirC[hour] != inventedC(hour) || o.RHPercent[hour] != float64(inventedRH(hour)) {
			t.Fatalf("hour %d is %g °C and %g %%, want %g and %d", hour, o.AirC[hour], o.RHPercent[hour], inventedC(hour), inventedRH(hour))
		}
	}
	if o.Place != "Nowhere, Inventia" || !o.HasOffset || o.UTCOffsetMin != 60 || len(o.Warnings) > 0 {
		t.Errorf("place %q, offset %v %d, warnings %q", o.Place, o.HasOffset, o.UTCOffsetMin, o.Warnings)
	}
}

// Line ends, a mark at the beginning, small letters, blank lines at the end, old
// letters in the header and a year that begins in July change nothing.
func TestEPWWritingsOfTheSame(t *testing.T) {
	f := newInvented()
	text := f.text(nil)
	want := readSound(t, text)
	july := newInvented()
	from := calendar.MonthStartDay(6) * hoursADay
	july.rows = slices.Concat(f.rows[from:], f.rows[:from])
	for name, other := range map[string]string{
		"CRLF":          strings.ReplaceAll(text, "\n", "\r\n"),
		"mark":          "\ufeff" + text,
		"no last end":   strings.TrimSuffix(text, "\n"),
		"blank lines":   text + "\n \r\n\n",
		"small letters": strings.Replace(text, "DATA PERIODS", "data periods", 1),
		"latin 1":       strings.Replace(text, "COMMENTS 1,", "COMMENTS 1,M\xfcll ", 1),
		"spaces":        strings.ReplaceAll(text, ",60,?9?9,", " , 60 ,?9?9, "),
		"more blanks":   strings.Replace(text, ",0\n", ",0,,\n", 3),
		"short rows":    strings.ReplaceAll(text, ",101325"+strings.Repeat(",0", 25), ""),
		"from July":     july.text(nil),
	} {
		o := readSound(t, other)
		if !slices.Equal(o.AirC, want.AirC) || !slices.Equal(o.RHPercent, want.RHPercent) || o.Place != want.Place {
			t.Errorf("%s: not the same", name)
		}
	}
}

func TestEPWHeaderMayLeaveOut(t *testing.T) {
	o := readSound(t, newInvented().text(map[int]string{1: "LOCATION,\"M\xe4\x1b[1mtown"}))
	if o.Place != `"M[1mtown` || o.HasOffset {
		t.Errorf("place %q, offset %v", o.Place, o.HasOffset)
	}
}

func TestEPWLeapDayIsLeftOut(t *testing.T) {
	f := newInvented()
	last := (calendar.MonthStartDay(2))*hoursADay - 1
	leap := ""
	for h := range hoursADay {
		leap += "\n" + row(1996, 2, 29, h+1, "30", "20", "50")
	}
	o := readSound(t, f.text(map[int]string{lineAt(last): f.rows[last] + leap}))
	if !slices.Equal(o.AirC, readSound(t, f.text(nil)).AirC) {
		t.Error("the other days change")
	}
	want := "29 February is left out, as the simulated year has 365 days"
	if len(o.Warnings) != 1 || o.Warnings[0] != want {
		t.Errorf("warnings %q", o.Warnings)
	}
}

// Blanks and codes count as missing; up to six hours on end lie on a straight
// line, over the end of the year too.
func TestEPWShortGapsAreBridged(t *testing.T) {
	changes := map[int]string{}
	for i, hour := range []int{calendar.Hours - 2, calendar.Hours - 1, 0, 1, 2, 3} {
		dry := []string{"99.9", "", "99.90"}[i%3]
		changes[lineAt(hour)] = rowOf(hour, dry, "99.9", "999")
	}
	changes[lineAt(calendar.Hours-3)] = rowOf(calendar.Hours-3, "7", "1", "60")
	changes[lineAt(4)] = rowOf(4, "0", "1", "95")
	o := readSound(t, newInvented().text(changes))
	for i, hour := range []int{calendar.Hours - 2, calendar.Hours - 1, 0, 1, 2, 3} {
		if c, rh := 6-float64(i), 65+5*float64(i); math.Abs(o.AirC[hour]-c) > 1e-9 || math.Abs(o.RHPercent[hour]-rh) > 1e-9 {
			t.Errorf("hour %d is %g °C and %g %%, want %g and %g", hour, o.AirC[hour], o.RHPercent[hour], c, rh)
		}
	}
	want := []string{
		"dry bulb is missing in 6 of 8760 hours and taken from a straight line between its neighbours (longest gap 6 h)",
		"humidity is missing in 6 of 8760 hours: up to 6 hours on end are taken from a straight line, longer gaps from the month's mean with a constant dew point",
	}
	if !slices.Equal(o.Warnings, want) {
		t.Errorf("warnings %q", o.Warnings)
	}
}

// At a dew point as warm as the air, the air is saturated. 10 over 20 °C is 52.5 %
// to the digits given (1228.0 over 2338.5 Pa, steam tables: 1227.9 and 2338.8).
func TestEPWHumidityFromTheDewPoint(t *testing.T) {
	for _, tt := range []struct {
		dry, dew, rh string
		want         float64
	}{
		{"20", "10", "", 52.5},
		{"20", "10", "999", 52.5},
		{"5", "5", "", 100},
		{"5", "6", "", 100},
		{"20", "10", "80", 80},
		{"20", "-99", "80", 80},   // a dew point that plays no part is not judged
		{"20", "10", "108", 100},  // allowed by the format
		{"20", "10", "0.0", 0},    // odd but allowed
		{"20", "99.9", "999", 85}, // the mean of its neighbours
	} {
		changes := map[int]string{
			lineAt(99): rowOf(99, "20", "", "80"), lineAt(100): rowOf(100, tt.dry, tt.dew, tt.rh), lineAt(101): rowOf(101, "20", "", "90"),
		}
		if got := readSound(t, newInvented().text(changes)).RHPercent[100]; math.Abs(got-tt.want) > 0.05 {
			t.Errorf("%+v gives %g", tt, got)
		}
	}
}

// A long gap of humidity keeps one dew point through the day, at the humidity of
// the month.
func TestEPWLongGapsOfHumidity(t *testing.T) {
	const day = 200
	changes := map[int]string{}
	for h := range hoursADay {
		hour := day*hoursADay + h
		changes[lineAt(hour)] = rowOf(hour, fmt.Sprintf("%.1f", inventedC(hour)), "", "")
	}
	o := readSound(t, newInvented().text(changes))
	hours, air := o.RHPercent[day*hoursADay:(day+1)*hoursADay], o.AirC[day*hoursADay:(day+1)*hoursADay]
	vapour := hours[0] * saturationPa(air[0])
	for h := range hours {
		if math.Abs(hours[h]*saturationPa(air[h])/vapour-1) > 1e-12 {
			t.Errorf("the dew point changes at %d", h)
		}
	}
	known := 0.0 // July 20 has the mean of all other days of July
	for hour := calendar.MonthStartDay(6) * hoursADay; hour < calendar.MonthStartDay(7)*hoursADay; hour++ {
		if hour/hoursADay != day {
			known += float64(inventedRH(hour)) / (30 * hoursADay)
		}
	}
	if got := average(hours); math.Abs(got-known) > 1e-9 {
		t.Errorf("the day has %g %%, the month %g", got, known)
	}
}

func TestEPWWithoutHumidity(t *testing.T) {
	f := newInvented().everyRow(func(hour int) string { return rowOf(hour, fmt.Sprintf("%.1f", inventedC(hour)), "", "") })
	o := readSound(t, f.text(nil))
	if _, has := o.MeanRHPercent(); has || len(o.Warnings) != 1 || !strings.Contains(o.Warnings[0], "neither humidity nor dew point") {
		t.Errorf("humidity %v, warnings %q", has, o.Warnings)
	}
	p := Defaults()
	p.MainsC, p.Outdoor = o.MeansC(), o
	s := Synthesize(p, 1, 0)
	for m, want := range p.RHPercent {
		from, to := calendar.MonthStartDay(m)*hoursADay, calendar.MonthStartDay(m+1)*hoursADay
		if got := average(s.RHPercent[from:to]); math.Abs(got-want) > 1 { // mist cuts a little
			t.Errorf("month %d has %g %%, want %g", m+1, got, want)
		}
	}
}

func TestMonthlyMeansOfAFile(t *testing.T) {
	f := newInvented().everyRow(func(hour int) string {
		month := calendar.MonthOfDay(hour / hoursADay)
		return rowOf(hour, fmt.Sprint(month+hour%2*2-1), "", fmt.Sprint(60+month))
	})
	o := readSound(t, f.text(nil))
	rh, _ := o.MeanRHPercent()
	for m, c := range o.MeansC() {
		if math.Abs(c-float64(m)) > 1e-9 || math.Abs(rh[m]-float64(60+m)) > 1e-9 {
			t.Errorf("month %d has %g °C and %g %%", m+1, c, rh[m])
		}
	}
}

// Every year has the file's outdoor air; mains water is the same as without it.
func TestSynthesizeFromAFile(t *testing.T) {
	o := readSound(t, newInvented().text(nil))
	p := Defaults()
	p.OutdoorC, p.MainsC = o.MeansC(), Monthly{8, 8, 9, 12, 14, 16, 18, 17, 16, 14, 11, 8}
	without := Synthesize(p, 7, 3)
	p.Outdoor = o
	s, other := Synthesize(p, 7, 3), Synthesize(p, 8, 4)
	if !slices.Equal(s.OutdoorC, o.AirC) || !slices.Equal(s.RHPercent, o.RHPercent) || !slices.Equal(other.OutdoorC, o.AirC) {
		t.Error("outdoor air is not that of the file")
	}
	if !slices.Equal(s.MainsC, without.MainsC) {
		t.Error("mains water depends on the file")
	}
	s.OutdoorC[0]++
	if o.AirC[0] != inventedC(0) {
		t.Error("the year shares its memory with the file")
	}
}

func TestWarmer(t *testing.T) {
	o := readSound(t, newInvented().text(nil))
	w := o.Warmer(2)
	for hour := range w.AirC {
		if w.AirC[hour] != o.AirC[hour]+2 || o.AirC[hour] != inventedC(hour) {
			t.Fatalf("hour %d is %g after %g", hour, w.AirC[hour], o.AirC[hour])
		}
	}
}

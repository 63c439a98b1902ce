package climate

import (
	"errors"
	"math"
	"strings"
	"testing"
	"unicode"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

// Whatever the lines put in place of some of a sound file, ReadEPW gives problems
// with a line that are safe to show, or a whole year of sound values.
func FuzzReadEPW(f *testing.F) {
	file := newInvented()
	f.Add("LOCATION,Nowhere", 0, false)
	f.Add("DATA PERIODS,1,2", 7, false)
	f.Add(rowOf(5, "99.9", "", "999"), 13, false)
	f.Add(row(2000, 2, 29, 24, "1", "2", "3"), 1424, false)
	f.Add("2001,1,1,1,60,\x1b[1m,-1e3,,", 8, false)
	f.Add("\xff\xfe\x00", 0, true)
	f.Add("1\n2,\r\n\u202e,3,,,,,,,", 8768, true)
	f.Fuzz(func(t *testing.T, text string, line int, only bool) {
		if only {
			checkAnyEPW(t, text)
			return
		}
		n := len(file.rows) + len(file.header)
		checkAnyEPW(t, file.text(map[int]string{1 + (line%n+n)%n: text}))
	})
}

func checkAnyEPW(t *testing.T, text string) {
	o, err := ReadEPW(strings.NewReader(text), "f.epw")
	if err == nil {
		checkAnyYear(t, o)
		return
	}
	var bad *datafile.Error
	if !errors.As(err, &bad) || len(bad.Problems) == 0 {
		t.Fatalf("error without problems: %v", err)
	}
	for _, p := range bad.Problems {
		if p.Line < 1 || p.Text == "" || strings.ContainsFunc(p.Text, unsafe) {
			t.Fatalf("problem without a place or not safe to show: %d %q", p.Line, p.Text)
		}
	}
}

func unsafe(c rune) bool { return unicode.IsControl(c) || unicode.In(c, unicode.Bidi_Control) }

func checkAnyYear(t *testing.T, o *Outdoor) {
	if len(o.AirC) != calendar.Hours || strings.ContainsFunc(o.Place, unsafe) {
		t.Fatalf("%d hours at %q", len(o.AirC), o.Place)
	}
	for hour, c := range o.AirC {
		if !(c > -70 && c < 70) {
			t.Fatalf("hour %d has %g °C", hour, c)
		}
	}
	for hour, rh := range o.RHPercent {
		if math.IsNaN(rh) || rh < 0 || rh > 100 {
			t.Fatalf("hour %d has %g %%", hour, rh)
		}
	}
}

package climate

import (
	"errors"
	"fmt"
	"github.com/google/go-cmp/cmp"
	"strings"
	"testing"
	"testing/iotest"

	"dhwcompare/compare/datafile"
)

// What is wrong with a file comes with its line and a remedy: the whole message
// of each.
func TestBadEPW(t *testing.T) {
	f := newInvented()
	sound := f.text(nil)
	line := func(n int, text string) string { return f.text(map[int]string{n: text}) }
	hour := func(dry, dew, rh string) string { return line(lineAt(99), rowOf(99, dry, dew, rh)) }
	drop := func(from, to int) string {
		changes := map[int]string{}
		for h := from; h < to; h++ {
			changes[lineAt(h)] = "-"
		}
		return f.text(changes)
	}
	blank := func(from, to, step int) string {
		changes := map[int]string{}
		for h := from; h < to; h += step {
			changes[lineAt(h)] = noValue(h)
		}
		return f.text(changes)
	}
	every := func(dry func(hour int) float64, rh string) string {
		return newInvented().everyRow(func(h int) string { return rowOf(h, fmt.Sprintf("%.2f", dry(h)), "", rh) }).text(nil)
	}
	for _, tt := range []struct{ name, text, want string }{
		{"empty", "", "x.epw:1: the file is empty: give an hourly weather file in the EPW format"},
		{"white", "\n \n", "x.epw:1: the file is empty: give an hourly weather file in the EPW format"},
		{"another kind", "Date,Temperature\n1,2\n", `x.epw:1: begins with "Date,Temperature", an EPW file begins with LOCATION: give an hourly weather file in the EPW format`},
		{"packed", "PK\x03\x04\x00\x00", "x.epw:1: the file holds a zero byte, so it is no text: unpack it, if it is packed"},
		{"UTF-16", "\xff\xfeL\x00O\x00", "x.epw:1: the file is UTF-16: save it as plain text"},
		{"too long", sound + strings.Repeat("#", LargestEPW), "x.epw:1: the file has more than 16777216 bytes, a year of hours has about a tenth of that: check that this is the right file"},
		{"header only", strings.Join(f.header[:], "\n"), "x.epw:8: there are no rows after the header, a year has 8760: give a complete file"},
		{"header cut", line(4, "-"), "x.epw:1: the header has 7 lines before the first row, an EPW file has 8, from LOCATION to DATA PERIODS: restore the file"},
		{"header swapped", line(6, "DATA PERIODS,1,1"), `x.epw:6: begins with "DATA PERIODS,1,1", line 6 of the header begins with COMMENTS 1: restore the file`},
		{"two periods", line(8, "DATA PERIODS,2,1"), `x.epw:8: the number of data periods is "2", allowed is 1: give a file of one whole year`},
		{"half hours", line(8, "DATA PERIODS,1,2"), `x.epw:8: the number of records an hour is "2", allowed is 1: export the file by the hour`},
		{"periods unsaid", line(8, "DATA PERIODS"), "x.epw:8: the number of data periods is blank, allowed is 1: give a file of one whole year\n" +
			"x.epw:8: the number of records an hour is blank, allowed is 1: export the file by the hour"},
		{"time zone", line(1, "LOCATION,a,b,c,d,e,1,2,GMT+1,4"), `x.epw:1: time zone is "GMT+1", allowed -12 to 14 h ahead of UTC, in column 9: put it right, or leave it blank`},
		{"time zone in minutes", line(1, "LOCATION,a,b,c,d,e,1,2,60,4"), `x.epw:1: time zone is "60", allowed -12 to 14 h ahead of UTC, in column 9: put it right, or leave it blank`},
		{"text", hour("cold", "1", "80"), `x.epw:108: dry bulb is "cold", which is no number: give a number, or leave it blank`},
		{"no number", hour("NaN", "1", "80"), `x.epw:108: dry bulb is "NaN", which is no number: give a number, or leave it blank`},
		{"infinite", hour("1e999", "1", "80"), `x.epw:108: dry bulb is "1e999", which is no number: give a number, or leave it blank`},
		{"Fahrenheit", hour("75", "1", "80"), "x.epw:108: dry bulb is 75, allowed above -70 and below 70 °C: it looks like degrees Fahrenheit, give °C"},
		{"kelvin", hour("283.15", "1", "80"), "x.epw:108: dry bulb is 283.15, allowed above -70 and below 70 °C: it looks like kelvin, give °C"},
		{"at the limit", hour("-70", "1", "80"), "x.epw:108: dry bulb is -70, allowed above -70 and below 70 °C: put it right, or leave it blank if it is not known"},
		{"humidity", hour("5", "1", "111"), "x.epw:108: relative humidity is 111, allowed 0 to 110 %: put it right, or leave it blank if it is not known"},
		{"dew point", hour("5", "-80", ""), "x.epw:108: dew point is -80, allowed above -70 and below 70 °C: put it right, or leave it blank if it is not known"},
		{"month", line(108, row(2001, 13, 5, 4, "1", "1", "80")), `x.epw:108: month is "13", allowed 1 to 12: put it right`},
		{"day", line(108, row(2001, 4, 31, 4, "1", "1", "80")), `x.epw:108: day is "31", allowed 1 to 30: put it right`},
		{"hour from 0", line(108, row(2001, 1, 5, 0, "1", "1", "80")), `x.epw:108: hour is "0", allowed 1 to 24: hour 1 ends at 01:00`},
		{"decimal commas", line(108, "2001,1,5,4,60,?,1,0,2,0,80,0"+strings.Repeat(",0", 30)), "x.epw:108: 42 fields, a row has up to 35: write decimals with a point"},
		{"semicolons", line(108, "2001;1;5;4;60;?;1;2;80"), "x.epw:108: 1 fields, a row has 35: separate them by commas"},
		{"short row", line(108, "2001,1,5,4,60,?,1"), "x.epw:108: 7 fields, a row has 35, of which the first 9 are needed: complete the row"},
		{"comment among rows", line(108, "# checked"), "x.epw:108: 1 fields, a row has 35, of which the first 9 are needed: complete the row"},
		{"twice", line(109, f.rows[99]), "x.epw:109: 5 Jan 03:00 was given on line 108 already: keep one\n" +
			"x.epw:110: 1 of 8760 hours have no row near here, from 5 Jan 04:00: add the rows"},
		{"missing rows", drop(99, 123), "x.epw:108: 24 of 8760 hours have no row near here, from 5 Jan 03:00: add the rows"},
		{"cut short", drop(8000, 8760), "x.epw:8009: 760 of 8760 hours have no row near here, from 30 Nov 08:00: add the rows"},
		{"long gap", blank(99, 106, 1), "x.epw:108: dry bulb is missing for 7 hours from 5 Jan 03:00, allowed are 6 on end: fill the gap, or take another file"},
		{"many gaps", blank(0, 8760, 2), "x.epw:9: dry bulb is missing in 4380 of 8760 hours, allowed are 438: take another file"},
		{"no temperature", blank(0, 8760, 1), "x.epw:9: dry bulb is missing for 8760 hours from 1 Jan 00:00, allowed are 6 on end: fill the gap, or take another file"},
		{"level", every(func(int) float64 { return 21 }, "80"), "x.epw:9: dry bulb varies by 0 K over the year: column 7 must hold the air temperature"},
		{"humidity as a share", every(inventedC, "0.8"), "x.epw:9: relative humidity is never above 0.8 %: it looks like a share of 1, give percent"},
		{"several at once", f.text(map[int]string{8: "DATA PERIODS,1,4", 20: rowOf(11, "x", "", "80"), 30: "2001,1"}),
			`x.epw:8: the number of records an hour is "4", allowed is 1: export the file by the hour` + "\n" +
				`x.epw:20: dry bulb is "x", which is no number: give a number, or leave it blank` + "\n" +
				"x.epw:30: 2 fields, a row has 35, of which the first 9 are needed: complete the row"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			o, err := ReadEPW(strings.NewReader(tt.text), "x.epw")
			var bad *datafile.Error
			if o != nil || !errors.As(err, &bad) {
				t.Fatalf("got %v and %v", o, err)
			}
			if diff := cmp.Diff(tt.want, err.Error()); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// A file in degrees Fahrenheit may pass hour by hour, but no month is that warm;
// nor is one that dry.
func TestEPWMonthsThatCannotBe(t *testing.T) {
	for want, f := range map[string]*invented{
		"the mean dry bulb of month 1 is 50.0 °C, allowed -50 to 45: it looks like degrees Fahrenheit, give °C": newInvented().everyRow(func(h int) string {
			return rowOf(h, fmt.Sprint(49+2*(h%2)), "", "80")
		}),
		"the mean relative humidity of month 1 is 3.5 %, allowed 5 to 100: give percent in column 9, or leave it blank": newInvented().everyRow(func(h int) string {
			return rowOf(h, fmt.Sprint(9+2*(h%2)), "", fmt.Sprint(3+h%2))
		}),
	} {
		_, err := ReadEPW(strings.NewReader(f.text(nil)), "x.epw")
		if err == nil || !strings.HasPrefix(err.Error(), "x.epw:9: "+want) {
			t.Errorf("got %v", err)
		}
	}
}

func TestEPWProblemsAreCounted(t *testing.T) {
	f := newInvented().everyRow(func(int) string { return "2001;1;1" })
	_, err := ReadEPW(strings.NewReader(f.text(nil)), "x.epw")
	var bad *datafile.Error
	if !errors.As(err, &bad) || len(bad.Problems) != datafile.MaxProblems || bad.More != 8760-datafile.MaxProblems {
		t.Fatalf("got %v", err)
	}
	if !strings.HasSuffix(err.Error(), "\nx.epw: and 8740 more problems") {
		t.Errorf("got %v", err)
	}
}

// A disk that fails is no fault of the file.
func TestEPWReadingStops(t *testing.T) {
	_, err := ReadEPW(iotest.ErrReader(errors.New("disk on fire")), "x.epw")
	var bad *datafile.Error
	if err == nil || errors.As(err, &bad) || err.Error() != "x.epw: reading stopped: disk on fire" {
		t.Errorf("got %v", err)
	}
}

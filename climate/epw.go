package climate

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

// LargestEPW is more than any hourly file of a year has, bytes (one is about
// 1.6 MB): a longer file is some other file, and reading on would only fill the
// memory.
const LargestEPW = 16 << 20

// Limits on what is filled where a file has nothing. A straight line over six
// hours misses the course of an ordinary day by about 1 K at most; longer gaps, or
// very many, need data. Practice, no source.
const (
	longestGapH  = 6
	mostFilledH  = calendar.Hours / 20
	leastSpreadK = 1.0 // between the coldest and warmest hour of a year
)

// ReadEPW reads an hourly weather file in the EPW format: eight header lines, then
// a row for each hour of a year, comma-separated, in local standard time. Taken
// are dry bulb (column 7), dew point (8) and relative humidity (9) at the month,
// day and hour of the row; the year is passed over, as the months of typical years
// come from different ones. Format: EnergyPlus weather file data dictionary.
//
// Blank fields and the codes for missing values (99.9, 99.9 and 999) are filled by
// a straight line over up to six hours; a longer gap of dry bulb is refused.
// Missing humidity follows from the dew point, RH = 100 e(dew)/e(dry); where that
// is missing too, a longer gap gets the mean humidity of its month with a dew
// point that is constant through each day. A file without any humidity gives none.
// Humidity above 100 percent, which the format allows, is taken as 100. The 29
// February is left out. Warnings tell of all that.
//
// file names the input in messages. What is wrong with it comes back at once as a
// *datafile.Error.
func ReadEPW(r io.Reader, file string) (*Outdoor, error) {
	data, err := io.ReadAll(io.LimitReader(r, LargestEPW+1))
	if err != nil {
		return nil, fmt.Errorf("%s: reading stopped: %w", file, err)
	}
	e := newEPW(file)
	if fault := notText(data); fault != "" {
		e.p.Add(1, "%s", fault)
		return nil, e.p.Err()
	}
	lines := strings.Split(string(bytes.TrimPrefix(data, []byte("\ufeff"))), "\n")
	if from, ok := e.header(lines); ok {
		e.rows(lines, from)
		e.finish(len(lines))
	}
	if err := e.p.Err(); err != nil {
		return nil, err
	}
	return &e.out, nil
}

func notText(data []byte) string {
	switch {
	case len(data) > LargestEPW:
		return fmt.Sprintf("the file has more than %d bytes, a year of hours has about a tenth of that: check that this is the right file", LargestEPW)
	case bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")):
		return "the file is UTF-16: save it as plain text"
	case bytes.IndexByte(data, 0) >= 0:
		return "the file holds a zero byte, so it is no text: unpack it, if it is packed"
	case len(bytes.TrimSpace(data)) == 0:
		return "the file is empty: give an hourly weather file in the EPW format"
	default:
		return ""
	}
}

// epw is a file while it is read. Values are NaN where the file has none.
type epw struct {
	p         datafile.Problems
	out       Outdoor
	rh        []float64
	lines     [calendar.Hours]int // line that filled each hour, zero if none
	unplaced  int                 // rows whose hour cannot be read
	leapRows  int
	firstData int // line
	columns   int // fields of the first row that has enough of them
}

func newEPW(file string) *epw {
	return &epw{
		p:   datafile.Problems{File: file},
		out: Outdoor{AirC: missingHours()},
		rh:  missingHours(),
	}
}

func missingHours() []float64 { return slices.Repeat([]float64{math.NaN()}, calendar.Hours) }

func (e *epw) warn(format string, args ...any) {
	e.out.Warnings = append(e.out.Warnings, fmt.Sprintf(format, args...))
}

// finish judges the year as a whole and fills its gaps; lastLine is that of the
// file.
func (e *epw) finish(lastLine int) {
	if e.leapRows > 0 {
		e.warn("29 February is left out, as the simulated year has 365 days")
	}
	e.missingRows(lastLine)
	e.fillAir()
	if !e.p.None() {
		return
	}
	e.judgeAir()
	e.fillHumidity()
}

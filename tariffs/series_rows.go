package tariffs

import (
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strconv"
	"strings"
	"time"

	"dhwcompare/compare/calendar"
	"dhwcompare/compare/datafile"
)

// maxSeriesRows is more than a leap year of quarter hours (35,136): a longer file
// is some other file, and reading on would only fill the memory.
const maxSeriesRows = 40_000

const stampColumn = "start_utc"

// stampLayouts are the accepted forms of a time; both end in Z, for UTC.
var stampLayouts = [...]string{"2006-01-02T15:04Z", "2006-01-02T15:04:05Z"}

// row is one readable line of a series.
type row struct {
	line  int
	atS   int64 // seconds since 1970 of standard time
	value float64
}

// table is a series file, row by row.
type table struct {
	rows     []row
	unplaced []int // lines whose time cannot be read, ascending
	offsetS  int64 // standard time ahead of UTC
	year     int
	stepS    int // zero until the grid is known
}

// columns says where the two columns of interest stand.
type columns struct{ stamp, value, count int }

func readTable(r io.Reader, q quantity, offsetMinutes int, p *datafile.Problems) *table {
	t := &table{offsetS: int64(offsetMinutes) * secondsAMinute}
	c := csv.NewReader(r)
	c.Comment, c.FieldsPerRecord, c.ReuseRecord = '#', -1, true
	header, err := c.Read()
	if err != nil {
		p.Add(1, "the file has no header that can be read (%s): the first line must be %s,%s",
			plainEnd(err), stampColumn, q.column)
		return t
	}
	line, _ := c.FieldPos(0)
	if cols, ok := findColumns(header, q, line, p); ok {
		t.readRows(c, cols, q, p)
	}
	return t
}

func plainEnd(err error) string {
	if errors.Is(err, io.EOF) {
		return "it is empty"
	}
	return err.Error()
}

func findColumns(header []string, q quantity, line int, p *datafile.Problems) (columns, bool) {
	names := make([]string, len(header))
	for i, h := range header {
		names[i] = strings.ToLower(strings.TrimSpace(strings.TrimPrefix(h, "\ufeff")))
	}
	cols := columns{stamp: slices.Index(names, stampColumn), value: slices.Index(names, q.column), count: len(names)}
	if cols.stamp < 0 || cols.value < 0 {
		text := strings.Join(header, ",")
		p.Add(line, "header %q lacks %s or %s: %s", excerpt(text), stampColumn, q.column, headAdvice(text))
		return cols, false
	}
	return cols, true
}

// headAdvice guesses why a header does not hold what it should.
func headAdvice(text string) string {
	switch {
	case strings.HasPrefix(text, "\xff\xfe"), strings.HasPrefix(text, "\xfe\xff"):
		return "the file is UTF-16, save it as CSV in UTF-8"
	case strings.Contains(text, "\x00"):
		return "the file is no text, save the table as CSV in UTF-8"
	case !strings.Contains(text, ",") && strings.ContainsAny(text, ";\t"):
		return "separate columns by commas, and write decimals with a point"
	default:
		return "name both columns, separated by commas"
	}
}

// excerpt keeps a text short enough for a message.
func excerpt(text string) string {
	const longest = 60
	if runes := []rune(text); len(runes) > longest {
		return string(runes[:longest]) + "..."
	}
	return text
}

func (t *table) readRows(c *csv.Reader, cols columns, q quantity, p *datafile.Problems) {
	for {
		record, err := c.Read()
		var bad *csv.ParseError
		switch {
		case errors.Is(err, io.EOF):
			return
		case errors.As(err, &bad):
			p.Add(bad.StartLine, "a quotation mark stands inside a value, or is never closed: remove the quotation marks")
			t.unplaced = append(t.unplaced, bad.StartLine)
			continue
		case err != nil:
			p.Add(1, "reading stopped: %s", err)
			return
		}
		line, _ := c.FieldPos(0)
		if len(t.rows) == maxSeriesRows {
			p.Add(line, "more than %d rows: a year has at most 35,136 quarter hours; keep one year", maxSeriesRows)
			return
		}
		t.readRow(line, record, cols, q, p)
	}
}

func (t *table) readRow(line int, record []string, cols columns, q quantity, p *datafile.Problems) {
	if len(record) != cols.count {
		p.Add(line, "%d fields, the header has %d: separate by commas and write decimals with a point", len(record), cols.count)
		t.unplaced = append(t.unplaced, line)
		return
	}
	at, ok := parseStamp(record[cols.stamp])
	if !ok {
		p.Add(line, "%s %q is not a UTC time: write it like 2026-03-29T00:30Z, with the Z", stampColumn, record[cols.stamp])
		t.unplaced = append(t.unplaced, line)
		return
	}
	t.rows = append(t.rows, row{line: line, atS: at.Unix() + t.offsetS, value: parseValue(line, record[cols.value], q, p)})
}

func parseStamp(text string) (time.Time, bool) {
	text = strings.TrimSpace(text)
	for _, layout := range stampLayouts {
		if at, err := time.Parse(layout, text); err == nil {
			return at, true
		}
	}
	return time.Time{}, false
}

func parseValue(line int, text string, q quantity, p *datafile.Problems) float64 {
	v, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	switch {
	case err != nil || !finite(v):
		p.Add(line, "%s %q is not a number: give a plain decimal number without unit or currency sign", q.column, text)
		return 0
	case v < 0 && !q.negative:
		p.Add(line, "%s %g is below zero: give zero or more", q.column, v)
	}
	return v
}

// utcText writes a standard time as the file would stamp it.
func (t *table) utcText(atS int64) string {
	return time.Unix(atS-t.offsetS, 0).UTC().Format(stampLayouts[0])
}

// yearOf is the calendar year, in standard time, of a row.
func (r row) yearOf() int { return time.Unix(r.atS, 0).UTC().Year() }

// steps are the accepted distances between rows, in seconds.
var steps = [...]int{secondsAQuarter, calendar.HalfHourS, calendar.HourS}

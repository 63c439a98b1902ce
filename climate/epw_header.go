package climate

import (
	"math"
	"strconv"
	"strings"
	"unicode"
)

// headerWords begin the header lines, in order.
var headerWords = [...]string{
	"LOCATION", "DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS", "GROUND TEMPERATURES",
	"HOLIDAYS/DAYLIGHT SAVING", "COMMENTS 1", "COMMENTS 2", "DATA PERIODS",
}

// Columns of header lines, from 0.
const (
	placeColumn   = 1
	countryColumn = 3
	zoneColumn    = 8 // h ahead of UTC
	periodsColumn = 1
	perHourColumn = 2
)

// header reads the lines before the first row, and gives where the rows begin. It
// gives false for a file of another kind, where reading on would list every row.
func (e *epw) header(lines []string) (rows int, ok bool) {
	if !begins(lines[0], headerWords[0]) {
		e.p.Add(1, "begins with %s, an EPW file begins with LOCATION: give an hourly weather file in the EPW format", excerpt(lines[0]))
		return 0, false
	}
	for rows < len(lines) && !beginsWithDigit(lines[rows]) {
		rows++
	}
	e.firstData = rows + 1
	if n := headerLength(lines[:rows]); n != len(headerWords) {
		e.p.Add(1, "the header has %d lines before the first row, an EPW file has %d, from LOCATION to DATA PERIODS: restore the file", n, len(headerWords))
		return rows, true
	}
	for i, word := range headerWords {
		if !begins(lines[i], word) {
			e.p.Add(i+1, "begins with %s, line %d of the header begins with %s: restore the file", excerpt(lines[i]), i+1, word)
		}
	}
	e.location(fields(lines[0]))
	e.periods(fields(lines[len(headerWords)-1]))
	return rows, true
}

// headerLength counts header lines without blank ones at their end.
func headerLength(lines []string) int {
	n := len(lines)
	for n > 0 && strings.TrimSpace(lines[n-1]) == "" {
		n--
	}
	return n
}

func (e *epw) location(f []string) {
	var names []string
	for _, column := range []int{placeColumn, countryColumn} {
		if name := oneLine(at(f, column)); name != "" {
			names = append(names, name)
		}
	}
	e.out.Place = strings.Join(names, ", ")
	text := at(f, zoneColumn)
	if text == "" {
		return
	}
	const least, most, minutes = -12, 14, 60
	hours, err := strconv.ParseFloat(text, 64)
	if err != nil || !(hours >= least && hours <= most) {
		e.p.Add(1, "time zone is %s, allowed %d to %d h ahead of UTC, in column %d: put it right, or leave it blank", excerpt(text), least, most, zoneColumn+1)
		return
	}
	e.out.HasOffset, e.out.UTCOffsetMin = true, int(math.Round(hours*minutes))
}

// periods refuses what is no single run of hours. Averaging several records of an
// hour would be a guess at what they mean (means, or moments).
func (e *epw) periods(f []string) {
	line := len(headerWords)
	if n := at(f, periodsColumn); !isOne(n) {
		e.p.Add(line, "the number of data periods is %s, allowed is 1: give a file of one whole year", excerpt(n))
	}
	if n := at(f, perHourColumn); !isOne(n) {
		e.p.Add(line, "the number of records an hour is %s, allowed is 1: export the file by the hour", excerpt(n))
	}
}

func isOne(text string) bool {
	n, err := strconv.ParseFloat(text, 64)
	return err == nil && n == 1
}

// begins reports whether the first field of a line begins with a word, however it
// is capitalised.
func begins(line, word string) bool {
	first := fields(line)[0]
	return len(first) >= len(word) && strings.EqualFold(first[:len(word)], word)
}

func beginsWithDigit(line string) bool {
	line = strings.TrimSpace(line)
	return line != "" && line[0] >= '0' && line[0] <= '9'
}

// fields parts a line at its commas and trims the parts.
func fields(line string) []string {
	f := strings.Split(line, ",")
	for i := range f {
		f[i] = strings.TrimSpace(f[i])
	}
	return f
}

// at gives a field, empty if the line ends before it.
func at(f []string, column int) string {
	if column >= len(f) {
		return ""
	}
	return f[column]
}

// excerpt quotes a piece of a file for a message.
func excerpt(text string) string {
	if text == "" {
		return "blank"
	}
	return strconv.Quote(shortened(oneLine(text)))
}

// shortened keeps a piece of a file from filling a message.
func shortened(text string) string {
	const longest = 40
	if runes := []rune(text); len(runes) > longest {
		return string(runes[:longest]) + "..."
	}
	return text
}

// oneLine leaves out what does not show as a character of one line. Header lines
// of old files are not always UTF-8.
func oneLine(text string) string {
	text = strings.Map(func(c rune) rune {
		if c == unicode.ReplacementChar || !strconv.IsPrint(c) {
			return -1
		}
		return c
	}, strings.ToValidUTF8(text, ""))
	return shortened(strings.TrimSpace(text))
}

package wording

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Rounded rounds to so many decimals, halves away from zero, as a spreadsheet does.
// It rounds the decimal value of 15 digits, as many as a spreadsheet shows, and not the
// binary number behind it: 2.65 is stored as a little less than 2.65, so that the binary
// number would give 2.6 where the workbook shows 2.7. A mean that the errors of its sum
// have brought a last place beside a tie counts as the tie, in whatever order it was
// added up. What rounds to zero has no sign.
func Rounded(v float64, decimals int) float64 {
	_, exponent, ok := decimal(v)
	if !ok {
		return v
	}
	return keep(v, exponent+1+decimals)
}

// Significant rounds to so many digits, in the same way.
func Significant(v float64, digits int) float64 { return keep(v, digits) }

// trusted is the number of digits that a decimal number keeps in binary for sure.
const trusted = 15

// decimal gives the trusted digits of a number, the first of which counts powers of
// ten by the exponent. Not every number has digits.
func decimal(v float64) (digits string, exponent int, ok bool) {
	text := strconv.FormatFloat(math.Abs(v), 'e', trusted-1, 64)
	mantissa, power, ok := strings.Cut(text, "e")
	if !ok {
		return "", 0, false
	}
	exponent, err := strconv.Atoi(power)
	return strings.Replace(mantissa, ".", "", 1), exponent, err == nil
}

// keep rounds to the first so many of the digits; with none of them, half a unit of
// the last place still rounds up.
func keep(v float64, count int) float64 {
	digits, exponent, ok := decimal(v)
	switch {
	case !ok || count >= trusted:
		return v
	case count < 0:
		return 0
	}
	kept, _ := strconv.ParseInt("0"+digits[:count], 10, 64) // digits only, at most 14
	if digits[count] >= '5' {
		kept++
	}
	short, err := strconv.ParseFloat(fmt.Sprintf("%de%d", kept, exponent+1-count), 64)
	switch {
	case err != nil: // beyond the largest number
		return v
	case v < 0 && short != 0:
		return -short
	}
	return short
}

// Fixed writes a number with so many decimals, rounded as Rounded does.
func Fixed(v float64, decimals int) string {
	return strconv.FormatFloat(Rounded(v, decimals), 'f', decimals, 64)
}

// Sprintf is fmt.Sprintf for what people read: numbers are rounded as Rounded does.
func Sprintf(format string, args ...any) string {
	for i, a := range args {
		if v, is := a.(float64); is {
			args[i] = figure(v)
		}
	}
	return fmt.Sprintf(format, args...)
}

// figure is a number that rounds as Rounded does when it is formatted.
type figure float64

// Format implements fmt.Formatter.
func (v figure) Format(s fmt.State, verb rune) {
	short := float64(v)
	if places, stated := s.Precision(); stated {
		switch verb {
		case 'f', 'F':
			short = Rounded(short, places)
		case 'g', 'G':
			short = Significant(short, max(places, 1))
		case 'e', 'E':
			short = Significant(short, places+1)
		}
	}
	_, _ = fmt.Fprintf(s, fmt.FormatString(s, verb), short) // a failure is the caller's
}

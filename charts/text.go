package charts

import (
	"fmt"
	"math"
	"strings"
	"unicode"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"
)

// date names a day of the year, 1 is 1 January.
func date(day int) string {
	month := calendar.MonthOfDay(day - 1)
	return fmt.Sprintf("%d %s", day-calendar.MonthStartDay(month), calendar.MonthNames()[month])
}

const (
	million     = 1e6
	fromMillion = 1e7  // in millions from here
	fromPowers  = 1e13 // in powers of ten from here

	mostDecimals = 6 // in powers of ten beyond
)

// number writes a figure for people.
func number(v float64, decimals int) string {
	switch a := math.Abs(v); {
	case a >= fromPowers, decimals > mostDecimals:
		return strings.Replace(wording.Sprintf("%.3g", v), "-", wording.Minus, 1)
	case a >= fromMillion:
		return sensible(v/million) + " million"
	}
	return wording.Amount(v, decimals)
}

// signed writes a difference.
func signed(v float64, decimals int) string { return wording.Signed(v, number(v, decimals)) }

// sensible writes a figure with about two digits, for counts that may be small: with
// a decimal only where that says more.
func sensible(v float64) string {
	const larger = 10
	if short := wording.Rounded(v, 1); math.Abs(short) < larger && short != math.Trunc(short) {
		return number(short, 1)
	}
	return number(v, 0)
}

// currency gives the sign in front of an amount.
func currency(cmp *compare.Comparison) string {
	if sign, known := wording.CurrencySign(cmp.Currency); known {
		return sign
	}
	return plain(cmp.Currency) + " "
}

// money writes an amount, its sign before the currency.
func money(cmp *compare.Comparison, v float64) string {
	text := number(v, 0)
	if bare, negative := strings.CutPrefix(text, wording.Minus); negative {
		return wording.Minus + currency(cmp) + bare
	}
	return currency(cmp) + text
}

// plain makes text of unknown origin fit for a picture: one line, with nothing
// that is not seen.
func plain(s string) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r), unicode.Is(unicode.Cf, r), r >= 0xFFFE && r&0xFFFE == 0xFFFE:
			return -1
		}
		return r
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// meanYears says what the figures are means of.
func meanYears(cmp *compare.Comparison) string {
	if cmp.Years == 1 {
		return "one simulated year"
	}
	return fmt.Sprintf("mean of %d simulated years", cmp.Years)
}

// joined joins two texts, either of which may be missing.
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " · " + b
}

// times writes how often something happens.
func times(n int) string {
	switch n {
	case 0:
		return "not at all"
	case 1:
		return "once"
	case 2:
		return "twice"
	}
	return fmt.Sprintf("%d times", n)
}

func capital(s string) string { return wording.Capital(s) }

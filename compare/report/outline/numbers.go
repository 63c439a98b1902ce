package outline

import (
	"math"
	"strconv"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// amount writes a figure for people.
func amount(v float64, decimals int) string { return wording.Amount(v, decimals) }

// change writes a difference with its sign, and none for what rounds to zero.
func change(v float64, decimals int) string { return wording.Signed(v, amount(v, decimals)) }

// between writes an interval.
func between(low, high float64, write func(float64, int) string, decimals int) string {
	return write(low, decimals) + " to " + write(high, decimals)
}

// few writes a count that may be small.
func few(v float64) string {
	const larger = 10
	if v != math.Trunc(v) && wording.Rounded(v, 1) < larger {
		return amount(v, 1)
	}
	return amount(v, 0)
}

// plainNumber writes a number as somebody stated it, with six digits at most.
func plainNumber(v float64) string {
	const digits, most = 6, 1e9
	text := wording.Sprintf("%.*g", digits, v)
	if short, err := strconv.ParseFloat(text, 64); err == nil && math.Abs(v) < most {
		text = strconv.FormatFloat(short, 'f', -1, 64)
	}
	return strings.Replace(text, "-", wording.Minus, 1)
}

func percentOf(share float64) string { return amount(share*100, 0) + " %" }

// sign is what stands before an amount of money.
func sign(currency string) string {
	if sign, known := wording.CurrencySign(currency); known {
		return sign
	}
	return currency + " "
}

// writer writes figures in the currency of a comparison.
type writer struct{ sign string }

func moneyOf(cmp *compare.Comparison) writer { return writer{sign(cmp.Currency)} }

func (w writer) amount(v float64, decimals int) string {
	text := amount(v, decimals)
	if rest, negative := strings.CutPrefix(text, wording.Minus); negative {
		return wording.Minus + w.sign + rest
	}
	return w.sign + text
}

func (w writer) change(v float64, decimals int) string {
	return wording.Signed(v, w.amount(v, decimals))
}

// whole writes an amount without its hundredths.
func (w writer) whole(v float64) string { return w.amount(v, 0) }

// counted names a number of things, which are not named again where one is empty.
func counted(n float64, one, many string) string {
	switch {
	case n == 0 && one == "":
		return "none"
	case n == 0:
		return "no " + one
	case n < 0.5:
		return strings.TrimSpace("less than one " + one)
	case n < 1.5:
		return strings.TrimSpace("about one " + one)
	default:
		return strings.TrimSpace("about " + amount(n, 0) + " " + many)
	}
}

// minutesUpTo writes minutes, and says so where a test ended before the shower did.
func minutesUpTo(minutes, longest float64) string {
	if minutes >= longest {
		return amount(longest, 0) + "+"
	}
	return amount(minutes, 0)
}

package casefile

import (
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// number reads a number in the range of its key.
func (r *reader) number(p place) (float64, bool) {
	if !r.scalar(p) {
		return 0, false
	}
	text := p.node.Value
	if quoted(p.node) {
		return 0, r.refuse(p, "write it without the quotes")
	}
	if fault := decimalFault(text); fault != "" {
		return 0, r.refuse(p, fault)
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return 0, r.refuse(p, "give a finite number")
	}
	if !p.key.holds(x) {
		return 0, r.outOfRange(p, x)
	}
	return x + 0, true // minus zero becomes zero
}

// whole reads a whole number.
func (r *reader) whole(p place) (float64, bool) {
	x, ok := r.number(p)
	if ok && x != math.Trunc(x) {
		return 0, r.refuse(p, "give a whole number")
	}
	return x, ok
}

// decimalFault says why a text is no plain decimal number; empty if it is one.
// Other ways of writing a number are refused because programs differ on what
// they mean: 010 is ten to a person and eight to many readers.
func decimalFault(text string) string {
	lower := strings.ToLower(strings.TrimLeft(text, "+-"))
	switch {
	case isDecimal(lower):
		return ""
	case isNotFinite(lower):
		return "give a finite number"
	case isDecimal(strings.Replace(lower, ",", ".", 1)), isDecimal(withoutSeparators(lower)):
		return "write decimals after a point, and thousands without any sign between them"
	case startsWithNumber(lower) && !isCoded(lower):
		return "give the number alone, the unit is in the name of the key"
	case isCoded(lower), isDecimal(strings.TrimLeft(lower, "0")):
		return "write it in decimal digits without leading zeros"
	case strings.ContainsFunc(text, isForeignNumeral):
		return "write it with the digits 0 to 9 and the sign -"
	default:
		return notANumber
	}
}

const notANumber = "give a number in digits"

// isForeignNumeral reports digits of other alphabets and of full width, and the
// signs of print, which a number may have been copied with.
func isForeignNumeral(c rune) bool {
	return c >= utf8.RuneSelf && (unicode.IsDigit(c) || strings.ContainsRune("\u2010\u2011\u2012\u2013\u2212\uff0d\uff0b\uff0e", c))
}

// isDecimal reports digits with at most one point and an exponent, and no zero in
// front of other digits.
func isDecimal(text string) bool {
	mantissa, exponent, hasExponent := strings.Cut(text, "e")
	whole, decimals, _ := strings.Cut(mantissa, ".")
	if hasExponent && !isDigits(strings.TrimPrefix(strings.TrimPrefix(exponent, "-"), "+")) {
		return false
	}
	if len(whole) > 1 && whole[0] == '0' {
		return false
	}
	digits := whole + decimals
	return isDigits(digits)
}

func isDigits(text string) bool {
	for _, c := range []byte(text) {
		if c < '0' || c > '9' {
			return false
		}
	}
	return text != ""
}

func isNotFinite(lower string) bool {
	switch strings.TrimPrefix(lower, ".") {
	case "nan", "inf", "infinity":
		return true
	default:
		return false
	}
}

// isCoded reports a number in another base than ten.
func isCoded(lower string) bool {
	return strings.HasPrefix(lower, "0x") || strings.HasPrefix(lower, "0o") || strings.HasPrefix(lower, "0b")
}

// startsWithNumber reports a number with a unit behind it, such as 45 C or 30%,
// but no date and no time.
func startsWithNumber(text string) bool {
	end := strings.IndexFunc(text, func(c rune) bool { return (c < '0' || c > '9') && c != '.' })
	return end > 0 && isDecimal(text[:end]) && !strings.ContainsAny(text[end:], "-:/")
}

func withoutSeparators(text string) string {
	return strings.NewReplacer(",", "", "_", "").Replace(text)
}

package outline

import (
	"fmt"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/calendar"
	"dhwcompare/compare/wording"
)

// monthName names a month counted from 1.
func monthName(month int) string {
	if month < 1 || month > calendar.MonthsInAYear {
		return fmt.Sprint(month)
	}
	return calendar.MonthNames()[month-1]
}

func capital(s string) string { return wording.Capital(s) }

// joined joins words.
func joined(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}

func dayCount(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

func yesNo(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}

// bothSides lists the options in the order in which they always appear.
func bothSides() [2]compare.Side { return [...]compare.Side{compare.SideCompact, compare.SideCylinder} }

// whether gives the one or the other.
func whether(b bool, yes, no string) string {
	if b {
		return yes
	}
	return no
}

// heats reports whether the heat pump heats the house besides.
func heats(doc *compare.Document) bool { return doc.Case.Dwelling.HeatLossWPerK > 0 }

// noDifference stands for a difference that the years do not tell from none, or
// that does not matter.
const noDifference = "no real difference"

// notJudged stands for a difference in cost that would mislead.
const notJudged = "not judged"

// figureNamed finds a figure by its name, which must exist.
func figureNamed(name string) compare.Figure {
	for _, f := range compare.Figures() {
		if f.Name == name {
			return f
		}
	}
	return compare.Figure{Name: name, Label: name, Of: func(*compare.Totals) *float64 { return new(float64) }}
}

// tells reports whether the years tell a difference from none.
func tells(s compare.DifferenceSpread) bool { return s.CILow > 0 || s.CIHigh < 0 }

// immaterial reports whether the whole interval lies in the band that does not
// matter.
func immaterial(s compare.DifferenceSpread, band float64) bool {
	return s.CILow >= -band && s.CIHigh <= band
}

// residual is only of interest by its size.
func residual(v float64) string { return wording.Sprintf("%.0e", v) }

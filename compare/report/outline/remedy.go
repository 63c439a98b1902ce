package outline

import (
	"fmt"
	"math"
	"strings"

	"dhwcompare/compare"
)

// unless says what it would take for an option that runs cold to serve; nothing before
// anybody has looked.
func unless(o *compare.Option) string {
	switch e := o.Remedy(); {
	case e != nil:
		return " unless " + remedy(o, e)
	case o.Hopeless():
		return ", however hot it may be kept"
	default:
		return ""
	}
}

// remedy is a setting in words.
func remedy(o *compare.Option, e *compare.EqualService) string {
	kept, limited := "", ""
	if hotter, now := amount(e.SetpointC, 0), amount(o.SetpointC, 0); hotter != now {
		kept = fmt.Sprintf("it is kept at %s °C instead of %s °C", hotter, now)
	}
	if e.ShowerLimit > 0 {
		limited = fmt.Sprintf("its showers are held to %s litres a minute", few(e.ShowerLimit))
	}
	switch {
	case kept == "" && limited == "":
		return fmt.Sprintf("it is kept at %s °C all year", amount(e.SetpointC, 0))
	case kept != "" && limited != "":
		return kept + " and " + limited
	default:
		return kept + limited
	}
}

// soSet says the same beside the option's name.
func soSet(o *compare.Option, e *compare.EqualService) string {
	var list []string
	if e.ShowerLimit == 0 || amount(e.SetpointC, 0) != amount(o.SetpointC, 0) {
		list = append(list, fmt.Sprintf("kept at %s °C", amount(e.SetpointC, 0)))
	}
	if e.ShowerLimit > 0 {
		list = append(list, fmt.Sprintf("with its showers held to %s litres a minute", few(e.ShowerLimit)))
	}
	return strings.Join(list, " and ")
}

// remedied finds the option that runs cold but need not, where the other one serves.
func remedied(doc *compare.Document) (o, other *compare.Option, e *compare.EqualService) {
	for _, side := range bothSides() {
		o, other = doc.Comparison.Options.Of(side), doc.Comparison.Options.Of(1-side)
		if e = o.Remedy(); e != nil && served(other) {
			return o, other, e
		}
	}
	return nil, nil, nil
}

// thenCosts ends a sentence on costs with what the option would cost that is set so
// that it serves.
func thenCosts(doc *compare.Document) string {
	o, other, e := remedied(doc)
	if e == nil {
		return ""
	}
	return fmt.Sprintf("; %s, the %s would cost %s the %s", soSet(o, e), o.Name, gapWords(doc, e.Remedied.AboveOther), other.Name)
}

// gapWords says how much more or less a year something costs, up to what it is held
// against.
func gapWords(doc *compare.Document, gap float64) string {
	money := moneyOf(doc.Comparison)
	switch {
	case math.Abs(gap) <= doc.Case.Money.MaterialityPerYear:
		return "about as much a year as"
	case gap > 0:
		return fmt.Sprintf("about %s a year more than", money.whole(gap))
	default:
		return fmt.Sprintf("about %s a year less than", money.whole(-gap))
	}
}

// allInRemedied adds to the costs over the years what such an option comes to.
func allInRemedied(doc *compare.Document) string {
	o, other, e := remedied(doc)
	if e == nil {
		return ""
	}
	return fmt.Sprintf(" %s, the %s comes to about %s, %s the %s.", capital(soSet(o, e)), o.Name,
		moneyOf(doc.Comparison).whole(e.Remedied.EquivalentAnnualCost), gapWords(doc, e.Remedied.AllInAboveOther()), other.Name)
}

package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// riskWords puts each figure of the risk into one sentence, for somebody who is to
// live with it.
func riskWords(doc *compare.Document) []Block {
	words := []string{coldShowers(doc)}
	for _, sentence := range []string{
		coldBaths(doc), coldMinutes(doc), coldYears(doc), badDays(doc), worstDay(doc), longestSpell(doc),
		whoRunsCold(doc), whenItRunsCold(doc), waitsAtTheShower(doc), hardWeather(doc), whatItTakes(doc),
	} {
		if sentence != "" {
			words = append(words, sentence)
		}
	}
	return []Block{lead("In plain words.", ""), listed(words...)}
}

// each says something of both options, once if it is the same.
func each(doc *compare.Document, of func(o *compare.Option) string) string {
	a, b := of(&doc.Comparison.Options.Compact), of(&doc.Comparison.Options.Cylinder)
	if a == b {
		return a + " with either"
	}
	return a + " with the compact store and " + b + " with the cylinder"
}

func coldBaths(doc *compare.Document) string {
	baths := doc.Comparison.Options.Compact.Baths
	if baths == 0 {
		return ""
	}
	return fmt.Sprintf("Too cold or too slow would be %s.",
		each(doc, func(o *compare.Option) string {
			return counted(o.FailingBaths, "", "") + " of " + amount(baths, 0) + " baths a year"
		}))
}

func coldMinutes(doc *compare.Document) string {
	return fmt.Sprintf("People would stand under a shower that is too cold for %s.",
		each(doc, func(o *compare.Option) string { return counted(o.TooColdMinutes, "minute", "minutes") + " a year" }))
}

// coldYears says how many of the years go far beyond what anybody expects.
func coldYears(doc *compare.Document) string {
	const many = 5
	years := func(o *compare.Option) string {
		for _, chance := range o.Risk.Chances {
			if chance.MoreThan == many {
				n := chance.Share * float64(doc.Comparison.Years)
				return fmt.Sprintf("in %s of %s", orNone(n > 0, amount(n, 0)), calculated(doc.Comparison.Years))
			}
		}
		return ""
	}
	if years(&doc.Comparison.Options.Compact) == "" {
		return ""
	}
	return fmt.Sprintf("More than %d showers turned cold %s.", many, each(doc, years))
}

func badDays(doc *compare.Document) string {
	return fmt.Sprintf("A shower runs cold on %s.",
		each(doc, func(o *compare.Option) string { return counted(o.Risk.BadDays.Mean, "day", "days") + " a year" }))
}

func worstDay(doc *compare.Document) string {
	return fmt.Sprintf("The worst day of a year has %s.",
		each(doc, func(o *compare.Option) string { return counted(o.Risk.WorstDay.Mean, "cold shower", "cold showers") }))
}

func longestSpell(doc *compare.Document) string {
	return fmt.Sprintf("The longest run of days with a cold shower lasts %s.",
		each(doc, func(o *compare.Option) string { return counted(o.Risk.LongestSpell.Mean, "day", "days") }))
}

// whoRunsCold says how many of the cold showers come right after another.
func whoRunsCold(doc *compare.Document) string {
	return fmt.Sprintf("Somebody who showers right after another meets %s.", each(doc, func(o *compare.Option) string {
		all, queued := 0.0, 0.0
		for _, q := range o.Risk.ByQueue {
			all += q.Failing
			if q.Position > 0 {
				queued += q.Failing
			}
		}
		if all == 0 {
			return "no cold shower"
		}
		return percentOf(queued/all) + " of the cold showers"
	}))
}

// whenItRunsCold names the hour in which most showers run cold.
func whenItRunsCold(doc *compare.Document) string {
	return fmt.Sprintf("Cold showers come most often %s.", each(doc, func(o *compare.Option) string {
		worst := 0
		for h, n := range o.Risk.ByHour {
			if n > o.Risk.ByHour[worst] {
				worst = h
			}
		}
		return whether(o.Risk.ByHour[worst] > 0, fmt.Sprintf("between %02d:00 and %02d:00", worst, worst+1), "at no time")
	}))
}

// waitsAtTheShower speaks of the first outlet, which is a shower.
func waitsAtTheShower(doc *compare.Document) string {
	a, b := doc.Comparison.Options.Compact.Risk.Waits, doc.Comparison.Options.Cylinder.Risk.Waits
	if len(a) == 0 || len(b) == 0 {
		return ""
	}
	return fmt.Sprintf("Warm water reaches the %s in %s.", a[0].Outlet, each(doc, func(o *compare.Option) string {
		w := &o.Risk.Waits[0]
		return fmt.Sprintf("%s seconds half of the time and in %s seconds nineteen times in twenty", amount(w.MedianS, 0), amount(w.P95S, 0))
	}))
}

// hardWeather is about the first spell.
func hardWeather(doc *compare.Document) string {
	if len(doc.Comparison.Spells) == 0 {
		return ""
	}
	s := &doc.Comparison.Spells[0]
	failing := map[string]float64{doc.Comparison.Options.Compact.Name: s.Compact.FailingShowers, doc.Comparison.Options.Cylinder.Name: s.Cylinder.FailingShowers}
	return fmt.Sprintf("In %d days at %s °C outside, cold showers would be %s.", s.Days, amount(s.OutdoorC, 0),
		each(doc, func(o *compare.Option) string {
			return counted(failing[o.Name], "", "") + " of " + amount(s.Compact.Showers, 0)
		}))
}

// whatItTakes says what it costs to keep the rule; nothing before that has been
// looked for.
func whatItTakes(doc *compare.Document) string {
	money, looked := moneyOf(doc.Comparison), false
	words := each(doc, func(o *compare.Option) string {
		e := &o.EqualService
		looked = looked || e.Trial != nil || e.Note != ""
		if e.Trial == nil {
			return "more than any setting gives"
		}
		limit := ""
		if e.ShowerLimit > 0 {
			limit = fmt.Sprintf(" and a limit of %s litres a minute", amount(e.ShowerLimit, 0))
		}
		return fmt.Sprintf("%s °C%s, and %s of electricity a year,", amount(e.SetpointC, 0), limit, money.whole(e.Trial.Cost))
	})
	if !looked {
		return ""
	}
	return fmt.Sprintf("To keep to %s cold showers a year takes %s.", few(doc.Case.Service.FailuresPerYear), words)
}

package outline

import (
	"fmt"
	"math"

	"dhwcompare/compare"
)

const january, july = 0, 6

// notice lists what the customer would notice in daily life.
func notice(doc *compare.Document) []Paragraph {
	list := []Paragraph{{"Cold showers.", coldShowers(doc)}}
	if doc.Draws != nil {
		list = append(list, Paragraph{"Two showers in a row.", nextInLine(doc)})
		if doc.Case.Household.HasBath {
			list = append(list, Paragraph{"A bath in January.", bathInJanuary(doc)})
		}
		list = append(list, Paragraph{"Heating up again.", waiting(doc)})
	}
	a, b := &doc.Comparison.Options.Compact, &doc.Comparison.Options.Cylinder
	list = append(list, Paragraph{"The heat pump outside.", fmt.Sprintf("It turns to making hot water %s for the compact store (%s at a time) and %s for the cylinder (%s).",
		timesADay(runsADay(a)), runText(a), timesADay(runsADay(b)), runText(b))})
	return append(list, warmRooms(doc)...)
}

func runText(o *compare.Option) string { return amount(o.MinutesPerRun, 0) + " minutes" }

// coldShowers says how many showers turn too cold, and how that varies.
func coldShowers(doc *compare.Document) string {
	o := &doc.Comparison.Options
	words := func(option *compare.Option) string {
		s, said := option.Spread["failing_showers_per_year"], counted(option.FailingShowers, "", "")
		if doc.Comparison.Years < compare.LeastYearsForInterval {
			return said
		}
		if low, high := amount(s.P05, 0), amount(s.P95, 0); low != high {
			return fmt.Sprintf("%s (%s to %s)", said, low, high)
		}
		return said
	}
	return fmt.Sprintf("Of %s showers a year, %s would turn too cold with the compact store and %s with the cylinder: below %s °C for more than %s seconds.",
		amount(o.Compact.Showers, 0), words(&o.Compact), words(&o.Cylinder), plainNumber(o.Compact.ShowerTime.LeastC), amount(doc.Case.Service.ColdSeconds, 0))
}

// nextInLine is about a shower straight after another in January.
func nextInLine(doc *compare.Document) string {
	d := doc.Draws
	a, b := d.Compact.BackToBack[january], d.Cylinder.BackToBack[january]
	start := fmt.Sprintf("In January, with %s minutes between two ordinary showers, the second", amount(d.PauseMin, 0))
	switch {
	case a.Serves && b.Serves:
		return start + " stays warm to its end with both."
	case b.Serves:
		return start + " stays warm with the cylinder; with the compact store " + pause(a)
	case a.Serves:
		return start + " stays warm with the compact store; with the cylinder " + pause(b)
	default:
		return fmt.Sprintf("%s does not stay warm. With the compact store %s With the cylinder %s", start, pause(a), pause(b))
	}
}

// pause says how long the second person would have to wait.
func pause(s compare.SecondShower) string {
	if s.ShortestPauseMin < 0 {
		return "not even an hour's wait would do."
	}
	return fmt.Sprintf("the second person should wait %s minutes.", amount(s.ShortestPauseMin, 0))
}

func bathInJanuary(doc *compare.Document) string {
	words := func(side compare.Side) string {
		b := doc.Draws.Of(side).Bath[january]
		if b.Serves {
			return fmt.Sprintf("takes %s minutes to fill with the %v", amount(b.Minutes, 0), side)
		}
		return fmt.Sprintf("ends up at %s °C with the %v, which is not warm enough", amount(b.MeanC, 0), side)
	}
	if a, b := doc.Draws.Compact.Bath[january], doc.Draws.Cylinder.Bath[january]; a.Serves && b.Serves && amount(a.Minutes, 0) == amount(b.Minutes, 0) {
		return fmt.Sprintf("It takes %s minutes to fill with either.", amount(a.Minutes, 0))
	}
	return fmt.Sprintf("It %s and %s.", words(compare.SideCompact), words(compare.SideCylinder))
}

// waiting says when the tank is as hot again as before.
func waiting(doc *compare.Document) string {
	return fmt.Sprintf("After one ordinary shower in January %s, and %s. A tank that has gone quite cold takes %s to heat up (compact store) or %s (cylinder).",
		ready(doc, compare.SideCompact), ready(doc, compare.SideCylinder),
		longTime(doc.Draws.Compact.FromColdMin[january]), longTime(doc.Draws.Cylinder.FromColdMin[january]))
}

// longTime writes minutes that may be hours, by the half hour then.
func longTime(minutes float64) string {
	const halfHour, mostMinutes = 30, 100
	if minutes < mostMinutes {
		return amount(minutes, 0) + " minutes"
	}
	halves := math.Round(minutes / halfHour)
	if halves == math.Trunc(halves/2)*2 {
		return "about " + amount(halves/2, 0) + " hours"
	}
	return "about " + amount(halves/2, 1) + " hours"
}

func ready(doc *compare.Document, side compare.Side) string {
	if minutes := doc.Draws.Of(side).RechargeMin[january]; minutes >= 1 {
		return fmt.Sprintf("the %v is fully hot again in %s minutes", side, amount(minutes, 0))
	}
	return fmt.Sprintf("the %v needs no reheating", side)
}

// warmRooms says what the rooms feel in the hardest weather that was looked at.
func warmRooms(doc *compare.Document) []Paragraph {
	if len(doc.Comparison.Spells) == 0 || !heats(doc) {
		return nil
	}
	s := &doc.Comparison.Spells[0]
	weather := fmt.Sprintf("In %s at %s °C outside", dayCount(s.Days), amount(s.OutdoorC, 0))
	fall := fmt.Sprintf("by %s °C at most with the compact store and %s °C with the cylinder", amount(s.Compact.WorstDipK, 1), amount(s.Cylinder.WorstDipK, 1))
	if s.HeatShort(compare.SideCompact) || s.HeatShort(compare.SideCylinder) {
		return []Paragraph{{"Warm rooms.", fmt.Sprintf("%s the heat pump alone does not keep the house warm: rooms cooled %s. Have its size checked, or plan other heat for such days.", weather, fall)}}
	}
	return []Paragraph{{"Warm rooms.", fmt.Sprintf("While the heat pump makes hot water it does not heat the rooms. %s, that cooled them %s.", weather, fall)}}
}

package workbook

import "dhwcompare/compare"

// trialCols is the number of columns that a trial takes.
const trialCols = 9

// trialRef is a trial as it stands on a sheet.
type trialRef struct{ failing, meets, cost, electricity, runs term }

func (b *book) trialTops() []string {
	return []string{"Years lived through", "Failing showers a year", "Standard error", "Service rule met?", "Cost a year, " + b.currency(),
		"Electricity, kWh a year", "Of which hot water, kWh", "Runs for hot water a day", "Heat left unmet"}
}

// trial writes what an option does with something changed. Whether it keeps the
// service rule is a formula over the judgements of the sheet Assumptions; about is
// what the check of that formula says.
func (s *sheet) trial(p place, t *compare.Trial, about string) trialRef {
	at := func(i int, format string, v float64) term { return s.number(p.right(i), style{simulated, format}, v) }
	years := at(0, formatWhole, float64(t.Years))
	failing := at(1, formatTwo, t.Failing.Mean)
	se := at(2, formatTwo, t.Failing.SE)
	upper := s.book.upperFailures(failing, se, years)
	allowed := s.book.inputs.failures
	meets := s.live(p.right(3), style{look: outcome}, yesOrNo(compared(upper, "<=", allowed, upper.num() <= allowed.num())))
	s.book.expect(about+": service rule met", meets, programWord(t.Meets))
	out := trialRef{failing: failing, meets: meets}
	out.cost = at(4, formatTwo, t.Cost)
	out.electricity = at(5, formatWhole, t.KWh)
	at(6, formatWhole, t.HotWater)
	out.runs = at(7, formatOne, t.RunsADay)
	at(8, "0.00 %", t.UnmetShare)
	return out
}

// upperFailures is the upper end of the one-sided interval of failing showers, at
// the confidence of the service rule.
func (b *book) upperFailures(mean, se, years term) term {
	outside := minus(one(), quotient(b.inputs.confidence, b.inputs.percent))
	// Both tails together hold twice what lies above the upper end.
	quantile := studentTails(plus(outside, outside), b.inputs.confidence.num()/b.inputs.percent.num(), years)
	return plus(mean, times(se, quantile))
}

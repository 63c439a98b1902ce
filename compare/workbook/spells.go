package workbook

import (
	"dhwcompare/compare"
)

// spellRef is what the Summary shows of one stretch of weather.
type spellRef struct {
	words   string
	failing [2]term
}

// writeSpells shows what hard weather does to both options.
func (b *book) writeSpells() {
	s := b.sheet(spellsName)
	s.head("Cold spell: hard weather that both options live through", "Synthetic years are too mild to rest a verdict on. Italic figures are simulated, mean of the samples unless said otherwise; the rest are formulas.")
	s.widths(56, 10, 15, 15, 15)
	at := place{1, 4}
	for i := range b.comparison().Spells {
		at = s.spell(&b.comparison().Spells[i], at)
	}
	s.text(at, sentence, "\"none\": house and hot water did not get back within two days of any sample.")
	s.lay(page{portrait: true, onePage: true, last: place{5, at.row}})
}

// spell writes one stretch of weather and gives the place of the next.
func (s *sheet) spell(w *compare.Spell, at place) place {
	s.text(at, heading, capital(w.Name))
	conditions := map[string]term{}
	p := at
	for _, c := range []struct {
		words, unit, format string
		value               float64
	}{
		{"Days", "d", formatWhole, float64(w.Days)}, {"Outdoor air, mean", "°C", formatOne, w.OutdoorC}, {"Mains water", "°C", formatOne, w.MainsC},
		{"Humidity", "%", formatWhole, w.RHPercent}, {"Samples, each with other draw-offs", "", formatWhole, float64(w.Samples)},
	} {
		p = p.down(1)
		s.text(p, label, c.words)
		s.text(p.right(1), unit, c.unit)
		conditions[c.words] = s.number(p.right(2), style{simulated, c.format}, c.value)
	}
	p = p.down(1)
	s.bothTops(p, "Result")
	return s.spellResults(w, p.down(1), conditions["Days"], conditions["Samples, each with other draw-offs"])
}

// spellResults writes the results of one stretch of weather.
func (s *sheet) spellResults(w *compare.Spell, p place, days, samples term) place {
	both := func(words, unit, format string, of func(*compare.SpellResult) float64) [3]term {
		defer func() { p = p.down(1) }()
		return s.both(p, bothLine{words: words, unit: unit, format: format, of: [2]float64{of(&w.Compact), of(&w.Cylinder)}, negativeIsNone: true})
	}
	live := func(words, unit, format string, of func(side int) term) {
		s.bothLive(p, words, unit, format, of)
		p = p.down(1)
	}
	showers := both("Showers", "", formatOne, func(r *compare.SpellResult) float64 { return r.Showers })
	failing := both("Showers that fail", "", formatOne, func(r *compare.SpellResult) float64 { return r.FailingShowers })
	s.book.spells = append(s.book.spells, spellRef{words: "Failing showers, " + w.Name, failing: [2]term{failing[0], failing[1]}})
	live("Share of showers that fail", "", formatShare, func(side int) term { return ratio(failing[side], showers[side]) })
	both("Heat wanted but not delivered", "kWh", formatOne, func(r *compare.SpellResult) float64 { return r.UnmetKWh })
	both("Defrosts, in all runs", "", formatOne, func(r *compare.SpellResult) float64 { return r.Defrosts })
	waits := both("Heating kept waiting by hot water", "h", formatOne, func(r *compare.SpellResult) float64 { return r.InterruptedHours })
	live("The same, each day", "h", formatTwo, func(side int) term { return quotient(waits[side], days) })
	both("Longest wait of heating, of all samples", "min", formatWhole, func(r *compare.SpellResult) float64 { return r.LongestGapMin })
	both("Largest fall of the room temperature, of all samples", "K", formatTwo, func(r *compare.SpellResult) float64 { return r.WorstDipK })
	electricity := both("Electricity of the whole house", "kWh", formatOne, func(r *compare.SpellResult) float64 { return r.WholeHouseKWh })
	live("The same, each day", "kWh", formatOne, func(side int) term { return quotient(electricity[side], days) })
	both("Until house and hot water are back", "min", formatWhole, func(r *compare.SpellResult) float64 { return r.CatchUpMin })
	behind := both("Samples in which the house fell behind", "", formatWhole, func(r *compare.SpellResult) float64 { return float64(r.FellBehind) })
	live("Share of samples in which the house fell behind", "", formatPercent, func(side int) term { return quotient(behind[side], samples) })
	return p.down(1)
}

package charts

import (
	"fmt"
	"math"
	"strings"

	"dhwcompare/compare"
)

// stairs lead from the cylinder's electricity to the compact store's: a bar for
// each effect, which begins where the one before it ended.
type stairs struct {
	compact, cylinder float64 // kWh a year
	steps             []stair
}

// stair is one effect.
type stair struct {
	label string
	kWh   float64 // the compact store's part less the cylinder's
}

// whyChart divides the difference in electricity by what makes it.
func whyChart(cmp *compare.Comparison) Chart {
	s := stairs{compact: cmp.Options.Compact.WholeHouseKWh, cylinder: cmp.Options.Cylinder.WholeHouseKWh}
	s.take(cmp.ByCause.Parts)
	return Chart{
		Name:     "why-they-differ",
		Title:    whyTitle(cmp, &s),
		Alt:      s.inWords(),
		subtitle: whySubtitle(cmp),
		caption:  whyCaption(cmp),
		room:     s.room(),
		body:     s.draw,
	}
}

// restName is the part of the division that belongs to no effect.
const restName = "interaction"

// take keeps the effects that show, and puts those that round to nothing together.
func (s *stairs) take(parts []compare.CauseOfDifference) {
	small := stair{label: "smaller effects"}
	var rest []stair
	for _, p := range parts {
		step := stair{plain(p.Label), p.KWh}
		switch {
		case p.Name == restName:
			rest = append(rest, step)
		case signed(p.KWh, 0) == "0":
			small.kWh += p.KWh
		default:
			s.steps = append(s.steps, step)
		}
	}
	if small.kWh != 0 {
		s.steps = append(s.steps, small)
	}
	s.steps = append(s.steps, rest...)
}

func (s *stairs) difference() float64 { return s.compact - s.cylinder }

// whyTitle names the effect that weighs most in the direction of the difference.
func whyTitle(cmp *compare.Comparison, s *stairs) string {
	gap := s.difference()
	text := ""
	switch find(differenceOf(cmp, "whole_house_electricity_kwh", gap), max(s.compact, s.cylinder)) {
	case same:
		return "No real difference in electricity: what adds to it and what saves it balance"
	case unsettled:
		return "The simulated years do not settle which option uses more electricity"
	case more:
		text = fmt.Sprintf("The compact store uses %s kWh more electricity a year", number(math.Abs(gap), 0))
	case less:
		text = fmt.Sprintf("The compact store uses %s kWh less electricity a year", number(math.Abs(gap), 0))
	}
	if p := weightiest(cmp.ByCause.Parts, gap); p != nil && p.Name != restName {
		return fmt.Sprintf("%s; the largest part: %s (%s)", text, plain(p.Label), signed(p.KWh, 0))
	}
	return text
}

// weightiest is the largest part that has the sign of the difference.
func weightiest(parts []compare.CauseOfDifference, gap float64) *compare.CauseOfDifference {
	var best *compare.CauseOfDifference
	for i := range parts {
		p := &parts[i]
		if p.KWh*math.Copysign(1, gap) > 0 && (best == nil || math.Abs(p.KWh) > math.Abs(best.KWh)) {
			best = p
		}
	}
	return best
}

func whySubtitle(cmp *compare.Comparison) string {
	what := "Electricity for hot water"
	if cmp.Options.Compact.HeatingHeatKWh+cmp.Options.Cylinder.HeatingHeatKWh > 0 {
		what = "Electricity for hot water and heating"
	}
	return what + ", from the cylinder's to the compact store's. Each bar is what one effect adds or takes off when it is taken out of both options, and begins where the one above it ended."
}

// whyCaption says what years the total and its division are of.
func whyCaption(cmp *compare.Comparison) string {
	text := meanYears(cmp)
	if n := cmp.ByCause.Years; n > 0 && n < cmp.Years {
		years := "one of them"
		if n > 1 {
			years = fmt.Sprintf("%d of them", n)
		}
		text += ", divided as in " + years
	}
	return text
}

func (s *stairs) inWords() string {
	list := make([]string, len(s.steps))
	for i, step := range s.steps {
		list[i] = fmt.Sprintf("%s %s", step.label, signed(step.kWh, 0))
	}
	return fmt.Sprintf("Bars one after the other, kWh of electricity a year. Cylinder %s; %s; compact store %s, which is %s.",
		number(s.cylinder, 0), strings.Join(list, "; "), number(s.compact, 0), signed(s.difference(), 0))
}

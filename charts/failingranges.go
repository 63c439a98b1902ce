package charts

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
)

// failingRanges is the picture of how far each input moves the failing showers of
// both options, the widest first.
type failingRanges struct {
	base   compare.SensitivityPoint
	inputs []compare.SensitivityInput // those that move any
	allows float64                    // failing showers a year that the service rule lets pass; negative: not stated
}

func failingRangesChart(s *compare.Sensitivity, allows float64) Chart {
	f := failingRanges{base: s.Base, allows: allows}
	for _, in := range s.Inputs {
		if f.moved(&in) >= leastMoved {
			f.inputs = append(f.inputs, in)
		}
	}
	slices.SortStableFunc(f.inputs, func(a, b compare.SensitivityInput) int { return cmp.Compare(f.moved(&b), f.moved(&a)) })
	f.inputs = f.inputs[:min(len(f.inputs), mostInputs)]
	return Chart{
		Name:     "tornado-showers",
		Title:    f.finding(),
		Alt:      f.inWords(),
		subtitle: f.subtitle(len(s.Inputs) - len(f.inputs)),
		caption:  "each on " + simulatedYears(s.Years),
		room:     f.room(),
		body:     f.draw,
	}
}

// leastMoved is the change, failing showers a year, that is worth a row: what none
// writes as fewer than 0.1 is not.
const leastMoved = 0.1

// failing gives an option's failing showers a year at one value of an input.
func failing(p *compare.SensitivityPoint, side compare.Side) float64 {
	if side == compare.SideCompact {
		return p.FailingCompact
	}
	return p.FailingCylinder
}

// moved is how far an input moves the option that it moves more.
func (f *failingRanges) moved(in *compare.SensitivityInput) float64 {
	most := 0.0
	for _, side := range bothSides() {
		low, high := f.reach(in, side)
		most = max(most, high-low)
	}
	return most
}

// reach gives the fewest and the most failing showers of an option, those of the
// case as it is stated among them.
func (f *failingRanges) reach(in *compare.SensitivityInput, side compare.Side) (low, high float64) {
	a, b, c := failing(&in.Low, side), failing(&in.High, side), failing(&f.base, side)
	return min(a, b, c), max(a, b, c)
}

func (f *failingRanges) finding() string {
	if len(f.inputs) == 0 {
		return "No input alone moves the number of showers that run too cold"
	}
	in, side := &f.inputs[0], compare.SideCompact
	if low, high := f.reach(in, compare.SideCylinder); high-low == f.moved(in) {
		side = compare.SideCylinder
	}
	low, high := f.reach(in, side)
	return fmt.Sprintf("What moves failing showers most: %s, from %s to %s a year with the %v", plain(in.Label), none(low), none(high), side)
}

func (f *failingRanges) subtitle(hidden int) string {
	text := fmt.Sprintf("Showers a year that run too cold when one input at a time goes from its low to its high value (written at the ends). Thin lines: as stated, %s with the compact store, %s with the cylinder.",
		none(f.base.FailingCompact), none(f.base.FailingCylinder))
	switch {
	case hidden == 1:
		return text + " One more input moves them less, or not at all."
	case hidden > 1:
		return text + fmt.Sprintf(" %d more inputs move them less, or not at all.", hidden)
	}
	return text
}

func (f *failingRanges) inWords() string {
	list := []string{fmt.Sprintf("Lying bars, failing showers a year. As stated: compact store %s, cylinder %s.", none(f.base.FailingCompact), none(f.base.FailingCylinder))}
	for i := range f.inputs {
		in := &f.inputs[i]
		text := fmt.Sprintf("%s from %s to %s:", capital(joinedUnit(plain(in.Label), in.Unit)), brief(in.LowValue), brief(in.HighValue))
		for _, side := range bothSides() {
			text += fmt.Sprintf(" %v %s to %s", side, none(failing(&in.Low, side)), none(failing(&in.High, side)))
			if side == compare.SideCompact {
				text += ","
			}
		}
		list = append(list, text+".")
	}
	return strings.Join(list, " ")
}

func (f *failingRanges) room() vg.Length {
	if len(f.inputs) == 0 {
		return emptyHeight
	}
	return vg.Points(pairHeight*(float64(len(f.inputs))-1+2*pairsMargin)+axisRoom) + step(textSize)
}

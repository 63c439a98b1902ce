package charts

import (
	"fmt"
	"strconv"
	"strings"

	"gonum.org/v1/plot/vg"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// sensitivityCharts draws what moves the decision, if it was looked for.
func sensitivityCharts(doc *compare.Document) ([]Chart, error) {
	if doc.Sensitivity == nil {
		return nil, nil
	}
	if err := sensitivityFinite(doc.Sensitivity); err != nil {
		return nil, err
	}
	allows := -1.0
	if doc.Case != nil {
		allows = doc.Case.Service.FailuresPerYear
	}
	return []Chart{tornadoChart(doc.Sensitivity, doc.Comparison), failingRangesChart(doc.Sensitivity, allows)}, nil
}

// tornado is the picture of how far each input moves the difference in cost, the
// widest first.
type tornado struct {
	unit   string // of money
	base   float64
	inputs []compare.SensitivityInput
}

// mostInputs fit a page.
const mostInputs = 20

func tornadoChart(s *compare.Sensitivity, of *compare.Comparison) Chart {
	t := tornado{unit: currencyName(of), base: s.Base.CostDifference, inputs: s.Inputs[:min(len(s.Inputs), mostInputs)]}
	subtitle := "Cost a year, compact store against cylinder, when one input at a time goes from its low to its high value (written at the ends). Right: where the recommendation turns."
	if hidden := len(s.Inputs) - len(t.inputs); hidden > 0 {
		subtitle += fmt.Sprintf(" %d more inputs move it less.", hidden)
	}
	return Chart{
		Name:     "tornado",
		Title:    tornadoTitle(s),
		Alt:      t.inWords(of),
		subtitle: subtitle,
		caption:  "each on " + simulatedYears(s.Years),
		room:     t.room(),
		body:     t.draw,
	}
}

func tornadoTitle(s *compare.Sensitivity) string {
	if len(s.Inputs) == 0 {
		return "No input was varied"
	}
	turning := 0
	for i := range s.Inputs {
		if s.Inputs[i].Turn != nil {
			turning++
		}
	}
	text := fmt.Sprintf("What moves the difference in cost most: %s.", plain(s.Inputs[0].Label))
	switch turning {
	case 0:
		return text + " No input alone turns the recommendation"
	case 1:
		return text + " One input turns the recommendation"
	}
	return fmt.Sprintf("%s %d of %d inputs turn the recommendation", text, turning, len(s.Inputs))
}

func (t *tornado) inWords(of *compare.Comparison) string {
	list := []string{fmt.Sprintf("Lying bars, cost a year of the compact store less the cylinder's. As stated: %s.", signedMoney(of, t.base))}
	for i := range t.inputs {
		in := &t.inputs[i]
		list = append(list, fmt.Sprintf("%s from %s to %s: %s to %s, %s.", capital(t.label(i)), brief(in.LowValue), brief(in.HighValue),
			signedMoney(of, in.Low.CostDifference), signedMoney(of, in.High.CostDifference), turns(in)))
	}
	return strings.Join(list, " ")
}

// signedMoney writes a difference in money.
func signedMoney(of *compare.Comparison, v float64) string { return wording.Signed(v, money(of, v)) }

// label names an input with its unit.
func (t *tornado) label(i int) string { return joinedUnit(plain(t.inputs[i].Label), t.inputs[i].Unit) }

func joinedUnit(label, unit string) string {
	if unit = plain(unit); unit == "" {
		return label
	}
	return label + ", " + wording.Unit(unit)
}

// turns says at which value the recommendation turns.
func turns(in *compare.SensitivityInput) string {
	if in.Turn == nil {
		return "does not turn"
	}
	return "turns at about " + digits(in.Turn.At, 2)
}

// brief writes an input as it was set.
func brief(v float64) string { return digits(v, 3) }

// digits writes a value with at most so many digits.
func digits(v float64, most int) string {
	const longest = 8
	text := wording.Sprintf("%.*g", most, v)
	exact, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return text
	}
	if plain := strconv.FormatFloat(exact, 'f', -1, 64); len(plain) <= longest {
		text = plain
	}
	return strings.ReplaceAll(text, "-", wording.Minus)
}

const tornadoRow = 22.0 // points: two lines of a name

func (t *tornado) room() vg.Length {
	if len(t.inputs) == 0 {
		return emptyHeight
	}
	return vg.Points(tornadoRow*(float64(len(t.inputs))-1+2*pairsMargin)+axisRoom) + 2*step(textSize)
}

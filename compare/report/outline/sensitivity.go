package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// sensitivity says which inputs move the decision.
func sensitivity(doc *compare.Document, pictures gallery) Part {
	s := doc.Sensitivity
	if s == nil {
		return Part{}
	}
	blocks := []Block{text(fmt.Sprintf("One input at a time is moved to a low and to a high value, over %s each; inputs that move the difference in cost most come first. What two of them do together is not shown. The ranges are judgements and no statistical sample.", calculated(s.Years)))}
	blocks = append(blocks, pictures.hang("tornado", "tornado-showers")...)
	return Part{ID: "sensitivity", Title: "What moves the decision", Blocks: append(blocks, tabled(leverTable(doc)))}
}

func leverTable(doc *compare.Document) *Table {
	s, m := doc.Sensitivity, moneyOf(doc.Comparison)
	t := &Table{
		ID: "levers", Caption: "Each input between a low and a high value", Over: []Over{{"", 2}, {"at the low value", 3}, {"at the high value", 3}, {"", 1}},
		Heads: []string{"input", "unit", "value", "cost difference", "take", "value", "cost difference", "take", "where the verdict turns"}, Words: 2, Tail: 1,
		Note: fmt.Sprintf("Cost difference: a year, compact store less cylinder. With nothing moved it is %s, and the verdict is: %s.", m.change(s.Base.CostDifference, 0), s.Base.Recommend),
	}
	var rows [][]string
	for i := range s.Inputs {
		in := &s.Inputs[i]
		rows = append(rows, []string{
			in.Label, wording.Unit(in.Unit), plainNumber(in.LowValue), m.change(in.Low.CostDifference, 0), string(in.Low.Recommend),
			plainNumber(in.HighValue), m.change(in.High.CostDifference, 0), string(in.High.Recommend), wording.InPrint(in.Turns),
		})
	}
	t.Groups = rowsOf(rows)
	return t
}

// sizing says which sizes and settings serve, and the best of them.
func sizing(doc *compare.Document, pictures gallery) Part {
	s := doc.Sizing
	if s == nil {
		return Part{}
	}
	blocks := []Block{text(fmt.Sprintf("%s settings were screened over %s, and those that pass confirmed over %s. Every size in the table fits the room, as far as one is stated, and keeps the service rule.",
		amount(float64(s.Tried), 0), calculated(s.ScreenYears), calculated(s.ConfirmYears)))}
	if s.HeadToHead != nil {
		blocks = append(blocks, lead("Best against best.", wording.InPrint(s.HeadToHead.Text)))
	}
	for _, side := range bothSides() {
		if note := s.Of(side).Note; note != "" {
			blocks = append(blocks, lead(capital(side.String())+".", capital(note)+"."))
		}
	}
	blocks = append(blocks, pictures.hang("trade-off")...)
	if t := sizeTable(doc); len(t.Groups) > 0 {
		blocks = append(blocks, tabled(t))
	}
	return Part{ID: "sizing", Title: "Best sizes and settings", Blocks: blocks}
}

func sizeTable(doc *compare.Document) *Table {
	m := moneyOf(doc.Comparison)
	t := &Table{
		ID: "sizes", Caption: "Sizes and settings that serve", Tail: 1,
		Heads: []string{"litres", "setpoint, °C", "April to October, °C", "hysteresis, K", "output", "flow limiter, l/min", "failing showers a year", "cost a year", "floor, m²", "cupboard, l", "remark"},
		Note:  "A size that needs a flow limiter that the case has not is named cheapest or smallest only where no other serves.",
	}
	for _, side := range bothSides() {
		r := doc.Sizing.Of(side)
		for i := range r.Sizes {
			z := &r.Sizes[i]
			t.add(side.String(), []string{
				amount(z.VolumeL, 0), amount(z.SetpointC, 1), amount(z.SummerC, 1), amount(z.HysteresisK, 1), percentOf(z.OutputCap),
				orNone(z.ShowerLimit > 0, amount(z.ShowerLimit, 1)), few(z.Trial.Failing.Mean), m.whole(z.Trial.Cost),
				amount(z.FloorAreaM2, 2), amount(z.SpaceL, 0), remark(r, z),
			})
		}
	}
	return t
}

// remark says what stands out about a size.
func remark(r *compare.SizingResult, z *compare.Size) string {
	var words []string
	if r.Cheapest != nil && r.Cheapest.VolumeL == z.VolumeL && r.Cheapest.Trial.Cost == z.Trial.Cost {
		words = append(words, "cheapest")
	}
	if r.Smallest != nil && r.Smallest.VolumeL == z.VolumeL && r.Smallest.Trial.Cost == z.Trial.Cost {
		words = append(words, "smallest")
	}
	if len(words) == 0 && !z.NonDominated {
		return "another is better in all"
	}
	return joined(words)
}

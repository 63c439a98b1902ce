package report

import (
	"fmt"
	"io"
	"math"
	"strings"

	"dhwcompare/compare"
)

// Tornado writes how far each uncertain input moves the difference in cost and the
// failing showers, and where the verdict turns. No line is longer than 80 columns,
// the folder's name excepted.
func Tornado(w io.Writer, doc *compare.Document, folder string) error {
	s := doc.Sensitivity
	return study(w, doc, folder, func(p *page) {
		p.text(fmt.Sprintf("Difference in cost a year, compact store less cylinder, in %s, as each input goes from low to high alone; | is the case as stated, %s.",
			Plain(doc.Comparison.Currency), signed(s.Base.CostDifference, 0)))
		p.grid(tornadoColumns(), tornadoRows(s))
		p.gap()
		p.text(fmt.Sprintf("Showers that fail a year; as stated %s with the compact store and %s with the cylinder.",
			fixed(s.Base.FailingCompact, 1), fixed(s.Base.FailingCylinder, 1)))
		p.grid(failingColumns(), failingRows(s))
		p.gap()
		p.turns(s)
	})
}

const barCells = 23

func tornadoColumns() []column {
	return []column{
		{[2]string{"", "input"}, 32, true}, {[2]string{"", "low"}, 6, false}, {[2]string{"", "high"}, 6, false},
		{[2]string{"at", "low"}, 6, false}, {[2]string{"at", "high"}, 6, false}, {[2]string{"", ""}, barCells + 1, false},
	}
}

func tornadoRows(s *compare.Sensitivity) [][]string {
	scale := tornadoScale(s)
	var rows [][]string
	for i := range s.Inputs {
		in := &s.Inputs[i]
		rows = append(rows, []string{
			inputName(in), brief(in.LowValue), brief(in.HighValue),
			signed(in.Low.CostDifference, 0), signed(in.High.CostDifference, 0),
			scale.bar(in.Low.CostDifference, in.High.CostDifference, s.Base.CostDifference),
		})
	}
	return rows
}

func inputName(in *compare.SensitivityInput) string {
	if in.Unit == "" {
		return in.Label
	}
	return in.Label + ", " + in.Unit
}

// barScale spans a row of cells from the least to the largest difference.
type barScale struct{ low, high float64 }

func tornadoScale(s *compare.Sensitivity) barScale {
	b := barScale{s.Base.CostDifference, s.Base.CostDifference}
	for i := range s.Inputs {
		low, high := s.Inputs[i].Low.CostDifference, s.Inputs[i].High.CostDifference
		b.low, b.high = min(b.low, low, high), max(b.high, low, high)
	}
	return b
}

func (b barScale) cell(v float64) int {
	if b.high <= b.low {
		return barCells / 2
	}
	return int(math.Round((v - b.low) / (b.high - b.low) * (barCells - 1)))
}

func (b barScale) bar(low, high, base float64) string {
	cells := []byte(strings.Repeat(" ", barCells))
	for i := b.cell(min(low, high, base)); i <= b.cell(max(low, high, base)); i++ {
		cells[i] = '='
	}
	cells[b.cell(base)] = '|'
	return string(cells)
}

func failingColumns() []column {
	return []column{
		{[2]string{"", "input"}, 38, true}, {[2]string{"store,", "low"}, 10, false}, {[2]string{"store,", "high"}, 10, false},
		{[2]string{"cylinder,", "low"}, 11, false}, {[2]string{"cylinder,", "high"}, 11, false},
	}
}

func failingRows(s *compare.Sensitivity) [][]string {
	var rows [][]string
	for i := range s.Inputs {
		in := &s.Inputs[i]
		rows = append(rows, []string{
			inputName(in), fixed(in.Low.FailingCompact, 1), fixed(in.High.FailingCompact, 1),
			fixed(in.Low.FailingCylinder, 1), fixed(in.High.FailingCylinder, 1),
		})
	}
	return rows
}

// turns says where the verdict turns.
func (p *page) turns(s *compare.Sensitivity) {
	var turn, keep []string
	for i := range s.Inputs {
		in := &s.Inputs[i]
		if in.Turn == nil {
			keep = append(keep, in.Label)
			continue
		}
		turn = append(turn, fmt.Sprintf("%s: from %s, %s", in.Label, brief(in.BaseValue), in.Turns))
	}
	verdict := fmt.Sprintf("The verdict as stated is %q.", s.Base.Recommend)
	if len(turn) == 0 {
		p.text(verdict + " No input turns it within its range.")
		return
	}
	p.list(verdict+" What turns it:", turn)
	if len(keep) > 0 {
		p.text("It does not turn with: " + strings.Join(keep, "; ") + ".")
	}
}

package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// showerTimeBlocks are how warm showers run for how long: the picture with what it
// shows, and the figures behind it.
func showerTimeBlocks(doc *compare.Document, pictures gallery) []Block {
	blocks := pictures.hang("shower-temperature-duration")
	if len(blocks) == 0 {
		return nil
	}
	blocks[0].Picture.Caption = "From every shower of the calculated years. A line further left is colder for a shorter time; a dot marks where it crosses into what is warm enough. Where the hot water is hardly hot enough for a thermostatic mixing valve, showers stay a little below the wanted temperature for much of the year."
	return append(blocks, tabled(showerTimeTable(doc)))
}

// Steps of the table below the wanted temperature, K.
func showerStepsK() []float64 { return []float64{10, 8, 6, 5, 4, 3, 2, 1, compare.AsWantedWithinK} }

func showerTimeTable(doc *compare.Document) *Table {
	a, b := &doc.Comparison.Options.Compact.ShowerTime, &doc.Comparison.Options.Cylinder.ShowerTime
	want := max(a.WantC, b.WantC)
	var rows [][]string
	for _, below := range showerStepsK() {
		c := want - below
		rows = append(rows, []string{plainNumber(c), minutesOfYear(a.ColderThan(c)), shareOfShowers(a, c), minutesOfYear(b.ColderThan(c)), shareOfShowers(b, c)})
	}
	return &Table{
		ID: "shower-temperatures", Caption: "How long showers run colder than each temperature", Over: []Over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"colder than, °C", "min a year", "share", "min a year", "share"}, Groups: rowsOf(rows),
		Note: fmt.Sprintf("Of %s minutes of shower in the mean year, once the cold water in the pipe is out. Wanted: %s °C; too cold: below %s °C. comparison.xlsx has every tenth of a degree.",
			amount(max(a.Minutes, b.Minutes), 0), plainNumber(want), plainNumber(max(a.LeastC, b.LeastC))),
	}
}

// minutesOfYear writes minutes, tenths of them where they are few.
func minutesOfYear(v float64) string {
	const few = 100
	if v < few {
		return amount(v, 1)
	}
	return amount(v, 0)
}

func shareOfShowers(t *compare.ShowerTime, c float64) string {
	if t.Minutes == 0 {
		return ""
	}
	return amount(100*t.ColderThan(c)/t.Minutes, 2) + " %"
}

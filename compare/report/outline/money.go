package outline

import (
	"dhwcompare/compare"
)

func money(doc *compare.Document, pictures gallery) Part {
	blocks := pictures.hang("cost-by-tariff")
	if len(doc.Comparison.Tariffs) > 0 {
		blocks = append(blocks, tabled(tariffTable(doc)), tabled(bandTable(doc)), tabled(breakEvens(doc)))
	}
	blocks = append(blocks, tabled(lifeTable(doc)))
	return Part{ID: "money", Title: "Money", Blocks: append(blocks, spacePrice(doc)...)}
}

func tariffTable(doc *compare.Document) *Table {
	cmp, m := doc.Comparison, moneyOf(doc.Comparison)
	var rows [][]string
	for i := range cmp.Tariffs {
		t := &cmp.Tariffs[i]
		interval := "too few years"
		if cmp.Years >= compare.LeastYearsForInterval {
			interval = between(t.DifferenceOver.CILow, t.DifferenceOver.CIHigh, m.change, 0)
		}
		rows = append(rows, []string{t.Name, m.whole(t.Compact.Cost), m.whole(t.Cylinder.Cost), m.change(t.Difference, 0), interval,
			m.whole(t.StandingAYear), tariffFinding(doc, t)})
	}
	return &Table{
		ID: "tariffs", Caption: "Electricity a year on each tariff; the first decides", Groups: rowsOf(rows),
		Heads: []string{"tariff", "compact store", "cylinder", "difference", "90 % interval", "standing charge", "finding"}, Tail: 1,
		Note: "Without the standing charge, which is the same for both. Control of the vessels follows the first tariff or the clock and is held for the others.",
	}
}

func tariffFinding(doc *compare.Document, t *compare.TariffCost) string {
	switch {
	case doc.Comparison.Verdict.Cost == compare.CostNotCompared:
		return notJudged
	case doc.Comparison.Years < compare.LeastYearsForInterval:
		return "too few years"
	case !tells(t.DifferenceOver), immaterial(t.DifferenceOver, doc.Case.Money.MaterialityPerYear):
		return noDifference
	case t.Difference > 0:
		return "cylinder costs less"
	default:
		return "compact store costs less"
	}
}

// bandTable divides the bills.
func bandTable(doc *compare.Document) *Table {
	m := moneyOf(doc.Comparison)
	t := &Table{
		ID: "bands", Caption: "Electricity and cost a year by band", Over: []Over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"band", "kWh", "cost", "kWh", "cost"},
	}
	for i := range doc.Comparison.Tariffs {
		tariff := &doc.Comparison.Tariffs[i]
		g := Group{Name: tariff.Name}
		a, b := tariff.Compact.Bands, tariff.Cylinder.Bands
		for j := range min(len(a), len(b)) {
			g.Rows = append(g.Rows, []string{a[j].Name, amount(a[j].KWh, 0), m.whole(a[j].Cost), amount(b[j].KWh, 0), m.whole(b[j].Cost)})
		}
		t.Groups = append(t.Groups, g)
	}
	return t
}

func breakEvens(doc *compare.Document) *Table {
	m := moneyOf(doc.Comparison)
	var rows [][]string
	for i := range doc.Comparison.Tariffs {
		t := &doc.Comparison.Tariffs[i]
		ratio := "none"
		if t.Ratio != nil {
			ratio = amount(*t.Ratio, 2)
		}
		rows = append(rows, []string{t.Name, m.change(t.AnnualDifference, 0), ratio, t.BreakEven.Note})
	}
	return &Table{
		ID: "break-even", Caption: "Whole life on each tariff, and where the options cost the same", Tail: 1, Groups: rowsOf(rows),
		Heads: []string{"tariff", "difference a year", "break-even: unit rates times", "meaning"},
		Note:  "Difference a year: compact store less cylinder, as an even yearly payment over the horizon.",
	}
}

package report

import (
	"fmt"

	"dhwcompare/compare"
)

func money(doc *compare.Document, pictures gallery) part {
	blocks := pictures.hang("cost-by-tariff")
	if len(doc.Comparison.Tariffs) > 0 {
		blocks = append(blocks, tabled(tariffTable(doc)), tabled(bandTable(doc)), tabled(breakEvens(doc)))
	}
	blocks = append(blocks, tabled(lifeTable(doc)))
	return part{ID: "money", Title: "Money", Blocks: append(blocks, spacePrice(doc)...)}
}

func tariffTable(doc *compare.Document) *table {
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
	return &table{
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
		return "no real difference"
	case t.Difference > 0:
		return "cylinder costs less"
	default:
		return "compact store costs less"
	}
}

// bandTable divides the bills.
func bandTable(doc *compare.Document) *table {
	m := moneyOf(doc.Comparison)
	t := &table{
		ID: "bands", Caption: "Electricity and cost a year by band", Over: []over{{"", 1}, {"compact store", 2}, {"cylinder", 2}},
		Heads: []string{"band", "kWh", "cost", "kWh", "cost"},
	}
	for i := range doc.Comparison.Tariffs {
		tariff := &doc.Comparison.Tariffs[i]
		g := group{Name: tariff.Name}
		a, b := tariff.Compact.Bands, tariff.Cylinder.Bands
		for j := range min(len(a), len(b)) {
			g.Rows = append(g.Rows, []string{a[j].Name, amount(a[j].KWh, 0), m.whole(a[j].Cost), amount(b[j].KWh, 0), m.whole(b[j].Cost)})
		}
		t.Groups = append(t.Groups, g)
	}
	return t
}

func breakEvens(doc *compare.Document) *table {
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
	return &table{
		ID: "break-even", Caption: "Whole life on each tariff, and where the options cost the same", Tail: 1, Groups: rowsOf(rows),
		Heads: []string{"tariff", "difference a year", "break-even: unit rates times", "meaning"},
		Note:  "Difference a year: compact store less cylinder, as an even yearly payment over the horizon.",
	}
}

// lifeTable is where the money of each option goes over the horizon.
func lifeTable(doc *compare.Document) *table {
	cmp, m, c := doc.Comparison, moneyOf(doc.Comparison), &doc.Case.Money
	a, b := &cmp.Options.Compact, &cmp.Options.Cylinder
	var rows [][]string
	for _, p := range costParts() {
		x, y := p.of(&a.WholeLife.Present), p.of(&b.WholeLife.Present)
		if x != 0 || y != 0 {
			rows = append(rows, []string{p.name, m.whole(x), m.whole(y), ""})
		}
	}
	rows = append(rows,
		[]string{"whole life, in today's money", m.whole(a.NetPresentCost), m.whole(b.NetPresentCost), m.change(cmp.Difference.NetPresentCost, 0)},
		[]string{"as an even yearly payment", m.whole(a.EquivalentAnnualCost), m.whole(b.EquivalentAnnualCost), m.change(cmp.Difference.EquivalentAnnualCost, 0)},
	)
	return &table{
		ID: "life", Caption: fmt.Sprintf("Cost over %d years at a real discount rate of %s %%", c.HorizonYears, few(c.DiscountPercent)),
		Heads: []string{"what for", "compact store", "cylinder", "difference"}, Groups: rowsOf(rows),
		Note: "Present values. Electricity prices grow by " + amount(c.EnergyGrowthPercent, 1) + " % a year beyond inflation. What is left of a vessel at the end counts as worth in proportion to its remaining life.",
	}
}

// costPart names a part of the cost.
type costPart struct {
	name string
	of   func(*compare.CostParts) float64
}

func costParts() []costPart {
	return []costPart{
		{"purchase", func(p *compare.CostParts) float64 { return p.Purchase }},
		{"installation", func(p *compare.CostParts) float64 { return p.Installation }},
		{"replacement", func(p *compare.CostParts) float64 { return p.Replacement }},
		{"yearly safety check", func(p *compare.CostParts) float64 { return p.SafetyCheck }},
		{"upkeep", func(p *compare.CostParts) float64 { return p.Upkeep }},
		{"descaling", func(p *compare.CostParts) float64 { return p.Descaling }},
		{"electricity", func(p *compare.CostParts) float64 { return p.Energy }},
		{"worth of what is left", func(p *compare.CostParts) float64 { return p.Residual }},
	}
}

// spacePrice is what the freed space costs.
func spacePrice(doc *compare.Document) []block {
	p, m := &doc.Comparison.PriceOfSpace, moneyOf(doc.Comparison)
	list := []string{fmt.Sprintf("The compact store frees %s m² of floor and %s litres of cupboard; a negative figure means that it takes more.", amount(p.FreedM2, 2), amount(p.FreedL, 0))}
	if p.PerM2 != nil {
		words := fmt.Sprintf("Each square metre freed costs %s a year", m.whole(*p.PerM2))
		if p.PerM2Low != nil && p.PerM2High != nil {
			words += fmt.Sprintf(" (90 %% interval %s)", between(*p.PerM2Low, *p.PerM2High, m.amount, 0))
		}
		list = append(list, words+".")
	}
	if p.PerL != nil {
		list = append(list, fmt.Sprintf("Each litre of cupboard freed costs %s a year.", m.amount(*p.PerL, 2)))
	}
	for _, note := range []string{p.Note, turns(p, m)} {
		if note != "" {
			list = append(list, capital(note)+".")
		}
	}
	if p.ValuePerM2 > 0 {
		list = append(list, fmt.Sprintf("The case values a square metre of cupboard at %s a year; with that, the compact store differs by %s a year over its life.", m.whole(p.ValuePerM2), m.change(p.DifferenceWithSpace, 0)))
	}
	return []block{lead("Price of space.", "What the compact store costs more over its life, set against the space that it frees."), listed(list...)}
}

func turns(p *compare.PriceOfSpace, m writer) string {
	if p.TurnsAtPerM2 == nil {
		return p.TurnsNote
	}
	return fmt.Sprintf("the decision turns at %s a year for a square metre: %s", m.whole(*p.TurnsAtPerM2), p.TurnsNote)
}

// roomTaken is the floor and the cupboard, and whether they are there.
func roomTaken(doc *compare.Document, pictures gallery) part {
	blocks := pictures.hang("space")
	for _, side := range bothSides() {
		o := doc.Comparison.Options.Of(side)
		words := fmt.Sprintf("%s m² of floor with clearances, %s litres of cupboard, %s kg when full.", amount(o.FloorAreaM2, 2), amount(o.SpaceL, 0), amount(o.WeightFullKg, 0))
		if o.NeedsFloorCheck {
			words += " Have the floor checked by somebody qualified."
		}
		if o.Fit != nil {
			words += " In the room that the case states it " + o.Fit.Text + "."
		}
		blocks = append(blocks, lead(capital(o.Name)+".", words))
	}
	return part{ID: "space-taken", Title: "Space", Blocks: blocks}
}

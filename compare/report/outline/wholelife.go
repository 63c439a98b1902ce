package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// lifeTable is where the money of each option goes over the horizon.
func lifeTable(doc *compare.Document) *Table {
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
	return &Table{
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
		{"volumiser, fitted", func(p *compare.CostParts) float64 { return p.Volumiser }},
		{"replacement", func(p *compare.CostParts) float64 { return p.Replacement }},
		{"yearly safety check", func(p *compare.CostParts) float64 { return p.SafetyCheck }},
		{"upkeep", func(p *compare.CostParts) float64 { return p.Upkeep }},
		{"descaling", func(p *compare.CostParts) float64 { return p.Descaling }},
		{"electricity", func(p *compare.CostParts) float64 { return p.Energy }},
		{"worth of what is left", func(p *compare.CostParts) float64 { return p.Residual }},
	}
}

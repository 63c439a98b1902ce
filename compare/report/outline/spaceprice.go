package outline

import (
	"fmt"

	"dhwcompare/compare"
)

// spacePrice is what the freed space costs.
func spacePrice(doc *compare.Document) []Block {
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
	for i, note := range []string{p.Note, turns(p, m)} {
		if note != "" && (i == 0 || note != p.Note) {
			list = append(list, capital(note)+".")
		}
	}
	if p.ValuePerM2 > 0 {
		list = append(list, fmt.Sprintf("The case values a square metre of cupboard at %s a year; with that, the compact store differs by %s a year over its life.", m.whole(p.ValuePerM2), m.change(p.DifferenceWithSpace, 0)))
	}
	return []Block{lead("Price of space.", "What the compact store costs more over its life, set against the space that it frees."), listed(list...)}
}

func turns(p *compare.PriceOfSpace, m writer) string {
	if p.TurnsAtPerM2 == nil {
		return p.TurnsNote
	}
	return fmt.Sprintf("the decision turns at %s a year for a square metre: %s", m.whole(*p.TurnsAtPerM2), p.TurnsNote)
}

// roomTaken is the floor and the cupboard, and whether they are there.
func roomTaken(doc *compare.Document, pictures gallery) Part {
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
		if o.SystemWater.LeastL > 0 || o.SystemWater.VolumiserL > 0 {
			words += " Heating water: " + o.SystemWater.Text + "."
		}
		blocks = append(blocks, lead(capital(o.Name)+".", words))
	}
	return Part{ID: "space-taken", Title: "Space", Blocks: blocks}
}

package outline

import (
	"fmt"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// consultantParts is the document for the file. Parts without data are left out,
// and the others numbered.
func consultantParts(doc *compare.Document, pictures gallery) ([]Part, error) {
	list := []Part{
		finding(doc), scope(doc), inputs(doc), method(doc), results(doc, pictures), causes(doc, pictures), money(doc, pictures),
		roomTaken(doc, pictures), risk(doc, pictures), drawoffs(doc, pictures), sizing(doc, pictures), sensitivity(doc, pictures),
		settings(doc), pictures.rest(), cautions(doc), limits(doc), checks(doc), otherInputs(doc), filledIn(doc),
	}
	var parts []Part
	for _, p := range list {
		if len(p.Blocks) > 0 {
			p.Number = fmt.Sprint(len(parts) + 1)
			parts = append(parts, p)
		}
	}
	return parts, pictures.draw(parts)
}

// finding opens with the verdict and what it rests on.
func finding(doc *compare.Document) Part {
	v := &doc.Comparison.Verdict
	blocks := []Block{lead("Verdict.", wording.InPrint(v.Text))}
	if len(v.Reasons) > 0 {
		var reasons []string
		for _, r := range v.Reasons {
			reasons = append(reasons, wording.InPrint(r))
		}
		blocks = append(blocks, text("What it rests on; where two figures stand side by side, the compact store comes first."), listed(reasons...))
	}
	return Part{ID: "finding", Title: "Verdict and reasons", Blocks: blocks}
}

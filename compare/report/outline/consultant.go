package outline

import (
	"fmt"
	"regexp"
	"strings"

	"dhwcompare/compare"
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
	blocks := []Block{lead("Verdict.", inPrint(v.Text))}
	if len(v.Reasons) > 0 {
		var reasons []string
		for _, r := range v.Reasons {
			reasons = append(reasons, inPrint(r))
		}
		blocks = append(blocks, text("What it rests on; where two figures stand side by side, the compact store comes first."), listed(reasons...))
	}
	return Part{ID: "finding", Title: "Verdict and reasons", Blocks: blocks}
}

// inPrint writes units and signs as print does; a terminal has to do without them.
func inPrint(s string) string {
	s = strings.NewReplacer(" m2 ", " m² ", " m2.", " m².", " m2,", " m²,").Replace(s)
	s = regexp.MustCompile(`(\d) C\b`).ReplaceAllString(s, "$1 °C")
	s = regexp.MustCompile(`([ (])-(\d)`).ReplaceAllString(s, "$1−$2")
	for _, currency := range []string{"GBP", "EUR"} {
		s = regexp.MustCompile(`\b`+currency+` ([+−]?)(\d)`).ReplaceAllString(s, "${1}"+sign(currency)+"$2")
	}
	return s
}

package report

import (
	"fmt"

	"dhwcompare/charts"
	"dhwcompare/compare"
)

// consultantParts is the document for the file. Parts without data are left out,
// and the others numbered.
func consultantParts(doc *compare.Document, pictures gallery) []part {
	list := []part{
		finding(doc), scope(doc), inputs(doc), method(doc), results(doc, pictures), causes(doc, pictures),
		risk(doc, pictures), drawoffs(doc, pictures), settings(doc), money(doc, pictures), roomTaken(doc, pictures),
		cautionPart(), limits(doc), checks(doc), allInputs(doc), filledIn(doc), morePictures(pictures),
	}
	var parts []part
	for _, p := range list {
		if len(p.Blocks)+len(p.Parts) > 0 {
			p.Number = fmt.Sprint(len(parts) + 1)
			parts = append(parts, p)
		}
	}
	return parts
}

// gallery holds the charts that have not been hung yet.
type gallery struct {
	charts []charts.Chart
	hung   map[string]bool
}

func newGallery(doc *compare.Document) (gallery, error) {
	list, err := charts.Of(doc)
	return gallery{list, map[string]bool{}}, err
}

// hang gives the charts of the given names, as far as there are such.
func (g gallery) hang(names ...string) []block {
	var out []block
	for _, name := range names {
		for i := range g.charts {
			if c := &g.charts[i]; c.Name == name && !g.hung[name] {
				g.hung[name] = true
				out = append(out, drawn(picture{Name: c.Name, Alt: c.Alt}))
			}
		}
	}
	return out
}

// morePictures hangs what has no place of its own.
func morePictures(g gallery) part {
	var names []string
	for i := range g.charts {
		names = append(names, g.charts[i].Name)
	}
	return part{ID: "more-pictures", Title: "More pictures", Blocks: g.hang(names...)}
}

// finding opens with the verdict and what it rests on.
func finding(doc *compare.Document) part {
	v := &doc.Comparison.Verdict
	blocks := []block{lead("Verdict.", squareMetres(v.Text)), text("What it rests on; where two figures stand side by side, the compact store comes first.")}
	var reasons []string
	for _, r := range v.Reasons {
		reasons = append(reasons, squareMetres(r))
	}
	return part{ID: "finding", Title: "Verdict and reasons", Blocks: append(blocks, listed(reasons...))}
}

package outline

import (
	"html/template"

	"dhwcompare/charts"
	"dhwcompare/compare"
)

// gallery holds the charts, each of which is hung once.
type gallery struct {
	charts []charts.Chart
	hung   map[string]bool
}

func newGallery(doc *compare.Document) (gallery, error) {
	list, err := charts.Of(doc)
	return gallery{list, map[string]bool{}}, err
}

// hang gives the charts of the given names, as far as there are such.
func (g gallery) hang(names ...string) []Block {
	var out []Block
	for _, name := range names {
		for i := range g.charts {
			if c := &g.charts[i]; c.Name == name && !g.hung[name] {
				g.hung[name] = true
				out = append(out, Block{Picture: &Picture{Chart: c.Name, Alt: c.Alt}})
			}
		}
	}
	return out
}

// rest is a part for the charts that have no place of their own.
func (g gallery) rest() Part {
	var names []string
	for i := range g.charts {
		names = append(names, g.charts[i].Name)
	}
	return Part{ID: "more-pictures", Title: "More pictures", Blocks: g.hang(names...)}
}

// draw draws the charts that hang in some parts. The package of the charts escapes
// every text in them.
func (g gallery) draw(parts []Part) error {
	for i := range parts {
		for _, b := range parts[i].Blocks {
			if b.Picture == nil {
				continue
			}
			for j := range g.charts {
				if c := &g.charts[j]; c.Name == b.Picture.Chart {
					svg, err := c.InlineSVG()
					if err != nil {
						return err
					}
					b.Picture.SVG = template.HTML(svg)
				}
			}
		}
	}
	return nil
}

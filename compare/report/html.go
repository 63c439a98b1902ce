package report

import (
	"bytes"
	"embed"
	"errors"
	"fmt"
	"html/template"

	"dhwcompare/compare"
)

//go:embed templates
var templates embed.FS

// caution ends every form of the report.
const caution = "Scalding, legionella, pressure, electricity and refrigerant can hurt people. Local codes come first; have licensed people design, fit and check the work."

// pageData is what the page is filled with.
type pageData struct {
	*outline
	Style   template.CSS // a file of this program
	Caution string
}

// HTML gives the bytes of report.html: one page that needs nothing but itself. It
// holds no script and no address, its pictures are inline, and it prints on A4.
// Texts that somebody else wrote appear as text. Equal documents have equal bytes.
func HTML(doc *compare.Document) ([]byte, error) {
	o, err := newOutline(doc)
	if err != nil {
		return nil, err
	}
	style, err := templates.ReadFile("templates/report.css")
	if err != nil {
		return nil, err
	}
	page, err := template.New("report.html").Funcs(template.FuncMap{"plain": Plain, "lines": PlainLines, "deeper": deeper}).ParseFS(templates, "templates/*.html")
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	if err := page.Execute(&out, pageData{o, template.CSS(style), caution}); err != nil {
		return nil, fmt.Errorf("the report cannot be written as HTML: %w", err)
	}
	return out.Bytes(), nil
}

// heading is a part with the level of its heading.
type heading struct {
	part
	Level int
}

func deeper(p part, level int) heading { return heading{p, level} }

// newOutline collects everything that the report says.
func newOutline(doc *compare.Document) (*outline, error) {
	if doc == nil || doc.Comparison == nil || doc.Case == nil {
		return nil, errors.New("there is no comparison to report")
	}
	g, err := newGallery(doc)
	if err != nil {
		return nil, err
	}
	o := &outline{Home: doc.Comparison.Title, Customer: customerPage(doc), Parts: consultantParts(doc, g)}
	return o, g.inline(o.Parts)
}

// inline draws the charts that are hung.
func (g gallery) inline(parts []part) error {
	for i := range parts {
		for _, b := range parts[i].Blocks {
			if b.Picture == nil || b.Picture.Name == "" {
				continue
			}
			svg, err := g.svg(b.Picture.Name)
			if err != nil {
				return err
			}
			b.Picture.SVG = svg
		}
		if err := g.inline(parts[i].Parts); err != nil {
			return err
		}
	}
	return nil
}

// svg draws one chart. The package of the charts escapes every text in it.
func (g gallery) svg(name string) (template.HTML, error) {
	for i := range g.charts {
		if g.charts[i].Name == name {
			data, err := g.charts[i].InlineSVG()
			return template.HTML(data), err
		}
	}
	return "", fmt.Errorf("there is no chart %q", name)
}

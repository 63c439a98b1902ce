package outline

import (
	"errors"
	"html/template"

	"dhwcompare/compare"
)

// Outline is everything that a report says.
type Outline struct {
	Home     string // what the case calls the home; a stranger's words
	Customer []Part // the first page, for somebody who is to live with the outcome
	Parts    []Part // the document behind it, for a consultant
	Caution  string // with which every form ends
}

// Part is a heading with what stands below it.
type Part struct {
	ID, Title string // ID is of this program's making, and occurs once
	Number    string // of a part of the consultant's document; else empty
	Blocks    []Block
}

// Block is one of the things that a part is made of: the field that is set.
type Block struct {
	Text     *Paragraph
	Points   []Paragraph
	Table    *Table
	Picture  *Picture
	Pictures []Picture // beside each other
	Listing  string    // lines to be kept as they are
}

// Paragraph is a text, with words before it that stand out, if any.
type Paragraph struct{ Lead, Text string }

// Picture is a drawing with what it shows.
type Picture struct {
	Chart   string        // name of the chart; empty for a drawing that exists here alone
	Title   string        // of such a drawing; a chart has its title in it
	Alt     string        // the figures in it, for those who do not see it
	Caption string        // below it
	SVG     template.HTML // an element; this program's own, every text in it escaped
}

// New says everything that there is to say of a document. A part whose data are
// not there is absent.
func New(doc *compare.Document) (*Outline, error) {
	if doc == nil || doc.Comparison == nil || doc.Case == nil {
		return nil, errors.New("there is no comparison to report")
	}
	g, err := newGallery(doc)
	if err != nil {
		return nil, err
	}
	parts, err := consultantParts(doc, g)
	if err != nil {
		return nil, err
	}
	return &Outline{
		Home: doc.Comparison.Title, Customer: customerPage(doc), Parts: parts,
		Caution: "Scalding, legionella, pressure, electricity and refrigerant can hurt people. Local codes come first; have licensed people design, fit and check the work.",
	}, nil
}

func text(s string) Block      { return Block{Text: &Paragraph{Text: s}} }
func lead(l, s string) Block   { return Block{Text: &Paragraph{l, s}} }
func tabled(t *Table) Block    { return Block{Table: t} }
func listed(s ...string) Block { return Block{Points: points(s)} }

func points(list []string) []Paragraph {
	out := make([]Paragraph, len(list))
	for i, s := range list {
		out[i] = Paragraph{Text: s}
	}
	return out
}

package report

import (
	"fmt"
	"io"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// Columns of the terminal and of the table.
const (
	columns           = 80
	labelColumns      = 42
	valueColumns      = 13
	differenceColumns = columns - labelColumns - 2*valueColumns
)

// cautions is what every summary ends with, a line each.
const cautions = `Take care: scalding, legionella, pressure and electricity can hurt people.
Local codes come first; have licensed people design, fit and check the work.`

// open begins a summary: the home, what the figures are the mean of, and the verdict.
func (p *page) open(cmp *compare.Comparison, verdict string) {
	p.text(Plain(cmp.Title))
	p.text(fmt.Sprintf("Mean of %s, seed %d.", cmp.Marked(years(cmp.Years), "years"), cmp.Seed))
	p.gap()
	p.text(Plain(verdict))
	p.gap()
}

// Full writes the whole comparison for somebody at a terminal: the verdict, all
// figures that bear on it, the reasons, what to beware of, and where the files are.
// No line is longer than 80 columns, the folder's name excepted.
func Full(w io.Writer, doc *compare.Document, folder string) error {
	cmp := doc.Comparison
	var p page
	p.open(cmp, cmp.Verdict.Text)
	p.table(doc, rows(doc))
	p.text(note(doc))
	p.gap()
	p.list("Why:", cmp.Verdict.Reasons)
	if len(cmp.Warnings) > 0 {
		p.gap()
		p.list(beware(rows(doc)), warnings(cmp))
	}
	p.gap()
	return p.end(w, folder)
}

// end closes a page with cautions and the folder of results.
func (p *page) end(w io.Writer, folder string) error {
	p.line(cautions)
	if folder != "" {
		p.gap()
		p.line("Results: " + Plain(folder))
	}
	_, err := io.WriteString(w, p.String())
	return err
}

func years(n int) string {
	if n == 1 {
		return "1 simulated year"
	}
	return fmt.Sprintf("%d simulated years", n)
}

// note explains the signs of the table and what the costs are of.
func note(doc *compare.Document) string {
	return fmt.Sprintf("difference: compact store less cylinder. %s: no real difference; the 90 %% interval "+
		"includes zero or, for cost, stays within %.3g %s a year. Costs: %s.",
		noRealDifference, doc.Case.Money.MaterialityPerYear, Plain(doc.Comparison.Currency), doc.Comparison.CostBoundary)
}

// beware heads the warnings, and explains the mark in the table if there is one.
func beware(list []row) string {
	for _, r := range list {
		if strings.HasSuffix(r.label, compare.WarningMark) {
			return "Beware, of the figures marked" + compare.WarningMark + " among others:"
		}
	}
	return "Beware:"
}

func warnings(cmp *compare.Comparison) []string {
	list := make([]string, len(cmp.Warnings))
	for i, w := range cmp.Warnings {
		list[i] = w.Text
	}
	return list
}

// page collects lines.
type page struct{ strings.Builder }

func (p *page) line(s string) { p.WriteString(strings.TrimRight(s, " ") + "\n") }
func (p *page) gap()          { p.line("") }

// text writes a paragraph.
func (p *page) text(s string) {
	for _, line := range wrap(s, columns, "") {
		p.line(line)
	}
}

// list writes a heading with points below it.
func (p *page) list(heading string, points []string) {
	p.line(heading)
	for _, point := range points {
		for _, line := range wrap("- "+Plain(point), columns, "  ") {
			p.line(line)
		}
	}
}

// table sets figures of both options side by side.
func (p *page) table(doc *compare.Document, list []row) {
	o := &doc.Comparison.Options
	p.row(row{"", "compact store", "cylinder", "difference"})
	p.row(row{"", size(&o.Compact), size(&o.Cylinder), ""})
	p.line(strings.Repeat("-", columns))
	for _, r := range list {
		p.row(r)
	}
	p.line(strings.Repeat("-", columns))
}

func size(o *compare.Option) string { return wording.Sprintf("%.0f l, %.0f C", o.VolumeL, o.SetpointC) }

func (p *page) row(r row) {
	p.line(padRight(cut(r.label, labelColumns), labelColumns) +
		padLeft(r.compact, valueColumns) + padLeft(r.cylinder, valueColumns) + padLeft(r.difference, differenceColumns))
}

package report

import (
	"fmt"
	"io"

	"dhwcompare/compare"
	"dhwcompare/compare/wording"
)

// study writes what every command that looks into one question has in common
// around what it found.
func study(w io.Writer, doc *compare.Document, folder string, body func(p *page)) error {
	var p page
	p.text(Plain(doc.Comparison.Title))
	p.text(fmt.Sprintf("Of %s, seed %d. As stated: %s", doc.Comparison.Marked(years(doc.Comparison.Years), "years"), doc.Comparison.Seed, Plain(doc.Comparison.Verdict.Short)))
	p.gap()
	body(&p)
	p.gap()
	if n := len(doc.Comparison.Warnings); n > 0 {
		p.text(fmt.Sprintf("Warnings about these figures: %d, in report.html under Limits.", n))
		p.gap()
	}
	return p.end(w, folder)
}

func fixed(v float64, decimals int) string { return wording.Fixed(v, decimals) }

// brief writes a number with three digits at most.
func brief(v float64) string { return wording.Sprintf("%.3g", v) }

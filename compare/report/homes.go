package report

import (
	"fmt"
	"io"
)

// Homes is what came of many homes.
type Homes struct {
	Table                              string // where they are from
	Years, Homes                       int
	Compact, Cylinder, Either, Neither int // recommended so
	Failed                             int // without a result
	FirstFailure                       string
	Part                               string // share of the table, such as 2/4; empty for all of it
}

// Portfolio writes what came of many homes. No line is longer than 80 columns, the
// folder's name excepted.
func Portfolio(w io.Writer, h *Homes, folder string) error {
	var p page
	of := "of"
	if h.Part != "" {
		of = "in part " + h.Part + " of"
	}
	p.text(fmt.Sprintf("%d homes %s %s, %s each.", h.Homes, of, Plain(h.Table), years(h.Years)))
	p.gap()
	for _, r := range []struct {
		label string
		count int
	}{
		{"compact store recommended", h.Compact}, {"cylinder recommended", h.Cylinder}, {"either serves, space decides", h.Either},
		{"neither serves as set up", h.Neither}, {"no result", h.Failed},
	} {
		p.row(row{r.label, fmt.Sprint(r.count), "", ""})
	}
	if h.FirstFailure != "" {
		p.gap()
		p.text("The reason stands beside each home without a result; the first: " + Plain(h.FirstFailure))
	}
	p.gap()
	p.line(cautions)
	p.gap()
	p.line("Results: " + Plain(folder))
	_, err := io.WriteString(w, p.String())
	return err
}

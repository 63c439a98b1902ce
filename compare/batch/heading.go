package batch

import (
	"fmt"
	"slices"
	"strings"

	"dhwcompare/compare/casefile"
)

// heading reads the names of the columns, and reports whether rows can be read.
func (r *tableReader) heading(names []string) bool {
	r.idAt = -1
	for i := range names {
		names[i] = strings.TrimSpace(names[i])
		if names[i] == idColumn && r.idAt < 0 {
			r.idAt = i
		}
	}
	switch {
	case len(names) == 1 && strings.ContainsAny(names[0], ";\t"):
		r.add(1, 0, "names one column, %s: separate columns by commas", shown(names[0]))
		return false
	case len(names) > mostColumns:
		r.add(1, 0, "names %d columns, allowed up to %d: leave out what is the same for all homes, which belongs in the base case", len(names), mostColumns)
		return false
	case r.idAt < 0:
		r.add(1, 0, "names no column id: add one, with a text of its own for each home")
	}
	for i, name := range names {
		if i != r.idAt {
			r.table.Keys, r.table.Columns = append(r.table.Keys, name), append(r.table.Columns, i+1)
		}
	}
	for i, name := range names {
		r.columnHead(i, name, slices.Index(names, name))
	}
	return r.idAt >= 0
}

// columnHead judges one name; first is where it stands first.
func (r *tableReader) columnHead(i int, name string, first int) {
	const years = "years"
	problem := func(text string, args ...any) {
		r.problems = append(r.problems, Problem{File: r.table.Name, Line: 1, Column: i + 1, Text: fmt.Sprintf(text, args...)})
	}
	switch {
	case first < i:
		problem("%s is named a second time, first in column %d: leave one out", shown(name), first+1)
	case i == r.idAt:
	case name == "":
		problem("has no name: name a key of a case, such as household.people, or leave the column out")
	case strings.EqualFold(name, idColumn):
		problem("%s is not known: write id in small letters", shown(name))
	case name == years:
		problem("is years, which are the same for all homes: leave the column out and use --years")
	default:
		if err := casefile.Known(name); err != nil {
			problem("%v", err)
		}
	}
}

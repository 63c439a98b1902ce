package batch

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// home compares one home, on one processor.
func (j *Job) home(ctx context.Context, r *Row) (o outcome) {
	defer func() {
		// A defect that one home out of thousands brings to light costs that home only.
		if defect := recover(); defect != nil {
			o = outcome{Error: j.place(r, -1) + fmt.Sprintf("cannot be simulated, by a defect of the program: %v", defect)}
		}
	}()
	c, err := j.caseOf(r)
	if err != nil {
		return outcome{Error: err.Error()}
	}
	cmp, _, err := compare.Decide(ctx, c, 1, nil)
	if err != nil {
		return outcome{Error: j.place(r, -1) + "cannot be simulated: " + err.Error()}
	}
	return outcome{Values: valuesOf(cmp)}
}

// caseOf makes the case of a row.
func (j *Job) caseOf(r *Row) (*compare.Case, error) {
	c := *j.Base
	var wrong []string
	for i, text := range r.Values {
		if text == "" {
			continue
		}
		if err := casefile.Set(&c, j.Table.Keys[i], text); err != nil {
			wrong = append(wrong, j.texts(r, i, err)...)
		}
	}
	if len(wrong) == 0 {
		if err := casefile.Attach(&c, j.Open); err != nil {
			wrong = j.texts(r, -1, err)
		} else if err := casefile.Check(&c); err != nil {
			wrong = j.texts(r, -1, err)
		}
	}
	if len(wrong) > 0 {
		return nil, errors.New(strings.Join(wrong, "; "))
	}
	return &c, nil
}

// texts says what is wrong with a row, each with its place; i is the key that was
// set, or negative if the values do not go together.
func (j *Job) texts(r *Row, i int, err error) []string {
	var problems casefile.Problems
	if !errors.As(err, &problems) {
		return []string{j.place(r, -1) + err.Error()}
	}
	var list []string
	for _, p := range problems {
		at := i
		if at < 0 {
			at = slices.Index(j.Table.Keys, p.Key)
		}
		list = append(list, j.place(r, at)+p.Error())
	}
	return list
}

// place gives the file, the line and, for the i-th key, the column of a row.
func (j *Job) place(r *Row, i int) string {
	text := fmt.Sprintf("%s:%d: ", j.Table.Name, r.Line)
	if i >= 0 {
		text += fmt.Sprintf("column %d: ", j.Table.Columns[i])
	}
	return text
}

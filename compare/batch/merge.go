package batch

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
	"slices"
	"strings"
)

// Source is a folder of results to be merged.
type Source struct {
	Name    string // as messages call it
	Summary Summary
	Rows    io.Reader // its rows.jsonl
}

// ReadSummary reads a batch.json.
func ReadSummary(name string, data []byte) (Summary, error) {
	var s Summary
	if err := json.Unmarshal(data, &s); err != nil {
		return s, fmt.Errorf("%s is not a folder of a batch's results: its %s cannot be read: %w", name, SummaryName, err)
	}
	if s.Schema != Schema {
		return s, fmt.Errorf("%s has the form %q, and this program writes %q: run the part again", name, s.Schema, Schema)
	}
	return s, nil
}

// Merge joins parts of one batch to the results of all its homes, in the order of
// the table. Parts of different programs, base cases, tables, years or seeds are
// refused at once; homes that are missing or come twice are so while the results
// are read.
func Merge(parts []Source) (Summary, iter.Seq2[Result, error], error) {
	if len(parts) == 0 {
		return Summary{}, nil, errors.New("there is no part to merge")
	}
	first := &parts[0]
	var wrong []error
	for i := range parts[1:] {
		if differs := first.Summary.differs(&parts[i+1].Summary); differs != "" {
			wrong = append(wrong, fmt.Errorf("%s and %s differ in %s: run all parts with the same program, table, base case and flags", first.Name, parts[i+1].Name, differs))
		}
	}
	if len(wrong) > 0 {
		return Summary{}, nil, errors.Join(wrong...)
	}
	if err := complete(parts); err != nil {
		return Summary{}, nil, err
	}
	head := first.Summary
	head.Part = nil
	return head, merged(parts, head.Homes), nil
}

// differs names what keeps two folders from being parts of one batch.
func (s *Summary) differs(o *Summary) string {
	var list []string
	for _, d := range []struct {
		what string
		is   bool
	}{
		{"the program's version", s.Version != o.Version},
		{"the base case", s.BaseDigest != o.BaseDigest},
		{"the table", s.TableDigest != o.TableDigest || s.Homes != o.Homes || !slices.Equal(s.Keys, o.Keys)},
		{"the years", s.Years != o.Years},
		{"the seed", s.Seed != o.Seed},
		{"the columns of results", !slices.Equal(s.Columns, o.Columns)},
		{"the number of parts", s.of() != o.of()},
	} {
		if d.is {
			list = append(list, d.what)
		}
	}
	return strings.Join(list, ", ")
}

func (s *Summary) of() int {
	if s.Part == nil {
		return 1
	}
	return s.Part.Of
}

func (s *Summary) index() int {
	if s.Part == nil {
		return 1
	}
	return s.Part.Index
}

// complete holds that every part is there once.
func complete(parts []Source) error {
	of := parts[0].Summary.of()
	by := make([]string, of+1)
	var wrong []error
	for i := range parts {
		index := parts[i].Summary.index()
		switch {
		case index < 1 || index > of:
			wrong = append(wrong, fmt.Errorf("%s calls itself part %d of %d", parts[i].Name, index, of))
		case by[index] != "":
			wrong = append(wrong, fmt.Errorf("part %d/%d is given twice, as %s and %s: leave one out", index, of, by[index], parts[i].Name))
		default:
			by[index] = parts[i].Name
		}
	}
	for index := 1; index <= of; index++ {
		if by[index] == "" {
			wrong = append(wrong, fmt.Errorf("part %d/%d is missing: run it, and name its folder", index, of))
		}
	}
	return errors.Join(wrong...)
}

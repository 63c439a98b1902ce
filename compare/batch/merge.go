package batch

import (
	"bufio"
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

// stream reads the rows of a part one by one.
type stream struct {
	name string
	in   *bufio.Reader
	next *Result // nil at the end
}

func (s *stream) read() error {
	s.next = nil
	text, err := s.in.ReadBytes('\n')
	if errors.Is(err, io.EOF) && len(text) == 0 {
		return nil
	}
	if err != nil && !errors.Is(err, io.EOF) {
		return fmt.Errorf("%s: %s cannot be read: %w", s.name, RowsName, err)
	}
	var r Result
	if err := json.Unmarshal(text, &r); err != nil || !r.sound() {
		return fmt.Errorf("%s: %s holds a line that is no result: run the part again", s.name, RowsName)
	}
	s.next = &r
	return nil
}

// merged gives the rows of all parts by number, each once and none left out.
func merged(parts []Source, homes int) iter.Seq2[Result, error] {
	return func(yield func(Result, error) bool) {
		var streams []*stream
		for i := range parts {
			s := &stream{name: parts[i].Name, in: bufio.NewReader(parts[i].Rows)}
			if err := s.read(); err != nil {
				yield(Result{}, err)
				return
			}
			streams = append(streams, s)
		}
		for number := 1; number <= homes; number++ {
			r, err := pick(streams, number)
			if !yield(r, err) || err != nil {
				return
			}
		}
		for _, s := range streams {
			if s.next != nil {
				yield(Result{}, fmt.Errorf("%s holds home %d, %q, which is none of the table's %d or comes twice", s.name, s.next.Number, s.next.ID, homes))
				return
			}
		}
	}
}

// pick takes the home of a number from the part that has it.
func pick(streams []*stream, number int) (Result, error) {
	var from *stream
	for _, s := range streams {
		if s.next == nil || s.next.Number != number {
			continue
		}
		if from != nil {
			return Result{}, fmt.Errorf("home %d, %q, is in both %s and %s", number, s.next.ID, from.name, s.name)
		}
		from = s
	}
	if from == nil {
		return Result{}, fmt.Errorf("home %d of the table is in no part: a part is not whole, run it again", number)
	}
	r := *from.next
	return r, from.read()
}

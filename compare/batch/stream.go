package batch

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
)

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

package batch

import (
	"encoding/json"
	"errors"
	"io"
	"iter"
	"slices"
)

// The files of results.
const (
	CSVName     = "results.csv"
	XLSXName    = "results.xlsx"
	RowsName    = "rows.jsonl" // by which parts are merged
	SummaryName = "batch.json"
)

// Create begins a file of results.
type Create func(name string) (io.WriteCloser, error)

// sink takes results one by one.
type sink interface {
	row(r *Result) error
	end() error
}

// Write writes all files of results in one pass and gives the summary that it
// completed. Each row is held only while it is written.
func Write(create Create, head Summary, results iter.Seq2[Result, error]) (s Summary, err error) {
	s = head
	s.Tally = Tally{}
	var files []io.Closer
	defer func() {
		for _, f := range files {
			err = errors.Join(err, f.Close())
		}
	}()
	open := func(name string) (io.Writer, error) {
		f, err := create(name)
		if err == nil {
			files = append(files, f)
		}
		return f, err
	}
	sinks, err := s.sinks(open)
	if err != nil {
		return s, err
	}
	for r, err := range results {
		if err != nil {
			return s, err
		}
		s.Tally.count(&r)
		for _, to := range sinks {
			if err := to.row(&r); err != nil {
				return s, err
			}
		}
	}
	for _, to := range sinks {
		if err := to.end(); err != nil {
			return s, err
		}
	}
	return s, s.write(open)
}

func (s *Summary) sinks(open func(string) (io.Writer, error)) ([]sink, error) {
	var list []sink
	for _, f := range []struct {
		name string
		make func(io.Writer, []string) (sink, error)
	}{{RowsName, newRows}, {CSVName, newCSV}, {XLSXName, newXLSX}} {
		w, err := open(f.name)
		if err != nil {
			return nil, err
		}
		to, err := f.make(w, s.headings())
		if err != nil {
			return nil, err
		}
		list = append(list, to)
	}
	return list, nil
}

// headings names the columns of the table of results.
func (s *Summary) headings() []string {
	return slices.Concat([]string{idColumn}, s.Keys, s.Columns, []string{"error"})
}

func (s *Summary) write(open func(string) (io.Writer, error)) error {
	w, err := open(SummaryName)
	if err != nil {
		return err
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(s)
}

// cells gives a row under the headings; of numbers columns it leaves nil where
// there is no value.
func (r *Result) cells(columns int) []any {
	list := []any{r.ID}
	for _, text := range r.Inputs {
		list = append(list, text)
	}
	values := r.Values
	if r.Error != "" {
		values = make([]any, columns-len(list)-1)
	}
	return append(append(list, values...), r.Error)
}

// rows writes the results as lines of JSON.
type rows struct{ w io.Writer }

func newRows(w io.Writer, _ []string) (sink, error) { return rows{w}, nil }

func (s rows) row(r *Result) error {
	text, err := line(r)
	if err == nil {
		_, err = s.w.Write(text)
	}
	return err
}

func (rows) end() error { return nil }

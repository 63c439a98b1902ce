package batch

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Read reads a table: comma-separated, a heading first, a line for each home; name
// is how messages call it. Whatever is wrong with its form comes back at once, as
// Problems. Values are not judged: one that makes no sound case is that home's
// failure.
func Read(name string, data []byte) (*Table, error) {
	r := &tableReader{table: &Table{Name: name}, seen: map[string]int{}}
	if text := unreadable(data); text != "" {
		r.add(1, 0, text)
		return nil, r.problems
	}
	r.read(bytes.TrimPrefix(data, []byte("\ufeff")))
	if len(r.problems) > 0 {
		return nil, r.problems
	}
	return r.table, nil
}

// unreadable says why bytes can be no table.
func unreadable(data []byte) string {
	switch {
	case len(data) > LargestBytes:
		return fmt.Sprintf("is longer than a table can be (%d bytes): split it", LargestBytes)
	case bytes.HasPrefix(data, []byte{0xff, 0xfe}) || bytes.HasPrefix(data, []byte{0xfe, 0xff}):
		return "is UTF-16: save it as CSV in UTF-8"
	case bytes.IndexByte(data, 0) >= 0:
		return "holds a zero byte, so it is no text: save the table as CSV in UTF-8"
	case !utf8.Valid(data):
		return "is not UTF-8: save it as CSV in UTF-8"
	case len(bytes.TrimSpace(bytes.TrimPrefix(data, []byte("\ufeff")))) == 0:
		return "is empty: the first line names the columns, id and keys of a case such as household.people"
	default:
		return ""
	}
}

type tableReader struct {
	table    *Table
	idAt     int            // place of the id among the columns
	seen     map[string]int // line of each id
	problems Problems
}

func (r *tableReader) add(line, column int, text string, args ...any) {
	if len(args) > 0 {
		text = fmt.Sprintf(text, args...)
	}
	p := Problem{File: r.table.Name, Line: line, Column: column, Text: text}
	if column > 0 {
		p.Name = r.columnName(column)
	}
	r.problems = append(r.problems, p)
}

// columnName gives the heading of a column, from 1.
func (r *tableReader) columnName(column int) string {
	if column-1 == r.idAt {
		return idColumn
	}
	if i := slices.Index(r.table.Columns, column); i >= 0 {
		return r.table.Keys[i]
	}
	return ""
}

func (r *tableReader) read(data []byte) {
	in := csv.NewReader(bytes.NewReader(data))
	in.FieldsPerRecord, in.ReuseRecord = -1, true
	head, err := in.Read()
	if err != nil {
		r.malformed(err)
		return
	}
	if !r.heading(slices.Clone(head)) {
		return
	}
	for {
		fields, err := in.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			// What follows an open quote cannot be told apart.
			r.malformed(err)
			return
		}
		line, _ := in.FieldPos(0)
		r.row(line, fields)
		if len(r.table.Rows) > mostRows {
			r.add(line, 0, "is beyond the %d homes that a table can hold: split it", mostRows)
			return
		}
	}
	if len(r.table.Rows) == 0 && len(r.problems) == 0 {
		r.add(1, 0, "has a heading but no home: add a line for each")
	}
}

// malformed explains what the reader of CSV stumbled over.
func (r *tableReader) malformed(err error) {
	var parse *csv.ParseError
	if !errors.As(err, &parse) {
		r.add(1, 0, "cannot be read: %v", err)
		return
	}
	if errors.Is(parse.Err, csv.ErrQuote) {
		r.add(parse.StartLine, 0, "begins a value whose quotation marks do not end where the value does: close them, and double those inside it")
		return
	}
	r.add(parse.Line, 0, "holds a quotation mark inside a value: put the value in quotation marks and double those inside it")
}

func (r *tableReader) row(line int, fields []string) {
	columns := len(r.table.Keys) + 1
	if len(fields) != columns {
		r.add(line, 0, "has %d values, and the heading names %d columns: give each column a value, or nothing between the commas for that of the base case", len(fields), columns)
		return
	}
	row := Row{Line: line, Number: len(r.table.Rows) + 1, Values: make([]string, 0, columns-1)}
	for i, field := range fields {
		field = strings.TrimSpace(field)
		if i == r.idAt {
			row.ID = strings.Clone(field)
		} else {
			row.Values = append(row.Values, strings.Clone(field))
		}
	}
	r.id(line, row.ID)
	r.table.Rows = append(r.table.Rows, row)
}

// id judges the id of a row.
func (r *tableReader) id(line int, id string) {
	first, again := r.seen[id]
	odd := strings.ContainsFunc(id, func(c rune) bool { return !unicode.IsPrint(c) })
	switch {
	case id == "":
		r.add(line, r.idAt+1, "is empty: give each home an id of its own")
	case odd:
		r.add(line, r.idAt+1, "holds a character that cannot be printed: use letters, digits and signs")
	case len(id) > longestID:
		r.add(line, r.idAt+1, "is %d bytes long, allowed up to %d: shorten it", len(id), longestID)
	case again:
		r.add(line, r.idAt+1, "%s stands in line %d already: give each home an id of its own", shown(id), first)
	default:
		r.seen[id] = line
	}
}

// shown quotes a text of the file for a message, shortened.
func shown(s string) string {
	const longest = 60
	if utf8.RuneCountInString(s) > longest {
		s = string([]rune(s)[:longest]) + "..."
	}
	return fmt.Sprintf("%q", s)
}

package batch

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

// csvSink writes the results as CSV.
type csvSink struct {
	w       *csv.Writer
	columns int
}

func newCSV(w io.Writer, headings []string) (sink, error) {
	s := csvSink{csv.NewWriter(w), len(headings)}
	return s, s.w.Write(headings)
}

func (s csvSink) row(r *Result) error {
	var fields []string
	for _, v := range r.cells(s.columns) {
		fields = append(fields, csvText(v))
	}
	return s.w.Write(fields)
}

func (s csvSink) end() error {
	s.w.Flush()
	return s.w.Error()
}

func csvText(v any) string {
	switch v := v.(type) {
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	case string:
		return harmless(v)
	default:
		return ""
	}
}

// harmless keeps a spreadsheet from taking a text for a formula: an apostrophe
// goes before what would begin one, signs of full width included, which some
// programs take for the others. A number, whatever its sign, is none.
func harmless(text string) string {
	first, _ := utf8.DecodeRuneInString(text)
	if _, is := number(text); is || text == "" || !strings.ContainsRune("=+-@\t\r\n＝＋－＠", first) {
		return text
	}
	return "'" + text
}

// number reads a text that everybody would take for a number.
func number(text string) (v float64, is bool) {
	if strings.Trim(text, "0123456789+-.eE") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(text, 64)
	return v, err == nil
}

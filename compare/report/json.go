package report

import (
	"bytes"
	"encoding/json"
	"fmt"

	"dhwcompare/compare"
)

// contents is what comparison.json holds: the comparison, and beside its keys what
// else was found out, unless that was not looked into.
type contents struct {
	*compare.Comparison
	Draws    *compare.Drawoff  `json:"draw_off_tests,omitempty"`
	Settings *compare.Settings `json:"settings,omitempty"`
}

// JSON gives the bytes of comparison.json: indented, map keys sorted, floats in
// the shortest form that reads back as the same number, a newline at the end.
// Equal comparisons have equal bytes. A figure that is no finite number is an
// error, for JSON has no way to write it.
func JSON(doc *compare.Document) ([]byte, error) {
	return PartJSON(contents{doc.Comparison, doc.Draws, doc.Settings})
}

// PartJSON gives the bytes of one part of a document in the form of JSON.
func PartJSON(part any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(part); err != nil {
		return nil, fmt.Errorf("the results cannot be written as JSON: %w", err)
	}
	return b.Bytes(), nil
}

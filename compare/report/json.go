package report

import (
	"bytes"
	"encoding/json"
	"fmt"

	"dhwcompare/compare"
)

// JSON gives the bytes of comparison.json: indented, map keys sorted, floats in
// the shortest form that reads back as the same number, a newline at the end.
// Equal comparisons have equal bytes. A figure that is no finite number is an
// error, for JSON has no way to write it.
func JSON(doc *compare.Document) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(doc.Comparison); err != nil {
		return nil, fmt.Errorf("the comparison cannot be written as JSON: %w", err)
	}
	return b.Bytes(), nil
}

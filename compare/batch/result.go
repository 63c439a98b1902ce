package batch

import (
	"bytes"
	"encoding/json"
	"math"
)

// Result is what came of one home.
type Result struct {
	Number int      `json:"number"` // of its row, from 1
	ID     string   `json:"id"`
	Inputs []string `json:"inputs"` // as the table states them
	outcome
}

// outcome is the part of a result that had to be worked out.
type outcome struct {
	Values []any  `json:"values"` // text, number or null for each column; null where the home failed
	Error  string `json:"error"`  // why it failed; empty if it did not
}

// sound reports whether an outcome that was read back can have been written.
func (o *outcome) sound() bool {
	if o.Error != "" {
		return len(o.Values) == 0
	}
	for _, v := range o.Values {
		switch v := v.(type) {
		case nil, string:
		case float64:
			if math.IsNaN(v) || math.IsInf(v, 0) {
				return false
			}
		default:
			return false
		}
	}
	return len(o.Values) == len(columns())
}

// line encodes a value as one line of JSON.
func line(v any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(v)
	return b.Bytes(), err
}

package batch

import "dhwcompare/compare"

// Schema names the form of a batch's files.
const Schema = "dhwcompare-batch-1"

// Summary says what a folder of results is of, and what came of it. It goes into
// batch.json, by which parts find together.
type Summary struct {
	Schema      string   `json:"schema"`
	Version     string   `json:"version"`
	BaseDigest  string   `json:"base_digest"`
	TableDigest string   `json:"table_digest"`
	Seed        uint64   `json:"seed"`
	Years       int      `json:"years"`
	Homes       int      `json:"homes"`          // in the table
	Part        *Part    `json:"part,omitempty"` // absent: all of them
	Keys        []string `json:"keys"`           // of the table
	Columns     []string `json:"columns"`        // of results
	Tally       Tally    `json:"tally"`
}

// Tally counts what came of the homes of a folder.
type Tally struct {
	Homes     int `json:"homes"`
	Failed    int `json:"failed"` // without a result, for the reason beside the row
	Compact   int `json:"recommend_compact"`
	Cylinder  int `json:"recommend_cylinder"`
	Either    int `json:"recommend_either"`
	Neither   int `json:"recommend_neither"`
	firstFail string
}

// FirstFailure is why the first home failed; empty if none did.
func (t *Tally) FirstFailure() string { return t.firstFail }

func (t *Tally) count(r *Result) {
	t.Homes++
	if r.Error != "" {
		t.Failed++
		if t.firstFail == "" {
			t.firstFail = r.Error
		}
		return
	}
	switch r.Values[0] {
	case string(compare.RecommendCompact):
		t.Compact++
	case string(compare.RecommendCylinder):
		t.Cylinder++
	case string(compare.RecommendEither):
		t.Either++
	case string(compare.RecommendNeither):
		t.Neither++
	}
}

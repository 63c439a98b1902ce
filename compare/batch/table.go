package batch

import (
	"crypto/sha256"
	"encoding/hex"
	"strconv"
)

// Table lists the homes.
type Table struct {
	Name    string   // of the file, as messages call it
	Keys    []string // dotted keys of a case, in the order of the columns, without the id
	Columns []int    // that they stand in, from 1
	Rows    []Row
}

// Row is one home.
type Row struct {
	Line   int // of the file
	Number int // from 1, in the order of the table
	ID     string
	Values []string // for each key; empty: that of the base case
}

// What a table may be at most: it is held in memory.
const (
	LargestBytes = 64 << 20
	mostRows     = 1_000_000
	mostColumns  = 200
	longestID    = 100
)

// idColumn names the column of the ids.
const idColumn = "id"

// Digest identifies the table by its content, whatever the file's line ends and
// blanks.
func (t *Table) Digest() string {
	h := sha256.New()
	write := func(texts ...string) {
		for _, s := range texts {
			h.Write([]byte(strconv.Itoa(len(s)) + ":" + s))
		}
		h.Write([]byte{'\n'})
	}
	write(t.Keys...)
	for i := range t.Rows {
		write(t.Rows[i].ID)
		write(t.Rows[i].Values...)
	}
	return hex.EncodeToString(h.Sum(nil))
}

// rowKey identifies what a row's result depends on: the program, the base case, the
// row, and more, which is what files hold that the row refers to.
func (t *Table) rowKey(r *Row, program, base string, more []string) string {
	h := sha256.New()
	for _, list := range [][]string{{program, base, r.ID}, t.Keys, r.Values, more} {
		for _, s := range list {
			h.Write([]byte(strconv.Itoa(len(s)) + ":" + s))
		}
		h.Write([]byte{'\n'})
	}
	return hex.EncodeToString(h.Sum(nil))
}

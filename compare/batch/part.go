package batch

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"strconv"
	"strings"
)

// Part is a share of a table: the Index-th of Of, from 1.
type Part struct {
	Index int `json:"index"`
	Of    int `json:"of"`
}

// Whole is the share that is all.
func Whole() Part { return Part{1, 1} }

// mostParts is more than any array job has.
const mostParts = 10_000

// ParsePart reads a share such as 2/4.
func ParsePart(text string) (Part, error) {
	index, of, cut := strings.Cut(text, "/")
	i, errI := strconv.Atoi(index)
	n, errN := strconv.Atoi(of)
	if !cut || errI != nil || errN != nil || n < 1 || n > mostParts || i < 1 || i > n {
		return Part{}, fmt.Errorf("%q is not a part such as 2/4, the first number from 1 to the second, the second up to %d", text, mostParts)
	}
	return Part{i, n}, nil
}

// String writes the share as ParsePart reads it.
func (p Part) String() string { return fmt.Sprintf("%d/%d", p.Index, p.Of) }

// Has reports whether a home belongs to the share. Only its id decides, so that
// all machines agree and rows may be added without moving others.
func (p Part) Has(id string) bool {
	sum := sha256.Sum256([]byte(id))
	return binary.BigEndian.Uint64(sum[:8])%uint64(p.Of) == uint64(p.Index-1)
}

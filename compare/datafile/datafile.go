// Package datafile holds a file that a case refers to: weather, prices, surplus.
// It opens none; whoever loads a case brings the bytes.
package datafile

import (
	"crypto/sha256"
	"encoding/hex"
)

// File is a file that a case refers to. The zero value refers to none.
type File struct {
	// Name is its path from the folder of the case, with / between folders.
	Name string
	// SHA256 is the digest of its bytes, 64 hexadecimal digits. Before the file is
	// read it is what the case states, or empty.
	SHA256 string
	// Data is what the file holds; nil until it is read.
	Data []byte `json:"-"`
	// Warnings say what a reader of the results has to know about the file.
	Warnings []string `json:"-"`
}

// Stated reports whether there is such a file.
func (f *File) Stated() bool { return f.Name != "" }

// Read reports whether its bytes are there.
func (f *File) Read() bool { return f.Data != nil }

// Refer makes it refer to the file of another name. A digest that was stated
// before stays; one that belongs to bytes already read goes with them.
func (f *File) Refer(name string) {
	stated := f.SHA256
	if f.Read() {
		stated = ""
	}
	*f = File{Name: name, SHA256: stated}
}

// Digest gives the SHA-256 of some bytes in hexadecimal digits.
func Digest(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

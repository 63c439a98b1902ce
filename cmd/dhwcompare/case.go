package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"syscall"

	"dhwcompare/compare"
	"dhwcompare/compare/casefile"
)

// demoName stands for the embedded case in messages.
const demoName = "demo"

// largestCase keeps a file that cannot be a case out of memory, bytes.
const largestCase = 1 << 20

// document loads a case: that of the file named, or the embedded one.
func (p *program) document(args []string) (*compare.Document, error) {
	name, data := demoName, casefile.Demo()
	if len(args) > 0 {
		name = args[0]
		var err error
		if data, err = p.read(name); err != nil {
			return nil, err
		}
	}
	c, inputs, err := casefile.Load(name, data)
	if err != nil {
		return nil, err
	}
	return &compare.Document{Case: c, Inputs: inputs}, nil
}

// read reads a case file; "-" is standard input.
func (p *program) read(name string) ([]byte, error) {
	if name == "-" {
		return readCase("standard input", p.stdin)
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, unreadable(name, err)
	}
	defer f.Close() // it was only read
	return readCase(name, f)
}

func readCase(name string, from io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(from, largestCase+1))
	if err != nil {
		return nil, unreadable(name, err)
	}
	if len(data) > largestCase {
		return nil, &usageError{
			what: fmt.Sprintf("%s: is longer than a case file can be (%d bytes)", name, largestCase),
			hint: "is it the right file? dhwcompare new FILE writes a case to start from",
		}
	}
	return data, nil
}

// unreadable explains why a case file cannot be read.
func unreadable(name string, err error) error {
	e := &usageError{what: fmt.Sprintf("%s: cannot be read: %v", name, cause(err)), hint: "check the name and the permissions"}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		e.what = fmt.Sprintf("%s: there is no such file", name)
		e.hint = fmt.Sprintf("check the name; dhwcompare new %s writes a case to start from", name)
	case errors.Is(err, syscall.EISDIR):
		e.what = fmt.Sprintf("%s: is a folder, not a case file", name)
		e.hint = "name the case file in it"
	}
	return e
}

// cause strips what the system adds to an error: the operation and the path.
func cause(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}

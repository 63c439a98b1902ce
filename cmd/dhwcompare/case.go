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

// standardInput stands for what comes from there in messages.
const standardInput = "standard input"

// largestCase keeps a file that cannot be a case out of memory, bytes.
const largestCase = 1 << 20

// document loads a case for results: its files have the names that they get
// beside those.
func (p *program) document(args []string) (*compare.Document, error) {
	c, err := p.load(args)
	if err != nil {
		return nil, err
	}
	files := c.GatherFiles()
	return &compare.Document{Case: c, Inputs: casefile.Inputs(c), Files: files}, nil
}

// load loads a case: that of the file named, or the embedded one, which refers to
// no other file.
func (p *program) load(args []string) (*compare.Case, error) {
	if len(args) == 0 {
		c, _, err := casefile.Load(demoName, casefile.Demo(), nil)
		return c, err
	}
	data, err := p.read(args[0])
	if err != nil {
		return nil, err
	}
	c, _, err := casefile.Load(shownName(args[0]), data, p.besideCase(args[0]))
	return c, err
}

// shownName is how messages call a case.
func shownName(name string) string {
	if name == "-" {
		return standardInput
	}
	return name
}

// read reads a case file; "-" is standard input.
func (p *program) read(name string) ([]byte, error) {
	if name == "-" {
		return readCase(standardInput, p.stdin)
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

package main

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"dhwcompare/compare/batch"
	"dhwcompare/compare/casefile"
	"dhwcompare/compare/report"
)

// table reads a table of homes; "-" is standard input.
func (p *program) table(name string) (*batch.Table, error) {
	from, shown := p.stdin, standardInput
	if name != "-" {
		f, err := os.Open(name)
		if err != nil {
			return nil, unreadableTable(name, err)
		}
		defer f.Close() // it was only read
		from, shown = f, name
	}
	data, err := io.ReadAll(io.LimitReader(from, batch.LargestBytes+1))
	if err != nil {
		return nil, unreadableTable(shown, err)
	}
	return batch.Read(shown, data)
}

func unreadableTable(name string, err error) error {
	return &usageError{what: fmt.Sprintf("%s: cannot be read: %v", name, cause(err)), hint: "name the table of homes, a CSV file"}
}

// besideBase opens the files that rows refer to, by their names from the folder of
// the base case. Several homes may ask at once.
func besideBase(baseName string) casefile.Opener {
	dir := filepath.Dir(baseName)
	return func(name string) ([]byte, error) { return readOrdinary(filepath.Join(dir, filepath.FromSlash(name))) }
}

// buildDigest identifies this build of the program, so that rows which another one
// has finished are not taken for its own.
func buildDigest() string {
	path, err := os.Executable()
	if err != nil {
		return version
	}
	f, err := os.Open(path)
	if err != nil {
		return version
	}
	defer f.Close() // it was only read
	h := sha256.New()
	if _, err := io.Copy(h, f); err != nil {
		return version
	}
	return hex.EncodeToString(h.Sum(nil))
}

// showBatch prints the summary.
func (p *program) showBatch(s *batch.Summary, table, folder string, o *caseFlags) error {
	switch {
	case o.json.on:
		return p.print(report.PartJSON(s))
	case o.quiet.on:
		return nil
	}
	t := &s.Tally
	h := &report.Homes{
		Table: table, Years: s.Years, Homes: t.Homes, Compact: t.Compact, Cylinder: t.Cylinder, Either: t.Either, Neither: t.Neither,
		Failed: t.Failed, FirstFailure: t.FirstFailure(),
	}
	if s.Part != nil {
		h.Part = s.Part.String()
	}
	return report.Portfolio(p.stdout, h, folder)
}

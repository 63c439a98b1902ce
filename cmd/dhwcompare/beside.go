package main

import (
	"errors"
	"io"
	"os"
	"path/filepath"

	"dhwcompare/compare/casefile"
	"dhwcompare/compare/datafile"
)

// besideCase opens the files that a case refers to, by their names from its
// folder; a case on standard input has the working folder.
func (p *program) besideCase(caseName string) casefile.Opener {
	dir := filepath.Dir(caseName)
	return func(name string) ([]byte, error) {
		path := filepath.Join(dir, filepath.FromSlash(name))
		p.referred = append(p.referred, path)
		return readOrdinary(path)
	}
}

// readOrdinary reads a file, no more of it than a case may refer to. Pipes and
// devices, on which a program may wait for ever, are refused.
func readOrdinary(path string) ([]byte, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, err
	case info.IsDir():
		return nil, errors.New("it is a folder")
	case !info.Mode().IsRegular():
		return nil, errors.New("it is no ordinary file")
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close() // it was only read
	return io.ReadAll(io.LimitReader(f, casefile.LargestFile+1))
}

// copies put the files of a case beside the results, byte by byte.
func copies(files []datafile.File) []output {
	var list []output
	for _, f := range files {
		list = append(list, output{f.Name, func() ([]byte, error) { return f.Data, nil }})
	}
	return list
}

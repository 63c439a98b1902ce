// Command undocumented lists the exported functions, methods, types, constants
// and variables of the module that have no doc comment, which staticcheck does
// not ask for. It exits with 1 if there are any.
//
//	go run .ci/undocumented.go
package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

func main() {
	found := 0
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && path != "." && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata"):
			return fs.SkipDir
		case d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go"):
			return nil
		}
		n, err := inspect(path)
		found += n
		return err
	})
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
	}
	if err != nil || found > 0 {
		os.Exit(1)
	}
}

// inspect prints the undocumented names of one file and counts them.
func inspect(path string) (int, error) {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, path, nil, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		return 0, err
	}
	found := 0
	for _, decl := range file.Decls {
		for _, name := range undocumented(decl) {
			fmt.Printf("%s: exported %s has no doc comment\n", files.Position(name.Pos()), name.Name)
			found++
		}
	}
	return found, nil
}

// undocumented gives the exported names of a declaration that nothing explains.
func undocumented(decl ast.Decl) []*ast.Ident {
	switch d := decl.(type) {
	case *ast.FuncDecl:
		if d.Doc == nil && d.Name.IsExported() && exportedReceiver(d.Recv) {
			return []*ast.Ident{d.Name}
		}
	case *ast.GenDecl:
		if d.Doc == nil {
			return undocumentedSpecs(d.Specs)
		}
	}
	return nil
}

// undocumentedSpecs does so for types, constants and variables, where a comment
// at the end of the line is enough.
func undocumentedSpecs(specs []ast.Spec) (names []*ast.Ident) {
	for _, spec := range specs {
		var candidates []*ast.Ident
		switch s := spec.(type) {
		case *ast.TypeSpec:
			if s.Doc == nil && s.Comment == nil {
				candidates = []*ast.Ident{s.Name}
			}
		case *ast.ValueSpec:
			if s.Doc == nil && s.Comment == nil {
				candidates = s.Names
			}
		}
		for _, name := range candidates {
			if name.IsExported() {
				names = append(names, name)
			}
		}
	}
	return names
}

// exportedReceiver tells whether a function is no method or one of an exported
// type; methods of other types are not part of what a package offers.
func exportedReceiver(recv *ast.FieldList) bool {
	if recv == nil || len(recv.List) == 0 {
		return true
	}
	typ := recv.List[0].Type
	if star, ok := typ.(*ast.StarExpr); ok {
		typ = star.X
	}
	if generic, ok := typ.(*ast.IndexExpr); ok {
		typ = generic.X
	}
	name, ok := typ.(*ast.Ident)
	return !ok || name.IsExported()
}

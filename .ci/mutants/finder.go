package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"strconv"
)

// finder collects the changes that can be made in one file.
type finder struct {
	path   string
	source []byte
	file   *token.File
	found  []*mutant
}

// replace notes a change of the text from one place to another.
func (f *finder) replace(from, to token.Pos, by string) {
	f.found = append(f.found, &mutant{f.path, f.source, f.file.Offset(from), f.file.Offset(to), by})
}

func (f *finder) text(n ast.Node) string {
	return string(f.source[f.file.Offset(n.Pos()):f.file.Offset(n.End())])
}

// swapped gives what an operator is replaced by; others are left alone.
func swapped(t token.Token) []token.Token {
	return map[token.Token][]token.Token{
		token.LSS: {token.LEQ, token.GTR}, token.LEQ: {token.LSS, token.GTR},
		token.GTR: {token.GEQ, token.LSS}, token.GEQ: {token.GTR, token.LSS},
		token.EQL: {token.NEQ}, token.NEQ: {token.EQL},
		token.ADD: {token.SUB}, token.SUB: {token.ADD}, token.MUL: {token.QUO}, token.QUO: {token.MUL}, token.REM: {token.QUO},
		token.LAND: {token.LOR}, token.LOR: {token.LAND},
		token.ADD_ASSIGN: {token.SUB_ASSIGN}, token.SUB_ASSIGN: {token.ADD_ASSIGN},
		token.MUL_ASSIGN: {token.QUO_ASSIGN}, token.QUO_ASSIGN: {token.MUL_ASSIGN},
		token.INC: {token.DEC}, token.DEC: {token.INC},
	}[t]
}

func (f *finder) swap(at token.Pos, t token.Token) {
	for _, other := range swapped(t) {
		f.replace(at, at+token.Pos(len(t.String())), other.String())
	}
}

// look notes the changes of one node, but not of what is in it.
func (f *finder) look(n ast.Node) {
	switch n := n.(type) {
	case *ast.BinaryExpr:
		f.swap(n.OpPos, n.Op)
	case *ast.UnaryExpr:
		if n.Op == token.SUB || n.Op == token.NOT {
			f.replace(n.OpPos, n.X.Pos(), "")
		}
	case *ast.BasicLit:
		f.number(n)
	case *ast.CallExpr:
		f.extreme(n)
	case *ast.IfStmt:
		f.replace(n.Cond.Pos(), n.Cond.End(), "!("+f.text(n.Cond)+")")
	case *ast.IncDecStmt:
		f.swap(n.TokPos, n.Tok)
		f.remove(n)
	case *ast.AssignStmt:
		f.swap(n.TokPos, n.Tok)
		if n.Tok != token.DEFINE {
			f.remove(n)
		}
	case *ast.ExprStmt:
		f.remove(n)
	case *ast.BranchStmt:
		f.remove(n)
	}
}

// remove takes a statement away, but lets the compiler see what it used.
func (f *finder) remove(s ast.Stmt) {
	f.replace(s.Pos(), s.End(), "if false { "+f.text(s)+" }")
}

// number moves a constant a little either way.
func (f *finder) number(n *ast.BasicLit) {
	switch n.Kind {
	case token.INT:
		if i, err := strconv.Atoi(n.Value); err == nil {
			f.replace(n.Pos(), n.End(), strconv.Itoa(i+1))
			f.replace(n.Pos(), n.End(), fmt.Sprintf("(%d)", i-1))
		}
	case token.FLOAT:
		f.replace(n.Pos(), n.End(), "(1.1 * "+n.Value+" + 1e-9)")
		f.replace(n.Pos(), n.End(), "(0.9 * "+n.Value+" - 1e-9)")
	}
}

// extreme takes the larger for the smaller.
func (f *finder) extreme(call *ast.CallExpr) {
	other := map[string]string{
		"min": "max", "max": "min", "math.Min": "math.Max", "math.Max": "math.Min",
		"slices.Min": "slices.Max", "slices.Max": "slices.Min", "math.Floor": "math.Ceil", "math.Ceil": "math.Floor",
	}[f.text(call.Fun)]
	if other != "" {
		f.replace(call.Fun.Pos(), call.Fun.End(), other)
	}
}
